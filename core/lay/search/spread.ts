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
  readonly count: number
  length = 0
  readonly way: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  /** Unweighted cost of each pair, and its weight: count × count, symmetric. */
  readonly loss: Float64Array
  readonly weight: Float64Array
  readonly #left: Float64Array
  readonly #right: Float64Array
  readonly #low: Float64Array
  readonly #high: Float64Array
  /** Boxes of the outlines, and the fourth root of their hulls' areas. */
  readonly #box: Float64Array
  readonly #root: Float64Array
  readonly #depths: Depths
  readonly #dust: number
  evaluations = 0

  constructor(strip: Strip, noFits: NoFits, dust: number) {
    const { outlines, parts } = strip
    this.strip = strip
    this.count = parts.length
    this.way = new Int32Array(this.count)
    this.#depths = new Depths(outlines, noFits)
    this.#dust = dust * strip.width
    const floats = (n: number) => new Float64Array(n)
    ;[this.x, this.y] = [floats(this.count), floats(this.count)]
    ;[this.#left, this.#right] = [floats(this.count), floats(this.count)]
    ;[this.#low, this.#high] = [floats(this.count), floats(this.count)]
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
    this.#left[part] = x + this.#box[4 * way]!
    this.#right[part] = x + this.#box[4 * way + 1]!
    this.#low[part] = y + this.#box[4 * way + 2]!
    this.#high[part] = y + this.#box[4 * way + 3]!
  }

  /** Unweighted cost of the pair as they lie. */
  pair(i: number, j: number): number {
    const [l, r, b, t] = [this.#left, this.#right, this.#low, this.#high]
    if (l[i]! >= r[j]! || r[i]! <= l[j]! || b[i]! >= t[j]! || t[i]! <= b[j]!) return 0
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

  /** Weighted cost of a part were it laid there; as soon as that is not under `limit`, any number not under it. */
  costAt(part: number, way: number, x: number, y: number, limit: number): number {
    this.evaluations++
    const n = this.count
    const [left, right] = [x + this.#box[4 * way]!, x + this.#box[4 * way + 1]!]
    const [low, high] = [y + this.#box[4 * way + 2]!, y + this.#box[4 * way + 3]!]
    const root = this.#root[way]!
    let sum = 0
    for (let j = 0; j < n; j++) {
      if (
        left >= this.#right[j]! ||
        right <= this.#left[j]! ||
        low >= this.#high[j]! ||
        high <= this.#low[j]!
      )
        continue
      if (j === part) continue
      const other = this.way[j]!
      const depth = this.#depths.between(other, way, x - this.x[j]!, y - this.y[j]!)
      if (depth <= this.#dust) continue
      sum += depth * root * this.#root[other]! * this.weight[part * n + j]!
      if (sum >= limit) return sum
    }
    return sum
  }

  /** Furthest point of any part but the flaws. */
  reach(): number {
    let reach = 0
    for (let i = 0; i < this.count; i++)
      if (this.strip.parts[i]!.flaw !== true) reach = Math.max(reach, this.#high[i]!)
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
