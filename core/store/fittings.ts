import { and, asc, desc, eq, gte, inArray, isNull, min } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { commission, fitting, laidAgain } from './schema.ts'

/** A fitting, booked while `heldAt` is null; and a garment laid again on its washed cloth, mm. */
export type FittingRow = typeof fitting.$inferSelect
export type LaidAgainRow = typeof laidAgain.$inferSelect

/** Fittings of a commission, by day. */
export const fittingsOf = (db: Db, commissionId: string): FittingRow[] =>
  db
    .select()
    .from(fitting)
    .where(and(eq(fitting.commissionId, commissionId), isNull(fitting.removedAt)))
    .orderBy(asc(fitting.day), asc(fitting.time))
    .all()

/** By commission, the instant at which its first fitting was written down, if one was held. */
export const firstHeld = (db: Db, commissionIds: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: fitting.commissionId, at: min(fitting.heldAt) })
      .from(fitting)
      .where(and(inArray(fitting.commissionId, [...commissionIds]), isNull(fitting.removedAt)))
      .groupBy(fitting.commissionId)
      .all()
      .flatMap(({ id, at }) => (at === null ? [] : [[id, at] as const])),
  )

/** Fittings still to be held of open work, from a day on, by day. */
export const fittingsFrom = (db: Db, day: string) =>
  db
    .select({ fitting, number: commission.number, customerId: commission.customerId })
    .from(fitting)
    .innerJoin(commission, eq(commission.id, fitting.commissionId))
    .where(
      and(
        gte(fitting.day, day),
        isNull(fitting.heldAt),
        isNull(fitting.removedAt),
        eq(commission.state, 'open'),
      ),
    )
    .orderBy(asc(fitting.day), asc(fitting.time))
    .all()

/** @throws Refusal when there is no such fitting; one that was taken off is still found */
export const getFitting = (db: Db, id: string): FittingRow =>
  found(db.select().from(fitting).where(eq(fitting.id, id)).get(), 'fitting', id)

/** Enters a fitting, and answers with the row as it is stored. */
export const insertFitting = (db: Db, row: typeof fitting.$inferInsert): FittingRow =>
  db.insert(fitting).values(row).returning().get()

/** @throws Refusal when the revision is not the stored one */
export function updateFitting(
  db: Db,
  row: FittingRow,
  revision: number,
  changes: Partial<Omit<FittingRow, 'id' | 'commissionId' | 'revision' | 'createdAt'>>,
): FittingRow {
  refuseStale(row, revision)
  return db
    .update(fitting)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(fitting.id, row.id))
    .returning()
    .get()
}

/** Enters a lay on the washed cloth, which counts from then on instead of any before it. */
export const insertLaidAgain = (db: Db, row: typeof laidAgain.$inferInsert): LaidAgainRow =>
  db.insert(laidAgain).values(row).returning().get()

/** The lay of a garment on the cloth as it was measured after the wash: the latest one. */
export const laidAgainFor = (db: Db, garmentId: string): LaidAgainRow | undefined =>
  db.select().from(laidAgain).where(eq(laidAgain.garmentId, garmentId)).orderBy(desc(laidAgain.id)).get()
