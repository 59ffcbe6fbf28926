import { cross, samePoint } from './point.ts'
import { arcRadius, line, mirrorSegment, reverseSegment, segmentLength } from './segment.ts'
import type { Path, Point } from './types.ts'

/** Length of all segments together, mm, exact. */
export const pathLength = (path: Path): number => path.reduce((sum, s) => sum + segmentLength(s), 0)

/** The same way walked from its end to its beginning: an outline then runs the other way round. */
export const reversePath = (path: Path): Path => path.map(reverseSegment).reverse()

/** A path turned half round about the point (0, y). */
export function halfTurned(path: Path, y: number): Path {
  const over = (p: Point): Point => ({ x: -p.x, y: 2 * y - p.y })
  return path.map((s) =>
    s.kind === 'line'
      ? line(over(s.from), over(s.to))
      : { ...s, from: over(s.from), to: over(s.to), centre: over(s.centre) },
  )
}

/** A path seen in a mirror on the y axis, running the other way so that it keeps its sense. */
export const mirroredPath = (path: Path): Path => reversePath(path.map(mirrorSegment))

/** Straight lines from each point to the next, open. */
export const through = (points: readonly Point[]): Path =>
  points.slice(1).map((to, i) => line(points[i]!, to))

/** Straight lines through the points, in order; closed back to the first. */
export const polygon = (points: readonly Point[]): Path =>
  points.map((point, i) => line(point, points[(i + 1) % points.length]!))

/**
 * Area inside a closed path in mm², positive when it runs anticlockwise: the shoelace sum over the chords
 * plus, for every arc, the circular segment r²(φ − sin φ)/2 between it and its chord.
 */
export function signedArea(path: Path): number {
  return path.reduce((sum, s) => {
    const chord = cross(s.from, s.to) / 2
    return sum + chord + (s.kind === 'arc' ? (arcRadius(s) ** 2 * (s.sweep - Math.sin(s.sweep))) / 2 : 0)
  }, 0)
}

/** Whether every segment starts where the one before it ends, the first where the last ends. */
export const isClosed = (path: Path): boolean =>
  path.length > 0 && path.every((s, i) => samePoint(s.from, path[(i + path.length - 1) % path.length]!.to))
