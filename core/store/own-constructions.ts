import { and, asc, desc, eq } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { ownConstruction } from './schema.ts'

/** One version of a construction of the maker's own. */
export type OwnRow = typeof ownConstruction.$inferSelect

/** Enters a version; a number that its family has already is a fault of the program. */
export const insertOwn = (db: Db, row: typeof ownConstruction.$inferInsert): OwnRow =>
  db.insert(ownConstruction).values(row).returning().get()

/** One version of a construction of her own; the latest, if none is named. */
export function getOwn(db: Db, family: string, version?: number, field?: string): OwnRow {
  const which =
    version === undefined
      ? eq(ownConstruction.family, family)
      : and(eq(ownConstruction.family, family), eq(ownConstruction.version, version))
  const row = db.select().from(ownConstruction).where(which).orderBy(desc(ownConstruction.version)).get()
  return found(row, 'ownConstruction', family, field)
}

/** The latest version of each, by name. */
export function listOwn(db: Db): OwnRow[] {
  const all = db
    .select()
    .from(ownConstruction)
    .orderBy(asc(ownConstruction.name), asc(ownConstruction.family), asc(ownConstruction.version))
    .all()
  return [...new Map(all.map((row) => [row.family, row])).values()]
}
