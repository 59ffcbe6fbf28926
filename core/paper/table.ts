import { type Column, type Place, rule, shiftedRight, type Table } from './cells.ts'
import { breakLines } from './lines.ts'
import type { Mark, Tag } from './page.ts'
import { rowStrips } from './row.ts'
import type { Laid, Strip, Tagger } from './strip.ts'
import { CELL, LOOKS } from './style.ts'
import { lineHeight, lineMarks } from './words.ts'

/** A table as strips: its headings, which come again on every page, and one strip for each row. */
export function layTable(tagger: Tagger, table: Table, width: number): Laid {
  const places = columnPlaces(table.columns, width, (table.pad ?? CELL).gap)
  const head = table.headings === false ? undefined : headStrip(tagger, table, places)
  const body = table.rows.map((row, i) => rowStrips(tagger, table, row, places, i === 0, head?.strip))
  const strips = [...(head === undefined ? [] : [head.strip]), ...body.flatMap((row) => row.strips)]
  if (strips[0] !== undefined) strips[0].before = table.before
  const last = strips.at(-1)
  if (last !== undefined && table.headings !== false) last.marks.push(rule('row', 0, width, last.height))
  const rows = [...(head === undefined ? [] : [head.tag]), ...body.map((row) => row.tag)]
  return { strips, tags: [tagger.tag('Table', rows)] }
}

/** Where each column's words begin and how wide they may be; the gap lies between columns. */
function columnPlaces(columns: readonly Column[], width: number, gap: number): Place[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0)
  const free = width - gap * (columns.length - 1)
  let x = 0
  return columns.map(({ share }) => {
    const place = { x, width: (free * share) / shares }
    x += place.width + gap
    return place
  })
}

function headStrip(tagger: Tagger, table: Table, places: readonly Place[]): { strip: Strip; tag: Tag } {
  const look = LOOKS.label
  const lines = table.columns.map(({ heading }, i) =>
    heading === '' ? [] : breakLines(heading, look, places[i]!.width),
  )
  const most = Math.max(...lines.map((l) => l.length))
  const tags = table.columns.map(() => tagger.tag('TH', [], { scope: 'Column' }))
  const marks: Mark[] = table.columns.flatMap(({ align = 'left' }, i) =>
    lines[i]!.flatMap((set, n) => {
      const top = (most - lines[i]!.length + n) * lineHeight(look)
      return shiftedRight(lineMarks(set, look, places[i]!.width, align, top, tags[i]!.id), places[i]!.x)
    }),
  )
  const height = most * lineHeight(look) + 1
  const end = places.at(-1)!
  marks.push(rule('head', 0, end.x + end.width, height))
  return { strip: { before: 0, height, keep: true, marks }, tag: tagger.tag('TR', tags) }
}
