import type { Calendar } from './calendar.ts'
import type { Network } from './network.ts'
import { neededBy, rankOf } from './urgency.ts'
import { type Worked, workOff } from './work-off.ts'

/** An order of work and what comes of it: the place of each job in the order of urgency, and when it is done. */
export type Best = { rank: Int32Array; worked: Worked }

/**
 * The order of work that makes the greatest lateness least, in days of the calendar. How urgent work is that others
 * wait for depends on which days it may end on, a Friday or a Sunday, and so on the lateness itself: the least is
 * sought in strides, then by halving. For one person, without waits and limits of the hands, an order that fails to
 * be in time within so many days of lateness proves that none is, and so the last one is the best there is.
 */
export function bestCourse(network: Network, calendar: Calendar): Best {
  let best = courseFor(network, calendar, 0)
  let worst = greatestLateness(network, best.worked)
  let failed = Number.NEGATIVE_INFINITY
  let stride = 1
  while (Number.isFinite(worst) && worst - failed > 1) {
    const aim = Number.isFinite(failed) ? Math.floor((failed + worst) / 2) : worst - stride
    const next = courseFor(network, calendar, aim)
    const lateness = greatestLateness(network, next.worked)
    if (lateness > aim) failed = aim
    if (lateness < worst) [best, worst] = [next, lateness]
    stride *= 2
  }
  return best
}

function courseFor(network: Network, calendar: Calendar, shift: number): Best {
  const rank = rankOf(neededBy(network, calendar, shift))
  return { rank, worked: workOff(network, calendar, { rank, minutes: network.minutes }) }
}

/** The day a job is done and, where nothing follows, its wait is over; -1 for one that never is. */
export const handedOver = ({ followers, wait }: Network, { last }: Worked, job: number): number =>
  last[job]! === -1 ? -1 : last[job]! + (followers[job]!.length === 0 ? wait[job]! : 0)

/** Days by which the latest of all jobs is late; -∞ when nothing is due, ∞ when something is never done in time. */
export function greatestLateness(network: Network, worked: Worked): number {
  return network.inOrder.reduce((worst, job) => {
    const due = network.due[job]!
    if (due === null) return worst
    const day = handedOver(network, worked, job)
    return Math.max(worst, day === -1 ? Number.POSITIVE_INFINITY : day - due)
  }, Number.NEGATIVE_INFINITY)
}
