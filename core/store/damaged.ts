import { existsSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { written } from './disk.ts'
import { isDamage } from './faults.ts'
import type { Db } from './open.ts'
import { type BackupFile, backupsOf } from './safekeeping/files.ts'
import { forgottenIn, noteWish } from './safekeeping/restore.ts'
import { jsonColumns, type Salvaged } from './salvage.ts'

/** A store that is damaged or gone, of which what was saved is open to be looked at. */
export type Damaged = { path: string; missing: boolean; saved: Salvaged; backup: BackupFile | undefined }

export type Condition = 'sound' | 'new' | 'damaged' | 'missing'

/**
 * What is to be found at the place of a store. The file is only read: opened for writing, even a damaged one would have
 * its journal carried over into it.
 */
export function conditionOf(path: string): Condition {
  const begun = backupsOf(path).length > 0 ? 'missing' : 'new'
  if (sizeOf(path) === 0 && sizeOf(`${path}-wal`) === 0) return begun
  let db: Database.Database | undefined
  try {
    db = new Database(path, { readonly: true })
    const tables = db.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").pluck().all() as string[]
    if (tables.length === 0) return begun
    if (!tables.includes('migration') || db.pragma('quick_check(1)', { simple: true }) !== 'ok')
      return 'damaged'
    return tables.some((table) => hasBrokenJson(db!, table)) ? 'damaged' : 'sound'
  } catch (error) {
    if (isDamage(error)) return 'damaged'
    throw error
  } finally {
    db?.close()
  }
}

const sizeOf = (path: string): number => (existsSync(path) ? statSync(path).size : 0)

/** A letter that has changed within a text is nothing to SQLite, but no list that holds such an entry could be shown. */
function hasBrokenJson(db: Database.Database, table: string): boolean {
  const there = new Set(db.prepare('SELECT name FROM pragma_table_info(?)').pluck().all(table))
  const broken = jsonColumns(table).flatMap((name) =>
    there.has(name) ? [`("${name}" IS NOT NULL AND NOT json_valid("${name}"))`] : [],
  )
  if (broken.length === 0) return false
  return db.prepare(`SELECT 1 FROM "${table}" WHERE ${broken.join(' OR ')} LIMIT 1`).get() !== undefined
}

/** Where what was saved of a damaged store is written. */
export const savedFile = (path: string): string =>
  join(dirname(path), `${basename(path, '.ellwand')}-saved.ellwand`)

export type GoOn = 'saved' | 'backup'
type Wish = { with: GoOn; name: string; forgotten: string[]; at: string }
const wishOf = (path: string): string => `${path}.go-on`

/** Writes down with what the maker goes on: that is done when the store is opened next, before anything reads it. */
export function wishToGoOn(db: Db, { path, backup }: Damaged, choice: GoOn, at: string): void {
  const wish: Wish = { with: choice, name: backup?.name ?? '', forgotten: forgottenIn(db), at }
  written(wishOf(path), JSON.stringify(wish))
}

/**
 * Carries out such a wish, if there is one: the damaged file and its journal are put aside, and what the maker chose takes
 * their place. Whatever moment the power goes, it is gone on with from there.
 */
export function goOnAsWished(path: string): void {
  const file = wishOf(path)
  if (!existsSync(file)) return
  const { with: choice, name, forgotten, at } = JSON.parse(readFileSync(file, 'utf8')) as Wish
  const saved = savedFile(path)
  if (choice === 'backup' || existsSync(saved)) putAside(path, at)
  if (choice === 'backup') noteWish(path, name, forgotten)
  else if (existsSync(saved)) renameSync(saved, path)
  rmSync(file, { force: true })
}

function putAside(path: string, at: string): void {
  const aside = join(
    dirname(path),
    `${basename(path, '.ellwand')}-damaged-${at.replace(/[:.]/g, '-')}.ellwand`,
  )
  for (const ending of ['', '-wal']) if (existsSync(path + ending)) renameSync(path + ending, aside + ending)
  rmSync(`${path}-shm`, { force: true })
}
