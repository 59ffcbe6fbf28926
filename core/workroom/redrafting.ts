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
import { cutPiecesOf } from '../store/cut-pieces.ts'
import { getFitting, insertLaidAgain, laidAgainFor } from '../store/fittings.ts'
import { draftsOf, insertGarmentDraft, latestDraftOf } from '../store/garment-drafts.ts'
import { getMeasurementSet, markUsed } from '../store/measurement-sets.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { madeNow } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import { cutFor } from './cuts.ts'
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
    input: redraft.extend({ fittingId: inputs.id.optional().describe('fitting that it came of') }),
    run: ({ fittingId, ...asked }, context) => {
      const { db } = context.store
      if (fittingId !== undefined) getFitting(db, fittingId)
      const again = drafted(asked, context)
      const change = changeOf(again, context)
      const { garment, line, set } = again
      markUsed(db, set.id, context.now())
      const number = (latestDraftOf(db, garment.id)?.number ?? 1) + 1
      const row = insertGarmentDraft(db, {
        ...{ id: context.newId(), garmentId: garment.id, number, measurementSetId: set.id },
        ...{ body: line.body, asked: line.asked, estimate: line.estimate },
        ...{ fittingId: fittingId ?? null, createdAt: context.now() },
      })
      replan(garment.id, line.estimate, context)
      laidAnew(again, change, context)
      recorded(context, 'garment.draftAgain', 'garment', garment.id, null, {
        ...{ number, measurementSetId: set.id, choices: asked.choices, draft: row.id },
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

function changeOf({ garment, before, line }: ReturnType<typeof drafted>, { store }: Context) {
  const cut = new Set(cutPiecesOf(store.db, garment.id).map(({ piece }) => piece))
  const wholly = standingSteps(store.db, garment.id).some(
    ({ stage, doneAt }) => stage === 'cut' && doneAt !== null,
  )
  const { changed, added, gone } = differenceOfDrafts(before.estimate.draft, line.estimate.draft)
  const isCut = (id: string) => wholly || cut.has(id)
  return {
    /** Whether anything of it is cut. */
    begun: wholly || cut.size > 0,
    changed: changed.map((one) => ({ ...one, cut: isCut(one.id) })),
    ...{ added, gone: gone.map((one) => ({ ...one, cut: isCut(one.id) })) },
    cloth: { before: before.estimate.purchase.needed, after: line.estimate.purchase.needed },
    minutes: { before: before.estimate.sewing.total.mean, after: line.estimate.sewing.total.mean },
  }
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

/** Steps that came up in the making have a colon in their key; the others are of the draft. */
const isPlanned = (key: string): boolean => !key.includes(':')

/** Brings the steps of a garment to a new draft. */
function replan(garmentId: string, estimate: Estimate, context: Context): void {
  const { db } = context.store
  const { kept, added, gone } = stepsAfter(standingSteps(db, garmentId), plannedSteps(estimate), isPlanned)
  for (const { id, step } of kept) replanStep(db, id, step)
  for (const id of gone) deleteStep(db, id)
  insertSteps(
    db,
    added.map((step) => ({ ...step, id: context.newId(), garmentId })),
  )
}
