import type { Day } from '../../words/dates.ts'
import { calendarOf } from './calendar.ts'
import { HORIZON } from './clock.ts'
import type { Away, Person, Slot } from './types.ts'

/** When nothing is planned, and somebody is there. */
export type Free = {
  /** The day until which nothing can be gone on with, though there are hours before it. */
  begins: Day | null
  /** The last day on which something is planned. */
  last: Day | null
  /** Minutes before that day in which nothing is planned, as where work waits for cloth or a fitting. */
  between: number
  /** The first day with hours after that; null where nobody ever has any. */
  from: Day | null
}

/** When hands are free: before the first of the planned work, and after the last of it. */
export function freeOf(
  slots: readonly Slot[],
  people: readonly Person[],
  away: readonly Away[],
  today: Day,
): Free {
  const { hours, dayOf, numberOf } = calendarOf(people, away, today)
  const days = slots.map(({ day }) => numberOf(day))
  const [first, last] = [Math.min(...days), Math.max(...days)]
  const somebody = (day: number) => hours.some((minutes) => minutes[day]! > 0)
  const next = (from: number) => {
    let day = from
    while (day < HORIZON && !somebody(day)) day++
    return day
  }
  const before = (minutes: Float64Array) => minutes.subarray(0, last).reduce((sum, one) => sum + one, 0)
  const there = days.length === 0 ? 0 : hours.reduce((sum, minutes) => sum + before(minutes), 0)
  const taken = slots.reduce((sum, { minutes }, i) => (days[i]! < last ? sum + minutes : sum), 0)
  const from = next(days.length === 0 ? 0 : last + 1)
  return {
    begins: days.length > 0 && next(0) < first ? dayOf(first) : null,
    last: days.length === 0 ? null : dayOf(last),
    between: Math.max(0, there - taken),
    from: from < HORIZON ? dayOf(from) : null,
  }
}
