import type { NoFits } from '../nofit.ts'
import { type Places, type Strip, shortestPossible } from '../strip.ts'
import { disturb } from './disturb.ts'
import { SEARCH } from './parameters.ts'
import { type Random, randomFrom } from './random.ts'
import { Replacer } from './replace.ts'
import { type Parting, type Stop, separate } from './separate.ts'
import { Spread } from './spread.ts'

/** Told of every shorter lay. */
export type Found = (places: Places) => void

/** How much of the time or of the allowed sweeps is gone, 0 to 1; a search ends at 1. */
export type Budget = { spent: (sweeps: number) => number }

/** The shortest lay of a search, and what it took. */
export type Search = { places: Places; sweeps: number; evaluations: number }

/** A search's ways out and in while it runs. */
export type Hooks = {
  found: Found
  /** A shorter lay that another search of the same strip has found, if there is one. */
  other?: () => Places | undefined
}

/**
 * Shortens a lay without overlaps for as long as the budget lasts: takes a little off the length, lets
 * overlaps come up, parts them, and again; where that fails it tries from a disturbed near-success. The last
 * part of the budget squeezes the best lay by ever smaller steps.
 *
 * @param start a lay without overlaps
 * @returns the shortest lay found, never longer than the start
 */
export function search(
  strip: Strip,
  noFits: NoFits,
  start: Places,
  budget: Budget,
  seed: number,
  hooks: Hooks,
): Search {
  const random = randomFrom(seed)
  const spread = new Spread(strip, noFits, SEARCH.dust)
  spread.restore(start)
  const run = new Run(spread, new Replacer(spread, random), random, start, budget, hooks)
  run.explore()
  run.squeeze()
  return { places: run.best, sweeps: run.sweeps, evaluations: spread.evaluations }
}

class Run {
  best: Places
  sweeps = 0
  readonly #spread: Spread
  readonly #replacer: Replacer
  readonly #random: Random
  readonly #budget: Budget
  readonly #hooks: Hooks
  /** No lay can be shorter. */
  readonly #floor: number

  constructor(
    spread: Spread,
    replacer: Replacer,
    random: Random,
    start: Places,
    budget: Budget,
    hooks: Hooks,
  ) {
    ;[this.#spread, this.#replacer, this.#random] = [spread, replacer, random]
    ;[this.best, this.#budget, this.#hooks] = [start, budget, hooks]
    this.#floor = shortestPossible(spread.strip) + SEARCH.dust * spread.strip.width
  }

  explore(): void {
    const spread = this.#spread
    const stop = () => this.#done(1 - SEARCH.squeeze)
    let step: number = SEARCH.shortenMost
    let near: { places: Places; loss: number }[] = []
    this.#shorten(step)
    while (!stop()) {
      const bold = { patience: SEARCH.boldPatience, strikes: 1 }
      const parting = this.#separate(stop, step > SEARCH.shortenLeast ? bold : SEARCH)
      if (this.#takeOver() || parting.parted) {
        if (parting.parted) this.#keep()
        near = []
        if (parting.sweeps <= SEARCH.easy) step = Math.min(SEARCH.shortenMost, step * SEARCH.longer)
        spread.restore(this.best)
        this.#shorten(step)
      } else if (step > SEARCH.shortenLeast) {
        // The step was too bold: the same lay, taken in by less.
        step = Math.max(SEARCH.shortenLeast, step / 2)
        spread.restore(this.best)
        this.#shorten(step)
      } else {
        near.push(parting)
        near.sort((a, b) => a.loss - b.loss)
        const pick = Math.floor(Math.abs(this.#random.normal()) * SEARCH.nearSuccess * near.length)
        spread.restore(near[Math.min(near.length - 1, pick)]!.places)
        disturb(spread, this.#random)
      }
    }
  }

  squeeze(): void {
    const from = this.#spent()
    const stop = () => this.#done(1)
    const limits = { patience: SEARCH.squeezePatience, strikes: SEARCH.squeezeStrikes }
    while (!stop()) {
      const gone = (this.#spent() - from) / (1 - from)
      this.#takeOver()
      this.#spread.restore(this.best)
      this.#shorten(SEARCH.squeezeFirst * (SEARCH.squeezeLast / SEARCH.squeezeFirst) ** gone)
      if (this.#separate(stop, limits).parted) this.#keep()
    }
  }

  #done(part: number): boolean {
    return this.#spent() >= part || this.best.length <= this.#floor
  }

  #spent(): number {
    return this.#budget.spent(this.sweeps)
  }

  #separate(stop: Stop, limits: { patience: number; strikes: number }): Parting {
    this.#spread.weight.fill(1)
    // Even one that finds nothing to part is counted, so that every budget comes to its end.
    this.sweeps++
    const counted = () => {
      this.sweeps++
      return stop()
    }
    return separate(this.#spread, this.#replacer, this.#random, counted, limits)
  }

  /** The lay as it is has no overlaps: the best yet. */
  #keep(): void {
    this.#spread.length = this.#spread.reach()
    if (this.#spread.length >= this.best.length) return
    this.best = this.#spread.places()
    this.#hooks.found(this.best)
  }

  /** Goes on from another search's lay where that is shorter by a step. */
  #takeOver(): boolean {
    const other = this.#hooks.other?.()
    if (other === undefined || other.length > this.best.length * (1 - SEARCH.shortenLeast)) return false
    this.best = other
    return true
  }

  /** Takes a part off the length, and draws what lies beyond a random line along with it. */
  #shorten(part: number): void {
    const spread = this.#spread
    const by = Math.min(spread.length * part, spread.length - this.#floor)
    const line = this.#random.part() * spread.length
    spread.length -= by
    for (let i = 0; i < spread.count; i++) {
      if (spread.strip.parts[i]!.fixed) continue
      const { low, high } = spread.outline(i)
      const middle = spread.y[i]! + (low + high) / 2
      const y = middle > line ? spread.y[i]! - by : spread.y[i]!
      spread.put(i, spread.way[i]!, spread.x[i]!, Math.max(-low, Math.min(spread.length - high, y)))
    }
    spread.reckon()
  }
}
