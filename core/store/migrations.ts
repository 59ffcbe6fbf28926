import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

/** One migration as shipped: its statements, and the hash by which a store remembers it. */
export type Migration = { name: string; hash: string; statements: string[]; when: number }

const BREAK = '--> statement-breakpoint'

/** The shipped migrations in order, from the folder drizzle-kit writes. */
export function readMigrations(folder: string): Migration[] {
  const journal = JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')) as {
    entries: { tag: string; when: number }[]
  }
  return journal.entries.map(({ tag, when }) => {
    const sql = readFileSync(join(folder, `${tag}.sql`), 'utf8')
    const hash = createHash('sha256').update(sql).digest('hex')
    return { name: tag, hash, statements: sql.split(BREAK), when }
  })
}
