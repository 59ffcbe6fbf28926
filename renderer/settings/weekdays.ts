import { useMemo } from 'react'
import { useHouse } from '../workroom.tsx'

/** 1 January 2024, a Monday. */
const MONDAY = Date.UTC(2024, 0, 1)

/** The names of the days of the week for the reader, Monday first. */
export function useWeekdays(weekday: 'long' | 'short'): string[] {
  const { locale } = useHouse().reader
  return useMemo(() => {
    const format = new Intl.DateTimeFormat(locale, { weekday, timeZone: 'UTC' })
    return Array.from({ length: 7 }, (_, day) => format.format(new Date(MONDAY + day * 86_400_000)))
  }, [locale, weekday])
}
