import { boxOf, pathBox } from '../geometry/segment.ts'
import type { Point, Rectangle } from '../geometry/types.ts'
import type { DrawItem, Lettering } from './drawing.ts'
import { CAPITAL, guessedWidth, LETTERS } from './ink.ts'

/**
 * The four corners of the space a word takes at a scale, world mm, by its guessed width; anticlockwise.
 * `air` is free space at both ends, mm of the sheet.
 */
export function lettersCorners(
  { at, text, anchor, angle, size }: Lettering,
  scale: number,
  air = 0,
): Point[] {
  const width = guessedWidth(text, size) / scale
  const half = (LETTERS[size].em * (CAPITAL / 2 + 0.22)) / scale
  const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)]
  return [
    { x: start - air / scale, y: -half },
    { x: start + width + air / scale, y: -half },
    { x: start + width + air / scale, y: half },
    { x: start - air / scale, y: half },
  ].map(({ x, y }) => ({ x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos }))
}

/** Whether two axis-parallel boxes share more than a touch. */
export const boxesCross = (a: Rectangle, b: Rectangle): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

/** The box around everything drawn at a scale, letters included, world mm; `clip` stands for clipped items. */
export function around(items: readonly DrawItem[], scale: number, clip?: Rectangle): Rectangle {
  const boxes = items.flatMap((item): Rectangle[] => {
    if (item.kind === 'lettering') return [boxOf(lettersCorners(item, scale))]
    return item.clipped === true && clip !== undefined ? [clip] : item.paths.map(pathBox)
  })
  return boxOf(
    boxes.flatMap(({ x, y, width, height }) => [
      { x, y },
      { x: x + width, y: y + height },
    ]),
  )
}
