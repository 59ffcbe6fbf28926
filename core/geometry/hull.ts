import type { Point } from './types.ts'

/** Twice the area of the triangle a b c, positive when it turns left. */
const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** The convex hull, anticlockwise from the lowest of the leftmost points, without points along its sides. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y)
  const half = (from: readonly Point[]): Point[] => {
    const chain: Point[] = []
    for (const point of from) {
      while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 1e-9) chain.pop()
      chain.push(point)
    }
    chain.pop()
    return chain
  }
  return [...half(sorted), ...half(sorted.reverse())]
}
