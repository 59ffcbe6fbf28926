import {
  type Cell,
  type Place,
  type Row,
  rule,
  type Slot,
  shiftedRight,
  slotsOf,
  type Table,
} from './cells.ts'
import { breakLines, type Line, type Words } from './lines.ts'
import type { Mark, Tag } from './page.ts'
import type { Strip, Tagger } from './strip.ts'
import { CELL, LOOKS, type LookId, TICK_BOX } from './style.ts'
import { tickBox } from './tick.ts'
import { baseline, lineHeight, lineMarks } from './words.ts'

/** One line of a cell, in its look and for the element it belongs to. */
type SetLine = { line: Line; look: LookId; tag: number }
type SetCell = { cell: Cell; slot: Slot; tag: Tag; lines: SetLine[] }

/** A row higher than this is broken over pages, mm. */
const TALLEST_ROW = 90

/** A row as one strip, or as several if it is very high. Cells stand on one base line. */
export function rowStrips(
  tagger: Tagger,
  table: Table,
  row: Row,
  places: readonly Place[],
  first: boolean,
  head: Strip | undefined,
): { strips: Strip[]; tag: Tag } {
  const slots = slotsOf(row, table.columns, places)
  const cells = row.cells.map((cell, i) => setCell(tagger, cell, slots[i]!, table, row))
  const most = Math.max(
    ...cells.map(({ lines }) => lines.reduce((sum, { look }) => sum + lineHeight(LOOKS[look]), 0)),
  )
  const limit = most > TALLEST_ROW ? TALLEST_ROW : Infinity
  const strips: Strip[] = []
  let left = cells
  do {
    const taken = left.map((cell) => ({ ...cell, lines: linesWithin(cell.lines, limit) }))
    const { marks, height } = wordMarks(taken, table)
    const own =
      strips.length === 0 ? [...overMarks(table, row, places, first), ...handMarks(cells, table)] : []
    const strip: Strip = { before: 0, height, keep: row.keep === true, marks: [...own, ...marks] }
    strips.push(head === undefined ? strip : { ...strip, head })
    left = left.map((cell, i) => ({ ...cell, lines: cell.lines.slice(taken[i]!.lines.length) }))
  } while (left.some(({ lines }) => lines.length > 0))
  return {
    strips,
    tag: tagger.tag(
      'TR',
      cells.map(({ tag }) => tag),
    ),
  }
}

function setCell(tagger: Tagger, cell: Cell, slot: Slot, table: Table, row: Row): SetCell {
  const { column, width } = slot
  const usual = row.strong === true ? 'cellStrong' : (column.look ?? table.look ?? 'cell')
  const set = (words: Words, look: LookId, tag: Tag): SetLine[] =>
    breakLines(words, LOOKS[look], width).map((line) => ({ line, look, tag: tag.id }))
  if (typeof cell === 'object' && 'paragraphs' in cell) {
    const paragraphs = cell.paragraphs.map(({ words, look = usual }) => {
      const tag = tagger.tag('P')
      return { tag, lines: set(words, look, tag) }
    })
    const tag = tagger.tag(
      'TD',
      paragraphs.map((p) => p.tag),
    )
    return { cell, slot, tag, lines: paragraphs.flatMap((p) => p.lines) }
  }
  const alt = typeof cell === 'object' && 'said' in cell ? { alt: cell.said } : {}
  const tag = column.head === true ? tagger.tag('TH', [], { scope: 'Row' }) : tagger.tag('TD', [], alt)
  if (typeof cell === 'string') return { cell, slot, tag, lines: cell === '' ? [] : set(cell, usual, tag) }
  return { cell, slot, tag, lines: 'words' in cell ? set(cell.words, cell.look ?? usual, tag) : [] }
}

function wordMarks(cells: readonly SetCell[], table: Table): { marks: Mark[]; height: number } {
  const pad = table.pad ?? CELL
  const lowest = Math.max(
    0,
    ...cells.map(({ lines: [line] }) => (line === undefined ? 0 : baseline(LOOKS[line.look]))),
  )
  const marks: Mark[] = []
  let height = cells.some(({ cell }) => byHand(cell)) ? pad.above + TICK_BOX + pad.below : 0
  for (const { lines, slot } of cells) {
    let top = pad.above + (lines[0] === undefined ? 0 : lowest - baseline(LOOKS[lines[0].look]))
    for (const { line, look, tag } of lines) {
      const placed = lineMarks(line, LOOKS[look], slot.width, slot.column.align ?? 'left', top, tag)
      marks.push(...shiftedRight(placed, slot.x))
      top += lineHeight(LOOKS[look])
    }
    height = Math.max(height, top + pad.below)
  }
  return { marks, height }
}

/** The rule above a row. */
function overMarks(table: Table, row: Row, places: readonly Place[], first: boolean): Mark[] {
  const end = places.at(-1)!.x + places.at(-1)!.width
  if (row.over === 'sum') return [rule('head', places[1]?.x ?? 0, end, 0)]
  return first || row.over === 'none' || table.headings === false ? [] : [rule('row', 0, end, 0)]
}

const byHand = (cell: Cell): boolean => typeof cell === 'object' && ('tick' in cell || 'write' in cell)

/** Boxes to tick, beside the row's first line, and lines to write on, under it. */
function handMarks(cells: readonly SetCell[], table: Table): Mark[] {
  const { above } = table.pad ?? CELL
  return cells.flatMap(({ cell, slot: { x, width }, tag }): Mark[] => {
    if (typeof cell !== 'object') return []
    if ('tick' in cell) return tickBox(x, above + 0.3, cell.tick, tag.id)
    return 'write' in cell ? [rule('write', x, x + width, above + TICK_BOX + 0.6)] : []
  })
}

/** As many lines as stand within a height, at least one. */
function linesWithin(lines: readonly SetLine[], height: number): SetLine[] {
  let used = 0
  const end = lines.findIndex(({ look }, i) => {
    used += lineHeight(LOOKS[look])
    return used > height && i > 0
  })
  return end === -1 ? [...lines] : lines.slice(0, end)
}
