import { asc, eq, isNull, sql } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { cloth, quote, quoteGarment, remnant, stockLength } from './schema.ts'

/** A cloth as stored, and as one is entered: sizes mm, shrinkages in parts of one, price of a metre in minor units. */
export type ClothRow = typeof cloth.$inferSelect
export type NewCloth = typeof cloth.$inferInsert

/** Enters a cloth, and answers with the row as it is stored. */
export const insertCloth = (db: Db, row: NewCloth): ClothRow => db.insert(cloth).values(row).returning().get()

/** @throws Refusal at `field` when there is no such cloth; one that is retired is still found */
export const getCloth = (db: Db, id: string, field?: string): ClothRow =>
  found(db.select().from(cloth).where(eq(cloth.id, id)).get(), 'cloth', id, field)

/** The cloths of the book, without those that were taken out of it again. */
export const listCloths = (db: Db): ClothRow[] =>
  db.select().from(cloth).where(isNull(cloth.retiredAt)).orderBy(asc(cloth.name), asc(cloth.id)).all()

/** Every cloth that ever was in the book. */
export const allCloths = (db: Db): ClothRow[] =>
  db.select().from(cloth).orderBy(asc(cloth.name), asc(cloth.id)).all()

/** Whether a quote, a length in stock or a remnant is of this cloth. */
export const isUsed = (db: Db, id: string): boolean =>
  db.select({ id: quoteGarment.id }).from(quoteGarment).where(eq(quoteGarment.clothId, id)).get() !==
    undefined ||
  db.select({ id: stockLength.id }).from(stockLength).where(eq(stockLength.clothId, id)).get() !==
    undefined ||
  db.select({ id: remnant.id }).from(remnant).where(eq(remnant.clothId, id)).get() !== undefined ||
  // A lining's cloth is named in the quote alone.
  db.select({ id: quote.id }).from(quote).where(sql`instr(${quote.snapshot}, ${id}) > 0`).limit(1).get() !==
    undefined

/** @throws Refusal when there is no such cloth or the revision is not the stored one */
export function updateCloth(
  db: Db,
  id: string,
  revision: number,
  changes: Partial<Omit<ClothRow, 'id' | 'revision' | 'createdAt'>>,
): ClothRow {
  refuseStale(getCloth(db, id), revision)
  return db
    .update(cloth)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(cloth.id, id))
    .returning()
    .get()
}
