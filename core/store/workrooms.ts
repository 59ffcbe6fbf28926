import { count } from 'drizzle-orm'
import type { WorkroomSettings } from '../quote/settings.ts'
import { refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { client, cloth, quote, workroom } from './schema.ts'

/** The workroom with its settings as they were stored, perhaps by an older state of the program. */
export type WorkroomRow = typeof workroom.$inferSelect

/** The workroom, or undefined while the store is new. */
export const findWorkroom = (db: Db): WorkroomRow | undefined => db.select().from(workroom).get()

/** Begins a workroom; a store has one at most. */
export const insertWorkroom = (db: Db, row: typeof workroom.$inferInsert): WorkroomRow =>
  db.insert(workroom).values(row).returning().get()

/** @throws Refusal when the revision is not the stored one */
export function updateSettings(
  db: Db,
  row: WorkroomRow,
  revision: number,
  settings: WorkroomSettings,
): WorkroomRow {
  refuseStale(row, revision)
  return db
    .update(workroom)
    .set({ settings, revision: revision + 1 })
    .returning()
    .get()
}

/** Whether nothing has been put into the store yet. */
export const isEmpty = (db: Db): boolean =>
  [client, cloth, quote].every((table) => db.select({ rows: count() }).from(table).get()!.rows === 0)
