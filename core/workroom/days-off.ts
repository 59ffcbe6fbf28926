import { closedBy, daysOffIn } from '../plan/schedule/days-off.ts'
import type { Away } from '../plan/schedule/types.ts'
import { listAbsences } from '../store/bench-people.ts'
import type { Day } from '../words/dates.ts'
import { peopleOf } from './people.ts'
import type { Context } from './request.ts'

/** Days off as they were written down, with the word for them; empty where none was said. */
type Absence = Away & { id: string; note: string }

/** The days off of those who work here, and of everyone, by their first day. */
export function absencesOf(context: Context): Absence[] {
  const here = new Set(peopleOf(context).map(({ id }) => id))
  return listAbsences(context.store.db)
    .filter(({ personId }) => personId === null || here.has(personId))
    .map(({ id, personId, from, to, note }) => ({ id, person: personId, from, to, note }))
}

/** What is written down from one day to another, both among them: how many days, and which; named where one alone is off. */
export function daysOffOf({ from, to }: { from: Day; to: Day }, context: Context) {
  const names = new Map(peopleOf(context).map(({ id, name }) => [id, name]))
  const away = absencesOf(context).filter((one) => one.from <= to && from <= one.to)
  return {
    days: daysOffIn(away, from, to),
    spans: away.map(({ person, ...one }) => ({
      ...one,
      who: person === null ? null : (names.get(person) ?? null),
    })),
  }
}

/** Says of a day whether nobody is there on it: the word for the days off it is among, null for any other. */
export function closedOn(context: Context): (day: Day | null) => string | null {
  const [away, people] = [absencesOf(context), peopleOf(context)]
  return (day) => (day === null ? null : (closedBy(day, away, people)?.note ?? null))
}
