import { along, direction, distance, subtract, turnLeft } from './point.ts'
import type { Arc, Line, Path, Point, Rectangle, Segment } from './types.ts'

/** The straight way between two points. */
export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to })

/** An arc about `centre` from `from`, through the signed angle `sweep` (radians, anticlockwise positive). */
export function arc(from: Point, centre: Point, sweep: number): Arc {
  const [cos, sin] = [Math.cos(sweep), Math.sin(sweep)]
  const { x, y } = subtract(from, centre)
  return {
    kind: 'arc',
    from,
    to: { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos },
    centre,
    sweep,
  }
}

/**
 * The arc on the chord `from`–`to` that stands `depth` to the right of the way from one to the other.
 * Radius (c²/4 + d²)/(2d) for a chord c: the intersecting chords theorem, Euclid III.35. A depth greater
 * than half the chord gives more than a half circle.
 */
export function arcOnChord(from: Point, to: Point, depth: number): Arc {
  const chord = distance(from, to)
  const radius = (chord * chord) / (8 * depth) + depth / 2
  const ahead = direction(from, to)
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const centre = along(middle, turnLeft(ahead), radius - depth)
  const half = 2 * Math.atan((2 * depth) / chord)
  return { kind: 'arc', from, to, centre, sweep: 2 * half }
}

/** Radius in mm, the same from any point of the arc. */
export const arcRadius = (a: Arc): number => distance(a.centre, a.from)

/** Length in mm, exact: chord of a line, radius × angle of an arc. */
export const segmentLength = (s: Segment): number =>
  s.kind === 'line' ? distance(s.from, s.to) : arcRadius(s) * Math.abs(s.sweep)

/** The point a part `t` (0–1) of the way along. */
export function pointAt(s: Segment, t: number): Point {
  if (s.kind === 'arc') return arc(s.from, s.centre, s.sweep * t).to
  return { x: s.from.x + (s.to.x - s.from.x) * t, y: s.from.y + (s.to.y - s.from.y) * t }
}

/** Unit direction of travel a part `t` of the way along. */
export function directionAt(s: Segment, t: number): Point {
  if (s.kind === 'line') return direction(s.from, s.to)
  const out = direction(s.centre, pointAt(s, t))
  const ahead = turnLeft(out)
  return s.sweep >= 0 ? ahead : { x: -ahead.x, y: -ahead.y }
}

/** The same segment walked from its end to its beginning. */
export const reverseSegment = (s: Segment): Segment =>
  s.kind === 'line' ? line(s.to, s.from) : { ...s, from: s.to, to: s.from, sweep: -s.sweep }

/** The segment moved by a vector in mm. */
export const moveSegment = (s: Segment, by: Point): Segment =>
  mapSegment(s, (p) => ({ x: p.x + by.x, y: p.y + by.y }))

/** The segment turned about (0, 0), radians anticlockwise. */
export function turnSegment(s: Segment, angle: number): Segment {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return mapSegment(s, ({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }))
}

/** The segment seen in a mirror on the y axis: x → −x. Turning sense is reversed with it. */
export function mirrorSegment(s: Segment): Segment {
  const mirrored = mapSegment(s, (p) => ({ x: -p.x, y: p.y }))
  return mirrored.kind === 'arc' ? { ...mirrored, sweep: -mirrored.sweep } : mirrored
}

function mapSegment(s: Segment, map: (p: Point) => Point): Segment {
  return s.kind === 'line'
    ? line(map(s.from), map(s.to))
    : { kind: 'arc', from: map(s.from), to: map(s.to), centre: map(s.centre), sweep: s.sweep }
}

/** The smallest rectangle around a segment: ends, and the arc's own extremes where it passes them. */
export function segmentBox(s: Segment): Rectangle {
  const points = [s.from, s.to, ...(s.kind === 'arc' ? arcExtremes(s) : [])]
  return boxOf(points)
}

function arcExtremes(a: Arc): Point[] {
  const radius = arcRadius(a)
  const start = Math.atan2(a.from.y - a.centre.y, a.from.x - a.centre.x)
  const extremes: Point[] = []
  for (let quarter = 0; quarter < 4; quarter++) {
    const turn = (quarter * Math.PI) / 2 - start
    const full = 2 * Math.PI
    const ahead = a.sweep >= 0 ? ((turn % full) + full) % full : ((-turn % full) + full) % full
    if (ahead <= Math.abs(a.sweep)) {
      const angle = (quarter * Math.PI) / 2
      extremes.push({ x: a.centre.x + radius * Math.cos(angle), y: a.centre.y + radius * Math.sin(angle) })
    }
  }
  return extremes
}

/** The smallest upright rectangle round all points, mm; there must be one at least. */
export function boxOf(points: readonly Point[]): Rectangle {
  const xs = points.map((p) => p.x)
  const ys = points.map((p) => p.y)
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

/** The same round a path with its arcs, mm, exact. */
export function pathBox(path: Path): Rectangle {
  return boxOf(
    path.map(segmentBox).flatMap((b) => [
      { x: b.x, y: b.y },
      { x: b.x + b.width, y: b.y + b.height },
    ]),
  )
}
