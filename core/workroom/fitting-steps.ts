import type { Stage } from '../draft/types.ts'
import { minutesOf } from '../sew/minutes.ts'
import { OPERATION } from '../sew/operations.ts'
import type { Work } from '../sew/work.ts'
import {
  deleteStep,
  type GarmentRow,
  garmentsOf,
  insertSteps,
  replanStep,
  standingSteps,
} from '../store/commissions.ts'
import { markPieceCut } from '../store/cut-pieces.ts'
import type { FittingRow } from '../store/fittings.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { say } from '../words/say.ts'
import { copiesOf } from './cutting.ts'
import type { Context } from './request.ts'
import { readerOf } from './settings.ts'

/** What work that nobody has a figure for may be out by, in parts of it. */
const ROUGH = 0.3

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
  keep(first, `alter:${fitting.id}`, context, {
    ...{ stage: 'fit', wanted: minutes > 0, mean: minutes, work: {} },
    name: phrase('fitting.step.alter', { day: { date: fitting.day } }),
  })
  for (const garment of fitted) {
    const again = counts ? recutOf(garment, fitting, context) : []
    const work: Work = {
      layOut: OPERATION.layOut.minutes * again.length,
      cutPiece: OPERATION.cutPiece.minutes * again.length,
    }
    const mean = (work.layOut ?? 0) + (work.cutPiece ?? 0)
    keep(garment, `recut:${fitting.id}`, context, {
      ...{ stage: 'cut', wanted: again.length > 0, mean, work },
      name: phrase('fitting.step.recut', { pieces: again.map(({ said }) => said).join(', ') }),
    })
  }
}

type Wanted = { stage: Stage; wanted: boolean; mean: number; work: Work; name: Phrase }

/** Writes, rewrites or takes away one step; one that is done is left alone. */
function keep(
  garment: GarmentRow,
  key: string,
  context: Context,
  { stage, wanted, mean, work, name }: Wanted,
): void {
  const { db } = context.store
  const steps = standingSteps(db, garment.id)
  const there = steps.find((one) => one.key === key)
  if (there?.doneAt) return
  if (!wanted) {
    if (there !== undefined && !there.timed) deleteStep(db, there.id)
    return
  }
  // It comes after the fitting, or where none is planned after what is sewn.
  const before = steps.filter(
    (one) => isPlanned(one.key) && ['prepare', 'cut', 'sew', 'fit'].includes(one.stage),
  )
  const position = Math.max(1, ...before.map((one) => one.position))
  const row = { stage, position, name, minutes: minutesOf(mean, ROUGH * mean), work }
  if (there === undefined) insertSteps(db, [{ ...row, id: context.newId(), garmentId: garment.id, key }])
  else replanStep(db, there.id, row)
}

const isPlanned = (key: string): boolean => !key.includes(':')

/** The copies of a garment's pieces that a fitting wants cut again, by the names it has for them. */
function recutOf(garment: GarmentRow, { recut }: FittingRow, context: Context) {
  return copiesOf(garment.id, context).flatMap(({ piece, copy, copyName }) => {
    const said = say(copyName, readerOf(context))
    return recut.some((one) => one === said || one.endsWith(`: ${said}`)) ? [{ piece, copy, said }] : []
  })
}

/** Pieces that a fitting wants cut again are no longer cut. */
export function uncutFromFitting(fitting: FittingRow, before: FittingRow, context: Context): void {
  const fresh = { ...fitting, recut: fitting.recut.filter((one) => !before.recut.includes(one)) }
  const garments = garmentsOf(context.store.db, [fitting.commissionId])
  for (const garment of garments.filter(({ id }) => fitting.garmentId === null || id === fitting.garmentId))
    for (const { piece, copy } of recutOf(garment, fresh, context))
      markPieceCut(context.store.db, { garmentId: garment.id, piece, copy }, null)
}
