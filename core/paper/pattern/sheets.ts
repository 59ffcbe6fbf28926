import { polygon } from '../../geometry/path.ts'
import { line } from '../../geometry/segment.ts'
import type { Path, Rectangle } from '../../geometry/types.ts'
import { drawingMarks } from '../figure.ts'
import type { Mark, Page } from '../page.ts'
import type { Teller } from '../sheet.ts'
import { shifted } from '../strip.ts'
import { checkSquares } from './checks.ts'
import { cross, EDGE, OVERLAP, type Tile, type Tiling } from './tiles.ts'
import type { PlacedPart, WholePattern } from './whole.ts'
import { placedWords } from './words.ts'

/** What stands on every sheet besides its part of the pattern. */
export type Said = { tell: Teller; about: string; page: (page: number) => string }

/** One sheet of a tiled pattern, its part of the whole cut off at the line to trim by. */
export function tilePage(
  whole: WholePattern,
  { sheet, tiles }: Tiling,
  tile: Tile,
  number: number,
  said: Said,
  tag: number,
): Page {
  const frame = { x: EDGE, y: EDGE, width: tile.window.width, height: tile.window.height }
  const here = whole.parts.filter((part) => cross(boxOf(part), tile.window))
  const beside = (column: number, row: number) =>
    tiles.find((one) => one.column === tile.column + column && one.row === tile.row + row)
  const below = sheet.height - EDGE - OVERLAP - 6
  return {
    size: sheet,
    marks: [
      ...checkSquares(said.tell, sheet, EDGE),
      ...here.flatMap((part) =>
        partMarks(part, frame, { x: EDGE - tile.window.x, y: EDGE - tile.window.y }, tag),
      ),
      ...frameMarks(frame, beside(1, 0) !== undefined, beside(0, 1) !== undefined),
      ...placedWords(tile.name, 'title', { x: EDGE + 4, y: EDGE + 2 }),
      ...placedWords(`${said.about} · ${said.page(number)}`, 'foot', { x: EDGE + 3, y: below }),
    ],
  }
}

/** All of the pattern on one sheet of its own size, with room round it. */
export function wholePage(whole: WholePattern, said: Said, tag: number): Page {
  const size = { width: Math.max(whole.width, 250) + 2 * EDGE, height: whole.height + 140 + 2 * EDGE }
  const frame = { x: 0, y: 0, ...size }
  return {
    size,
    marks: [
      ...whole.parts.flatMap((part) => partMarks(part, frame, { x: EDGE, y: EDGE }, tag)),
      ...shifted(checkSquares(said.tell, { width: 2, height: 1 }, EDGE), 0, whole.height),
      ...placedWords(said.about, 'foot', { x: EDGE, y: EDGE + 2 }),
    ],
  }
}

/** The room that a part takes on the whole pattern, mm. */
export const boxOf = ({ x, y, drawing: { box } }: PlacedPart): Rectangle => ({
  ...{ x, y, width: box.width, height: box.height },
})

/** The marks of a part that lie within a frame of the sheet. */
function partMarks(part: PlacedPart, frame: Rectangle, by: { x: number; y: number }, tag: number): Mark[] {
  const marks = shifted(drawingMarks(part.drawing, tag), part.x + by.x, part.y + by.y)
  return marks.map((mark) => ({ ...mark, clip: mark.clip === undefined ? frame : common(mark.clip, frame) }))
}

function common(a: Rectangle, b: Rectangle): Rectangle {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)]
  return {
    ...{ x, y },
    width: Math.max(0, Math.min(a.x + a.width, b.x + b.width) - x),
    height: Math.max(0, Math.min(a.y + a.height, b.y + b.height) - y),
  }
}

/** The line to trim by, and dashed ones to which the sheets at the right and below are laid. */
function frameMarks({ x, y, width, height }: Rectangle, right: boolean, below: boolean): Mark[] {
  const [end, foot] = [x + width, y + height]
  const trim = polygon([
    { x, y },
    { x, y: foot },
    { x: end, y: foot },
    { x: end, y },
  ])
  const laidTo: Path[] = [
    ...(right ? [[line({ x: end - OVERLAP, y }, { x: end - OVERLAP, y: foot })]] : []),
    ...(below ? [[line({ x, y: foot - OVERLAP }, { x: end, y: foot - OVERLAP })]] : []),
  ]
  return [
    { kind: 'path', paths: [trim], stroke: { dye: 'walnut', weight: 0.15, dash: [] }, tag: null },
    ...(laidTo.length === 0
      ? []
      : [
          {
            ...{ kind: 'path' as const, paths: laidTo, tag: null },
            stroke: { dye: 'walnut' as const, weight: 0.15, dash: [2, 2] },
          },
        ]),
  ]
}
