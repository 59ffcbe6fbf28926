import type { Places } from '../strip.ts'
import { SEARCH } from './parameters.ts'
import type { Random } from './random.ts'
import type { Replacer } from './replace.ts'
import type { Spread } from './spread.ts'

/** When to stop: asked once a sweep. */
export type Stop = () => boolean

/** Whether no overlap is left; the best places met, and what overlaps cost there, unweighted. */
export type Parting = { parted: boolean; loss: number; places: Places; sweeps: number }

/**
 * Parts all overlaps at the present length, if it can: sweeps over the parts in trouble, each moved to a
 * better place, overlaps that stay made heavier, until none is left or several strikes bring nothing new.
 * Leaves the spread as it last was; the places returned are the best met.
 */
export function separate(
  spread: Spread,
  replacer: Replacer,
  random: Random,
  stop: Stop,
  { patience, strikes }: { patience: number; strikes: number },
): Parting {
  let least = spread.total()
  let best = spread.places()
  let sweeps = 0
  for (let strike = 0; strike < strikes && least > 0; strike++) {
    if (strike > 0) spread.restore(best)
    const before = least
    for (let idle = 0; idle < patience && least > 0; idle++) {
      if (stop()) return { parted: false, loss: least, places: best, sweeps }
      sweep(spread, replacer, random)
      sweeps++
      reweigh(spread)
      const loss = spread.total()
      if (loss >= least) continue
      if (loss < SEARCH.progress * least) idle = -1
      least = loss
      best = spread.places()
    }
    if (least < SEARCH.progress * before) strike = -1
  }
  return { parted: least === 0, loss: least, places: best, sweeps }
}

let order = new Int32Array(0)

/** Every part that overlaps another is given a chance to go elsewhere, in random order. */
function sweep(spread: Spread, replacer: Replacer, random: Random): void {
  if (order.length < spread.count) order = new Int32Array(spread.count)
  let troubled = 0
  for (let i = 0; i < spread.count; i++) {
    if (!spread.strip.parts[i]!.fixed && spread.costOf(i) > 0) order[troubled++] = i
  }
  random.shuffle(order, troubled)
  for (let k = 0; k < troubled; k++) if (spread.costOf(order[k]!) > 0) replacer.replace(order[k]!)
}

/** Overlaps that stay grow heavier, the worst of them most; the others get lighter. */
function reweigh({ loss, weight }: Spread): void {
  let worst = 0
  for (let k = 0; k < loss.length; k++) if (loss[k]! > worst) worst = loss[k]!
  const { heavier, heaviest, lighter } = SEARCH
  for (let k = 0; k < loss.length; k++) {
    const cost = loss[k]!
    if (cost > 0) weight[k] = weight[k]! * (heavier + (heaviest - heavier) * (cost / worst))
    else if (weight[k]! > 1) weight[k] = Math.max(1, weight[k]! * lighter)
  }
}
