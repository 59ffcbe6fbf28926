import { asc, eq, inArray, sql } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { commission, garment, garmentActual, step } from './schema.ts'

export type CommissionRow = typeof commission.$inferSelect
export type GarmentRow = typeof garment.$inferSelect
export type StepRow = typeof step.$inferSelect
export type GarmentActual = typeof garmentActual.$inferSelect

export function insertCommission(
  db: Db,
  row: typeof commission.$inferInsert,
  garments: readonly (typeof garment.$inferInsert)[],
  steps: readonly (typeof step.$inferInsert)[],
): void {
  db.insert(commission).values(row).run()
  for (const one of garments) db.insert(garment).values(one).run()
  for (const one of steps) db.insert(step).values(one).run()
}

export const getCommission = (db: Db, id: string, field?: string): CommissionRow =>
  found(db.select().from(commission).where(eq(commission.id, id)).get(), 'commission', id, field)

/** Every commission, oldest first. */
export const listCommissions = (db: Db): CommissionRow[] =>
  db.select().from(commission).orderBy(asc(commission.id)).all()

export const garmentsOfCommission = (db: Db, commissionId: string): GarmentRow[] =>
  db.select().from(garment).where(eq(garment.commissionId, commissionId)).orderBy(asc(garment.position)).all()

export const getGarment = (db: Db, id: string, field?: string): GarmentRow =>
  found(db.select().from(garment).where(eq(garment.id, id)).get(), 'garment', id, field)

export const stepsOfGarments = (db: Db, garmentIds: readonly string[]): StepRow[] =>
  db
    .select()
    .from(step)
    .where(inArray(step.garmentId, [...garmentIds]))
    .orderBy(asc(step.garmentId), asc(step.position))
    .all()

export const getStep = (db: Db, id: string, field?: string): StepRow =>
  found(db.select().from(step).where(eq(step.id, id)).get(), 'step', id, field)

/** @throws Refusal when the revision is not the stored one */
export function updateCommission(
  db: Db,
  row: CommissionRow,
  revision: number,
  changes: Partial<Pick<CommissionRow, 'state' | 'deliveredDay' | 'dueDay' | 'note'>>,
): CommissionRow {
  refuseStale(row, revision)
  return db
    .update(commission)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(commission.id, row.id))
    .returning()
    .get()
}

/** What garments really took. */
export const actualsOf = (db: Db, garmentIds: readonly string[]): GarmentActual[] =>
  db
    .select()
    .from(garmentActual)
    .where(inArray(garmentActual.garmentId, [...garmentIds]))
    .all()

export function setActual(db: Db, row: Omit<GarmentActual, 'revision'>): void {
  const { garmentId, ...figures } = row
  db.insert(garmentActual)
    .values(row)
    .onConflictDoUpdate({
      target: garmentActual.garmentId,
      set: { ...figures, revision: sql`${garmentActual.revision} + 1` },
    })
    .run()
}

/** Marks a step done at an instant by someone, or open again. */
export function markStep(db: Db, row: StepRow, done: { at: string; by: string } | null): StepRow {
  return db
    .update(step)
    .set({ doneAt: done?.at ?? null, doneBy: done?.by ?? null, revision: row.revision + 1 })
    .where(eq(step.id, row.id))
    .returning()
    .get()
}
