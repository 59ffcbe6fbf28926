import { client, cloth, commission, commissionNote, forgotten, quote, quoteGarment } from '../store/schema.ts'
import { findableClient, findableCloth, findableCommission, findableNote, findableQuote } from './finding.ts'
import type { Context } from './request.ts'

/**
 * Makes everything in a store findable that has come in without being so. Whoever was forgotten is not found again, nor
 * what was quoted and made for her until then.
 */
export function findableAnew(context: Context): void {
  const { db } = context.store
  const gone = new Map(
    db
      .select()
      .from(forgotten)
      .all()
      .map(({ entityId, at }) => [entityId, at]),
  )
  for (const one of db.select().from(client).orderBy(client.id).all())
    if (!gone.has(one.id)) findableClient(one, context)
  for (const one of db.select().from(cloth).orderBy(cloth.id).all()) findableCloth(one, context)

  const people = Map.groupBy(
    db.select({ quoteId: quoteGarment.quoteId, wearerId: quoteGarment.wearerId }).from(quoteGarment).all(),
    ({ quoteId }) => quoteId,
  )
  const goneWith = new Map<string, string>()
  const quotes = db
    .select({ id: quote.id, customerId: quote.customerId, createdAt: quote.createdAt })
    .from(quote)
    .orderBy(quote.id)
    .all()
  for (const { id, customerId, createdAt } of quotes) {
    const wearers = (people.get(id) ?? []).map(({ wearerId }) => wearerId)
    const at =
      [customerId, ...wearers]
        .flatMap((one) => gone.get(one) ?? [])
        .sort()
        .at(-1) ?? ''
    goneWith.set(id, at)
    if (createdAt > at) findableQuote(id, context)
  }
  const commissions = db
    .select({ id: commission.id, quoteId: commission.quoteId, createdAt: commission.createdAt })
    .from(commission)
    .orderBy(commission.id)
    .all()
  for (const { id, quoteId, createdAt } of commissions)
    if (createdAt > goneWith.get(quoteId)!) findableCommission(id, context)
  for (const note of db.select().from(commissionNote).orderBy(commissionNote.id).all())
    findableNote(note, context)
}
