import type { Day } from '../../words/dates.ts'
import { type Calendar, calendarOf } from './calendar.ts'
import { DAY } from './clock.ts'
import { bestCourse, handedOver } from './course.ts'
import { commissionsOf, type Network, networkOf } from './network.ts'
import type { Away, Finish, Impossible, Job, Person, Plan, PlannedJob } from './types.ts'
import { neededBy } from './urgency.ts'
import { weeksOf } from './weeks.ts'
import type { Worked } from './work-off.ts'

/**
 * Who does what on which day, so that the greatest lateness is least. What is late is late by as little as can be.
 *
 * The load is told of so many weeks at least, this one first, each beginning on that day of the week, Monday 0.
 */
export function schedule(
  jobs: readonly Job[],
  people: readonly Person[],
  away: readonly Away[],
  today: Day,
  { weeks = 1, firstDay = 0 } = {},
): Plan {
  const calendar = calendarOf(people, away, today)
  const network = networkOf(jobs, calendar)
  const { worked, rank } = bestCourse(network, calendar)
  const needed = neededBy(network, calendar, 0)
  const { dayOf } = calendar
  const { first, last, done } = worked
  const stretches = worked.stretches.filter(({ job }) => last[job]! !== -1)

  const by = jobs.map((): Set<string> => new Set())
  for (const { job, person } of stretches) by[job]!.add(people[person]!.id)
  const planned = network.inOrder
    .filter((job) => last[job]! !== -1)
    .sort((a, b) => done[a]! - done[b]! || rank[a]! - rank[b]!)
    .map(
      (job): PlannedJob => ({
        ...{ job: jobs[job]!.id, commission: jobs[job]!.commission },
        ...{ first: dayOf(first[job]!), last: dayOf(last[job]!), by: [...by[job]!] },
        needed: Number.isFinite(needed[job]!) ? dayOf(lastDayBefore(needed[job]!)) : null,
      }),
    )
  const slots = stretches.map(({ job, person, day, from, minutes }) => ({
    ...{ job: jobs[job]!.id, person: people[person]!.id, day: dayOf(day), from, minutes },
  }))
  const load = network.inOrder
    .filter((job) => Number.isFinite(needed[job]!))
    .map((job) => ({ day: lastDayBefore(needed[job]!), minutes: jobs[job]!.minutes }))
  return {
    ...{ jobs: planned, slots },
    commissions: finishesOf(network, calendar, worked),
    impossible: impossibleOf(network, worked),
    weeks: weeksOf(calendar, stretches, load, { fewest: weeks, firstDay }),
  }
}

/** What is to be done by a minute is done by this day. */
const lastDayBefore = (minute: number): number => Math.ceil(minute / DAY) - 1

function impossibleOf({ jobs, never }: Network, { last }: Worked): Impossible[] {
  return jobs.flatMap(({ id, commission }, job) => {
    if (last[job]! !== -1) return []
    return [{ job: id, commission, why: never.get(job) ?? { code: 'horizon' as const } }]
  })
}

/** Each commission's finish, in the order in which their jobs came. */
export function finishesOf(network: Network, { dayOf }: Calendar, worked: Worked): Finish[] {
  const number = new Map(network.jobs.map((job, i) => [job, i]))
  return [...commissionsOf(network.jobs)].map(([commission, jobs]) => {
    const own = jobs.map((job) => number.get(job)!)
    const days = own.map((job) => handedOver(network, worked, job))
    const dues = own.flatMap((job) => network.due[job] ?? [])
    const lateness = own.flatMap((job, i) => (network.due[job] === null ? [] : days[i]! - network.due[job]!))
    const never = days.includes(-1)
    return {
      commission,
      finish: never ? null : dayOf(Math.max(...days)),
      due: dues.length === 0 ? null : dayOf(Math.max(...dues)),
      late: never || lateness.length === 0 ? null : Math.max(...lateness),
    }
  })
}
