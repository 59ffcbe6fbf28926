import type { NoFit, NoFits } from '../nofit.ts'
import type { Outline } from '../outline.ts'

/** Numbers kept for a side of a convex no-fit polygon, of any other, and for a corner turning inwards. */
const CONVEX = 3
const SIDE = 7
const CORNER = 2

/**
 * How deep any outline lies in any other, for every pair of a strip: all their no-fit polygons in one array,
 * since this is asked millions of times.
 */
export class Depths {
  readonly #outlines: readonly Outline[]
  readonly #noFits: NoFits
  /** Where each pair's sides begin and end in the pool, and its corners end: at 0 for convex ones. */
  readonly #start: Int32Array
  readonly #end: Int32Array
  readonly #corners: Int32Array
  #pool = new Float64Array(1 << 14)
  #used = 0

  constructor(outlines: readonly Outline[], noFits: NoFits) {
    ;[this.#outlines, this.#noFits] = [outlines, noFits]
    this.#start = new Int32Array(outlines.length ** 2).fill(-1)
    this.#end = new Int32Array(outlines.length ** 2)
    this.#corners = new Int32Array(outlines.length ** 2)
  }

  /**
   * The least way that parts the two, 0 when they do not overlap.
   * @param x of the moving outline's origin from the fixed one's, as `y`
   */
  between(fixed: number, moving: number, x: number, y: number): number {
    const pair = fixed * this.#outlines.length + moving
    if (this.#start[pair]! < 0)
      this.#keep(pair, this.#noFits.between(this.#outlines[fixed]!, this.#outlines[moving]!))
    const start = this.#start[pair]!
    const end = this.#end[pair]!
    const corners = this.#corners[pair]!
    if (corners === 0) return convexDepth(this.#pool, start, end, x, y)
    return depth(this.#pool, start, end, corners, x, y)
  }

  #keep(pair: number, { sides, planes, inward, convex }: NoFit): void {
    const count = sides.length / 4
    const end = this.#used + count * (convex ? CONVEX : SIDE)
    const needed = convex ? end : end + inward.length
    if (needed > this.#pool.length) {
      const larger = new Float64Array(Math.max(needed, 2 * this.#pool.length))
      larger.set(this.#pool)
      this.#pool = larger
    }
    ;[this.#start[pair], this.#end[pair], this.#corners[pair]] = [this.#used, end, convex ? 0 : needed]
    const pool = this.#pool
    for (let i = 0, at = this.#used; i < count; i++) {
      const [nx, ny, reach] = [planes[3 * i]!, planes[3 * i + 1]!, planes[3 * i + 2]!]
      pool[at++] = nx
      pool[at++] = ny
      pool[at++] = reach
      if (convex) continue
      const [ax, ay, bx, by] = [sides[4 * i]!, sides[4 * i + 1]!, sides[4 * i + 2]!, sides[4 * i + 3]!]
      pool[at++] = ay
      pool[at++] = by
      pool[at++] = nx * ay - ny * ax
      pool[at++] = nx * by - ny * bx
    }
    if (!convex) pool.set(inward, end)
    this.#used = needed
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

/**
 * Distance to the nearest side, if a ray from the point crosses an odd number of them. From within, the
 * nearest point of the border is straight across from a side's inner face or is a corner turning inwards.
 */
function depth(
  pool: Float64Array,
  start: number,
  end: number,
  corners: number,
  x: number,
  y: number,
): number {
  let inside = false
  let nearest = Infinity
  for (let k = start; k < end; k += SIDE) {
    const nx = pool[k]!
    const ny = pool[k + 1]!
    const to = pool[k + 2]! - nx * x - ny * y
    const ay = pool[k + 3]!
    const by = pool[k + 4]!
    if (ay > y !== by > y && to > 0 === by > ay) inside = !inside
    if (to <= 0 || to >= nearest) continue
    const along = nx * y - ny * x
    if (along >= pool[k + 5]! && along <= pool[k + 6]!) nearest = to
  }
  if (!inside) return 0
  let squared = nearest * nearest
  for (let k = end; k < corners; k += CORNER) {
    const dx = x - pool[k]!
    const dy = y - pool[k + 1]!
    const far = dx * dx + dy * dy
    if (far < squared) squared = far
  }
  return Math.sqrt(squared)
}
