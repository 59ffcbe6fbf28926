import { z } from 'zod'
import { estimatesIn } from '../draft/construction.ts'
import { STAGES } from '../draft/types.ts'
import { marksOf, nextStep, plannedSteps, stagesOf } from '../plan/steps.ts'
import { timeLeft } from '../plan/time-left.ts'
import { counterFor, numberOf } from '../quote/numbers.ts'
import { lineAsTaken, totalAsTaken } from '../quote/options.ts'
import {
  type CommissionRow,
  garmentsOfCommission,
  getCommission,
  getGarment,
  getStep,
  insertCommission,
  listCommissions,
  markStep,
  type StepRow,
  stepsOfGarments,
} from '../store/commissions.ts'
import { takeNumber } from '../store/counters.ts'
import { getQuote, type QuoteStanding } from '../store/quotes.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { constructionFor } from './constructions.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { paceOf } from './pace.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

const byId = z.strictObject({ id: inputs.id })
const oneStage = z.strictObject({ garmentId: inputs.id, stage: z.enum(STAGES) })
const onEstimates = z.boolean().default(false).describe('cut although some measures are estimates')

export const commissionRequests = [
  request({
    name: 'commission.get',
    kind: 'query',
    about: 'One commission: its garments, their steps and stages, and what is left in minutes.',
    input: byId,
    run: ({ id }, context) => ({ commission: followed(getCommission(context.store.db, id), context) }),
  }),
  request({
    name: 'commissions.list',
    kind: 'query',
    about: 'Every commission with what is cut, sewn and hemmed and what is left, oldest first.',
    input: z.strictObject({}),
    run: (_, context) => ({
      commissions: listCommissions(context.store.db).map((row) => followed(row, context)),
    }),
  }),
  request({
    name: 'step.tick',
    kind: 'command',
    about: 'Marks one step done. Cutting by measures that are estimates must be confirmed.',
    input: byId.extend({ onEstimates }),
    run: ({ id, ...asked }, context) => {
      const { garmentId, stage } = getStep(context.store.db, id)
      if (stage === 'cut') refuseUntried(garmentId, context)
      if (stage === 'cut' && !asked.onEstimates) refuseEstimates(garmentId, context)
      return tickOne(id, true, 'step.tick', context)
    },
  }),
  request({
    name: 'step.untick',
    kind: 'command',
    about: 'Marks one step open again.',
    input: byId,
    run: ({ id }, context) => tickOne(id, false, 'step.untick', context),
  }),
  request({
    name: 'stage.tick',
    kind: 'command',
    about:
      'Marks every step of a stage of a garment done: cut, sewn, hemmed. Cutting by estimates must be confirmed.',
    input: oneStage.extend({ onEstimates }),
    run: (input, context) => {
      if (input.stage === 'cut') refuseUntried(input.garmentId, context)
      if (input.stage === 'cut' && !input.onEstimates) refuseEstimates(input.garmentId, context)
      return tickStage(input, true, 'stage.tick', context)
    },
  }),
  request({
    name: 'stage.untick',
    kind: 'command',
    about: 'Marks every step of a stage of a garment open again.',
    input: oneStage,
    run: (input, context) => tickStage(input, false, 'stage.untick', context),
  }),
]

/** Makes the commission of an accepted quote: one garment for each copy of each line, with its steps. */
export function commissionFrom(
  quote: QuoteStanding,
  { taken, ...given }: { dueDay: string | null; note: string; taken: Readonly<Record<string, number>> },
  context: Context,
) {
  const { db } = context.store
  const day = today(context)
  const { numbering } = settingsOf(context)
  const id = context.newId()
  const number = numberOf(
    'commission',
    day,
    takeNumber(db, counterFor('commission', day, numbering)),
    numbering,
  )
  const copies = quote.snapshot.lines.flatMap(({ id: quoteGarmentId, quantity }) => {
    const option = taken[quoteGarmentId] ?? null
    const line = lineAsTaken(quote.snapshot, { quoteGarmentId, option })
    return Array.from({ length: quantity }, (_, i) => ({ line, copy: i + 1, option }))
  })
  const garments = copies.map(({ line, copy, option }, i) => ({
    ...{ id: context.newId(), commissionId: id, quoteGarmentId: line.id },
    ...{ copy, option, position: i + 1 },
  }))
  const steps = copies.flatMap(({ line }, i) =>
    plannedSteps(line.estimate).map((step) => ({ ...step, id: context.newId(), garmentId: garments[i]!.id })),
  )
  const row = {
    id,
    number,
    quoteId: quote.id,
    customerId: quote.customerId,
    day,
    ...given,
    state: 'open' as const,
    createdAt: context.now(),
  }
  insertCommission(db, row, garments, steps)
  recorded(context, 'quote.accept', 'commission', id, null, { number, quote: quote.number })
  return followed(getCommission(db, id), context)
}

