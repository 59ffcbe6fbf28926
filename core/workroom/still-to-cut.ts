import type { Piece } from '../draft/types.ts'
import { piecesFrom } from '../lay/as-cut.ts'
import { purchaseOf } from '../lay/purchase.ts'
import { PLAIN_ORDER } from '../lay/types.ts'
import { wishedLay } from '../lay/wished-lay.ts'
import { isPlanned } from '../plan/steps.ts'
import type { QuotedCloth, QuoteLine } from '../quote/types.ts'
import { stepsOfGarments } from '../store/commissions.ts'
import { copiesToCut } from './fitting-steps.ts'
import type { Context } from './request.ts'
import { settingsOf } from './settings.ts'

/**
 * The line of a garment with the cloth that is still to be cut for it: all of it, or once it is cut only what pieces take that
 * are to be cut anew, on a length of their own.
 */
export function lineStillToCut(line: QuoteLine, garmentId: string, context: Context): QuoteLine {
  const steps = stepsOfGarments(context.store.db, [garmentId]).filter(({ stage }) => stage === 'cut')
  const planned = steps.filter(isPlanned)
  if (planned.length === 0 || planned.some(({ doneAt }) => doneAt === null)) return line
  const { buying } = settingsOf(context)
  const waiting = new Set(copiesToCut(garmentId, steps, context).map(({ piece, copy }) => `${piece}/${copy}`))
  const pieces = line.estimate.draft.pieces.flatMap((piece): Piece[] => {
    const copies = piece.copies.filter(({ id }) => waiting.has(`${piece.id}/${id}`))
    return copies.length === 0 ? [] : [{ ...piece, copies }]
  })
  const { cloth, others = {}, estimate } = line
  const laid = (role: Piece['cloth'], on: QuotedCloth) => {
    const lay = wishedLay(piecesFrom(pieces, role, others), on, buying, PLAIN_ORDER)
    return { lay, purchase: purchaseOf(lay, on, buying) }
  }
  const apart = (estimate.others ?? []).map((one) => ({ ...one, ...laid(one.role, others[one.role]!) }))
  return { ...line, estimate: { ...estimate, ...laid('main', cloth), others: apart } }
}
