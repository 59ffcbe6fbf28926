import { arc, line } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'

/** The three sides of a gore: a sector of `radius` mm and `angle` radians, point up, hem below. */
export type Gore = { hem: Path; right: Path; left: Path }

/** One long edge on the straight grain (`left`), the other on the bias (`right`). */
export const straightEdgeGore = (radius: number, angle: number): Gore => sector(radius, 0, angle)

/** Both long edges at the same angle to the grain. */
export const symmetricalGore = (radius: number, angle: number): Gore => sector(radius, -angle / 2, angle)

/** A sector about its point (0, radius), from the angle `start` off the downward grain, anticlockwise. */
function sector(radius: number, start: number, angle: number): Gore {
  const point: Point = { x: 0, y: radius }
  const corner = { x: radius * Math.sin(start), y: radius - radius * Math.cos(start) }
  const hem = arc(corner, point, angle)
  return { hem: [hem], right: [line(hem.to, point)], left: [line(point, corner)] }
}
