import { asc, eq } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { remnant } from './schema.ts'

export type RemnantRow = typeof remnant.$inferSelect

export const insertRemnant = (db: Db, row: typeof remnant.$inferInsert): RemnantRow =>
  db.insert(remnant).values(row).returning().get()

export const getRemnant = (db: Db, id: string): RemnantRow =>
  found(db.select().from(remnant).where(eq(remnant.id, id)).get(), 'remnant', id)

/** Every remnant ever kept, in the order they came in. */
export const listRemnants = (db: Db): RemnantRow[] => db.select().from(remnant).orderBy(asc(remnant.id)).all()

export const remnantsOfGarment = (db: Db, garmentId: string): RemnantRow[] =>
  db.select().from(remnant).where(eq(remnant.garmentId, garmentId)).orderBy(asc(remnant.offcut)).all()

/** Notes when a remnant was used up, or that it is still there. */
export const markRemnant = (db: Db, row: RemnantRow, usedAt: string | null): RemnantRow =>
  db
    .update(remnant)
    .set({ usedAt, revision: row.revision + 1 })
    .where(eq(remnant.id, row.id))
    .returning()
    .get()
