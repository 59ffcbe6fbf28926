import { SAME_POINT } from './tolerance.ts'
import type { Point } from './types.ts'

/** Vectors, mm: the way from b to a, and the product (mm²) that is nothing where they stand square. */
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y })
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y
/** z of the cross product: positive when b lies to the left of a. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y)
export const samePoint = (a: Point, b: Point): boolean => distance(a, b) <= SAME_POINT

/** Unit vector from a to b; the points must differ. */
export function direction(a: Point, b: Point): Point {
  const length = distance(a, b)
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length }
}

/** The point `by` mm from `p` along the unit vector `way`. */
export const along = (p: Point, way: Point, by: number): Point => ({
  x: p.x + way.x * by,
  y: p.y + way.y * by,
})

/** A vector turned by a quarter: to the left is anticlockwise. */
export const turnLeft = (v: Point): Point => ({ x: -v.y, y: v.x })
export const turnRight = (v: Point): Point => ({ x: v.y, y: -v.x })

/** `v` mirrored in a line of unit direction `axis`. */
export function reflect(v: Point, axis: Point): Point {
  const twice = 2 * dot(v, axis)
  return { x: twice * axis.x - v.x, y: twice * axis.y - v.y }
}
