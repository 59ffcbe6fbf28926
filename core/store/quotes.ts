import { asc, eq } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { type QuoteState, quote, quoteGarment, quoteState } from './schema.ts'

export type QuoteRow = typeof quote.$inferSelect
export type QuoteGarment = typeof quoteGarment.$inferSelect
export type QuoteStanding = QuoteRow & { state: QuoteState; stateAt: string }

/** Stores a quote with what its lines rest on. From then on only its state changes. */
export function insertQuote(
  db: Db,
  row: typeof quote.$inferInsert,
  garments: readonly (typeof quoteGarment.$inferInsert)[],
): void {
  db.insert(quote).values(row).run()
  for (const garment of garments) db.insert(quoteGarment).values(garment).run()
  db.insert(quoteState).values({ quoteId: row.id, state: 'sent', at: row.createdAt }).run()
}

const standing = (db: Db) =>
  db
    .select({ quote, state: quoteState.state, stateAt: quoteState.at })
    .from(quote)
    .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))

export function getQuote(db: Db, id: string, field?: string): QuoteStanding {
  const row = found(standing(db).where(eq(quote.id, id)).get(), 'quote', id, field)
  return { ...row.quote, state: row.state, stateAt: row.stateAt }
}

/** Every quote, oldest first. */
export const listQuotes = (db: Db): QuoteStanding[] =>
  standing(db)
    .orderBy(asc(quote.id))
    .all()
    .map((row) => ({ ...row.quote, state: row.state, stateAt: row.stateAt }))

export const garmentsOfQuote = (db: Db, quoteId: string): QuoteGarment[] =>
  db
    .select()
    .from(quoteGarment)
    .where(eq(quoteGarment.quoteId, quoteId))
    .orderBy(asc(quoteGarment.position))
    .all()

export function setQuoteState(db: Db, quoteId: string, state: QuoteState, at: string): void {
  db.update(quoteState).set({ state, at }).where(eq(quoteState.quoteId, quoteId)).run()
}
