import { z } from 'zod'
import { PLAIN_ORDER } from '../lay/types.ts'
import { differenceOfDrafts } from '../plan/redraft.ts'
import { plannedSteps, stepsAfter } from '../plan/steps.ts'
import { reckoned, type Wanted } from '../price/estimate.ts'
import type { Estimate } from '../price/estimate.types.ts'
import type { QuoteLine } from '../quote/types.ts'
import { FINISH_PLANS } from '../sew/finish-plans.ts'
import {
  deleteStep,
  getCommission,
  getGarment,
  insertSteps,
  replanStep,
  standingSteps,
} from '../store/commissions.ts'
import { cutPiecesOf, markPieceCut } from '../store/cut-pieces.ts'
import { getFitting, insertLaidAgain, laidAgainFor } from '../store/fittings.ts'
import { draftsOf, insertGarmentDraft, latestDraftOf } from '../store/garment-drafts.ts'
import { getMeasurementSet, markUsed } from '../store/measurement-sets.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { madeNow } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import { cutFor } from './cuts.ts'
import { cutForDraft, cutKeyOf } from './fitting-steps.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'
import { bodyOfSet, habitsOf } from './wanted.ts'
import { laidOn } from './washing.ts'

const redraft = z.strictObject({
  garmentId: inputs.id,
  measurementSetId: inputs.id.optional().describe('those it was drafted from last, if not said'),
  choices: inputs.choices.describe('choices that change; the others stay as they are'),
})
type Asked = z.output<typeof redraft>

/** A garment in work, drafted again from other measures or choices. What was agreed to be paid stays. */
export const redraftRequests = [
  request({
    name: 'garment.made',
    kind: 'query',
    about:
      'How a garment is to be made now: its construction, choices, set of measures, and when it was drafted again.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const garment = getGarment(context.store.db, garmentId, 'garmentId')
      const { construction, asked, measurementSet, wearer, estimate } = madeNow(garment, context)
      const again = draftsOf(context.store.db, [garmentId])
      return {
        made: { construction, choices: asked, used: estimate.draft.choices, measurementSet, wearer, again },
      }
    },
  }),
  request({
    name: 'garment.tryDraft',
    kind: 'query',
    about: 'What drafting a garment again would change: pieces, cloth and hours. Nothing is kept.',
    input: redraft,
    run: (asked, context) => ({ change: changeOf(drafted(asked, context), context) }),
  }),
  request({
    name: 'garment.draftAgain',
    kind: 'command',
    about:
      'Drafts a garment again: its papers, pieces, steps and cloth follow, and what is done stays done. The price stays as agreed.',
    input: redraft.extend({
      fittingId: inputs.id.optional().describe('fitting that it came of'),
      recut: z
        .array(inputs.line(100))
        .max(60)
        .optional()
        .describe('pieces to be cut; those proposed, if not said'),
    }),
    run: ({ fittingId, ...given }, context) => {
      const { db } = context.store
      if (fittingId !== undefined) getFitting(db, fittingId)
      const again = drafted(given, context)
      const change = changeOf(again, context)
      const { garment, before, line, set } = again
      const { draft } = line.estimate
      const recut = given.recut ?? change.propose
      const unknown = recut.find((id) => !draft.pieces.some((piece) => piece.id === id))
      if (unknown !== undefined)
        throw new Refusal(phrase('refusal.redraft.noPiece', { piece: unknown }), 'recut')
      if (change.same && recut.length === 0)
        throw new Refusal(phrase('refusal.redraft.same', { day: { date: before.measurementSet.day } }))
      const earlier = latestDraftOf(db, garment.id)
      markUsed(db, set.id, context.now())
      const number = (earlier?.number ?? 1) + 1
      const row = insertGarmentDraft(db, {
        ...{ id: context.newId(), garmentId: garment.id, number, measurementSetId: set.id },
        ...{ body: line.body, asked: line.asked, estimate: line.estimate },
        ...{ fittingId: fittingId ?? null, recut, createdAt: context.now() },
      })
      replan(garment.id, line.estimate, context)
      uncutGone(garment.id, draft, context)
      if (earlier !== undefined) cutForDraft(garment.id, earlier.id, [], context)
      cutForDraft(garment.id, row.id, recut, context)
      laidAnew(again, change, context)
      recorded(context, 'garment.draftAgain', 'garment', garment.id, null, {
        ...{ number, measurementSetId: set.id, choices: given.choices, recut, draft: row.id },
      })
      return { number, change }
    },
  }),
]

