import type { DrawItem, Drawing } from '../../draw/drawing.ts'
import { polygon } from '../../geometry/path.ts'
import type { Path } from '../../geometry/types.ts'
import type { Mark } from '../page.ts'
import type { Teller } from '../sheet.ts'
import { placedWords } from './words.ts'

/** The sides of the two squares by which a print is checked, mm: ten centimetres, and four inches. */
export const SQUARES = { metric: 100, inch: 101.6 } as const

/** Room between them and beside them, and above them for the name of the sheet, mm. */
const AROUND = 12
const ABOVE = 17

/** Both squares beside each other, each with its size under it. */
export function drawSquares(tell: Teller): Drawing {
  const items = (['metric', 'inch'] as const).flatMap((id, i): DrawItem[] => {
    const side = SQUARES[id]
    const x = AROUND + i * (SQUARES.metric + AROUND)
    return [
      { kind: 'strokes', paths: [square(x, AROUND + SQUARES.inch - side, side)], line: 'dimension' },
      {
        ...{
          kind: 'lettering',
          text: tell(`paper.pattern.square.${id}`),
          anchor: 'start',
          angle: 0,
          size: 'note',
        },
        at: { x: x + 2, y: AROUND + SQUARES.inch - side + 4 },
      },
    ]
  })
  const width = 3 * AROUND + SQUARES.metric + SQUARES.inch
  const box = { x: 0, y: 0, width, height: 2 * AROUND + SQUARES.inch }
  return { box, scale: 1, items, label: tell('paper.pattern.squares') }
}

const square = (x: number, y: number, side: number): Path =>
  polygon([
    { x, y },
    { x: x + side, y },
    { x: x + side, y: y + side },
    { x, y: y + side },
  ])

/**
 * Both squares on one sheet, beside each other or one above the other: a sheet that was printed smaller shows it in
 * either unit.
 */
export function checkSquares(tell: Teller, sheet: { width: number; height: number }, edge: number): Mark[] {
  const across = sheet.width > sheet.height
  const second = SQUARES.metric + AROUND
  return (['metric', 'inch'] as const).flatMap((id, i): Mark[] => {
    const side = SQUARES[id]
    const x = edge + AROUND + (across ? i * second : 0)
    const y = edge + ABOVE + (across ? 0 : i * second)
    const corners = [
      { x, y },
      { x, y: y + side },
      { x: x + side, y: y + side },
      { x: x + side, y },
    ]
    return [
      { kind: 'path', paths: [polygon(corners)], stroke: { dye: 'woad', weight: 0.12, dash: [] }, tag: null },
      ...placedWords(tell(`paper.pattern.square.${id}`), 'note', { x: x + 2, y: y + side - 4 }),
    ]
  })
}
