import { existsSync, mkdirSync, statSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import Database from 'better-sqlite3'
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { type Lock, lockStore } from './lock.ts'
import { migrate } from './migrate.ts'
import { readMigrations } from './migrations.ts'
import { forgetAgain, restoreAsWished } from './safekeeping/restore.ts'
import * as schema from './schema.ts'

export type Db = BetterSQLite3Database<typeof schema> & { $client: Database.Database }

/** An open store: one connection, held by this process alone. */
export type Store = {
  db: Db
  path: string
  /** Folder of the printed papers and other files, each named by its content. */
  attachments: string
  /** Runs one use case: all of it is kept, on disk, or nothing. */
  transaction<T>(work: () => T): T
  close(): void
}

export type OpenOptions = {
  /** Instant of opening, UTC; names the backup made before a migration. */
  now: string
  /** Where the migrations lie; the shell of a packaged planner says so. */
  migrations?: string
}

export const MIGRATIONS = join(import.meta.dirname, '../../migrations')

/**
 * Opens a store, making it if there is none, and brings it up to date.
 *
 * @throws Refusal when its folder is missing, another process has it, it is damaged or no store, or it was
 * written by a newer program
 */
export function openStore(file: string, { now, migrations = MIGRATIONS }: OpenOptions): Store {
  const path = resolve(file)
  if (!existsSync(dirname(path)))
    throw new Refusal(phrase('refusal.store.noFolder', { folder: dirname(path) }))
  if (existsSync(path) && statSync(path).isDirectory())
    throw new Refusal(phrase('refusal.store.notAStore', { path }))
  const lock = lockStore(path)
  let sqlite: Database.Database | undefined
  try {
    const forgotten = restoreAsWished(path)
    sqlite = connect(path)
    refuseDamaged(sqlite, path)
    const shipped = readMigrations(migrations)
    const backup = () => backUp(sqlite!, path, now)
    migrate(sqlite, shipped, backup)
    const store = storeOf(sqlite, path, lock)
    forgetAgain(store.db, path, forgotten, now)
    return store
  } catch (error) {
    sqlite?.close()
    lock.release()
    throw isNoStore(error) ? new Refusal(phrase('refusal.store.damaged', { path })) : error
  }
}

/** A connection that keeps what it acknowledges, with every setting read back. */
function connect(path: string): Database.Database {
  const sqlite = new Database(path)
  // What is deleted is overwritten too, so that a client who is forgotten is not left in the file's free pages.
  const settings = {
    ...{ journal_mode: 'wal', synchronous: 2, foreign_keys: 1, busy_timeout: 5000 },
    secure_delete: 1,
  }
  for (const [name, value] of Object.entries(settings)) {
    sqlite.pragma(`${name} = ${value}`)
    const held = sqlite.pragma(name, { simple: true })
    if (held !== value) throw new Error(`${name} is ${held} and not ${value}`)
  }
  return sqlite
}

function refuseDamaged(sqlite: Database.Database, path: string): void {
  const found = sqlite.pragma('quick_check(1)', { simple: true })
  if (found !== 'ok') throw new Refusal(phrase('refusal.store.damaged', { path }))
}

const isNoStore = (error: unknown): boolean =>
  error instanceof Database.SqliteError &&
  (error.code === 'SQLITE_NOTADB' || error.code.startsWith('SQLITE_CORRUPT'))

/** A copy of the store as it is, checked, in the folder `backups` beside it. */
function backUp(sqlite: Database.Database, path: string, now: string): void {
  const folder = join(dirname(path), 'backups')
  mkdirSync(folder, { recursive: true })
  const copy = join(folder, `before-update-${now.replace(/[:.]/g, '-')}.ellwand`)
  sqlite.prepare('VACUUM INTO ?').run(copy)
  const check = new Database(copy, { readonly: true })
  const found = check.pragma('integrity_check', { simple: true })
  check.close()
  if (found !== 'ok') throw new Error(`the backup ${copy} is not sound: ${found}`)
}

function storeOf(sqlite: Database.Database, path: string, lock: Lock): Store {
  return {
    db: drizzle(sqlite, { schema }),
    path,
    attachments: join(dirname(path), 'attachments'),
    transaction: (work) => {
      if (sqlite.inTransaction) throw new Error('a use case is one transaction, not two')
      return sqlite.transaction(work).immediate()
    },
    close: () => {
      sqlite.pragma('wal_checkpoint(TRUNCATE)')
      sqlite.close()
      lock.release()
    },
  }
}