/** A commission as the workroom follows it. */
function followed(row: CommissionRow, context: Context) {
  const { db } = context.store
  const pace = paceOf(context)
  const { snapshot, number: quoteNumber } = getQuote(db, row.quoteId)
  const garments = garmentsOfCommission(db, row.id)
  const steps = stepsOfGarments(
    db,
    garments.map(({ id }) => id),
  )
  return {
    ...row,
    quoteNumber,
    customer: snapshot.customer.name,
    agreed: totalAsTaken(
      snapshot,
      Object.fromEntries(garments.map(({ quoteGarmentId, option }) => [quoteGarmentId, option])),
    ),
    garments: garments.map((garment) => {
      const { id, copy } = garment
      const line = lineAsTaken(snapshot, garment)
      const own = steps.filter(({ garmentId }) => garmentId === id)
      return {
        ...{ id, copy, title: line.title, wearer: line.wearer.name, cloth: line.cloth.name },
        ...marksOf(own),
        stages: stagesOf(own),
        steps: own,
        next: nextStep(own)?.id ?? null,
        left: timeLeft(own, pace),
      }
    }),
    left: timeLeft(steps, pace),
  }
}

function tickOne(id: string, done: boolean, name: string, context: Context) {
  const { db } = context.store
  const row = getStep(db, id)
  refuseClosed(row, context)
  mark(row, done, name, context)
  return { commission: followed(getCommission(db, getGarment(db, row.garmentId).commissionId), context) }
}

function tickStage(
  { garmentId, stage }: z.output<typeof oneStage>,
  done: boolean,
  name: string,
  context: Context,
) {
  const { db } = context.store
  const { commissionId } = getGarment(db, garmentId, 'garmentId')
  const steps = stepsOfGarments(db, [garmentId]).filter((step) => step.stage === stage)
  if (steps.length === 0)
    throw new Refusal(phrase('refusal.plan.noStage', { stage: phrase(`paper.stage.${stage}`) }), 'stage')
  for (const row of steps) {
    refuseClosed(row, context)
    mark(row, done, name, context)
  }
  return { commission: followed(getCommission(db, commissionId), context) }
}

/** Ticks or unticks a step; one that is already so is left with its own date. */
function mark(row: StepRow, done: boolean, name: string, context: Context): void {
  if ((row.doneAt !== null) === done) return
  const after = markStep(context.store.db, row, done ? { at: context.now(), by: context.actor } : null)
  recorded(context, name, 'step', row.id, { doneAt: row.doneAt }, { doneAt: after.doneAt })
}

/** Marks a step done, as the maker would. */
export const tickStep = (row: StepRow, context: Context): void => mark(row, true, 'step.tick', context)

/** @throws Refusal when the garment is one that is never cut before its toile, and that step is not done */
function refuseUntried(garmentId: string, { store: { db } }: Context): void {
  const toile = stepsOfGarments(db, [garmentId]).find(({ key }) => key === 'toile')
  if (toile !== undefined && toile.doneAt === null) throw new Refusal(phrase('refusal.plan.toile'), 'stage')
}

/** @throws Refusal at `onEstimates` when a measure the garment is drafted by was never taken */
function refuseEstimates(garmentId: string, context: Context): void {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  const { body, construction } = lineAsTaken(snapshot, garment)
  const guessed = estimatesIn(constructionFor(construction, context), body)
  const [first] = guessed
  if (first === undefined) return
  const params = { count: guessed.length, measure: phrase(`measure.name.${first}`) }
  throw new Refusal(phrase('refusal.plan.estimated', params), 'onEstimates')
}

/** @throws Refusal when the commission is delivered or cancelled */
function refuseClosed(row: StepRow, { store: { db } }: Context): void {
  const { state, number } = getCommission(db, getGarment(db, row.garmentId).commissionId)
  if (state !== 'open') throw new Refusal(phrase('refusal.plan.closed', { number }), 'id')
}
