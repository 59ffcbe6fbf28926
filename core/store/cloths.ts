import { asc, eq } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { cloth } from './schema.ts'

export type ClothRow = typeof cloth.$inferSelect
export type NewCloth = typeof cloth.$inferInsert

export const insertCloth = (db: Db, row: NewCloth): ClothRow => db.insert(cloth).values(row).returning().get()

export const getCloth = (db: Db, id: string, field?: string): ClothRow =>
  found(db.select().from(cloth).where(eq(cloth.id, id)).get(), 'cloth', id, field)

export const listCloths = (db: Db): ClothRow[] =>
  db.select().from(cloth).orderBy(asc(cloth.name), asc(cloth.id)).all()

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
