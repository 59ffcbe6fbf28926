import type { Drawing } from '../../draw/drawing.ts'
import { drawFullSize, type FullSize } from '../../draw/full-size.ts'
import type { Reader } from '../../words/say.ts'

/** A part in its place: `x`, `y` is the top left corner of its box, mm from that of the whole, y downward. */
export type PlacedPart = { drawing: Drawing; part: FullSize; x: number; y: number }
/** All parts of a pattern side by side at their true size, mm. */
export type WholePattern = { width: number; height: number; parts: PlacedPart[] }

/** Free space between parts and round them, mm. */
const APART = 12
/** The width of a roll of plotting paper of 36 in, less its edges, mm. */
export const ROLL = 890

/**
 * Lays parts in rows, the tallest first, every one with its grain upright.
 * @param most how wide the whole may be, mm; a part that is wider makes it wider
 */
export function wholePattern(parts: readonly FullSize[], reader: Reader, most = ROLL): WholePattern {
  const drawn = parts
    .map((part) => ({ part, drawing: drawFullSize(part, reader) }))
    .sort((a, b) => b.drawing.box.height - a.drawing.box.height)
  const placed: PlacedPart[] = []
  let [x, y, row, width] = [APART, APART, 0, 0]
  for (const one of drawn) {
    const { box } = one.drawing
    if (x > APART && x + box.width + APART > most) [x, y, row] = [APART, y + row + APART, 0]
    placed.push({ ...one, x, y })
    x += box.width + APART
    row = Math.max(row, box.height)
    width = Math.max(width, x)
  }
  return { width, height: y + row + APART, parts: placed }
}
