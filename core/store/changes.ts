import { and, asc, desc, eq, lt } from 'drizzle-orm'
import type { Db } from './open.ts'
import { change } from './schema.ts'

/** An entry of the history, with the thing as it was before and after; null where it was not there. */
export type Change = typeof change.$inferSelect

/** Writes down what was done, in the transaction that did it. */
export function recordChange(db: Db, entry: Omit<typeof change.$inferInsert, 'id'>): void {
  db.insert(change).values(entry).run()
}

/** What happened to one thing, oldest first. */
export const changesOf = (db: Db, entityId: string): Change[] =>
  db.select().from(change).where(eq(change.entityId, entityId)).orderBy(asc(change.id)).all()

/** An entry of the history without what was changed. */
export type Touched = Pick<Change, 'id' | 'at' | 'request' | 'entityId'>

/** What happened last to things of one kind, the latest first: so many of those before an entry of the history. */
export const latestChanges = (
  db: Db,
  entity: string,
  most: number,
  before = Number.MAX_SAFE_INTEGER,
): Touched[] =>
  db
    .select({ id: change.id, at: change.at, request: change.request, entityId: change.entityId })
    .from(change)
    .where(and(eq(change.entity, entity), lt(change.id, before)))
    .orderBy(desc(change.id))
    .limit(most)
    .all()

/** So many entries of the history are read at a time. */
const PAGE = 200

/** What happened to things of one kind since an instant, the latest first; the history before it is not read. */
export function changesSince(db: Db, entity: string, since: string): Touched[] {
  const found: Touched[] = []
  for (;;) {
    const page = latestChanges(db, entity, PAGE, found.at(-1)?.id)
    found.push(...page)
    const last = page.at(-1)
    if (page.length < PAGE || last === undefined || last.at <= since)
      return found.filter(({ at }) => at > since)
  }
}
