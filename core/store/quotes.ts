import { count, desc, eq, inArray, or } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { type QuoteInShort, type QuoteState, quote, quoteGarment, quoteState } from './schema.ts'

/** A quote as it was made; and with what has become of it since, at which instant. */
export type QuoteRow = typeof quote.$inferSelect
export type QuoteStanding = QuoteRow & { state: QuoteState; stateAt: string }

/** Stores a quote with what its lines rest on. From then on only its state changes. */
export function insertQuote(
  db: Db,
  row: typeof quote.$inferInsert,
  garments: readonly (typeof quoteGarment.$inferInsert)[],
): void {
  db.insert(quote).values(row).run()
  for (const garment of garments) db.insert(quoteGarment).values(garment).run()
  const { customer, supersedes = null, lines, validUntil, total } = row.snapshot
  const short: QuoteInShort = {
    ...{ customer: customer.name, supersedes, validUntil, total },
    garments: lines.map(({ title, wearer, quantity }) => ({ title, wearer: wearer.name, quantity })),
  }
  db.insert(quoteState).values({ quoteId: row.id, state: 'sent', at: row.createdAt, short }).run()
}

const standing = (db: Db) =>
  db
    .select({ quote, state: quoteState.state, stateAt: quoteState.at })
    .from(quote)
    .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))

/** @throws Refusal at `field` when there is no such quote */
export function getQuote(db: Db, id: string, field?: string): QuoteStanding {
  const row = found(standing(db).where(eq(quote.id, id)).get(), 'quote', id, field)
  return { ...row.quote, state: row.state, stateAt: row.stateAt }
}

/** The newest quotes in short, the oldest of them first; a quote itself is opened one at a time. */
export const listQuotes = (db: Db, most: number) =>
  db
    .select({
      ...{ id: quote.id, number: quote.number, customerId: quote.customerId, day: quote.day },
      ...{ state: quoteState.state, short: quoteState.short },
    })
    .from(quote)
    .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))
    .orderBy(desc(quote.id))
    .limit(most)
    .all()
    .reverse()

/** The quotes that somebody pays for or is sewn for in, in short, the newest first. */
export function quotesFor(db: Db, clientId: string) {
  const sewnFor = db
    .select({ id: quoteGarment.quoteId })
    .from(quoteGarment)
    .where(eq(quoteGarment.wearerId, clientId))
  return db
    .select({
      ...{ id: quote.id, number: quote.number, day: quote.day },
      ...{ state: quoteState.state, short: quoteState.short },
    })
    .from(quote)
    .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))
    .where(or(eq(quote.customerId, clientId), inArray(quote.id, sewnFor)))
    .orderBy(desc(quote.id))
    .all()
}

/** How many quotes were ever saved, whatever became of them. */
export const countQuotes = (db: Db): number => db.select({ rows: count() }).from(quote).get()!.rows

/** Numbers of quotes, by their ids. */
export const quoteNumbers = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: quote.id, number: quote.number })
      .from(quote)
      .where(inArray(quote.id, [...ids]))
      .all()
      .map(({ id, number }) => [id, number]),
  )

/** Number and customer of quotes, by their ids. */
export const quotesInShort = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: quote.id, number: quote.number, short: quoteState.short })
      .from(quote)
      .innerJoin(quoteState, eq(quoteState.quoteId, quote.id))
      .where(inArray(quote.id, [...ids]))
      .all()
      .map(({ id, number, short }) => [id, `${number} ${short.customer}`]),
  )

/** The garments of quotes and who wears them, by the ids of the quotes. */
export const quotedGarments = (db: Db, ids: readonly string[]): Map<string, QuoteInShort['garments']> =>
  new Map(
    db
      .select({ id: quoteState.quoteId, short: quoteState.short })
      .from(quoteState)
      .where(inArray(quoteState.quoteId, [...ids]))
      .all()
      .map(({ id, short }) => [id, short.garments]),
  )

/** Quotes as they were made, by their ids. */
export const quoteSnapshots = (db: Db, ids: readonly string[]): Map<string, QuoteRow['snapshot']> =>
  new Map(
    db
      .select({ id: quote.id, snapshot: quote.snapshot })
      .from(quote)
      .where(inArray(quote.id, [...new Set(ids)]))
      .all()
      .map(({ id, snapshot }) => [id, snapshot]),
  )

/** Says what has become of a quote at an instant; whether it may, whoever asks has made sure of. */
export function setQuoteState(db: Db, quoteId: string, state: QuoteState, at: string): void {
  db.update(quoteState).set({ state, at }).where(eq(quoteState.quoteId, quoteId)).run()
}
