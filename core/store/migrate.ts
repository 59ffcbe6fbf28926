import type { Database } from 'better-sqlite3'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Migration } from './migrations.ts'

/**
 * Brings a store up to the shipped migrations, all of it or nothing. Foreign keys are off while tables are
 * rebuilt, because SQLite would otherwise carry out the deletes of a dropped parent on its children; they
 * are checked before anything is kept.
 *
 * @param backup is called once, before the first change to a store that already holds something
 * @throws Refusal when the store was written by a newer program
 */
export function migrate(db: Database, shipped: readonly Migration[], backup: () => void): void {
  db.exec(
    'CREATE TABLE IF NOT EXISTS migration (hash TEXT PRIMARY KEY NOT NULL, name TEXT NOT NULL, position INTEGER NOT NULL) STRICT',
  )
  const applied = db.prepare<[], { hash: string }>('SELECT hash FROM migration ORDER BY position').all()
  if (applied.length > shipped.length || applied.some(({ hash }, i) => hash !== shipped[i]!.hash)) {
    throw new Refusal(phrase('refusal.store.newer'))
  }
  const pending = shipped.slice(applied.length)
  if (pending.length === 0) return
  if (applied.length > 0) backup()
  db.pragma('foreign_keys = OFF')
  try {
    db.transaction(() => {
      for (const migration of pending) {
        for (const statement of migration.statements) db.exec(statement)
        const position = shipped.indexOf(migration)
        db.prepare('INSERT INTO migration (hash, name, position) VALUES (?, ?, ?)').run(
          migration.hash,
          migration.name,
          position,
        )
      }
      const broken = db.pragma('foreign_key_check') as unknown[]
      if (broken.length > 0)
        throw new Error(`a migration left ${broken.length} references without their rows`)
    }).immediate()
  } finally {
    db.pragma('foreign_keys = ON')
  }
}
