import type { Pace } from '../../sew/pace/pace.ts'
import { addDays, type Day } from '../../words/dates.ts'
import { type Calendar, calendarOf } from './calendar.ts'
import { type Best, bestCourse, handedOver } from './course.ts'
import { closedBy } from './days-off.ts'
import { type Network, networkOf } from './network.ts'
import { timeUntil } from './stretch.ts'
import type { Base, Job } from './types.ts'
import { type Worked, workOff } from './work-off.ts'

/**
 * The earliest day that can be promised for a new commission: promised and due on it, it is done by it four times in
 * five, and nothing that was accepted is by the same odds late, or later than it is anyhow. Null when it is never done.
 * It is no day on which nobody is there: what is dried on a holiday is handed over after it.
 */
export function promiseDay(
  { jobs, people, away, today }: Base,
  added: readonly Job[],
  pace: Pace,
): Day | null {
  const calendar = calendarOf(people, away, today)
  const network = networkOf([...jobs, ...added], calendar)
  const old = networkOf(jobs, calendar)
  const oldBest = bestCourse(old, calendar)
  const own = added.map((_, i) => jobs.length + i)

  /** By the odds: when the new commission is done if it is due on a day, and whether it puts anything else off. */
  const promised = (due: number | null) => {
    const tried = { ...network, due: network.due.map((day, job) => (job < jobs.length ? day : due)) }
    const best = bestCourse(tried, calendar)
    const time = timeUntil(tried, best, own, pace)
    if (time === null) return null
    const times = time.mean > 0 ? time.p80 / time.mean : 1
    const worked = stretched(tried, calendar, best, times)
    const days = own.map((job) => handedOver(tried, worked, job))
    if (days.includes(-1)) return null
    const harmless = () => {
      const without = stretched(old, calendar, oldBest, times)
      return jobs.every((_, job) => lateness(tried, worked, job) <= Math.max(0, lateness(old, without, job)))
    }
    return { day: Math.max(...days), harmless }
  }
  const fits = (due: number) => {
    const done = promised(due)
    return done !== null && done.day <= due && done.harmless()
  }

  const last = promised(null)
  if (last === null) return null
  // Behind everything it is done on this day. Due on it, it would still go before what is due later; where that is too
  // much for the others, a later day is looked for, at the latest the one behind them all.
  let [bad, good] = [-1, last.day]
  if (!fits(good)) [bad, good] = [good, Math.max(good, ...network.due.map((due) => due ?? 0)) + 1]
  while (good - bad > 1) {
    const due = (bad + good) >> 1
    if (fits(due)) good = due
    else bad = due
  }
  let day = calendar.dayOf(good)
  while (closedBy(day, away, people) !== undefined) day = addDays(day, 1)
  return day
}

const stretched = (network: Network, calendar: Calendar, { rank }: Best, times: number): Worked =>
  workOff(network, calendar, { rank, minutes: network.minutes.map((one) => one * times) })

/** Days by which a job that is due is late. */
function lateness(network: Network, worked: Worked, job: number): number {
  const due = network.due[job]!
  if (due === null || network.never.has(job)) return 0
  const day = handedOver(network, worked, job)
  return day === -1 ? Number.POSITIVE_INFINITY : day - due
}
