import type { Stage } from '../draft/types.ts'
import { isPlanned } from '../plan/steps.ts'
import { minutesOf } from '../sew/minutes.ts'
import { OPERATION } from '../sew/operations.ts'
import type { Work } from '../sew/work.ts'
import {
  deleteStep,
  type GarmentRow,
  garmentsOf,
  getGarment,
  insertSteps,
  replanStep,
  type StepRow,
  standingSteps,
} from '../store/commissions.ts'
import { markPieceCut } from '../store/cut-pieces.ts'
import { type FittingRow, fittingsOf } from '../store/fittings.ts'
import { latestDraftOf } from '../store/garment-drafts.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { say } from '../words/say.ts'
import { copiesOf } from './cutting.ts'
import type { Context } from './request.ts'
import { readerOf } from './settings.ts'

/** What work that nobody has a figure for may be out by, in parts of it. */
const ROUGH = 0.3

/** What comes before work that a fitting led to: the fitting, or where none is planned what is sewn. */
const FITTED: readonly Stage[] = ['prepare', 'cut', 'sew', 'fit']
/** What comes before cutting for a new draft, besides what is done. */
const CUT: readonly Stage[] = ['prepare', 'cut']

/**
 * The work that a fitting led to, as steps of the garment that was fitted: what is to be altered, and pieces to cut again,
 * which are no longer cut. Said otherwise later, they follow; what is done of them stays.
 */
export function stepsFromFitting(fitting: FittingRow, context: Context): void {
  const { db } = context.store
  const garments = garmentsOf(db, [fitting.commissionId])
  const fitted = garments.filter(({ id }) => fitting.garmentId === null || id === fitting.garmentId)
  const [first] = fitted
  if (first === undefined) return
  const counts = fitting.heldAt !== null && fitting.removedAt === null
  const minutes = counts ? fitting.minutesAdded : 0
  keep(first.id, `alter:${fitting.id}`, context, {
    ...{ stage: 'fit', after: FITTED, wanted: minutes > 0, mean: minutes, work: {} },
    name: phrase('fitting.step.alter', { day: { date: fitting.day } }),
  })
  for (const garment of fitted) {
    const again = counts ? recutOf(garment, fitting, context) : []
    cutInStep(garment.id, 'fitting', fitting.id, again, context)
  }
}

type Copy = { piece: string; copy: string; said: string }

/** Key of the step in which pieces are cut for a fitting or a draft. */
export const cutKeyOf = (id: string): string => `recut:${id}`

/** Copies that are to be cut though the garment was cut already: they are no longer cut, and a step says so. */
export function cutForDraft(
  garmentId: string,
  draftId: string,
  pieces: readonly string[],
  context: Context,
): void {
  const copies = saidCopies(garmentId, context).filter(({ piece }) => pieces.includes(piece))
  for (const { piece, copy } of copies) markPieceCut(context.store.db, { garmentId, piece, copy }, null)
  cutInStep(garmentId, 'draft', draftId, copies, context)
}

function cutInStep(
  garmentId: string,
  why: 'fitting' | 'draft',
  id: string,
  copies: readonly Copy[],
  context: Context,
): void {
  const work: Work = {
    layOut: OPERATION.layOut.minutes * copies.length,
    cutPiece: OPERATION.cutPiece.minutes * copies.length,
  }
  const mean = (work.layOut ?? 0) + (work.cutPiece ?? 0)
  keep(garmentId, cutKeyOf(id), context, {
    ...{ stage: 'cut', after: why === 'fitting' ? FITTED : CUT, wanted: copies.length > 0, mean, work },
    name: phrase(why === 'fitting' ? 'fitting.step.recut' : 'redraft.step.cut', {
      pieces: copies.map(({ said }) => said).join('; '),
    }),
  })
}

type Wanted = {
  stage: Stage
  after: readonly Stage[]
  wanted: boolean
  mean: number
  work: Work
  name: Phrase
}

/** Writes, rewrites or takes away one step; one that is done is left alone. */
function keep(
  garmentId: string,
  key: string,
  context: Context,
  { stage, after, wanted, mean, work, name }: Wanted,
): void {
  const { db } = context.store
  const steps = standingSteps(db, garmentId)
  const there = steps.find((one) => one.key === key)
  if (there?.doneAt) return
  if (!wanted) {
    if (there !== undefined && !there.timed) deleteStep(db, there.id)
    return
  }
  const before = steps.filter((one) => isPlanned(one) && (one.doneAt !== null || after.includes(one.stage)))
  const position = Math.max(1, ...before.map((one) => one.position))
  const row = { stage, position, name, minutes: minutesOf(mean, ROUGH * mean), work }
  if (there === undefined) insertSteps(db, [{ ...row, id: context.newId(), garmentId, key }])
  else replanStep(db, there.id, row)
}

/** The copies of a garment's pieces that a fitting wants cut again, by the names it has for them. */
const recutOf = (garment: GarmentRow, { recut }: FittingRow, context: Context): Copy[] =>
  saidCopies(garment.id, context).filter(({ said }) =>
    recut.some((one) => one === said || one.endsWith(`: ${said}`)),
  )

const saidCopies = (garmentId: string, context: Context): Copy[] =>
  copiesOf(garmentId, context).map(({ piece, copy, copyName }) => ({
    ...{ piece, copy, said: say(copyName, readerOf(context)) },
  }))

/** The copies of a garment that open steps of these want cut, for a fitting or for its last draft. */
export function copiesToCut(
  garmentId: string,
  steps: readonly Pick<StepRow, 'key' | 'doneAt'>[],
  context: Context,
): Copy[] {
  const { db } = context.store
  const open = new Set(steps.flatMap(({ key, doneAt }) => (doneAt === null ? [key] : [])))
  const garment = getGarment(db, garmentId)
  const fittings = fittingsOf(db, garment.commissionId).filter(({ id }) => open.has(cutKeyOf(id)))
  const draft = latestDraftOf(db, garmentId)
  const anew = draft !== undefined && open.has(cutKeyOf(draft.id)) ? draft.recut : []
  return [
    ...fittings.flatMap((fitting) => recutOf(garment, fitting, context)),
    ...saidCopies(garmentId, context).filter(({ piece }) => anew.includes(piece)),
  ]
}

/** Pieces that a fitting wants cut again are no longer cut. */
export function uncutFromFitting(fitting: FittingRow, before: FittingRow, context: Context): void {
  const fresh = { ...fitting, recut: fitting.recut.filter((one) => !before.recut.includes(one)) }
  const garments = garmentsOf(context.store.db, [fitting.commissionId])
  for (const garment of garments.filter(({ id }) => fitting.garmentId === null || id === fitting.garmentId))
    for (const { piece, copy } of recutOf(garment, fresh, context))
      markPieceCut(context.store.db, { garmentId: garment.id, piece, copy }, null)
}
