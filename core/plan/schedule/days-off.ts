import { type Day, dayNumber } from '../../words/dates.ts'
import type { Away } from './types.ts'

/** How many days from one to another, both among them, somebody is off. */
export function daysOffIn(away: readonly Away[], from: Day, to: Day): number {
  const [first, last] = [dayNumber(from), dayNumber(to)]
  const days = new Set<number>()
  for (const one of away) {
    const end = Math.min(last, dayNumber(one.to))
    for (let day = Math.max(first, dayNumber(one.from)); day <= end; day++) days.add(day)
  }
  return days.size
}

/** The days off by which nobody is there on a day; nothing where somebody is. */
export function closedBy<A extends Away>(
  day: Day,
  away: readonly A[],
  people: readonly { id: string }[],
): A | undefined {
  const off = away.filter(({ from, to }) => from <= day && day <= to)
  const all = off.find(({ person }) => person === null)
  const each = people.length > 0 && people.every(({ id }) => off.some(({ person }) => person === id))
  return all ?? (each ? off[0] : undefined)
}
