import type { NoFits } from '../nofit.ts'
import type { Outline } from '../outline.ts'
import type { Places, Strip } from '../strip.ts'
import { Depths } from './depths.ts'

/**
 * Parts spread over a strip of some length, overlapping or not, and what each overlap costs: how deep it is,
 * by the size of the two, by a weight that grows on pairs that will not part. Nothing is allocated once it
 * is made.
 */
export class Spread {
  readonly strip: Strip
  readonly noFits: NoFits
  readonly count: number
  length = 0
  readonly way: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  /** Unweighted cost of each pair, and its weight: count × count, symmetric. */
  readonly loss: Float64Array
  readonly weight: Float64Array
  /** Boxes of the parts as they lie, and of the outlines: left right low high. */
  readonly #at: Float64Array
  readonly #box: Float64Array
  /** Fourth root of the outlines' hulls' areas. */
  readonly #root: Float64Array
  readonly #depths: Depths
  readonly #dust: number
  /** The parts that a part on trial can meet. */
  readonly #near: Int32Array
  #gathered = 0
  evaluations = 0

  constructor(strip: Strip, noFits: NoFits, dust: number) {
    const { outlines, parts } = strip
    this.strip = strip
    this.noFits = noFits
    this.count = parts.length
    this.way = new Int32Array(this.count)
    this.#depths = new Depths(outlines, noFits)
    this.#dust = dust * strip.width
    const floats = (n: number) => new Float64Array(n)
    ;[this.x, this.y] = [floats(this.count), floats(this.count)]
    this.#at = floats(4 * this.count)
    this.#near = new Int32Array(this.count)
    this.loss = floats(this.count ** 2)
    this.weight = floats(this.count ** 2).fill(1)
    this.#box = Float64Array.from(outlines.flatMap(({ left, right, low, high }) => [left, right, low, high]))
    this.#root = Float64Array.from(outlines, ({ hullArea }) => hullArea ** 0.25)
  }

  outline(part: number): Outline {
    return this.strip.outlines[this.way[part]!]!
  }

  /** Puts a part somewhere without reckoning what it costs; `reckon` must follow. */
  put(part: number, way: number, x: number, y: number): void {
    this.way[part] = way
    this.x[part] = x
    this.y[part] = y
    for (let side = 0; side < 4; side++)
      this.#at[4 * part + side] = (side < 2 ? x : y) + this.#box[4 * way + side]!
  }

  /** Unweighted cost of the pair as they lie. */
  pair(i: number, j: number): number {
    const [at, a, b] = [this.#at, 4 * i, 4 * j]
    if (at[a]! >= at[b + 1]! || at[a + 1]! <= at[b]! || at[a + 2]! >= at[b + 3]! || at[a + 3]! <= at[b + 2]!)
      return 0
    const [wi, wj] = [this.way[i]!, this.way[j]!]
    const depth = this.#depths.between(wj, wi, this.x[i]! - this.x[j]!, this.y[i]! - this.y[j]!)
    return depth <= this.#dust ? 0 : depth * this.#root[wi]! * this.#root[wj]!
  }

  /** Moves a part and reckons its pairs anew. */
  move(part: number, way: number, x: number, y: number): void {
    this.put(part, way, x, y)
    for (let j = 0; j < this.count; j++) {
      if (j === part) continue
      const loss = this.pair(part, j)
      this.loss[part * this.count + j] = loss
      this.loss[j * this.count + part] = loss
    }
  }

  /** Reckons every pair from scratch. */
  reckon(): void {
    for (let i = 0; i < this.count; i++) {
      for (let j = 0; j < i; j++) {
        const loss = this.pair(i, j)
        this.loss[i * this.count + j] = loss
        this.loss[j * this.count + i] = loss
      }
    }
  }

  /** Cost of all overlaps, unweighted. */
  total(): number {
    let sum = 0
    for (let i = 0; i < this.loss.length; i++) sum += this.loss[i]!
    return sum / 2
  }

  /** Weighted cost of one part's overlaps. */
  costOf(part: number): number {
    let sum = 0
    for (let k = part * this.count, end = k + this.count; k < end; k++) sum += this.loss[k]! * this.weight[k]!
    return sum
  }

  /** Gathers the parts that a part may meet when its places no further than `margin` from this one are tried. */
  gather(part: number, way: number, x: number, y: number, margin: number): void {
    const at = this.#at
    const box = this.#box
    const left = x + box[4 * way]! - margin
    const right = x + box[4 * way + 1]! + margin
    const low = y + box[4 * way + 2]! - margin
    const high = y + box[4 * way + 3]! + margin
    let found = 0
    for (let j = 0, k = 0; j < this.count; j++, k += 4) {
      if (low >= at[k + 3]! || high <= at[k + 2]! || left >= at[k + 1]! || right <= at[k]! || j === part)
        continue
      this.#near[found++] = j
    }
    this.#gathered = found
  }

  /** Weighted cost, among the parts gathered, of a part were it laid there; as soon as that is not under `limit`,
   * any number not under it. */
  costAt(part: number, way: number, x: number, y: number, limit: number): number {
    this.evaluations++
    const at = this.#at
    const box = this.#box
    const near = this.#near
    const left = x + box[4 * way]!
    const right = x + box[4 * way + 1]!
    const low = y + box[4 * way + 2]!
    const high = y + box[4 * way + 3]!
    const root = this.#root[way]!
    const row = part * this.count
    let sum = 0
    for (let g = 0; g < this.#gathered; g++) {
      const j = near[g]!
      const k = 4 * j
      if (low >= at[k + 3]! || high <= at[k + 2]! || left >= at[k + 1]! || right <= at[k]!) continue
      const other = this.way[j]!
      const depth = this.#depths.between(other, way, x - this.x[j]!, y - this.y[j]!)
      if (depth <= this.#dust) continue
      sum += depth * root * this.#root[other]! * this.weight[row + j]!
      if (sum >= limit) return sum
    }
    return sum
  }

  /** Furthest point of any part but the flaws. */
  reach(): number {
    let reach = 0
    for (let i = 0; i < this.count; i++)
      if (this.strip.parts[i]!.flaw !== true) reach = Math.max(reach, this.#at[4 * i + 3]!)
    return reach
  }

  places(): Places {
    return { length: this.length, way: this.way.slice(), x: this.x.slice(), y: this.y.slice() }
  }

  /** Back to places kept earlier; weights stay as they are. */
  restore({ length, way, x, y }: Places): void {
    this.length = length
    for (let i = 0; i < this.count; i++) this.put(i, way[i]!, x[i]!, y[i]!)
    this.reckon()
  }
}
