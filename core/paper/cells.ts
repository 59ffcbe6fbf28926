import { line } from '../geometry/segment.ts'
import type { Words } from './lines.ts'
import type { Mark, PathMark } from './page.ts'
import { type LookId, RULES } from './style.ts'
import type { Align } from './words.ts'

/**
 * `share` is the column's part of the table's width; `look` is how its cells are set; the cells of a
 * `head` column say what their rows are about.
 */
export type Column = { heading: string; share: number; align?: Align; look?: LookId; head?: boolean }

/** What stands in a cell: words, several paragraphs, a box to tick (said in words too), or room for the hand. */
export type Cell =
  | string
  | { words: Words; look?: LookId }
  | { paragraphs: readonly { words: Words; look?: LookId }[] }
  | { tick: boolean; said: string }
  | { write: true }

/**
 * `strong` rows are set bold. `over` is the rule above a row: as usual none over the first and a light one
 * over the others; `none` for a row that belongs to the one before; `sum` over a sum.
 */
export type Row = {
  cells: readonly Cell[]
  /** How many columns each cell takes; one each when not given. */
  spans?: readonly number[]
  strong?: boolean
  over?: 'none' | 'sum'
  keep?: boolean
}

/** A table before it has any place on a page; `before` is the space above it, mm. */
export type Table = {
  columns: readonly Column[]
  rows: readonly Row[]
  /** Tables of label and value, and sums, go without headings and rules. */
  headings?: boolean
  look?: LookId
  /** Space above and below the words of a row, and between columns, mm; a sheet's usual space if not given. */
  pad?: { above: number; below: number; gap: number }
  before: number
}

/** Where a column's words begin and how wide they may be, mm. */
export type Place = { x: number; width: number }

/** The place of each cell of a row, with the column it begins in. */
export type Slot = Place & { column: Column }

/** Where the cells of a row lie, mm, those among them that take several columns. @param places one for each column */
export function slotsOf(row: Row, columns: readonly Column[], places: readonly Place[]): Slot[] {
  let next = 0
  return row.cells.map((_, i) => {
    const first = next
    next += row.spans?.[i] ?? 1
    const [start, end] = [places[first]!, places[next - 1]!]
    return { x: start.x, width: end.x + end.width - start.x, column: columns[first]! }
  })
}

/** A level rule across `from`–`to` at height `y`. Rules are drawn for the eye only. */
export const rule = (kind: keyof typeof RULES, from: number, to: number, y: number): PathMark => ({
  kind: 'path',
  paths: [[line({ x: from, y }, { x: to, y })]],
  stroke: RULES[kind],
  tag: null,
})

/** Words moved into their column. */
export const shiftedRight = (marks: readonly Mark[], dx: number): Mark[] =>
  marks.map((mark) => (mark.kind === 'text' ? { ...mark, x: mark.x + dx } : mark))
