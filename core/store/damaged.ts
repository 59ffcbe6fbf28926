import { existsSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import Database from 'better-sqlite3'
import { written } from './disk.ts'
import { isDamage } from './faults.ts'
import type { Db } from './open.ts'
import { type BackupFile, backupsOf } from './safekeeping/files.ts'
import { forgottenIn, noteWish } from './safekeeping/restore.ts'
import { jsonColumns, type Salvaged } from './salvage.ts'

/** A store that is damaged or gone, of which what was saved is open to be looked at. */
export type Damaged = { path: string; missing: boolean; saved: Salvaged; backup: BackupFile | undefined }

/** How a store is found: `new` where none has been yet, `missing` where backups tell of one that is gone. */
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
    if (existsSync(markOf(path))) return 'damaged'
    if (sizeOf(path) > LOOKED_THROUGH_AT_ONCE) return 'sound'
    return tables.some((table) => hasBrokenJson(db!, table)) ? 'damaged' : 'sound'
  } catch (error) {
    if (isDamage(error)) return 'damaged'
    throw error
  } finally {
    db?.close()
  }
}

const sizeOf = (path: string): number => (existsSync(path) ? statSync(path).size : 0)

/** A store that is larger, bytes, is looked through while one works in it: its texts would hold up the start. */
const LOOKED_THROUGH_AT_ONCE = 32_000_000
/** Rows that are looked through before others get their turn. */
const ROWS_AT_ONCE = 20

/** Beside a store in which something broken was found while it was open: how it is opened next. */
const markOf = (path: string): string => `${path}.broken`

/**
 * Looks through what is too much to be looked through when a large store is opened. Where something is broken that is
 * written down, and it is opened as a damaged one next.
 *
 * @returns whether all is sound
 */
export async function lookThrough({ db: { $client }, path }: { db: Db; path: string }): Promise<boolean> {
  if (sizeOf(path) <= LOOKED_THROUGH_AT_ONCE) return true
  const tables = $client
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table'")
    .pluck()
    .all() as string[]
  for (const table of tables.filter((one) => jsonColumns(one).length > 0)) {
    const last = ($client.prepare(`SELECT max(rowid) FROM "${table}"`).pluck().get() as number | null) ?? 0
    for (let from = 0; from <= last; from += ROWS_AT_ONCE) {
      if (hasBrokenJson($client, table, { from, to: from + ROWS_AT_ONCE })) {
        written(markOf(path), `${table}\n`)
        return false
      }
      await setImmediate()
    }
  }
  return true
}

type Between = { from: number; to: number }

/** A letter that has changed within a text is nothing to SQLite, but no list that holds such an entry could be shown. */
function hasBrokenJson(db: Database.Database, table: string, rows?: Between): boolean {
  const there = new Set(db.prepare('SELECT name FROM pragma_table_info(?)').pluck().all(table))
  const broken = jsonColumns(table).flatMap((name) =>
    there.has(name) ? [`("${name}" IS NOT NULL AND NOT json_valid("${name}"))`] : [],
  )
  if (broken.length === 0) return false
  const within = rows === undefined ? '' : `rowid BETWEEN ${rows.from} AND ${rows.to} AND `
  const sql = `SELECT 1 FROM "${table}" WHERE ${within}(${broken.join(' OR ')}) LIMIT 1`
  return db.prepare(sql).get() !== undefined
}

/** Where what was saved of a damaged store is written. */
export const savedFile = (path: string): string =>
  join(dirname(path), `${basename(path, '.ellwand')}-saved.ellwand`)

/** With what the maker goes on from a damaged store: what was saved of it, or the newest sound backup. */
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
  rmSync(markOf(path), { force: true })
}
