import { eq, inArray, or } from 'drizzle-orm'
import type { Client } from './clients.ts'
import { getClient } from './clients.ts'
import { measurementSetsOf } from './measurement-sets.ts'
import type { Db } from './open.ts'
import { change, client, forgotten, measurementSet, quote, quoteGarment, sheet } from './schema.ts'

/** Numbers of the quotes that a client ordered or is to wear something of. */
export const quotesWith = (db: Db, clientId: string): string[] => [
  ...new Set(
    db
      .select({ number: quote.number })
      .from(quote)
      .leftJoin(quoteGarment, eq(quoteGarment.quoteId, quote.id))
      .where(or(eq(quote.customerId, clientId), eq(quoteGarment.wearerId, clientId)))
      .all()
      .map(({ number }) => number),
  ),
]

/** What is left of a client in the book when quotes must be kept. */
const NOBODY: Pick<Client, 'name' | 'address' | 'email' | 'phone' | 'note' | 'birthDay'> = {
  ...{ name: '—', address: [], email: '', phone: '', note: '', birthDay: null },
}

/**
 * Takes a client out of the book with her measures, her papers and the history of all of them. Quotes stay, and
 * the sets of measures that they rest on: then the client stays too, as nobody in particular.
 *
 * @returns the hashes of files that no row names any more
 */
export function forgetClient(db: Db, id: string, at: string): { files: string[]; kept: string[] } {
  getClient(db, id)
  const sets = measurementSetsOf(db, id)
  const sheets = db.select().from(sheet).where(eq(sheet.clientId, id)).all()
  const kept = quotesWith(db, id)
  const gone = [id, ...sets.map((set) => set.id), ...sheets.map((one) => one.id)]
  for (const entityId of gone) db.insert(forgotten).values({ entityId, at }).onConflictDoNothing().run()
  db.delete(change).where(inArray(change.entityId, gone)).run()
  db.delete(sheet).where(eq(sheet.clientId, id)).run()
  // Later sets name earlier ones, so the last goes first.
  for (const set of sets.filter(({ usedAt }) => usedAt === null).reverse())
    db.delete(measurementSet).where(eq(measurementSet.id, set.id)).run()
  if (kept.length === 0) db.delete(client).where(eq(client.id, id)).run()
  else db.update(client).set(NOBODY).where(eq(client.id, id)).run()
  return { files: sheets.map(({ hash }) => hash), kept }
}
