import { arcOnChord, segmentLength } from '../../geometry/segment.ts'
import type { Arc, Point } from '../../geometry/types.ts'

/** The arc over the chord from `right` to `left` that is `length` mm long: the cap of a sleeve for its armhole. */
export function capOfLength(right: Point, left: Point, length: number): Arc {
  const chord = Math.hypot(left.x - right.x, left.y - right.y)
  let [low, high] = [1e-6, chord * 2]
  for (let i = 0; i < 80; i++) {
    const depth = (low + high) / 2
    if (segmentLength(arcOnChord(right, left, depth)) < length) low = depth
    else high = depth
  }
  return arcOnChord(right, left, (low + high) / 2)
}
