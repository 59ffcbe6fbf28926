import type { Pace } from '../sew/pace/pace.ts'
import { factorAt } from '../sew/pace/time-of.ts'
import type { Skill } from '../sew/types.ts'
import { entriesOf, skillAt, type Work, type WorkId } from '../sew/work.ts'
import type { Day } from '../words/dates.ts'
import type { Job } from './schedule/types.ts'
import { isPlanned } from './steps.ts'

/** Days that go by when work is done, before what follows can begin: washed cloth dries (common practice). */
const WAIT_AFTER: Partial<Record<WorkId, number>> = { prewash: 1 }
/** Days that go by before work can begin: a hem on the cross hangs first (common practice: a day or two). */
const WAIT_BEFORE: Partial<Record<WorkId, number>> = { levelHem: 1 }

/** A garment that is to be made: its steps in order, those that are done left out. */
export type ToMake = {
  id: string
  commission: string
  due: Day | null
  /** The day its cloth is there, if it is not there yet. */
  cloth: Day | null
  /** The day of its fitting, if one is booked. */
  fitting: Day | null
  steps: readonly { id: string; key: string; stage: string; work: Work; minutes: { mean: number } }[]
}

/** The jobs of garments: each step after the one before it, at the workroom's pace, with its waits and releases. */
export const jobsOf = (garments: readonly ToMake[], pace: Pace): Job[] =>
  garments.flatMap(({ id, commission, due, cloth, fitting, steps }) =>
    steps.map(({ id: step, key, stage, work, minutes }, i): Job => {
      const before = steps[i - 1]
      const after = steps[i + 1]
      return {
        ...{ id: step, garment: id, commission, due, work },
        skill: mostOf(work, pace),
        minutes: expected(work, pace) ?? minutes.mean,
        after: before === undefined ? [] : [before.id],
        // What a fitting led to is done before the next one.
        release: i === 0 ? cloth : stage === 'fit' && isPlanned({ key }) ? fitting : null,
        wait: Math.max(daysIn(WAIT_AFTER, work), after === undefined ? 0 : daysIn(WAIT_BEFORE, after.work)),
      }
    }),
  )

const daysIn = (waits: Partial<Record<WorkId, number>>, work: Work): number =>
  Math.max(0, ...entriesOf(work).map(([id]) => waits[id] ?? 0))

/** Minutes at the workroom's pace; nothing for a step of old, whose kinds of work nobody wrote down. */
function expected(work: Work, pace: Pace): number | undefined {
  const kinds = entriesOf(work)
  return kinds.length === 0
    ? undefined
    : kinds.reduce((sum, [id, standard]) => sum + standard * factorAt(pace, id), 0)
}

/** The kind of labour that most of a step is. */
function mostOf(work: Work, pace: Pace): Skill {
  const bySkill = new Map<Skill, number>()
  for (const [id, standard] of entriesOf(work)) {
    const skill = skillAt(id)
    bySkill.set(skill, (bySkill.get(skill) ?? 0) + standard * factorAt(pace, id))
  }
  return [...bySkill].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'handSewing'
}
