import { area, FillRule, type Path64, type Paths64, union } from 'clipper2-ts'
import { type Outline, turnedBy } from './outline.ts'

/**
 * Where the moving outline's origin may not come when the fixed one's lies at the origin: the points a − b
 * for a in the one and b in the other. On its border they touch; inside it, its distance from the border is
 * the least way that parts them.
 */
export type NoFit = {
  /** Its sides, as ax ay bx by, the forbidden ground at the left. */
  sides: Float64Array
  convex: boolean
  /** For each side the unit normal pointing out of the forbidden ground and its reach: nx ny r. */
  planes: Float64Array
  /** Corners at which the forbidden ground has more than a straight angle: x y. */
  inward: Float64Array
  left: number
  right: number
  low: number
  high: number
}

/** Keeps the no-fit polygon of every pair of outlines met so far; turned and swapped pairs share one. */
export class NoFits {
  readonly #base = new Map<string, Float64Array[]>()
  readonly #known: (NoFit | undefined)[] = []
  readonly #step: number

  /** @param step corners of concave polygons are taken to this grid, mm */
  constructor(step = 1e-4) {
    this.#step = step
  }

  between(fixed: Outline, moving: Outline): NoFit {
    const key = ((fixed.base * 4 + fixed.quarters) << 13) + moving.base * 4 + moving.quarters
    let found = this.#known[key]
    if (found === undefined) {
      found = noFit(this.#loops(fixed, moving).map((loop) => turnedBy(loop, fixed.quarters)))
      this.#known[key] = found
    }
    return found
  }

  /** The loops for the fixed outline in its base position. */
  #loops(fixed: Outline, moving: Outline): Float64Array[] {
    const turn = (moving.quarters - fixed.quarters + 4) % 4
    const key = `${fixed.base} ${moving.base} ${turn}`
    let loops = this.#base.get(key)
    if (loops === undefined) {
      const swapped = this.#base.get(`${moving.base} ${fixed.base} ${(4 - turn) % 4}`)
      loops =
        swapped?.map((loop) => turnedBy(loop, (turn + 2) % 4)) ??
        loopsOf(
          turnedBy(fixed.points, (4 - fixed.quarters) % 4),
          turnedBy(moving.points, (6 - fixed.quarters) % 4),
          fixed.convex && moving.convex,
          this.#step,
        )
      this.#base.set(key, loops)
    }
    return loops
  }
}

/** The sum of two polygons: anticlockwise round the ground it covers, clockwise round holes in it. */
function loopsOf(a: Float64Array, b: Float64Array, convex: boolean, step: number): Float64Array[] {
  return convex ? [mergeEdges(fromLowest(a), fromLowest(b))] : concaveSum(a, b, step)
}

/**
 * A point is in the sum when the outlines cross, or one lies within the other: so it is all that a side of
 * one sweeps along a side of the other, and one copy of each.
 */
function concaveSum(a: Float64Array, b: Float64Array, step: number): Float64Array[] {
  const [as, bs] = [pathOf(a, 1 / step), pathOf(b, 1 / step)]
  const swept: Paths64 = [moved(as, bs[0]!), moved(bs, as[0]!)]
  as.forEach((p, i) => {
    const q = as[(i + 1) % as.length]!
    bs.forEach((r, j) => {
      const s = bs[(j + 1) % bs.length]!
      const quad = [sum(p, r), sum(q, r), sum(q, s), sum(p, s)]
      const turns = area(quad)
      if (turns !== 0) swept.push(turns > 0 ? quad : quad.reverse())
    })
  })
  return union(swept, FillRule.NonZero)
    .filter((loop) => Math.abs(area(loop)) > 4)
    .map((loop) => Float64Array.from(loop.flatMap(({ x, y }) => [x * step, y * step])))
}

const pathOf = (points: Float64Array, scale: number): Path64 =>
  Array.from({ length: points.length / 2 }, (_, i) => ({
    x: Math.round(points[2 * i]! * scale),
    y: Math.round(points[2 * i + 1]! * scale),
  }))
const sum = (p: { x: number; y: number }, q: { x: number; y: number }) => ({ x: p.x + q.x, y: p.y + q.y })
const moved = (path: Path64, by: { x: number; y: number }): Path64 => path.map((p) => sum(p, by))

function noFit(loops: readonly Float64Array[]): NoFit {
  const sides: number[] = []
  const planes: number[] = []
  const inward: number[] = []
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const loop of loops) {
    const n = loop.length
    for (let i = 0; i < n; i += 2) {
      const [j, k] = [(i + 2) % n, (i + 4) % n]
      const [ax, ay, bx, by] = [loop[i]!, loop[i + 1]!, loop[j]!, loop[j + 1]!]
      const [ex, ey] = [bx - ax, by - ay]
      const length = Math.hypot(ex, ey)
      if (length === 0) continue
      sides.push(ax, ay, bx, by)
      planes.push(ey / length, -ex / length, (ey * ax - ex * ay) / length)
      if (ex * (loop[k + 1]! - by) - ey * (loop[k]! - bx) < -1e-9) inward.push(bx, by)
      left = Math.min(left, ax)
      right = Math.max(right, ax)
      low = Math.min(low, ay)
      high = Math.max(high, ay)
    }
  }
  return {
    sides: Float64Array.from(sides),
    planes: Float64Array.from(planes),
    inward: Float64Array.from(inward),
    convex: loops.length === 1 && inward.length === 0,
    left,
    right,
    low,
    high,
  }
}

/** How deep a point lies inside a no-fit polygon: its distance to the border, 0 on it and outside, mm. */
export function depthIn({ sides, planes, convex }: NoFit, x: number, y: number): number {
  if (convex) {
    let depth = Infinity
    for (let i = 0; i < planes.length; i += 3) {
      const to = planes[i + 2]! - planes[i]! * x - planes[i + 1]! * y
      if (to < depth) {
        if (to <= 0) return 0
        depth = to
      }
    }
    return depth
  }
  let inside = false
  for (let i = 0; i < sides.length; i += 4) {
    const [ay, by] = [sides[i + 1]!, sides[i + 3]!]
    if (ay > y !== by > y) {
      const ax = sides[i]!
      if (x < ax + ((sides[i + 2]! - ax) * (y - ay)) / (by - ay)) inside = !inside
    }
  }
  return inside ? Math.sqrt(nearestSquared(sides, x, y)) : 0
}

/** Square of the distance to the nearest side. */
function nearestSquared(sides: Float64Array, x: number, y: number): number {
  let nearest = Infinity
  for (let i = 0; i < sides.length; i += 4) {
    const [ax, ay] = [sides[i]!, sides[i + 1]!]
    const [ex, ey] = [sides[i + 2]! - ax, sides[i + 3]! - ay]
    const [px, py] = [x - ax, y - ay]
    const along = px * ex + py * ey
    const whole = ex * ex + ey * ey
    const t = along <= 0 ? 0 : along >= whole ? 1 : along / whole
    const [dx, dy] = [px - t * ex, py - t * ey]
    const squared = dx * dx + dy * dy
    if (squared < nearest) nearest = squared
  }
  return nearest
}

/** The polygon beginning at its lowest, then leftmost point. */
function fromLowest(points: Float64Array): Float64Array {
  let first = 0
  for (let i = 2; i < points.length; i += 2) {
    const [y, lowest] = [points[i + 1]!, points[first + 1]!]
    if (y < lowest || (y === lowest && points[i]! < points[first]!)) first = i
  }
  const turned = new Float64Array(points.length)
  turned.set(points.subarray(first))
  turned.set(points.subarray(0, first), points.length - first)
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
