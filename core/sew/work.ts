import { STITCHES, type StitchId } from '../words/stitches.ts'
import { OPERATION, type TimedId } from './operations.ts'
import { STITCH, skillOf } from './stitches.ts'
import type { Skill } from './types.ts'

/** A kind of work that has a time: a stitch, or an operation. */
export type WorkId = StitchId | TimedId
export const WORK_IDS = [...STITCHES, ...(Object.keys(OPERATION) as TimedId[])] as const

/**
 * Minutes by kind of work, by the catalogue: what a workroom has set or learnt is in its pace, so that work done under
 * one standard still counts for the same when she sets another.
 */
export type Work = Partial<Record<WorkId, number>>

/** Whether a kind of work is a stitch, and not an operation. */
export const isStitch = (id: WorkId): id is StitchId => id in STITCH

/**
 * Kinds of work that go alike: whoever is quick at one is likely quick at the others. All sewing by hand is of one
 * family, and what is done with a needle besides.
 */
export const FAMILIES = ['hand', 'machine', 'cutting', 'pressing', 'fitting', 'attending'] as const
export type Family = (typeof FAMILIES)[number]

const FAMILY_OF: Record<Skill, Family> = {
  handSewing: 'hand',
  machineSewing: 'machine',
  cutting: 'cutting',
  pressing: 'pressing',
  fitting: 'fitting',
  attending: 'attending',
}

/** The labour as which a kind of work is paid, and the family with which it is quick or slow. */
export const skillAt = (id: WorkId): Skill => (isStitch(id) ? skillOf(id) : OPERATION[id].skill)
export const familyOf = (id: WorkId): Family => FAMILY_OF[skillAt(id)]

/** Several works as one. */
export function sumWork(works: readonly Work[]): Work {
  const sum: Work = {}
  for (const work of works) for (const [id, minutes] of entriesOf(work)) sum[id] = (sum[id] ?? 0) + minutes
  return sum
}

/** Kinds of work with their minutes; those of none are left out. */
export const entriesOf = (work: Work): [WorkId, number][] =>
  (Object.entries(work) as [WorkId, number][]).filter(([, minutes]) => minutes > 0)
