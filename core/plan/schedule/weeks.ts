import type { Calendar } from './calendar.ts'
import { HORIZON } from './clock.ts'
import type { WeekLoad } from './types.ts'
import type { Stretch } from './work-off.ts'

/** Minutes that must be done by the end of a day, counted from today. */
export type Needed = { day: number; minutes: number }

/** The load of each week from today's to the last in which something is done or needed, but of so many weeks at least; `firstDay`: the day on which a week begins, Monday 0. */
export function weeksOf(
  { weekday, dayOf, people, hours }: Calendar,
  stretches: readonly Stretch[],
  needed: readonly Needed[],
  { fewest, firstDay }: { fewest: number; firstDay: number },
): WeekLoad[] {
  const gone = (weekday - firstDay + 7) % 7
  const weekOf = (day: number) => Math.floor((Math.max(0, day) + gone) / 7)
  const lastDay = [...stretches, ...needed].reduce((last, { day }) => Math.max(last, day), 0)
  const length = Math.max(fewest, weekOf(Math.min(lastDay, HORIZON - 1)) + 1)
  const weeks = Array.from({ length }, (_, w) => {
    const from = 7 * w - gone
    const each = people.map(({ id }, p) => ({
      ...{ person: id, planned: 0 },
      hours: sum(hours[p]!.subarray(Math.max(0, from), from + 7)),
    }))
    return {
      ...{ begins: dayOf(from), planned: 0, needed: 0, people: each },
      hours: sum(each.map((one) => one.hours)),
    }
  })
  for (const { day, person, minutes } of stretches) {
    const week = weeks[weekOf(day)]!
    week.planned += minutes
    week.people[person]!.planned += minutes
  }
  for (const { day, minutes } of needed) {
    const week = weeks[Math.min(weekOf(day), weeks.length - 1)]!
    week.needed += minutes
  }
  for (let w = weeks.length - 1; w > 0; w--) {
    const over = Math.max(0, weeks[w]!.needed - weeks[w]!.hours)
    weeks[w]!.needed -= over
    weeks[w - 1]!.needed += over
  }
  return weeks
}

const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((all, one) => all + one, 0)
