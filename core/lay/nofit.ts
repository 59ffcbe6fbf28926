import type { Shape } from './shapes.ts'

/**
 * Where the moving shape's origin may not come when the fixed one lies at the origin: the Minkowski sum of
 * the fixed hull and the moving hull turned about its origin. Its border is where they touch. Convex,
 * anticlockwise, x and y alternating.
 */
export type NoFit = { points: Float64Array; left: number; right: number; low: number; high: number }

/** Keeps the no-fit polygon of every pair of outlines met so far. */
export class NoFits {
  readonly #known = new Map<number, NoFit>()

  between(fixed: Shape, moving: Shape): NoFit {
    const key = fixed.key * 4096 + moving.key
    let found = this.#known.get(key)
    if (found === undefined) {
      found = noFitOf(fixed, moving)
      this.#known.set(key, found)
    }
    return found
  }
}

/** The no-fit polygon between shapes whose boxes both begin at the origin. */
function noFitOf(fixed: Shape, moving: Shape): NoFit {
  const a = fromLowest(fixed.hull, fixed.left, fixed.low, 1)
  const b = fromLowest(moving.hull, moving.left, moving.low, -1)
  const points = mergeEdges(a, b)
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]!)
    right = Math.max(right, points[i]!)
    low = Math.min(low, points[i + 1]!)
    high = Math.max(high, points[i + 1]!)
  }
  return { points, left, right, low, high }
}

/** The hull with its box at the origin, or its negative, beginning at its lowest, then leftmost point. */
function fromLowest(hull: Float64Array, left: number, low: number, sign: 1 | -1): Float64Array {
  const n = hull.length / 2
  const points = new Float64Array(hull.length)
  let first = 0
  for (let i = 0; i < n; i++) {
    points[2 * i] = sign * (hull[2 * i]! - left)
    points[2 * i + 1] = sign * (hull[2 * i + 1]! - low)
    const [y, lowest] = [points[2 * i + 1]!, points[2 * first + 1]!]
    if (y < lowest || (y === lowest && points[2 * i]! < points[2 * first]!)) first = i
  }
  const turned = new Float64Array(hull.length)
  turned.set(points.subarray(2 * first))
  turned.set(points.subarray(0, 2 * first), hull.length - 2 * first)
  return turned
}

/** Both polygons' edges in the order of their directions, end to end. */
function mergeEdges(a: Float64Array, b: Float64Array): Float64Array {
  const [n, m] = [a.length / 2, b.length / 2]
  const out: number[] = []
  let [i, j] = [0, 0]
  while (i < n || j < m) {
    out.push(a[2 * (i % n)]! + b[2 * (j % m)]!, a[2 * (i % n) + 1]! + b[2 * (j % m) + 1]!)
    const ax = a[2 * ((i + 1) % n)]! - a[2 * (i % n)]!
    const ay = a[2 * ((i + 1) % n) + 1]! - a[2 * (i % n) + 1]!
    const bx = b[2 * ((j + 1) % m)]! - b[2 * (j % m)]!
    const by = b[2 * ((j + 1) % m) + 1]! - b[2 * (j % m) + 1]!
    const turn = i >= n ? -1 : j >= m ? 1 : ax * by - ay * bx
    if (turn >= -1e-9 && i < n) i++
    if (turn <= 1e-9 && j < m) j++
  }
  return Float64Array.from(out)
}