/** The line as it would be: the same cloth and way of sewing, other measures or choices; its price as it was agreed. */
function drafted({ garmentId, measurementSetId, choices }: Asked, context: Context) {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { state, number } = getCommission(db, garment.commissionId)
  if (state !== 'open') throw new Refusal(phrase('refusal.plan.closed', { number }), 'garmentId')
  const before = madeNow(garment, context)
  const set = getMeasurementSet(db, measurementSetId ?? before.measurementSet.id, 'measurementSetId')
  if (set.clientId !== before.wearer.id)
    throw new Refusal(phrase('refusal.quote.otherBody', { wearer: before.wearer.name }), 'measurementSetId')
  const construction = constructionFor(before.construction, context)
  const { estimate, cloth, others, extras = {} } = before
  const asked = { ...before.asked, ...choices }
  const body = set.id === before.measurementSet.id ? before.body : bodyOfSet(set, context)
  const wanted: Wanted = {
    ...{ construction, body, choices: asked, extras, cloth, others },
    finishPlan: planIdOf(estimate.finishPlan) ?? construction.finishPlan,
    lay: { ...PLAIN_ORDER, manner: estimate.lay.manner ?? 'single' },
  }
  const habits = habitsOf(settingsOf(context), context)
  const anew = reckoned(cutFor(wanted, habits), wanted, habits)
  // What she pays and what goes on around the making were agreed and are not reckoned again.
  const { price, attendance, charged, brought } = estimate
  const agreed = {
    price,
    ...(attendance === undefined ? {} : { attendance }),
    ...(charged === undefined ? {} : { charged }),
    ...(brought === undefined
      ? {}
      : {
          brought: {
            ...brought,
            needed: anew.purchase.needed,
            enough: brought.length >= anew.purchase.needed,
          },
        }),
  }
  const line: QuoteLine = { ...before, body, asked, estimate: { ...anew, ...agreed } }
  return { garment, before, line, set }
}

const planIdOf = (plan: Estimate['finishPlan']) =>
  (Object.keys(FINISH_PLANS) as (keyof typeof FINISH_PLANS)[]).find(
    (id) => JSON.stringify(FINISH_PLANS[id]) === JSON.stringify(plan),
  )

function changeOf({ garment, before, line, set }: ReturnType<typeof drafted>, { store: { db } }: Context) {
  const cut = new Set(cutPiecesOf(db, garment.id).map(({ piece }) => piece))
  const steps = standingSteps(db, garment.id)
  const wholly = steps.some(({ stage, doneAt }) => stage === 'cut' && doneAt !== null)
  const { changed, added, gone } = differenceOfDrafts(before.estimate.draft, line.estimate.draft)
  const { pieces } = line.estimate.draft
  // What the draft before this one was still to be cut anew for is not cut yet.
  const earlier = latestDraftOf(db, garment.id)
  const waits = steps.some(({ key, doneAt }) => key === cutKeyOf(earlier?.id ?? '') && doneAt === null)
  const waiting = waits ? (earlier?.recut ?? []).filter((id) => pieces.some((piece) => piece.id === id)) : []
  const isCut = (id: string) => (wholly && !waiting.includes(id)) || cut.has(id)
  const recut = changed.filter(({ id }) => isCut(id)).map(({ id }) => id)
  return {
    /** Whether anything of it is cut. */
    begun: wholly || cut.size > 0,
    /** Whether it would be drafted just as it is now. */
    same:
      changed.length + added.length + gone.length === 0 &&
      set.id === before.measurementSet.id &&
      JSON.stringify(line.asked) === JSON.stringify(before.asked),
    changed: changed.map((one) => ({ ...one, cut: isCut(one.id) })),
    ...{ added, gone: gone.map((one) => ({ ...one, cut: isCut(one.id) })) },
    /** Pieces to be cut for it, by their ids, where the garment is cut: those that changed, the new, and those that still wait. */
    propose: [...new Set([...waiting, ...recut, ...(wholly ? added.map(({ id }) => id) : [])])],
    pieces: pieces.map(({ id, name, copies }) => ({ id, name, copies: copies.length })),
    cloth: { before: before.estimate.purchase.needed, after: line.estimate.purchase.needed },
    minutes: { before: before.estimate.sewing.total.mean, after: line.estimate.sewing.total.mean },
  }
}

/** Pieces that fell away are not cut pieces of the garment any more. */
function uncutGone(garmentId: string, { pieces }: Estimate['draft'], { store: { db } }: Context): void {
  for (const { piece, copy } of cutPiecesOf(db, garmentId))
    if (!pieces.some(({ id, copies }) => id === piece && copies.some((one) => one.id === copy)))
      markPieceCut(db, { garmentId, piece, copy }, null)
}

/**
 * What was measured after the wash is still there as long as nothing is cut of it: the new draft is laid on it, if it is
 * enough for that. If not, cutting waits until it is measured again.
 */
function laidAnew(
  { garment, line }: ReturnType<typeof drafted>,
  change: ReturnType<typeof changeOf>,
  context: Context,
): void {
  const { db } = context.store
  const measured = laidAgainFor(db, garment.id)
  if (measured === undefined || change.begun) return
  const { buying } = settingsOf(context)
  const { width, length } = measured
  const lay = laidOn(line, width, buying)
  if (lay.length + buying.endAllowance > length) return
  insertLaidAgain(db, {
    ...{ id: context.newId(), garmentId: garment.id, width, length, lay, createdAt: context.now() },
  })
}

/** Brings the steps of a garment to a new draft. */
function replan(garmentId: string, estimate: Estimate, context: Context): void {
  const { db } = context.store
  const { kept, added, gone } = stepsAfter(standingSteps(db, garmentId), plannedSteps(estimate))
  for (const { id, step } of kept) replanStep(db, id, step)
  for (const id of gone) deleteStep(db, id)
  insertSteps(
    db,
    added.map((step) => ({ ...step, id: context.newId(), garmentId })),
  )
}
