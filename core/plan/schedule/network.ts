import type { Calendar } from './calendar.ts'
import { HORIZON } from './clock.ts'
import type { Job, Never } from './types.ts'

/** Open jobs by number, what follows on what, and which of them can never be done. */
export type Network = {
  jobs: readonly Job[]
  /** Jobs that follow on each, and how many each waits for. */
  followers: readonly (readonly number[])[]
  waitsFor: readonly number[]
  /** Jobs that can be done, each after all that it waits for. */
  inOrder: readonly number[]
  never: ReadonlyMap<number, Never>
  /** Days from today, or null. */
  release: readonly (number | null)[]
  due: readonly (number | null)[]
  minutes: readonly number[]
  /** Whole days. */
  wait: readonly number[]
}

/** @throws Error for jobs that no program should have handed over: two of one id, time that is no time */
export function networkOf(jobs: readonly Job[], calendar: Calendar): Network {
  const number = new Map(jobs.map(({ id }, i) => [id, i]))
  if (number.size < jobs.length) throw new Error('two jobs have the same id')
  for (const { id, minutes, wait } of jobs)
    if (!(minutes >= 0 && minutes < Number.POSITIVE_INFINITY && wait >= 0))
      throw new Error(`job ${id} has no proper time`)
  const before = jobs.map(({ after }) =>
    [...new Set(after)].map((id) => number.get(id)).filter((i) => i !== undefined),
  )
  const followers: number[][] = jobs.map(() => [])
  before.forEach((ones, i) => {
    for (const one of ones) followers[one]!.push(i)
  })
  const inDays = (day: string | null) => (day === null ? null : calendar.numberOf(day))
  const waitsFor = before.map((ones) => ones.length)
  const sorted = sort(followers, waitsFor)
  const never = new Map<number, Never>()
  for (const i of sorted) {
    const blocked = before[i]!.find((one) => never.has(one))
    const why =
      blocked === undefined ? missing(jobs[i]!, calendar) : { code: 'after' as const, job: jobs[blocked]!.id }
    if (why !== undefined) never.set(i, why)
  }
  const inSorted = new Set(sorted)
  jobs.forEach((_, i) => {
    if (!inSorted.has(i)) never.set(i, { code: 'circle' })
  })
  return {
    ...{ jobs, followers, waitsFor, never },
    inOrder: sorted.filter((i) => !never.has(i)),
    release: jobs.map(({ release }) => inDays(release)),
    due: jobs.map(({ due }) => inDays(due)),
    minutes: jobs.map(({ minutes }) => minutes),
    wait: jobs.map(({ wait }) => Math.min(HORIZON, Math.ceil(wait))),
  }
}

/** Every job after those it waits for; jobs in a circle, and what waits for them, are left out (Kahn 1962). */
function sort(followers: readonly (readonly number[])[], waitsFor: readonly number[]): number[] {
  const waiting = [...waitsFor]
  const sorted = waiting.flatMap((count, i) => (count === 0 ? [i] : []))
  for (let at = 0; at < sorted.length; at++)
    for (const next of followers[sorted[at]!]!) {
      waiting[next] = waiting[next]! - 1
      if (waiting[next] === 0) sorted.push(next)
    }
  return sorted
}

function missing({ skill, minutes }: Job, { people, able, reach }: Calendar): Never | undefined {
  if (minutes === 0) return undefined
  if (!people.some((_, p) => able(p, skill))) return { code: 'noSkill', skill }
  return reach(skill).all === 0 ? { code: 'noHours', skill } : undefined
}

/** Jobs by commission, in the order in which they came. */
export const commissionsOf = (jobs: readonly Job[]): Map<string, Job[]> =>
  Map.groupBy(jobs, ({ commission }) => commission)
