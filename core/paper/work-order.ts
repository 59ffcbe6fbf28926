import { say } from '../words/say.ts'
import type { Block } from './block.ts'
import { flatBlocks } from './flat.ts'
import { layPages } from './flow.ts'
import { clothBlocks, notionBlocks, threadBlocks } from './order-cloth.ts'
import {
  choiceTables,
  failingChecks,
  fitTable,
  measureTable,
  pieceDrawings,
  pieceTable,
} from './order-garment.ts'
import { stepBlocks } from './order-steps.ts'
import type { PaperDocument } from './page.ts'
import {
  type GarmentSheet,
  garmentFoot,
  garmentHead,
  listed,
  readerOf,
  refuseUnprintable,
  type Teller,
  tellerOf,
} from './sheet.ts'

/**
 * All the maker needs on the table for one garment: measures, choices, pieces, fit, cloth, thread, and the
 * making step by step with boxes to tick.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function workOrder(sheet: GarmentSheet): PaperDocument {
  const { snapshot, line } = sheet
  refuseUnprintable(snapshot)
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const { draft } = line.estimate
  const failing = failingChecks(draft, reader)
  const { scale, block: drawings } = pieceDrawings(draft, reader)
  const blocks: Block[] = [
    ...garmentHead(tell, tell('paper.order.title'), sheet),
    ...(failing === undefined ? [] : [failing]),
    ...section(
      Object.keys(line.body.measures).length > 0,
      tell('paper.order.measures', { day: { date: line.measurementSet.day } }),
      measureTable(line, reader),
    ),
    ...(line.measurementSet.told ?? []).map((words): Block => ({ kind: 'paragraph', words, before: 0.6 })),
    ...choiceTables(sheet, reader),
    ...flatBlocks([line], reader),
    heading(tell('paper.order.pieces')),
    pieceTable(draft, reader),
    note(tell('paper.order.drawn', { scale: `1 : ${Math.round(1 / scale)}`, unit: reader.unit })),
    drawings,
    ...section(draft.fit.length > 0, tell('paper.order.fit'), fitTable(draft, reader)),
    ...clothBlocks(sheet, reader),
    ...threadBlocks(line, reader),
    ...notionBlocks(line, reader),
    { kind: 'space', height: 3 },
    cautions(
      draft.cautions.map((caution) => say(caution, reader)),
      tell,
    ),
    heading(tell('paper.order.making')),
    note(
      tell('paper.order.total', {
        total: { minutes: line.estimate.sewing.total.mean },
        late: { minutes: line.estimate.sewing.total.p80 },
      }),
    ),
    ...stepBlocks(sheet),
  ]
  const foot = tell('paper.order.foot', {
    number: sheet.commissionNumber,
    title: line.title,
    wearer: line.wearer.name,
    day: { date: sheet.day },
  })
  return layPages(blocks, snapshot.letterhead.paper, garmentFoot(tell, foot, sheet))
}

const heading = (words: string): Block => ({ kind: 'heading', level: 2, words })

/** A headed table, if there is anything to put in it. */
const section = (filled: boolean, title: string, block: Block): Block[] =>
  filled ? [heading(title), block] : []

const note = (words: string): Block => ({ kind: 'paragraph', words, look: 'note', keepWithNext: true })

/** The garment's own cautions, those of every workroom, and last that local rules decide. */
function cautions(own: readonly string[], tell: Teller): Block {
  const usual = [tell('draft.caution.needles'), tell('draft.caution.iron')]
  const panel: Block = {
    kind: 'panel',
    bar: 'madder',
    blocks: [
      { kind: 'paragraph', words: tell('caution.title'), look: 'care', before: 0, keepWithNext: true },
      listed([...new Set([...own, ...usual]), tell('caution.localRules')]),
    ],
  }
  return { kind: 'together', blocks: [panel] }
}
