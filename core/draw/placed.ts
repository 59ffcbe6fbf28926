import { directionAt, mirrorSegment, moveSegment } from '../geometry/segment.ts'
import type { Path, Point, Segment } from '../geometry/types.ts'

/** Where a copy lies: flipped (x → −x), then turned anticlockwise by `angle` degrees, then moved. */
export type Placed = {
  x: number
  y: number
  angle: 0 | 45 | 90 | 135 | 180 | 225 | 270 | 315
  flipped: boolean
}

/** A path as it lies on the cloth, in the lay's own coordinates. */
export function placePath(path: Path, { x, y, angle, flipped }: Placed): Path {
  const [quarters, bias] = [Math.floor(angle / 90), angle % 90 !== 0]
  return path.map((s) => {
    const hand = flipped ? mirrorSegment(s) : s
    return moveSegment(quarterTurns(bias ? mapped(hand, eighthTurn) : hand, quarters), { x, y })
  })
}

const eighthTurn = ({ x, y }: Point): Point => ({
  x: (x - y) * Math.SQRT1_2,
  y: (x + y) * Math.SQRT1_2,
})

/** Exact quarter turns: no sine ever blurs a straight edge. */
function quarterTurns(s: Segment, turns: number): Segment {
  return turns === 0
    ? s
    : quarterTurns(
        mapped(s, (p) => ({ x: -p.y, y: p.x })),
        turns - 1,
      )
}

/**
 * A lay as it is drawn: the cut end at the left, the near selvedge below. Changing the axes over shows the
 * cloth from its other side, so arcs turn the other way.
 */
export const onTheTable = (path: Path): Path =>
  path.map((s) => {
    const swapped = mapped(s, ({ x, y }) => ({ x: y, y: x }))
    return swapped.kind === 'arc' ? { ...swapped, sweep: -swapped.sweep } : swapped
  })

function mapped(s: Segment, map: (p: Point) => Point): Segment {
  return s.kind === 'line'
    ? { kind: 'line', from: map(s.from), to: map(s.to) }
    : { kind: 'arc', from: map(s.from), to: map(s.to), centre: map(s.centre), sweep: s.sweep }
}

/** Sine of the turn below which two segments run on into each other without a corner. */
const STRAIGHT_ON = 1e-4

/** The points of a closed path at which one marks: where its direction breaks, or a line becomes an arc. */
export function corners(path: Path): Point[] {
  return path.flatMap((s, i) => {
    const before = path[(i + path.length - 1) % path.length]!
    const [a, b] = [directionAt(before, 1), directionAt(s, 0)]
    const runsOn = Math.abs(a.x * b.y - a.y * b.x) < STRAIGHT_ON && a.x * b.x + a.y * b.y > 0
    return runsOn && before.kind === 'line' && s.kind === 'line' ? [] : [s.from]
  })
}
