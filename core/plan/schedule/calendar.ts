import { SKILLS, type Skill } from '../../sew/types.ts'
import { type Day, dayNumber, dayOfNumber, weekdayOfNumber } from '../../words/dates.ts'
import { DAY, HORIZON } from './clock.ts'
import { type Reach, reachOf } from './reach.ts'
import type { Away, Person } from './types.ts'

/** Who has how many minutes on which day. Days are counted from today. */
export type Calendar = {
  people: readonly Person[]
  /** Minutes of each person, day by day. */
  hours: readonly Float64Array[]
  /** Minutes a day of sewing by hand of each person. */
  hand: readonly number[]
  /** Whether a person can do such work at all. */
  able: (person: number, skill: Skill) => boolean
  /** How much of such work can be done in which time. */
  reach: (skill: Skill) => Reach
  /** Day of the week of today, Monday 0. */
  weekday: number
  dayOf: (day: number) => Day
  numberOf: (day: Day) => number
}

/** The days from today on, as far as is looked ahead. @param away days off, both ends among them */
export function calendarOf(people: readonly Person[], away: readonly Away[], today: Day): Calendar {
  const start = dayNumber(today)
  const hours = people.map(({ id, week }) => {
    const minutes = Float64Array.from({ length: HORIZON }, (_, d) => minutesOn(week, start + d))
    for (const one of away) {
      if (one.person !== null && one.person !== id) continue
      const from = Math.max(0, dayNumber(one.from) - start)
      minutes.fill(0, from, Math.max(from, dayNumber(one.to) - start + 1))
    }
    return minutes
  })
  const hand = people.map(({ handCap }) => handCap ?? Number.POSITIVE_INFINITY)
  const skills = people.map((person) => SKILLS.map((skill) => person.skills.includes(skill)))
  const able = (person: number, skill: Skill) => skills[person]![SKILLS.indexOf(skill)]!
  return {
    ...{ people, hours, hand, able },
    reach: kept((skill) => {
      const who = hours.flatMap((minutes, p) => (able(p, skill) ? { minutes, hand: hand[p]! } : []))
      return reachOf(who, skill === 'handSewing')
    }),
    weekday: weekdayOfNumber(start),
    dayOf: kept((day) => dayOfNumber(start + day)),
    numberOf: (day) => dayNumber(day) - start,
  }
}

const minutesOn = (week: readonly number[], number: number): number =>
  Math.min(DAY, Math.max(0, week[weekdayOfNumber(number)] ?? 0))

/** Works a value out once and keeps it. */
function kept<K, V>(of: (key: K) => V): (key: K) => V {
  const values = new Map<K, V>()
  return (key) => {
    const known = values.get(key) ?? of(key)
    values.set(key, known)
    return known
  }
}
