import type { NoFit, NoFits } from '../nofit.ts'
import type { Outline } from '../outline.ts'

/** Numbers kept for a side of a convex no-fit polygon, and of any other. */
const CONVEX = 3
const ANY = 6

/**
 * How deep any outline lies in any other, for every pair of a strip: all their no-fit polygons in one array,
 * since this is asked millions of times.
 */
export class Depths {
  readonly #outlines: readonly Outline[]
  readonly #noFits: NoFits
  /** Where each pair's sides begin and end in the pool; the convex ones have their sign turned in `#end`. */
  readonly #start: Int32Array
  readonly #end: Int32Array
  #pool = new Float64Array(1 << 14)
  #used = 0

  constructor(outlines: readonly Outline[], noFits: NoFits) {
    ;[this.#outlines, this.#noFits] = [outlines, noFits]
    this.#start = new Int32Array(outlines.length ** 2).fill(-1)
    this.#end = new Int32Array(outlines.length ** 2)
  }

  /**
   * The least way that parts the two, 0 when they do not overlap.
   * @param x of the moving outline's origin from the fixed one's, as `y`
   */
  between(fixed: number, moving: number, x: number, y: number): number {
    const pair = fixed * this.#outlines.length + moving
    if (this.#start[pair]! < 0)
      this.#keep(pair, this.#noFits.between(this.#outlines[fixed]!, this.#outlines[moving]!))
    const [start, end] = [this.#start[pair]!, this.#end[pair]!]
    return end < 0 ? convexDepth(this.#pool, start, -end, x, y) : depth(this.#pool, start, end, x, y)
  }

  #keep(pair: number, { sides, planes, convex }: NoFit): void {
    const count = sides.length / 4
    const needed = this.#used + count * (convex ? CONVEX : ANY)
    if (needed > this.#pool.length) {
      const larger = new Float64Array(Math.max(needed, 2 * this.#pool.length))
      larger.set(this.#pool)
      this.#pool = larger
    }
    this.#start[pair] = this.#used
    const pool = this.#pool
    for (let i = 0, at = this.#used; i < count; i++) {
      if (convex) {
        for (let k = 0; k < CONVEX; k++) pool[at++] = planes[CONVEX * i + k]!
        continue
      }
      const [ax, ay, bx, by] = [sides[4 * i]!, sides[4 * i + 1]!, sides[4 * i + 2]!, sides[4 * i + 3]!]
      const [ex, ey] = [bx - ax, by - ay]
      pool[at++] = ax
      pool[at++] = ay
      pool[at++] = by
      pool[at++] = ex
      pool[at++] = ey
      pool[at++] = 1 / (ex * ex + ey * ey)
    }
    this.#used = needed
    this.#end[pair] = convex ? -needed : needed
  }
}

/** Distance to the nearest of the sides' lines, if the point is within all of them. */
function convexDepth(pool: Float64Array, start: number, end: number, x: number, y: number): number {
  let depth = Infinity
  for (let k = start; k < end; k += CONVEX) {
    const to = pool[k + 2]! - pool[k]! * x - pool[k + 1]! * y
    if (to <= 0) return 0
    if (to < depth) depth = to
  }
  return depth
}

/** Distance to the nearest side, if a ray from the point crosses an odd number of them. */
function depth(pool: Float64Array, start: number, end: number, x: number, y: number): number {
  let inside = false
  for (let k = start; k < end; k += ANY) {
    const ay = pool[k + 1]!
    if (ay > y !== pool[k + 2]! > y) {
      const ey = pool[k + 4]!
      if (pool[k + 3]! * (y - ay) > ey * (x - pool[k]!) === ey > 0) inside = !inside
    }
  }
  if (!inside) return 0
  let nearest = Infinity
  for (let k = start; k < end; k += ANY) {
    const px = x - pool[k]!
    const py = y - pool[k + 1]!
    const ex = pool[k + 3]!
    const ey = pool[k + 4]!
    const along = (px * ex + py * ey) * pool[k + 5]!
    const t = Math.max(0, Math.min(1, along))
    const dx = px - t * ex
    const dy = py - t * ey
    const squared = dx * dx + dy * dy
    if (squared < nearest) nearest = squared
  }
  return Math.sqrt(nearest)
}
