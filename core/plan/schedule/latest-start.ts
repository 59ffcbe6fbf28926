import type { Day } from '../../words/dates.ts'
import { type Calendar, calendarOf } from './calendar.ts'
import { greatestLateness } from './course.ts'
import { commissionsOf, networkOf } from './network.ts'
import type { Base, Job } from './types.ts'
import { neededBy, rankOf } from './urgency.ts'
import { workOff } from './work-off.ts'

/**
 * The last day on which each commission may be begun, or gone on with, and still be in time if nothing else were in
 * the way; null where that is over. Commissions that are never due, or can never be done, are left out.
 */
export function latestStarts({ jobs, people, away, today }: Base): Map<string, Day | null> {
  const calendar = calendarOf(people, away, today)
  return new Map(
    [...commissionsOf(jobs)].flatMap(([commission, own]) => {
      const day = latestStart(own, calendar)
      return day === undefined ? [] : [[commission, day === null ? null : calendar.dayOf(day)] as const]
    }),
  )
}

function latestStart(own: readonly Job[], calendar: Calendar): number | null | undefined {
  const network = networkOf(own, calendar)
  const dues = network.due.filter((due) => due !== null)
  if (dues.length === 0 || network.never.size > 0) return undefined
  const rank = rankOf(neededBy(network, calendar, 0))
  const inTime = (from: number) =>
    greatestLateness(network, workOff(network, calendar, { rank, minutes: network.minutes, from })) <= 0
  if (!inTime(0)) return null
  let [good, bad] = [0, Math.max(...dues) + 1]
  while (bad - good > 1) {
    const middle = (good + bad) >> 1
    if (inTime(middle)) good = middle
    else bad = middle
  }
  return good
}
