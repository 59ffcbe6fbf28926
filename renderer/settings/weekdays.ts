import { useMemo } from 'react'
import { dayFormat } from '../../core/words/formats.ts'
import { firstWeekday } from '../../core/words/week.ts'
import { useHouse } from '../workroom.tsx'

/** 1 January 2024, a Monday. */
const MONDAY = Date.UTC(2024, 0, 1)

/** The names of the days of the week for the reader, Monday first. */
export function useWeekdays(weekday: 'long' | 'short'): string[] {
  const { locale } = useHouse().reader
  return useMemo(() => {
    const format = dayFormat(locale, { weekday })
    return Array.from({ length: 7 }, (_, day) => format.format(new Date(MONDAY + day * 86_400_000)))
  }, [locale, weekday])
}

/** The days of the week, Monday 0, in the order in which the reader's region counts them. */
export function useWeekOrder(): number[] {
  const { locale } = useHouse().reader
  return useMemo(() => {
    const first = firstWeekday(locale)
    return Array.from({ length: 7 }, (_, i) => (first + i) % 7)
  }, [locale])
}
