import { needOf } from '../plan/stock/need.ts'
import type { QuoteLine } from '../quote/types.ts'
import { getCommission, getGarment } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { lineAsMade } from './as-made.ts'
import type { Context } from './request.ts'
import { lineStillToCut } from './still-to-cut.ts'

/** What a garment needs of its own cloth; nothing where that is not of the book, is the customer's, or none is cut. */
export function needFor(garmentId: string, context: Context) {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  return needOn(garmentId, lineStillToCut(lineAsMade(snapshot, garment, context), garmentId, context))
}

/** The same, where its line is at hand. */
export function needOn(garmentId: string, { cloth, estimate }: Pick<QuoteLine, 'cloth' | 'estimate'>) {
  if (cloth.id === undefined || estimate.brought !== undefined || estimate.purchase.toBuy === 0)
    return undefined
  return {
    need: needOf({ garmentId, clothId: cloth.id }, estimate.purchase, cloth),
    increment: cloth.increment,
  }
}

/** What a garment needs of all its cloths: its own, and those of the book that lining, interlining and facings are cut from. */
export function needsOn(garmentId: string, line: Pick<QuoteLine, 'cloth' | 'estimate' | 'others'>) {
  const own = needOn(garmentId, line)
  const others = (line.estimate.others ?? []).flatMap(({ role, purchase }) => {
    const cloth = line.others?.[role]
    return cloth?.id === undefined || purchase.toBuy === 0
      ? []
      : [needOf({ garmentId, clothId: cloth.id }, purchase, cloth)]
  })
  return own === undefined ? others : [own.need, ...others]
}
