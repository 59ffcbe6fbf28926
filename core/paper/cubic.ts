import { pointAt } from '../geometry/segment.ts'
import type { Arc, Point } from '../geometry/types.ts'

/** A cubic Bézier curve. */
export type Cubic = { from: Point; one: Point; two: Point; to: Point }

/**
 * The widest part of an arc that one cubic stands for, radians. With handles of 4/3·tan(φ/4) the radius is
 * then wrong by less than 4·10⁻⁷ of itself; over a quarter turn it would be 2.7·10⁻⁴.
 */
const WIDEST = Math.PI / 6

/** PDF knows no arcs: an arc as cubics that leave the circle by less than 0.001 mm at a radius of 1 m. */
export function arcToCubics(arc: Arc): Cubic[] {
  const parts = Math.max(1, Math.ceil(Math.abs(arc.sweep) / WIDEST - 1e-9))
  const handle = (4 / 3) * Math.tan(arc.sweep / parts / 4)
  /** From a point on the circle along its tangent by the handle's part of the radius. */
  const pulled = (p: Point, by: number): Point => ({
    x: p.x - (p.y - arc.centre.y) * by,
    y: p.y + (p.x - arc.centre.x) * by,
  })
  return Array.from({ length: parts }, (_, i) => {
    const from = pointAt(arc, i / parts)
    const to = i + 1 === parts ? arc.to : pointAt(arc, (i + 1) / parts)
    return { from, one: pulled(from, handle), two: pulled(to, -handle), to }
  })
}
