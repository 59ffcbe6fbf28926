import type { Point } from './types.ts'

/** Twice the area of the triangle a b c, positive when it turns left. */
const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** Points are taken to a millionth of a millimetre, so that those meant to be in line are so exactly. */
const GRID = 1e6
const snapped = ({ x, y }: Point): Point => ({
  x: Math.round(x * GRID) / GRID,
  y: Math.round(y * GRID) / GRID,
})

/** The convex hull, anticlockwise from the lowest of the leftmost points, without points along its sides. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = points.map(snapped).sort((p, q) => p.x - q.x || p.y - q.y)
  const half = (from: readonly Point[]): Point[] => {
    const chain: Point[] = []
    for (const point of from) {
      // No tolerance here: it would let a corner go for the sake of a point that is almost in line with it.
      while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop()
      chain.push(point)
    }
    chain.pop()
    return chain
  }
  return [...half(sorted), ...half(sorted.reverse())]
}
