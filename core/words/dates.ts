// One by one: of the whole library Node would look up some hundred files, for a second, in every thread.
import { addDays as addCalendarDays } from 'date-fns/addDays'
import { differenceInCalendarDays } from 'date-fns/differenceInCalendarDays'
import { formatISO } from 'date-fns/formatISO'
import { isValid } from 'date-fns/isValid'
import { parseISO } from 'date-fns/parseISO'
import { dayFormat, momentFormat } from './formats.ts'
import { phrase } from './phrase.ts'
import { Refusal } from './refusal.ts'

/** A calendar day, `YYYY-MM-DD`, without zone or hour. */
export type Day = string

/** Reads a calendar day. @throws Refusal when the text is not `YYYY-MM-DD` or no such day exists. */
export function readDay(text: string): Day {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text) || !isValid(parseISO(text))) {
    throw new Refusal(phrase('refusal.date.unreadable', { text }))
  }
  return text
}

/** So many calendar days later, or earlier where they are less than nothing. @param day must exist */
export function addDays(day: Day, days: number): Day {
  return formatISO(addCalendarDays(parseISO(day), days), { representation: 'date' })
}

/** Days from one day to a later one; less than nothing when it is earlier. */
export const daysBetween = (from: Day, to: Day): number =>
  differenceInCalendarDays(parseISO(to), parseISO(from))

/** Days since 1 January 1970, which is day 0: for reckoning with many days, free of clocks and zones. */
export const dayNumber = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / 86_400_000

/** The calendar day of such a number. */
export const dayOfNumber = (number: number): Day => new Date(number * 86_400_000).toISOString().slice(0, 10)

/** Day of the week of such a number, Monday 0 to Sunday 6; day 0 was a Thursday. */
export const weekdayOfNumber = (number: number): number => (((number + 3) % 7) + 7) % 7

/** The workroom's calendar day at an instant (UTC, ISO 8601) in an IANA time zone. */
export const dayAt = (instant: string, timeZone: string): Day =>
  momentFormat('en-CA', { timeZone, ...IN_FIGURES }).format(new Date(instant))

const IN_FIGURES = { year: 'numeric', month: '2-digit', day: '2-digit' } as const

/** A day in words for the reader: `25 November 2026`. */
export function printDate(day: Day, locale: string): string {
  return dayFormat(locale, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
  }).format(new Date(`${day}T00:00:00Z`))
}

/** A day in few letters, for a column: `25 Nov 2026`. */
export function printDayShort(day: Day, locale: string): string {
  return dayFormat(locale, { dateStyle: 'medium' }).format(new Date(`${day}T00:00:00Z`))
}
