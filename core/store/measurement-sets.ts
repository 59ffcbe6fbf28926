import { and, asc, eq, inArray, isNull, sql } from 'drizzle-orm'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { measurementSet, retiredSet } from './schema.ts'

/**
 * A set of measures as stored, and as one is entered: measures mm by their ids, `unit` that in which they were typed.
 */
export type MeasurementSet = typeof measurementSet.$inferSelect
export type NewMeasurementSet = typeof measurementSet.$inferInsert
type Editable = Pick<
  MeasurementSet,
  'day' | 'takenBy' | 'over' | 'note' | 'unit' | 'measures' | 'proportionsOf' | 'notes' | 'remarks'
>

/** Enters a set of measures, and answers with the row as it is stored. */
export const insertMeasurementSet = (db: Db, row: NewMeasurementSet): MeasurementSet =>
  db.insert(measurementSet).values(row).returning().get()

/** @throws Refusal at `field` when there is no such set; one that was put aside is still found */
export const getMeasurementSet = (db: Db, id: string, field?: string): MeasurementSet =>
  found(db.select().from(measurementSet).where(eq(measurementSet.id, id)).get(), 'measurementSet', id, field)

/** The sets of one client, oldest first. */
export const measurementSetsOf = (db: Db, clientId: string): MeasurementSet[] =>
  db
    .select()
    .from(measurementSet)
    .where(eq(measurementSet.clientId, clientId))
    .orderBy(asc(measurementSet.day), asc(measurementSet.id))
    .all()

/** The day of the latest set of each client that has any, by the client's id. */
export const lastMeasured = (db: Db): Map<string, string> =>
  new Map(
    db
      .select({ id: measurementSet.clientId, day: sql<string>`max(${measurementSet.day})` })
      .from(measurementSet)
      .groupBy(measurementSet.clientId)
      .all()
      .map(({ id, day }) => [id, day]),
  )

/** @throws Refusal when the set is used by a quote, unknown, or the revision is not the stored one */
export function updateMeasurementSet(
  db: Db,
  id: string,
  revision: number,
  changes: Partial<Editable>,
): MeasurementSet {
  const row = getMeasurementSet(db, id)
  if (row.usedAt !== null)
    throw new Refusal(phrase('refusal.store.setUsed', { day: { date: row.day } }), 'id')
  refuseStale(row, revision)
  return db
    .update(measurementSet)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(measurementSet.id, id))
    .returning()
    .get()
}

/** Whose sets are, by their ids. */
export const clientsOfSets = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: measurementSet.id, clientId: measurementSet.clientId })
      .from(measurementSet)
      .where(inArray(measurementSet.id, [...ids]))
      .all()
      .map(({ id, clientId }) => [id, clientId]),
  )

/** Those of a client's sets that were put aside. */
export const retiredSetsOf = (db: Db, clientId: string): Set<string> =>
  new Set(
    db
      .select({ id: retiredSet.measurementSetId })
      .from(retiredSet)
      .innerJoin(measurementSet, eq(measurementSet.id, retiredSet.measurementSetId))
      .where(eq(measurementSet.clientId, clientId))
      .all()
      .map(({ id }) => id),
  )

/** Puts a set aside at an instant; where it is put aside already the first instant stays. */
export function retireSet(db: Db, id: string, at: string): void {
  db.insert(retiredSet).values({ measurementSetId: id, at }).onConflictDoNothing().run()
}

/** Takes a set back that was put aside. */
export function restoreSet(db: Db, id: string): void {
  db.delete(retiredSet).where(eq(retiredSet.measurementSetId, id)).run()
}

/** Freezes a set the first time a quote uses it. */
export function markUsed(db: Db, id: string, at: string): void {
  db.update(measurementSet)
    .set({ usedAt: at })
    .where(and(eq(measurementSet.id, id), isNull(measurementSet.usedAt)))
    .run()
}
