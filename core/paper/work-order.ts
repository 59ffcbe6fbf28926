import { fibreWords } from '../lay/fibres.ts'
import { saidOfCloths } from '../lay/flame.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { refusingAt } from '../words/refusal.ts'
import { say } from '../words/say.ts'
import { isMachineStitch } from '../words/stitches.ts'
import type { Block } from './block.ts'
import { flatBlocks } from './flat.ts'
import { layPages } from './flow.ts'
import { plainText, runsOf } from './fonts.ts'
import { clothBlocks, notionBlocks, threadBlocks } from './order-cloth.ts'
import {
  choiceTables,
  failingChecks,
  fitBlocks,
  measureBlocks,
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
 * All the maker needs on the table for one garment: what is to be minded, cloth and thread, the making step by step with
 * boxes to tick, and behind it what it was drafted from: pieces, choices, fit and measures.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function workOrder(sheet: GarmentSheet): PaperDocument {
  const { snapshot, line } = sheet
  refuseUnprintable(snapshot)
  for (const text of Object.values(sheet.noted ?? {}))
    refusingAt('note', () => runsOf(plainText(text), 'serif'))
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const { draft } = line.estimate
  const failing = failingChecks(draft, reader)
  const { scale, block: drawings } = pieceDrawings(draft, reader)
  const blocks: Block[] = [
    ...garmentHead(tell, tell('paper.order.title'), sheet),
    ...remarks(sheet, tell),
    ...(failing === undefined ? [] : [failing]),
    ...clothBlocks(sheet, reader),
    ...threadBlocks(line, reader),
    ...notionBlocks(line, reader),
    { kind: 'space', height: 3 },
    cautions(
      saidOfCloths(draft.cautions, fibreWords(line)).map((caution) => say(caution, reader)),
      tell,
    ),
    heading(tell('paper.order.making')),
    note(hours(line.estimate, tell)),
    ...reading(line.estimate, tell),
    ...stepBlocks(sheet),
    heading(tell('paper.order.pieces')),
    pieceTable(draft, reader),
    note(tell('paper.order.drawn', { scale: `1 : ${Math.round(1 / scale)}`, unit: reader.unit })),
    drawings,
    ...flatBlocks([line], reader),
    ...choiceTables(sheet, reader),
    ...section(draft.fit.length > 0, tell('paper.order.fit'), ...fitBlocks(draft, reader)),
    ...section(
      Object.keys(line.body.measures).length > 0,
      tell('paper.order.measures', { day: { date: line.measurementSet.day } }),
      ...measureBlocks(line, reader),
    ),
  ]
  const foot = tell('paper.order.foot', {
    number: sheet.commissionNumber,
    title: line.title,
    wearer: line.wearer.name,
    day: { date: sheet.day },
  })
  return layPages(blocks, snapshot.letterhead.paper, garmentFoot(tell, foot, sheet))
}

/**
 * What was noted of the wearer and of the order, and said when she was measured, before anything is cut. It warns of
 * nothing by itself, and so does not look like a caution.
 */
function remarks({ noted, line }: GarmentSheet, tell: Teller): Block[] {
  const { wearer = '', order = '' } = noted ?? {}
  const said = [
    ...(wearer === '' ? [] : [tell('paper.order.noted', { wearer: line.wearer.name, text: wearer })]),
    ...(order === '' ? [] : [tell('paper.order.notedOrder', { text: order })]),
    ...(line.measurementSet.told ?? []).map((text) => tell('paper.order.told', { text })),
  ]
  if (said.length === 0) return []
  return [
    {
      ...{ kind: 'panel', bar: 'woad' },
      blocks: said.map(
        (words, i): Block => ({ kind: 'paragraph', words, look: 'cellStrong', before: i === 0 ? 0 : 1 }),
      ),
    },
  ]
}

/** How the figures under the steps are read, those of them that there are. */
function reading({ draft, sewing }: Estimate, tell: Teller): Block[] {
  const words = [
    ...(draft.seams.length + draft.hems.length > 0 ? [tell('paper.order.allowance')] : []),
    ...(draft.seams.some(({ finish }) => finish === 'felled') ? [tell('paper.order.felled')] : []),
    ...(sewing.rows.some(({ stitch }) => isMachineStitch(stitch)) ? [tell('paper.order.numbered')] : []),
  ]
  return words.length === 0 ? [] : [note(words.join(' '))]
}

/** The hours of the making, and how they grow to those of the quote. */
function hours({ sewing, price }: Estimate, tell: Teller): string {
  const { mean, p80 } = sewing.total
  const total = tell('paper.order.total', { total: { minutes: mean }, late: { minutes: p80 } })
  const all = price.earning?.hours.mean ?? mean
  const besides =
    all - mean < 1
      ? ''
      : ` ${tell('paper.order.besides', { besides: { minutes: all - mean }, all: { minutes: all } })}`
  return `${total}${besides}`
}

const heading = (words: string): Block => ({ kind: 'heading', level: 2, words })

/** Blocks with their heading, if there is anything to put in them. */
const section = (filled: boolean, title: string, ...blocks: Block[]): Block[] =>
  filled ? [heading(title), ...blocks] : []

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
