import type { Away, Base, Job, Person, Plan } from '../../core/plan/schedule/types.ts'
import { SKILLS, type Skill } from '../../core/sew/types.ts'
import { addDays, dayNumber, weekdayOfNumber } from '../../core/words/dates.ts'
import type { chance } from './chance.ts'

export const aJob = (id: string, more: Partial<Job> = {}): Job => ({
  ...{ id, garment: id, commission: id, skill: 'handSewing', minutes: 60, work: {}, after: [] },
  ...{ release: null, wait: 0, due: null },
  ...more,
})
/** Somebody who can do everything, so many minutes on every day of the week. */
export const aPerson = (minutes: number, more: Partial<Person> = {}): Person => ({
  ...{ id: 'maker', name: 'maker', skills: SKILLS, week: Array.from({ length: 7 }, () => minutes) },
  ...{ handCap: null },
  ...more,
})

export type Draw = ReturnType<typeof chance>
export const below = (draw: Draw, count: number): number => Math.floor(draw.uniform() * count)
export const oneOf = <T>(draw: Draw, values: readonly T[]): T => values[below(draw, values.length)]!
export const some = <T>(draw: Draw, values: readonly T[], odds: number): T[] =>
  values.filter(() => draw.uniform() < odds)

/** Minutes that a person is there on a day, reckoned anew from week and days off. */
export function hoursOn({ id, week }: Person, away: readonly Away[], day: number): number {
  const off = away.some(
    ({ person, from, to }) =>
      (person === null || person === id) && dayNumber(from) <= day && day <= dayNumber(to),
  )
  return off ? 0 : week[weekdayOfNumber(day)]!
}

/** Greatest lateness of jobs by the last stretch of work on each, days; what nothing follows waits for its wait. */
export function latenessBySlots({ jobs }: Pick<Base, 'jobs'>, { slots }: Plan): number {
  return jobs.reduce((worst, { id, due, wait }) => {
    if (due === null) return worst
    const last = Math.max(...slots.filter(({ job }) => job === id).map(({ day }) => dayNumber(day)))
    const followed = jobs.some(({ after }) => after.includes(id))
    return Math.max(worst, last + (followed ? 0 : wait) - dayNumber(due))
  }, Number.NEGATIVE_INFINITY)
}

/** Everything in which a plan goes against its own people, days and jobs, in words; none is right. */
export function wrongIn({ jobs, people, away, today }: Base, plan: Plan): string[] {
  const wrong: string[] = []
  const say = (bad: boolean, what: string) => {
    if (bad) wrong.push(what)
  }
  const minute = (day: string, from: number) => dayNumber(day) * 1440 + from
  const TINY = 1e-5
  const byId = new Map(jobs.map((job) => [job.id, job]))
  const persons = new Map(people.map((person) => [person.id, person]))
  const slotsOf = Map.groupBy(plan.slots, ({ job }) => job)
  const planned = new Map(plan.jobs.map((one) => [one.job, one]))
  const never = new Set(plan.impossible.map(({ job }) => job))
  for (const [i, { job, person, day, from, minutes }] of plan.slots.entries()) {
    const { skills, handCap } = persons.get(person)!
    const { skill, release } = byId.get(job)!
    say(!skills.includes(skill), `${person} cannot do ${job}`)
    say(day < today || (release !== null && day < release), `${job} on ${day} is too early`)
    const hours = hoursOn(persons.get(person)!, away, dayNumber(day))
    say(minutes <= 0 || from < 0 || from + minutes > hours + TINY, `${job} on ${day} is outside the hours`)
    const beside = plan.slots.filter(
      (other, k) =>
        k !== i &&
        other.day === day &&
        (other.person === person || other.job === job) &&
        other.from < from + minutes - TINY &&
        from < other.from + other.minutes - TINY,
    )
    say(beside.length > 0, `${person} or ${job} twice at once on ${day}`)
    const byHand = plan.slots
      .filter((other) => other.person === person && other.day === day)
      .filter((other) => byId.get(other.job)!.skill === 'handSewing')
      .reduce((sum, other) => sum + other.minutes, 0)
    say(handCap !== null && byHand > handCap + TINY, `${person} sews too long by hand on ${day}`)
  }
  for (const job of jobs) {
    const { id, minutes, after } = job
    const own = slotsOf.get(id) ?? []
    const plan = planned.get(id)
    say((plan === undefined) === !never.has(id), `${id} is not either done or never done`)
    if (plan === undefined) {
      say(own.length > 0, `${id} is never done, and yet worked on`)
      continue
    }
    const sum = own.reduce((all, slot) => all + slot.minutes, 0)
    say(Math.abs(sum - minutes) > TINY * Math.max(1, own.length), `${id} gets ${sum} of ${minutes} minutes`)
    if (own.length === 0) continue
    say(plan.first !== own[0]!.day || plan.last !== own.at(-1)!.day, `${id} has other days than its work`)
    say(plan.by.join() !== [...new Set(own.map(({ person }) => person))].join(), `${id} is done by others`)
    for (const one of after) {
      const before = byId.get(one)
      const end = slotsOf.get(one)?.at(-1)
      if (before === undefined || end === undefined) continue
      const early =
        minute(own[0]!.day, own[0]!.from) < minute(end.day, end.from + end.minutes) - TINY ||
        dayNumber(own[0]!.day) < dayNumber(end.day) + before.wait
      say(early, `${id} is begun before ${one} allows it`)
    }
  }
  return wrong
}

export const SEWING: readonly Skill[] = ['handSewing', 'machineSewing', 'cutting']

/** A Monday, and days from it. */
export const MONDAY = '2026-06-01'
export const dayFrom = (n: number): string => addDays(MONDAY, n)

/** One person with an odd week, and commissions of a few jobs in a row, due here and there. */
export function aSmallWorkroom(draw: Draw): Base {
  const jobs = Array.from({ length: 1 + below(draw, 5) }, (_, c) =>
    Array.from({ length: 1 + below(draw, 4) }, (_, i) =>
      aJob(`${c}-${i}`, {
        commission: `${c}`,
        minutes: 20 + below(draw, 300),
        after: i > 0 && draw.uniform() < 0.8 ? [`${c}-${i - 1}`] : [],
        release: draw.uniform() < 0.2 ? dayFrom(below(draw, 15)) : null,
        wait: draw.uniform() < 0.2 ? 1 + below(draw, 3) : 0,
        due: draw.uniform() < 0.8 ? dayFrom(below(draw, 30) - 2) : null,
      }),
    ),
  ).flat()
  const week = Array.from({ length: 7 }, () => (draw.uniform() < 0.3 ? 0 : 60 + below(draw, 200)))
  week[below(draw, 7)] = 100
  return { jobs, people: [aPerson(0, { week })], away: [], today: MONDAY }
}
