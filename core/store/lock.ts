import { existsSync, realpathSync } from 'node:fs'
import Database from 'better-sqlite3'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'

/** The hold on a store; once it is released another process may have it. */
export type Lock = { release(): void }

/**
 * Holds a store for this process alone by an exclusive transaction on a small file beside it. The system
 * frees it when the process ends, however it ends. Keep the lock referenced as long as the store is open. A store that is
 * reached by a link is held where it lies, so that it is the same one by either way.
 *
 * @throws Refusal when another process holds it
 */
export function lockStore(path: string): Lock {
  const place = existsSync(path) ? realpathSync(path) : path
  const db = new Database(`${place}.lock`, { timeout: 0 })
  try {
    db.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    db.close()
    throw isBusy(error) ? new Refusal(phrase('refusal.store.busy', { path })) : error
  }
  return {
    release: () => {
      db.exec('ROLLBACK')
      db.close()
    },
  }
}

const isBusy = (error: unknown): boolean =>
  error instanceof Database.SqliteError &&
  (error.code.startsWith('SQLITE_BUSY') || error.code.startsWith('SQLITE_LOCKED'))
