import { dayNumber } from '../../core/words/dates.ts'
import type { OutputOf } from '../../core/workroom.ts'
import { dueOf, type Planned } from './reasons.ts'

/** A week of the plan, minutes. */
export type Week = OutputOf<'plan.show'>['weeks'][number]

/** The picture's own measures; it is drawn as wide as the page lets it. */
export const WIDTH = 860
export const LEFT = 190
const RIGHT = WIDTH - 14
/** At least so many weeks, so that short work is no wall of ink; at most so many, so that a week can be seen. */
const FEWEST = 6
const MOST = 26

/** Where days lie in the picture of the weeks, in its own measures; `monday` is the day's number. */
export type Scale = {
  /** Whole weeks from the first day of this one. */
  weeks: number
  /** Its first day, as a number. */
  begins: number
  x: (day: string) => number
  xOfWeek: (week: number) => number
  /** Whether a day lies beyond the right edge. */
  beyond: (day: string) => boolean
}

/** From this week to the last day of which anything is known. */
export function scaleOf(weeks: readonly Week[], planned: readonly Planned[]): Scale {
  const begins = dayNumber(weeks[0]!.begins)
  const days = planned.flatMap((one) =>
    [one.finish, one.p50, one.p80, dueOf(one)].filter((day) => day !== null),
  )
  const last = Math.max(begins, ...days.map(dayNumber))
  const count = Math.min(MOST, Math.max(FEWEST, weeks.length, Math.floor((last - begins) / 7) + 1))
  const perDay = (RIGHT - LEFT) / (7 * count)
  const xOf = (number: number) => LEFT + perDay * Math.min(7 * count, Math.max(0, number - begins))
  return {
    ...{ weeks: count, begins },
    x: (day) => xOf(dayNumber(day)),
    xOfWeek: (week) => xOf(begins + 7 * week),
    beyond: (day) => dayNumber(day) > begins + 7 * count,
  }
}
