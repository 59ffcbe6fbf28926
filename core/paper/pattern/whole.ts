import type { Drawing } from '../../draw/drawing.ts'
import { drawFullSize, type FullSize } from '../../draw/full-size.ts'
import { pointAt, segmentLength } from '../../geometry/segment.ts'
import type { Point } from '../../geometry/types.ts'
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
 * @param edge free space round them all, mm
 */
export function wholePattern(
  parts: readonly FullSize[],
  reader: Reader,
  { most = ROLL, edge = APART } = {},
): WholePattern {
  const drawn = parts
    .map((part) => ({ part, drawing: drawFullSize(part, reader) }))
    .sort((a, b) => b.drawing.box.height - a.drawing.box.height)
  const placed: PlacedPart[] = []
  let [x, y, row, width] = [edge, edge, 0, 0]
  for (const one of drawn) {
    const { box } = one.drawing
    if (x > edge && x + box.width + edge > most) [x, y, row] = [edge, y + row + APART, 0]
    placed.push({ ...one, x, y })
    width = Math.max(width, x + box.width + edge)
    x += box.width + APART
    row = Math.max(row, box.height)
  }
  return { width, height: y + row + edge, parts: placed }
}

/** Between the points that stand for a line when one asks where there is ink, mm. */
const STEP = 3

/** Where in the whole something of a part is drawn or written, as points near enough for any sheet. */
export function inkOf({ drawing: { box, items }, x, y }: PlacedPart): Point[] {
  const points = items.flatMap((item): Point[] => {
    if (item.kind === 'lettering') return [item.at]
    return item.paths.flat().flatMap((s) => {
      const steps = Math.max(1, Math.ceil(segmentLength(s) / STEP))
      return Array.from({ length: steps + 1 }, (_, i) => pointAt(s, i / steps))
    })
  })
  return points
    .map((p) => ({ x: p.x - box.x, y: box.y + box.height - p.y }))
    .filter((p) => p.x >= 0 && p.x <= box.width && p.y >= 0 && p.y <= box.height)
    .map((p) => ({ x: x + p.x, y: y + p.y }))
}
