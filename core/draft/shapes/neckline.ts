import { pathLength } from '../../geometry/path.ts'
import { arcOnChord, line, reverseSegment } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'

/** Half of a neck opening: from the right neck point to the left one, dipping by `depth`. */
export type Dip = { form: 'arc' | 'square'; depth: number }

/** An arc deeper than this part of its width would bulge out under the shoulder: a U stands in its place. */
const DEEPEST_ARC = 0.6

/** The curve or corner of a neck opening of `width` about the middle line, from right to left. */
export function neckEdge(width: number, { form, depth }: Dip, y = 0): Path {
  const right: Point = { x: width / 2, y }
  const left: Point = { x: -width / 2, y }
  if (form === 'arc' && depth <= DEEPEST_ARC * width) return [reverseSegment(arcOnChord(left, right, depth))]
  if (form === 'arc') {
    const turn = y - depth + width / 2
    const [low, lowLeft] = [
      { x: right.x, y: turn },
      { x: left.x, y: turn },
    ]
    return [line(right, low), reverseSegment(arcOnChord(lowLeft, low, width / 2)), line(lowLeft, left)]
  }
  const low = y - depth
  const corners = [right, { x: right.x, y: low }, { x: left.x, y: low }, left]
  return corners.slice(1).map((to, i) => line(corners[i]!, to))
}

/** Length round a neck opening of a front and a back dip, mm. */
export const neckPerimeter = (width: number, front: Dip, back: Dip): number =>
  pathLength(neckEdge(width, front)) + pathLength(neckEdge(width, back))

/** The narrowest width between `least` and `most` whose opening is `round` long, else the nearer end of them. mm. */
export function neckWidthFor(round: number, least: number, most: number, front: Dip, back: Dip): number {
  let [low, high] = [least, Math.max(least, most)]
  if (neckPerimeter(low, front, back) >= round) return low
  if (neckPerimeter(high, front, back) < round) return high
  while (high - low > 0.01) {
    const middle = (low + high) / 2
    if (neckPerimeter(middle, front, back) < round) low = middle
    else high = middle
  }
  return high
}
