import { addDays as addCalendarDays, differenceInCalendarDays, formatISO, isValid, parseISO } from 'date-fns'
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

export function addDays(day: Day, days: number): Day {
  return formatISO(addCalendarDays(parseISO(day), days), { representation: 'date' })
}

/** Days from one day to a later one; less than nothing when it is earlier. */
export const daysBetween = (from: Day, to: Day): number =>
  differenceInCalendarDays(parseISO(to), parseISO(from))

/** The workroom's calendar day at an instant (UTC, ISO 8601) in an IANA time zone. */
export function dayAt(instant: string, timeZone: string): Day {
  return new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(new Date(instant))
}

/** A day in words for the reader: `25 November 2026`. */
export function printDate(day: Day, locale: string): string {
  return new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${day}T00:00:00Z`))
}

/** A day in few letters, for a column: `25 Nov 2026`. */
export function printDayShort(day: Day, locale: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  )
}
