import type { Calendar } from './calendar.ts'
import { DAY } from './clock.ts'
import type { Network } from './network.ts'

/**
 * The minute by which each job must be done: its own due day, or earlier, when what waits for it must be begun by then
 * (modified due dates; Lawler 1973, from memory). All due days are moved by `shift` days, for what can be in time
 * within so many days of lateness depends on which days those are.
 */
export function neededBy(network: Network, { reach }: Calendar, shift: number): Float64Array {
  const { jobs, followers, inOrder, due, minutes } = network
  const needed = new Float64Array(jobs.length).fill(Number.POSITIVE_INFINITY)
  for (let at = inOrder.length - 1; at >= 0; at--) {
    const i = inOrder[at]!
    const wait = network.wait[i]!
    const own = due[i]!
    let by = Number.POSITIVE_INFINITY
    if (own !== null) by = endOf(own + shift - (followers[i]!.length === 0 ? wait : 0))
    for (const next of followers[i]!) {
      const begun = reach(jobs[next]!.skill).back(needed[next]!, minutes[next]!)
      by = Math.min(
        by,
        wait === 0 || begun === Number.POSITIVE_INFINITY ? begun : endOf(dayOf(begun, minutes[next]!) - wait),
      )
    }
    needed[i] = by
  }
  return needed
}

const endOf = (day: number): number => (day + 1) * DAY
/** The day on which work is begun at a minute; what takes no time is done on the day that ends there. */
const dayOf = (begun: number, minutes: number): number =>
  minutes > 0 ? Math.floor(begun / DAY) : Math.ceil(begun / DAY) - 1

/** Jobs in the order of their urgency; equals stay in the order they came in. */
export function rankOf(needed: Float64Array): Int32Array {
  const rank = new Int32Array(needed.length)
  const order = Array.from(needed, (_, i) => i).sort((a, b) => compare(needed[a]!, needed[b]!) || a - b)
  order.forEach((i, place) => {
    rank[i] = place
  })
  return rank
}

/** Two that are never due are alike, though their difference is no number. */
const compare = (a: number, b: number): number => (a === b ? 0 : a - b)
