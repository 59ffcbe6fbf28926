import { type Day, dayNumber } from '../../words/dates.ts'
import { schedule } from './schedule.ts'
import type { Base, Finish, Job, Plan } from './types.ts'

/** An accepted commission that would be done later: by how many days, and how late it would be, and is without. */
export type Change = {
  commission: string
  /** Null when it would not be done within the years that are looked at. */
  later: number | null
  late: number | null
  lateBefore: number | null
}

/** The plan with what is added, when that would be done, and which accepted commissions it would put off. */
export type WhatIf = { plan: Plan; added: Finish[]; changed: Change[] }

/** Works everything off with and without what is added; nothing is kept of either. @param added not among the jobs */
export function whatIf({ jobs, people, away, today }: Base, added: readonly Job[]): WhatIf {
  const before = new Map(
    schedule(jobs, people, away, today).commissions.map((finish) => [finish.commission, finish]),
  )
  const plan = schedule([...jobs, ...added], people, away, today)
  const names = new Set(added.map(({ commission }) => commission))
  const changed = plan.commissions.flatMap(({ commission, finish, late }): Change[] => {
    const was = before.get(commission)
    if (was === undefined || was.finish === null) return []
    const later = putOff(was.finish, finish)
    return later !== null && later <= 0 ? [] : [{ commission, later, late, lateBefore: was.late }]
  })
  return { plan, added: plan.commissions.filter(({ commission }) => names.has(commission)), changed }
}

const putOff = (before: Day, after: Day | null): number | null =>
  after === null ? null : dayNumber(after) - dayNumber(before)
