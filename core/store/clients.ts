import { asc, eq, inArray } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { client } from './schema.ts'

/** A client as stored, and as one is entered: days are `YYYY-MM-DD`, and `retiredAt` is null while she is in use. */
export type Client = typeof client.$inferSelect
export type NewClient = typeof client.$inferInsert
type Editable = Pick<Client, 'name' | 'address' | 'email' | 'phone' | 'note' | 'birthDay' | 'retiredAt'>

/** Enters a client, and answers with the row as it is stored. */
export const insertClient = (db: Db, row: NewClient): Client =>
  db.insert(client).values(row).returning().get()

/** @throws Refusal at `field` when there is no such client; one that is retired is still found */
export const getClient = (db: Db, id: string, field?: string): Client =>
  found(db.select().from(client).where(eq(client.id, id)).get(), 'client', id, field)

/** Everybody in the book by name, the retired among them. */
export const listClients = (db: Db): Client[] =>
  db.select().from(client).orderBy(asc(client.name), asc(client.id)).all()

/** Names of clients, by their ids. */
export const clientNames = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: client.id, name: client.name })
      .from(client)
      .where(inArray(client.id, [...new Set(ids)]))
      .all()
      .map(({ id, name }) => [id, name]),
  )

/** @throws Refusal when there is no such client or the revision is not the stored one */
export function updateClient(db: Db, id: string, revision: number, changes: Partial<Editable>): Client {
  refuseStale(getClient(db, id), revision)
  return db
    .update(client)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(client.id, id))
    .returning()
    .get()
}
