import { existsSync, mkdirSync, statSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import Database from 'better-sqlite3'
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { conditionOf, type Damaged, goOnAsWished, savedFile } from './damaged.ts'
import { isDamage, refusalOfFault } from './faults.ts'
import { clearLeftovers } from './leftovers.ts'
import { type Lock, lockStore } from './lock.ts'
import { migrate } from './migrate.ts'
import { readMigrations } from './migrations.ts'
import { heldPlace, refuseMoved } from './moved.ts'
import { leaveAsBackup } from './safekeeping/move.ts'
import { forgetAgain, restoreAsWished } from './safekeeping/restore.ts'
import { newestSound } from './salvage/copy.ts'
import { salvage } from './salvage.ts'
import * as schema from './schema.ts'
import { folderOf, whereNow } from './whereabouts.ts'

/** The connection with the tables by name; `$client` is SQLite itself, for what has no words in the query builder. */
export type Db = BetterSQLite3Database<typeof schema> & { $client: Database.Database }

/** An open store: one connection, held by this process alone. */
export type Store = {
  db: Db
  path: string
  /** Where it is looked for: the same, unless it was put somewhere else. */
  home: string
  /** Where the migrations lie that it was brought up to date with. */
  migrations: string
  /** Folder of the printed papers and other files, each named by its content. */
  attachments: string
  /** What there is instead of a store that is damaged or gone: then this one can be looked at, and nothing else. */
  damaged?: Damaged
  /** Runs one use case: all of it is kept, on disk, or nothing. */
  transaction<T>(work: () => T): T
  /** From now on nothing is written here, for it is put into another folder; what it answers takes that back. */
  leave(folder: string): () => void
  close(): void
}

/** What the shell says as it opens a store. */
export type OpenOptions = {
  /** Instant of opening, UTC; names the backup made before a migration. */
  now: string
  /** Where the migrations lie; the shell of a packaged planner says so. */
  migrations?: string
}

/** Where the migrations lie beside the sources. */
export const MIGRATIONS = join(import.meta.dirname, '../../migrations')

/**
 * Opens a store, making it if there is none, and brings it up to date.
 *
 * @throws Refusal when its folder is missing or may not be written in, another process has it, it is damaged, gone or no
 * store, or it was written by a newer program
 */
export function openStore(file: string, { now, migrations = MIGRATIONS }: OpenOptions): Store {
  const home = placeOf(file)
  const path = whereNow(home)
  return locked(path, (lock) => {
    if (path !== home) leaveAsBackup(home, now)
    clearLeftovers(path, now)
    goOnAsWished(path)
    const forgotten = restoreAsWished(path)
    const condition = conditionOf(path)
    if (condition === 'damaged') throw new Refusal(phrase('refusal.store.damaged', { path }))
    if (condition === 'missing') throw new Refusal(phrase('refusal.store.missing', { path }))
    const sqlite = connect(path)
    try {
      migrate(sqlite, readMigrations(migrations), () => backUp(sqlite, path, now))
      const store = storeOf(sqlite, { path, home, migrations, lock, now })
      forgetAgain(store.db, path, forgotten, now)
      return store
    } catch (error) {
      sqlite.close()
      throw error
    }
  })
}

/**
 * Opens a store; of one that is damaged or gone, what could be saved, to be looked at only. The damaged file stays as it is.
 *
 * @throws Refusal for what else may be wrong, as `openStore`
 */
export function openStoreOrSaved(file: string, options: OpenOptions): Store {
  try {
    return openStore(file, options)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const { code } = error.phrase
    if (code !== 'refusal.store.damaged' && code !== 'refusal.store.missing') throw error
    return openSaved(placeOf(file), code === 'refusal.store.missing', options)
  }
}

function openSaved(home: string, missing: boolean, { now, migrations = MIGRATIONS }: OpenOptions): Store {
  const path = whereNow(home)
  return locked(path, (lock) => {
    const target = savedFile(path)
    const saved = salvage(path, target, { now, shipped: readMigrations(migrations) })
    const sqlite = new Database(target, { readonly: true })
    return {
      db: drizzle(sqlite, { schema }),
      path,
      home,
      migrations,
      attachments: attachmentsOf(path),
      damaged: { path, missing, saved, backup: newestSound(path) },
      transaction: () => {
        throw new Refusal(phrase('refusal.store.lookOnly'))
      },
      leave: () => {
        throw new Refusal(phrase('refusal.store.lookOnly'))
      },
      close: () => {
        sqlite.close()
        lock.release()
      },
    }
  })
}

/** @throws Refusal when there can be no store */
function placeOf(file: string): string {
  const path = resolve(file)
  if (!existsSync(dirname(path)))
    throw new Refusal(phrase('refusal.store.noFolder', { folder: dirname(path) }))
  if (existsSync(path) && statSync(path).isDirectory())
    throw new Refusal(phrase('refusal.store.notAStore', { path }))
  return path
}

/** Opens a store that no other process has; when that fails, others may have it again. */
function locked(path: string, open: (lock: Lock) => Store): Store {
  try {
    const lock = lockStore(path)
    try {
      return open(lock)
    } catch (error) {
      lock.release()
      throw error
    }
  } catch (error) {
    if (isDamage(error)) throw new Refusal(phrase('refusal.store.damaged', { path }))
    throw refusalOfFault(error) ?? error
  }
}

const attachmentsOf = (path: string): string => join(dirname(path), 'attachments')

/** A connection that keeps what it acknowledges, with every setting read back. */
function connect(path: string): Database.Database {
  const sqlite = new Database(path)
  // What is deleted is overwritten too, so that a client who is forgotten is not left in the file's free pages.
  const settings = {
    ...{ journal_mode: 'wal', synchronous: 2, foreign_keys: 1, busy_timeout: 5000 },
    secure_delete: 1,
  }
  try {
    for (const [name, value] of Object.entries(settings)) {
      sqlite.pragma(`${name} = ${value}`)
      const held = sqlite.pragma(name, { simple: true })
      if (held !== value) throw new Error(`${name} is ${held} and not ${value}`)
    }
    return sqlite
  } catch (error) {
    sqlite.close()
    throw error
  }
}

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

type Opened = Pick<Store, 'path' | 'home' | 'migrations'> & { lock: Lock; now: string }

function storeOf(sqlite: Database.Database, { path, home, migrations, lock, now }: Opened): Store {
  const held = heldPlace(path)
  let leftFor: string | undefined
  return {
    db: drizzle(sqlite, { schema }),
    path,
    home,
    migrations,
    attachments: attachmentsOf(path),
    transaction: (work) => {
      if (sqlite.inTransaction) throw new Error('a use case is one transaction, not two')
      if (leftFor !== undefined) throw new Refusal(phrase('refusal.store.left', { folder: leftFor }))
      refuseMoved(sqlite, held)
      return sqlite.transaction(work).immediate()
    },
    leave: (folder) => {
      leftFor = folder
      return () => {
        leftFor = undefined
      }
    },
    close: () => {
      try {
        sqlite.pragma('wal_checkpoint(TRUNCATE)')
      } catch (error) {
        // Where the disk is full or gone the journal stays, and is carried over when the store is opened next.
        if (refusalOfFault(error) === undefined) throw error
      } finally {
        sqlite.close()
        if (folderOf(home) !== dirname(path)) leaveAsBackup(path, now)
        lock.release()
      }
    },
  }
}
