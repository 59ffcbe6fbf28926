import { eq, sql } from 'drizzle-orm'
import { spellingsOf } from '../words/plain-letters.ts'
import type { Db } from './open.ts'
import { searchEntry } from './schema.ts'

/** What can be found by its words. */
export type FoundKind = 'client' | 'cloth' | 'quote' | 'commission' | 'note'
export type Hit = { kind: FoundKind; id: string; title: string; words: string }

/** Makes something findable by its words, in the place of what was kept of it before. */
export function indexed(db: Db, { kind, id, title, words }: Hit): void {
  unindexed(db, id)
  db.run(sql`INSERT INTO found (kind, entity_id, title, words) VALUES (${kind}, ${id}, ${title}, ${words})`)
  const { row } = db.get<{ row: number }>(sql`SELECT last_insert_rowid() AS row`)
  db.insert(searchEntry).values({ entityId: id, row }).run()
}

/** Lets something be found no longer; nothing happens where it could not be. */
export function unindexed(db: Db, id: string): void {
  const entry = db.select().from(searchEntry).where(eq(searchEntry.entityId, id)).get()
  if (entry === undefined) return
  db.run(sql`DELETE FROM found WHERE rowid = ${entry.row}`)
  db.delete(searchEntry).where(eq(searchEntry.entityId, id)).run()
}

/**
 * What has all these words, or words that begin so, the best first; letters that are not on every keyboard are found by
 * plain ones. Each word is quoted, so that nothing a maker types is
 * taken for a query language.
 */
export function search(db: Db, text: string, most: number): (Hit & { excerpt: string })[] {
  const words = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word))
  if (words.length === 0) return []
  const query = words
    .map((word) => spellingsOf(word.toLowerCase()).map((one) => `"${one.replaceAll('"', '""')}"*`))
    .map((spellings) => `(${spellings.join(' OR ')})`)
    .join(' AND ')
  return db.all(
    sql`SELECT kind, entity_id AS id, title, words, snippet(found, 3, '', '', '…', 12) AS excerpt
      FROM found WHERE found MATCH ${query} ORDER BY rank LIMIT ${most}`,
  )
}
