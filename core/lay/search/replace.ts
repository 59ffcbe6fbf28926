import { leastX, mostX } from '../strip.ts'
import { SEARCH } from './parameters.ts'
import type { Random } from './random.ts'
import type { Spread } from './spread.ts'

/** A place tried for a part, and its weighted cost there. */
type Trial = { way: number; x: number; y: number; cost: number }

/** Looks for a better place for one part at a time. */
export class Replacer {
  readonly #spread: Spread
  readonly #random: Random
  readonly #best: Trial[]

  constructor(spread: Spread, random: Random) {
    this.#spread = spread
    this.#random = random
    this.#best = Array.from({ length: SEARCH.kept }, () => ({ way: 0, x: 0, y: 0, cost: Infinity }))
  }

  /** Moves the part to the best place found, if that costs less than where it lies. */
  replace(part: number): boolean {
    const spread = this.#spread
    const now = spread.costOf(part)
    for (const trial of this.#best) trial.cost = Infinity
    spread.gather(part, spread.way[part]!, spread.x[part]!, spread.y[part]!, Infinity)
    this.#lookNear(part)
    this.#lookAnywhere(part)
    this.#lookTouching(part)
    let found: Trial | undefined
    for (const trial of this.#best) {
      if (trial.cost === Infinity) continue
      this.#descend(part, trial, SEARCH.coarse, SEARCH.middling)
      if (found === undefined || trial.cost < found.cost) found = trial
    }
    if (found === undefined) return false
    this.#descend(part, found, SEARCH.middling, SEARCH.fine)
    if (found.cost >= now) return false
    spread.move(part, found.way, found.x, found.y)
    return true
  }

  #lookNear(part: number): void {
    const spread = this.#spread
    const { left, right, low, high } = spread.outline(part)
    const [x, y] = [spread.x[part]!, spread.y[part]!]
    this.#offer(part, spread.way[part]!, x, y)
    for (let k = 0; k < SEARCH.near; k++) {
      const [aside, along] = [this.#random.part() * 2 - 1, this.#random.part() * 2 - 1]
      this.#offer(part, this.#anyWay(part), x + aside * (right - left), y + along * (high - low))
    }
  }

  #lookAnywhere(part: number): void {
    const { strip, length } = this.#spread
    for (let k = 0; k < SEARCH.anywhere; k++) {
      const way = this.#anyWay(part)
      const { left, right, low, high } = strip.outlines[way]!
      const x = this.#random.part() * (strip.width - right + left) - left
      this.#offer(part, way, x, this.#random.part() * (length - high + low) - low)
    }
  }

  /** Where it would touch another part, corner to corner. */
  #lookTouching(part: number): void {
    const spread = this.#spread
    const { outlines } = spread.strip
    for (let k = 0; k < SEARCH.touching; k++) {
      const other = this.#random.below(spread.count)
      if (other === part) continue
      const way = this.#anyWay(part)
      const { sides } = spread.noFits.between(spread.outline(other), outlines[way]!)
      const corner = 4 * this.#random.below(sides.length / 4)
      this.#offer(part, way, spread.x[other]! + sides[corner]!, spread.y[other]! + sides[corner + 1]!)
    }
  }

  #anyWay(part: number): number {
    const { ways } = this.#spread.strip.parts[part]!
    return ways.length === 1 ? ways[0]! : ways[this.#random.below(ways.length)]!
  }

  /** Within the cloth, the place is tried and kept if it is among the best. */
  #offer(part: number, way: number, x: number, y: number): void {
    const worst = this.#best[this.#best.length - 1]!
    const { strip, length } = this.#spread
    const outline = strip.outlines[way]!
    const atX = Math.max(leastX(strip, strip.parts[part]!, outline), Math.min(mostX(strip, outline), x))
    const atY = Math.max(-outline.low, Math.min(length - outline.high, y))
    const cost = this.#spread.costAt(part, way, atX, atY, worst.cost)
    if (cost >= worst.cost) return
    ;[worst.way, worst.x, worst.y, worst.cost] = [way, atX, atY, cost]
    for (let k = this.#best.length - 1; k > 0 && this.#best[k]!.cost < this.#best[k - 1]!.cost; k--) {
      const held = this.#best[k]!
      this.#best[k] = this.#best[k - 1]!
      this.#best[k - 1] = held
    }
  }

  /** Coordinate descent: steps across, along and on both slants, longer while they help, shorter when not. */
  #descend(part: number, trial: Trial, from: number, to: number): void {
    const spread = this.#spread
    const outline = spread.strip.outlines[trial.way]!
    const small = Math.min(outline.right - outline.left, outline.high - outline.low)
    const least = leastX(spread.strip, spread.strip.parts[part]!, outline)
    const most = mostX(spread.strip, outline)
    const [lowest, highest] = [-outline.low, spread.length - outline.high]
    let stepX = small * from
    let stepY = stepX
    const end = small * to
    const margin = small * SEARCH.margin
    let nearX = trial.x
    let nearY = trial.y
    spread.gather(part, trial.way, nearX, nearY, margin)
    while (trial.cost > 0 && (stepX > end || stepY > end)) {
      const axis = this.#random.below(4)
      const dx = axis === 1 ? 0 : stepX
      const dy = axis === 0 ? 0 : axis === 3 ? -stepY : stepY
      let helped = false
      for (let sign = -1; sign <= 1; sign += 2) {
        const x = Math.max(least, Math.min(most, trial.x + sign * dx))
        const y = Math.max(lowest, Math.min(highest, trial.y + sign * dy))
        if (Math.abs(x - nearX) > margin || Math.abs(y - nearY) > margin) {
          nearX = x
          nearY = y
          spread.gather(part, trial.way, x, y, margin)
        }
        const cost = spread.costAt(part, trial.way, x, y, trial.cost)
        if (cost < trial.cost) {
          trial.x = x
          trial.y = y
          trial.cost = cost
          helped = true
          break
        }
      }
      const factor = helped ? SEARCH.stepUp : SEARCH.stepDown
      if (axis === 0) stepX *= factor
      else if (axis === 1) stepY *= factor
      else {
        const root = Math.sqrt(factor)
        stepX *= root
        stepY *= root
      }
    }
  }
}
