import type { Day } from '../../words/dates.ts'
import { type Calendar, calendarOf } from './calendar.ts'
import { type Best, bestCourse, greatestLateness, handedOver } from './course.ts'
import { commissionsOf, type Network, networkOf } from './network.ts'
import type { Base, Job } from './types.ts'

/** What makes a commission late. */
type Cause =
  /** Its day has gone by. */
  | { code: 'pastDue' }
  /** Its own hours do not fit from today on, though nothing else were in the way. */
  | { code: 'ownHours'; minutes: number }
  /** Its drying and hanging do not fit. */
  | { code: 'waits' }
  /** Something comes too late, and that this job may not be begun before tells most. */
  | { code: 'release'; job: string; release: Day }
  /** Other work is more urgent: so many minutes, of these commissions, the most first. */
  | { code: 'othersFirst'; minutes: number; commissions: string[] }

/** Each cause with the days that it adds to those before it; together they are all the days of lateness. */
export type Reason = Cause & { days: number }

/** The reasons of every commission that is late in the plan. Those with something that can never be done have none. */
export function reasonsOf({ jobs, people, away, today }: Base): Map<string, Reason[]> {
  const calendar = calendarOf(people, away, today)
  const network = networkOf(jobs, calendar)
  const best = bestCourse(network, calendar)
  const number = new Map(jobs.map((job, i) => [job, i]))
  return new Map(
    [...commissionsOf(jobs)].flatMap(([commission, own]) => {
      const numbers = own.map((job) => number.get(job)!)
      const late = latenessOf(network, best, numbers)
      return late > 0 && late < Number.POSITIVE_INFINITY
        ? [
            [
              commission,
              reasonsFor(own, late, calendar, () => othersBefore(network, calendar, best, numbers)),
            ] as const,
          ]
        : []
    }),
  )
}

function latenessOf(network: Network, { worked }: Best, own: readonly number[]): number {
  if (own.some((job) => worked.last[job] === -1)) return Number.POSITIVE_INFINITY
  return own.reduce((worst, job) => {
    const due = network.due[job]!
    return due === null ? worst : Math.max(worst, handedOver(network, worked, job) - due)
  }, 0)
}

/** What is added to the lateness when one thing after the other is put in the way. */
function reasonsFor(
  own: readonly Job[],
  late: number,
  calendar: Calendar,
  others: () => { minutes: number; commissions: string[] },
): Reason[] {
  const alone = (jobs: readonly Job[]) => {
    const network = networkOf(jobs, calendar)
    return greatestLateness(network, bestCourse(network, calendar).worked)
  }
  const reasons: Reason[] = []
  let said = 0
  const say = (lateness: number, cause: () => Cause) => {
    const days = Math.min(lateness, late) - said
    if (days <= 0) return
    reasons.push({ ...cause(), days })
    said += days
  }
  const unhindered = own.map((job) => ({ ...job, release: null, wait: 0 }))
  say(alone(own.map((job) => ({ ...job, minutes: 0, release: null, wait: 0 }))), () => ({ code: 'pastDue' }))
  say(alone(unhindered), () => ({
    code: 'ownHours',
    minutes: own.reduce((sum, job) => sum + job.minutes, 0),
  }))
  say(alone(own.map((job) => ({ ...job, release: null }))), () => ({ code: 'waits' }))
  say(alone(own), () => ({ code: 'release', ...worstRelease(own, alone) }))
  say(late, () => ({ code: 'othersFirst', ...others() }))
  return reasons
}

/** The job whose release would help most if it fell away; of equals, the one released last. */
function worstRelease(
  own: readonly Job[],
  alone: (jobs: readonly Job[]) => number,
): { job: string; release: Day } {
  const tried = own.flatMap(({ id, release }) => {
    if (release === null) return []
    const without = own.map((job) => (job.id === id ? { ...job, release: null } : job))
    return [{ job: id, release, late: alone(without) }]
  })
  const [{ job, release }] = tried.sort((a, b) => a.late - b.late || (a.release < b.release ? 1 : -1)) as [
    (typeof tried)[number],
  ]
  return { job, release }
}

/** The work of others that was more urgent and done before by those who could have done its own. */
function othersBefore(network: Network, { able }: Calendar, { rank, worked }: Best, own: readonly number[]) {
  const end = Math.max(...own.map((job) => worked.done[job]!))
  const last = Math.max(...own.map((job) => rank[job]!))
  const skills = [...new Set(own.map((job) => network.jobs[job]!.skill))]
  const minutes = new Map<string, number>()
  for (const stretch of worked.stretches) {
    const { commission } = network.jobs[stretch.job]!
    const before = rank[stretch.job]! < last && worked.done[stretch.job]! <= end
    if (!before || own.includes(stretch.job) || !skills.some((skill) => able(stretch.person, skill))) continue
    minutes.set(commission, (minutes.get(commission) ?? 0) + stretch.minutes)
  }
  const sorted = [...minutes].sort((a, b) => b[1] - a[1])
  return {
    minutes: sorted.reduce((sum, [, one]) => sum + one, 0),
    commissions: sorted.map(([commission]) => commission),
  }
}
