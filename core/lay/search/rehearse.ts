import type { Places } from '../strip.ts'
import type { Random } from './random.ts'
import type { Budget, Found } from './search.ts'

/** A plan, such as an order, that makes a lay; a chance change of it makes another. */
export type Rehearsal<Plan> = {
  first: Plan
  changed: (plan: Plan) => Plan
  lay: (plan: Plan) => Places
  /** How much longer, in parts, a lay may now and then be whose plan is gone on from. */
  worse: number
  /** No lay can be shorter, mm. */
  bound: number
}

/** Two lengths that differ by less than this part are the same. */
const SAME = 1e-7

/**
 * Lays out over and over, each time from a changed plan, and goes on from what is no longer, or a little
 * longer by luck, for as long as the budget lasts.
 */
export function rehearse<Plan>(
  start: Places,
  { first, changed, lay, worse, bound }: Rehearsal<Plan>,
  budget: Budget,
  random: Random,
  found: Found,
): { places: Places; sweeps: number } {
  let plan = first
  let best = start
  let now = Infinity
  let sweeps = 0
  for (; budget.spent(sweeps) < 1 && best.length > bound * (1 + SAME); sweeps++) {
    const tried = sweeps === 0 ? plan : changed(plan)
    const places = lay(tried)
    if (places.length > now * (1 + worse * random.part() ** 8)) continue
    ;[now, plan] = [places.length, tried]
    if (places.length >= best.length * (1 - SAME)) continue
    best = places
    found(best)
  }
  return { places: best, sweeps }
}
