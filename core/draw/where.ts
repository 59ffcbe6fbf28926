import { line } from '../geometry/segment.ts'
import type { Path } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { type Reader, say } from '../words/say.ts'
import type { DrawItem, Drawing, Lettering } from './drawing.ts'
import { around } from './letters.ts'
import { onTheTable } from './placed.ts'

/** A cloth with the cut lines that lie on it, lay mm: x from the near selvedge, y from the cut end. */
export type Spread = {
  usableWidth: number
  length: number
  copies: readonly { number: number; cut: Path }[]
}

/** The space that the cloth is fitted to, mm of the sheet. */
const SPACE = { length: 52, width: 34 }

/**
 * A small picture of where one copy lies among the others, the cut end at the left and the near selvedge below; for the
 * eye alone, the figures are told beside it. World mm as in `drawLay`.
 *
 * @param number the copy's own, in the order of cutting
 */
export function drawWhere({ usableWidth, length, copies }: Spread, number: number, reader: Reader): Drawing {
  const scale = Math.min(SPACE.length / length, SPACE.width / usableWidth)
  const [here, others] = [true, false].map((wanted) =>
    copies.filter((copy) => (copy.number === number) === wanted).map(({ cut }) => onTheTable(cut)),
  ) as [Path[], Path[]]
  const ends = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: usableWidth },
    { x: 0, y: usableWidth },
  ] as const
  const note = (text: string, at: Lettering['at'], angle: number): Lettering => ({
    ...{ kind: 'lettering', at, text, angle },
    ...{ anchor: 'middle', size: 'note' },
  })
  const items: DrawItem[] = [
    {
      kind: 'strokes',
      paths: [ends.map((end, i) => line(end, ends[(i + 1) % 4]!))],
      line: 'sew',
      fill: 'cloth',
    },
    { kind: 'strokes', paths: others, line: 'sew' },
    { kind: 'strokes', paths: here, line: 'cut', fill: 'measureHead' },
    note(say(phrase('draw.lay.nearSelvedge'), reader), { x: length / 2, y: -2.6 / scale }, 0),
    note(say(phrase('draw.lay.cutEnd'), reader), { x: -2.6 / scale, y: usableWidth / 2 }, 90),
  ]
  const label = say(phrase('draw.where.label', { number }), reader)
  return { box: around(items, scale), scale, items, label }
}
