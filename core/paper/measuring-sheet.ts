import { drawTape } from '../draw/tape.ts'
import { MEASURE_GROUPS, MEASURES, type MeasureId } from '../measure/vocabulary.ts'
import type { Letterhead } from '../quote/types.ts'
import type { Day } from '../words/dates.ts'
import { readerIn } from '../words/readers.ts'
import { refusingAt } from '../words/refusal.ts'
import type { Block } from './block.ts'
import { layPages } from './flow.ts'
import { plainText, runsOf } from './fonts.ts'
import { capital } from './names.ts'
import type { PaperDocument } from './page.ts'
import { footOf, houseHead, listed, tellerOf } from './sheet.ts'

/** A sheet on which a client, or whoever helps her, writes her measures. */
export type MeasuringSheet = {
  letterhead: Letterhead
  /** Whose measures; empty to be filled in. */
  name: string
  day: Day
  measures: readonly MeasureId[]
  /** The sizes where they are known, as they are to be read, with what is to be said of them. */
  sizes?: Partial<Record<MeasureId, string>>
}

/** The figures are drawn 4 cm tall, six beside each other. */
const SCALE = 0.0235

/**
 * A blank measuring sheet: for each part of the body figures that show where the tape goes, and a line for each
 * measure with how it is taken and room to write.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function measuringSheet({ letterhead, name, day, measures, sizes }: MeasuringSheet): PaperDocument {
  refusingAt('name', () => runsOf(plainText(name), 'serif'))
  for (const [id, size] of Object.entries(sizes ?? {})) refusingAt(id, () => runsOf(plainText(size), 'serif'))
  const reader = readerIn(letterhead)
  const tell = tellerOf(reader)
  const numbers = new Map(measures.map((id, i) => [id, i + 1]))
  const groups = MEASURE_GROUPS.flatMap((group): Block[] => {
    const here = measures.filter((id) => MEASURES[id].group === group)
    if (here.length === 0) return []
    return [
      { kind: 'heading', level: 2, words: tell(`paper.measuring.group.${group}`) },
      {
        kind: 'figures',
        drawings: here.map((id) => drawTape(id, tell(`measure.how.${id}`), SCALE, String(numbers.get(id)))),
      },
      {
        kind: 'table',
        columns: [
          { heading: tell('paper.measuring.column.number'), share: 9, align: 'right' },
          { heading: tell('paper.measuring.column.measure'), share: 42, look: 'cellStrong', head: true },
          { heading: tell('paper.measuring.column.how'), share: 92 },
          { heading: tell('paper.measuring.column.size', { unit: letterhead.unit }), share: 30 },
        ],
        rows: here.map((id) => ({
          cells: [
            String(numbers.get(id)),
            capital(tell(`measure.name.${id}`)),
            tell(`measure.how.${id}`),
            sizes?.[id] ?? { write: true as const },
          ],
        })),
      },
    ]
  })
  const blocks: Block[] = [
    ...houseHead(letterhead),
    { kind: 'space', height: 4 },
    { kind: 'heading', level: 1, words: tell('paper.measuring.title') },
    {
      kind: 'paragraph',
      words: name === '' ? tell('paper.measuring.whose') : name,
      look: 'total',
      before: 1,
    },
    listed([
      tell('paper.measuring.wear'),
      tell('paper.measuring.stand'),
      tell('paper.measuring.tape'),
      tell('paper.measuring.help'),
      tell('paper.measuring.write', { unit: letterhead.unit }),
    ]),
    {
      kind: 'write',
      before: 2,
      labels: [
        { words: tell('paper.measuring.name'), share: 3 },
        { words: tell('paper.measuring.day'), share: 2 },
        { words: tell('paper.measuring.over'), share: 3 },
      ],
    },
    ...groups,
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, words: tell('paper.measuring.more') },
        { kind: 'paragraph', words: tell('paper.measuring.moreHow') },
        { kind: 'write', before: 2, labels: [{ words: '', share: 1 }] },
        { kind: 'write', before: 1, labels: [{ words: '', share: 1 }] },
      ],
    },
  ]
  const foot = tell('paper.measuring.foot', { house: letterhead.name, day: { date: day } })
  return layPages(blocks, letterhead.paper, footOf(tell, foot))
}
