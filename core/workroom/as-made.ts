import { lineAsTaken } from '../quote/options.ts'
import type { QuoteLine, QuoteSnapshot } from '../quote/types.ts'
import { type GarmentRow, getCommission } from '../store/commissions.ts'
import { type LaidAgainRow, laidAgainFor } from '../store/fittings.ts'
import { latestDraftOf } from '../store/garment-drafts.ts'
import { getMeasurementSet } from '../store/measurement-sets.ts'
import { getQuote } from '../store/quotes.ts'
import type { Context } from './request.ts'
import { setInShort } from './wanted.ts'

type Made = { id: string; quoteGarmentId: string; option: number | null }

/**
 * The line of a garment as it is to be made now: as the customer took it, and as it was drafted last. What was agreed to be
 * paid is that of the quote for good.
 */
export function lineAsMade(
  snapshot: Pick<QuoteSnapshot, 'lines'>,
  garment: Made,
  { store }: Pick<Context, 'store'>,
): QuoteLine {
  const taken = lineAsTaken(snapshot, garment)
  const again = latestDraftOf(store.db, garment.id)
  if (again === undefined) return taken
  const { body, asked, estimate } = again
  const measurementSet = setInShort(getMeasurementSet(store.db, again.measurementSetId))
  return { ...taken, body, asked, estimate, measurementSet }
}

/** The same, for a garment of a commission. */
export function madeNow(garment: GarmentRow, context: Pick<Context, 'store'>): QuoteLine {
  const { db } = context.store
  return lineAsMade(getQuote(db, getCommission(db, garment.commissionId).quoteId).snapshot, garment, context)
}

/** How its cloth was measured and laid after the wash, unless it was drafted again since. */
export function laidAgainOf(
  garmentId: string,
  { store: { db } }: Pick<Context, 'store'>,
): LaidAgainRow | undefined {
  const laid = laidAgainFor(db, garmentId)
  const again = latestDraftOf(db, garmentId)
  return laid !== undefined && again !== undefined && laid.createdAt < again.createdAt ? undefined : laid
}

/** A line as its garment is to be cut: laid again after the wash, if it was. */
export function lineAsCut(line: QuoteLine, garmentId: string, context: Pick<Context, 'store'>): QuoteLine {
  const again = laidAgainOf(garmentId, context)
  return again === undefined ? line : { ...line, estimate: { ...line.estimate, lay: again.lay } }
}

/** Whether a garment lies on a length of its own by now, whatever it shared when it was quoted. */
export const isAlone = (garmentId: string, { store: { db } }: Pick<Context, 'store'>): boolean =>
  laidAgainFor(db, garmentId) !== undefined || latestDraftOf(db, garmentId) !== undefined
