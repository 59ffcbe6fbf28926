import { z } from 'zod'
import { STAGES } from '../draft/types.ts'
import {
  firstCut,
  getCommission,
  getGarment,
  getStep,
  markStep,
  type StepRow,
  stepsOfGarments,
} from '../store/commissions.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { followed } from './commissions.ts'
import { anyway, refuseCutting } from './cutting.ts'
import { drawerAfter } from './drawer.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { cutFrom, uncutFrom } from './stock.ts'
import { refuseWashing } from './washing.ts'

const byId = z.strictObject({ id: inputs.id })
const oneStage = z.strictObject({ garmentId: inputs.id, stage: z.enum(STAGES) })

/** Steps marked done and open again. Each answers with the ids of those it marked, so that just these can be undone. */
export const tickRequests = [
  request({
    name: 'step.tick',
    kind: 'command',
    about: 'Marks one step done. What speaks against washing or cutting must be confirmed.',
    input: byId.extend({ anyway }),
    run: ({ id, anyway: warned }, context) => {
      const step = getStep(context.store.db, id)
      refuseEarly([step], warned, context)
      return marked([step], true, 'step.tick', context)
    },
  }),
  request({
    name: 'step.untick',
    kind: 'command',
    about: 'Marks one step open again.',
    input: byId,
    run: ({ id }, context) => marked([getStep(context.store.db, id)], false, 'step.untick', context),
  }),
  request({
    name: 'steps.untick',
    kind: 'command',
    about:
      'Marks just these steps of one commission open again, all of them or none: what a tick did is undone.',
    input: z.strictObject({ ids: z.array(inputs.id).min(1).max(200) }),
    run: ({ ids }, context) => {
      const steps = [...new Set(ids)].map((id) => getStep(context.store.db, id, 'ids'))
      refuseSeveral(steps, context)
      if (steps.some(({ doneAt }) => doneAt === null)) throw new Refusal(phrase('refusal.plan.undone'), 'ids')
      return marked(steps, false, 'steps.untick', context)
    },
  }),
  request({
    name: 'stage.tick',
    kind: 'command',
    about:
      'Marks every step of a stage of a garment done: cut, sewn, hemmed. What speaks against washing or cutting must be confirmed.',
    input: oneStage.extend({ anyway }),
    run: ({ anyway: warned, ...input }, context) => {
      const steps = stepsOfStage(input, context)
      refuseEarly(steps, warned, context)
      return marked(steps, true, 'stage.tick', context)
    },
  }),
  request({
    name: 'stage.untick',
    kind: 'command',
    about: 'Marks every step of a stage of a garment open again.',
    input: oneStage,
    run: (input, context) => marked(stepsOfStage(input, context), false, 'stage.untick', context),
  }),
]

/** What is asked before steps of one garment are marked done. @throws Refusal at the guard that was not answered */
function refuseEarly(steps: readonly StepRow[], warned: z.output<typeof anyway>, context: Context): void {
  const { garmentId, stage } = steps[0]!
  if (stage === 'cut') refuseCutting(garmentId, warned, context)
  if (steps.some(({ key, doneAt }) => key === 'wash' && doneAt === null))
    refuseWashing(garmentId, warned, context)
}

/** Marks a step done, as the maker would. */
export const tickStep = (row: StepRow, context: Context): void => {
  mark(row, true, 'step.tick', context)
}

/** @throws Refusal when the garment has no such stage */
function stepsOfStage(
  { garmentId, stage }: z.output<typeof oneStage>,
  { store: { db } }: Context,
): StepRow[] {
  getGarment(db, garmentId, 'garmentId')
  const steps = stepsOfGarments(db, [garmentId]).filter((step) => step.stage === stage)
  if (steps.length === 0)
    throw new Refusal(phrase('refusal.plan.noStage', { stage: phrase(`paper.stage.${stage}`) }), 'stage')
  return steps
}

/** Ticks or unticks steps of one commission, and tells which of them were not so before. */
function marked(steps: readonly StepRow[], done: boolean, name: string, context: Context) {
  const { db } = context.store
  for (const row of steps) refuseClosed(row, context)
  const changed = steps.filter((row) => mark(row, done, name, context))
  const { commissionId } = getGarment(db, steps[0]!.garmentId)
  return {
    commission: followed(getCommission(db, commissionId), context),
    marked: changed.map(({ id }) => id),
  }
}

/** Ticks or unticks a step, and answers whether it was otherwise before; one that is already so keeps its own date. */
function mark(row: StepRow, done: boolean, name: string, context: Context): boolean {
  if ((row.doneAt !== null) === done) return false
  // The first step of cutting that is ticked cuts what was promised to the garment.
  if (done && row.stage === 'cut') cutFrom(row.garmentId, context)
  const after = markStep(context.store.db, row, done ? { at: context.now(), by: context.actor } : null)
  if (row.stage === 'sew') drawerAfter(row.garmentId, context)
  recorded(context, name, 'step', row.id, { doneAt: row.doneAt }, { doneAt: after.doneAt })
  // And when none of them is ticked any more, nothing was cut.
  if (!done && row.stage === 'cut' && firstCut(context.store.db, [row.garmentId]) === null)
    uncutFrom(row.garmentId, context)
  return true
}

/** @throws Refusal when steps belong to several commissions */
function refuseSeveral(steps: readonly StepRow[], { store: { db } }: Context): void {
  const commissions = new Set(steps.map(({ garmentId }) => getGarment(db, garmentId).commissionId))
  if (commissions.size > 1) throw new Refusal(phrase('refusal.plan.undoSeveral'), 'ids')
}

/** @throws Refusal when the commission is delivered or cancelled */
function refuseClosed(row: StepRow, { store: { db } }: Context): void {
  const { state, number } = getCommission(db, getGarment(db, row.garmentId).commissionId)
  if (state !== 'open') throw new Refusal(phrase('refusal.plan.closed', { number }), 'id')
}
