import { and, asc, eq, isNull } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { remnant } from './schema.ts'

/** A remnant that was kept; `usedAt` is null while it lies on the shelf. */
export type RemnantRow = typeof remnant.$inferSelect

/** Keeps a remnant; an offcut of a lay that is kept already is a fault of the program. */
export const insertRemnant = (db: Db, row: typeof remnant.$inferInsert): RemnantRow =>
  db.insert(remnant).values(row).returning().get()

/** @throws Refusal when there is no such remnant; one that is used up is still found */
export const getRemnant = (db: Db, id: string): RemnantRow =>
  found(db.select().from(remnant).where(eq(remnant.id, id)).get(), 'remnant', id)

/** Every remnant ever kept, in the order they came in. */
export const listRemnants = (db: Db): RemnantRow[] => db.select().from(remnant).orderBy(asc(remnant.id)).all()

/** What was kept of a garment's cloth, in the order of the lay's offcuts. */
export const remnantsOfGarment = (db: Db, garmentId: string): RemnantRow[] =>
  db.select().from(remnant).where(eq(remnant.garmentId, garmentId)).orderBy(asc(remnant.offcut)).all()

/** Notes when a remnant was used up, that it is still there, or where it lies. */
export const changeRemnant = (
  db: Db,
  row: RemnantRow,
  changes: Partial<Pick<RemnantRow, 'usedAt' | 'place' | 'stockId'>>,
): RemnantRow =>
  db
    .update(remnant)
    .set({ ...changes, revision: row.revision + 1 })
    .where(eq(remnant.id, row.id))
    .returning()
    .get()

/** Takes the remnants of a garment off the shelf that are still there, as if they had never been kept; answers with them. */
export const dropRemnants = (db: Db, garmentId: string): RemnantRow[] =>
  db
    .delete(remnant)
    .where(and(eq(remnant.garmentId, garmentId), isNull(remnant.usedAt)))
    .returning()
    .all()
