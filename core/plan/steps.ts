import { STAGES, type Stage } from '../draft/types.ts'
import type { Estimate } from '../price/estimate.types.ts'
import type { Minutes } from '../sew/types.ts'
import type { Work } from '../sew/work.ts'
import type { Phrase } from '../words/phrase.ts'

/** One step of one garment as the workroom follows it, with the time it is expected to take. */
export type PlannedStep = {
  /** Id of the step in the draft. */
  key: string
  stage: Stage
  /** Place in the order of the making, from 1. */
  position: number
  name: Phrase
  minutes: Minutes
  /** Its kinds of work by the catalogue; none in steps of old. */
  work: Work
}

/** A step with its mark: the instant it was done, or null. */
export type FollowedStep = PlannedStep & { doneAt: string | null }

/** The steps a garment brings with it when its quote is accepted. */
export function plannedSteps({ draft, sewing }: Pick<Estimate, 'draft' | 'sewing'>): PlannedStep[] {
  const times = new Map(sewing.steps.map((time) => [time.step, time]))
  return draft.steps.map(({ id, stage, name }, i) => {
    const time = times.get(id)
    if (time === undefined) throw new Error(`step ${id} has no time`)
    return { key: id, stage, position: i + 1, name, minutes: time.total, work: time.work ?? {} }
  })
}

/** Steps that came up in the making, at a fitting or with a new draft, have a colon in their key; the others are of a draft. */
export const isPlanned = ({ key }: Pick<PlannedStep, 'key'>): boolean => !key.includes(':')

type Standing = { id: string; key: string; doneAt: string | null; timed: boolean }

/** What becomes of the steps of a garment that is drafted again. */
export type StepChange = {
  /** Steps that stay, with what the new plan says of them; those that are done keep what they were. */
  kept: { id: string; step: PlannedStep }[]
  added: PlannedStep[]
  /** Ids of open steps that nothing asks for any more. */
  gone: string[]
}

/**
 * Brings the steps of a garment to a new plan. What is done stays done, and what time was spent on stays; steps that did not
 * come from a plan are left alone.
 */
export function stepsAfter(standing: readonly Standing[], planned: readonly PlannedStep[]): StepChange {
  const next = new Map(planned.map((step) => [step.key, step]))
  const known = new Set(standing.map(({ key }) => key))
  return {
    kept: standing.flatMap(({ id, key, doneAt }) => {
      const step = next.get(key)
      return step === undefined || doneAt !== null ? [] : [{ id, step }]
    }),
    added: planned.filter(({ key }) => !known.has(key)),
    gone: standing
      .filter((step) => isPlanned(step) && !next.has(step.key) && step.doneAt === null && !step.timed)
      .map(({ id }) => id),
  }
}

/** How many steps a stage has, and how many of them are done. */
export type StageState = { stage: Stage; steps: number; done: number; state: 'open' | 'begun' | 'done' }

/** How far each stage is, in the order of the work; stages without steps are left out. */
export function stagesOf(steps: readonly Pick<FollowedStep, 'stage' | 'doneAt'>[]): StageState[] {
  return STAGES.flatMap((stage) => {
    const here = steps.filter((step) => step.stage === stage)
    const done = here.filter(({ doneAt }) => doneAt !== null).length
    if (here.length === 0) return []
    return [
      {
        stage,
        steps: here.length,
        done,
        state: done === 0 ? 'open' : done === here.length ? 'done' : 'begun',
      },
    ]
  })
}

/** Answers of a garment: cut, sewn, hemmed. */
export type Marks = Record<'cut' | 'sewn' | 'hemmed', boolean>

/** The three questions asked of every garment: a stage counts when all its steps are done. */
export const marksOf = (steps: readonly Pick<FollowedStep, 'stage' | 'doneAt'>[]): Marks =>
  marksFrom(stagesOf(steps))

/** The same from stages counted already; a stage that has no steps is not done. */
export function marksFrom(stages: readonly Pick<StageState, 'stage' | 'steps' | 'done'>[]): Marks {
  const finished = new Set(stages.filter(({ steps, done }) => done === steps).map(({ stage }) => stage))
  return { cut: finished.has('cut'), sewn: finished.has('sew'), hemmed: finished.has('hem') }
}

/** The next step to take, or undefined when everything is done. */
export function nextStep<S extends FollowedStep>(steps: readonly S[]): S | undefined {
  return [...steps].sort((a, b) => a.position - b.position).find(({ doneAt }) => doneAt === null)
}
