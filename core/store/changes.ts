import { asc, eq } from 'drizzle-orm'
import type { Db } from './open.ts'
import { change } from './schema.ts'

export type Change = typeof change.$inferSelect

/** Writes down what was done, in the transaction that did it. */
export function recordChange(db: Db, entry: Omit<typeof change.$inferInsert, 'id'>): void {
  db.insert(change).values(entry).run()
}

/** What happened to one thing, oldest first. */
export const changesOf = (db: Db, entityId: string): Change[] =>
  db.select().from(change).where(eq(change.entityId, entityId)).orderBy(asc(change.id)).all()
