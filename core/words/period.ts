import { addDays, type Day } from './dates.ts'
import { dayFormat } from './formats.ts'

/** Stretches of time that figures are asked of, from the day it is. */
export const PERIODS = ['all', 'thisMonth', 'lastMonth', 'thisYear', 'lastYear'] as const
export type PeriodId = (typeof PERIODS)[number]

/** The first and the last day of a stretch of time; nothing of either where all of time is meant. */
export function daysOf(period: PeriodId, today: Day): { from?: Day; to?: Day } {
  const [year, month] = [Number(today.slice(0, 4)), Number(today.slice(5, 7))]
  switch (period) {
    case 'all':
      return {}
    case 'thisMonth':
      return daysOfMonth(today.slice(0, 7))
    case 'lastMonth':
      return daysOfMonth(month === 1 ? `${year - 1}-12` : `${year}-${String(month - 1).padStart(2, '0')}`)
    case 'thisYear':
      return { from: `${year}-01-01`, to: `${year}-12-31` }
    case 'lastYear':
      return { from: `${year - 1}-01-01`, to: `${year - 1}-12-31` }
  }
}

/** The first and the last day of a month such as `2026-11`. */
export function daysOfMonth(month: string): { from: Day; to: Day } {
  const from = `${month}-01`
  // A month is over before its thirty-second day, and the next one begins within the days after it.
  const next = addDays(from, 31).slice(0, 7)
  return { from, to: addDays(`${next}-01`, -1) }
}

/** A month such as `2026-11` as the reader names it. */
export const printMonth = (month: string, locale: string): string =>
  dayFormat(locale, { month: 'long', year: 'numeric' }).format(new Date(`${month}-01T00:00:00Z`))
