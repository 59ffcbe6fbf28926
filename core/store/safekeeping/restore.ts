import { copyFileSync, existsSync, readFileSync, renameSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { synced, syncFolder, written } from '../disk.ts'
import { forgetClient } from '../forget.ts'
import type { Db } from '../open.ts'
import { backupFolder, backupsOf } from './files.ts'

/** What is counted when a backup is held against the store. */
export const COUNTED = ['client', 'measurement_set', 'quote', 'commission', 'payment', 'time_entry'] as const
export type Counted = {
  what: (typeof COUNTED)[number]
  here: number
  there: number
  onlyHere: number
  onlyThere: number
}

/** A backup held against the store as it is: what would be lost by going back to it, and what would come back. */
export function previewOf(db: Db, store: string, name: string): Counted[] {
  const copy = openBackup(store, name)
  try {
    return COUNTED.map((what) => {
      const here = idsIn(db.$client, what)
      const there = idsIn(copy, what)
      return {
        ...{ what, here: here.size, there: there.size },
        onlyHere: [...here].filter((id) => !there.has(id)).length,
        onlyThere: [...there].filter((id) => !here.has(id)).length,
      }
    })
  } finally {
    copy.close()
  }
}

function idsIn(db: Database.Database, table: string): Set<string> {
  const known = db.prepare('SELECT 1 FROM sqlite_master WHERE type = ? AND name = ?').get('table', table)
  // A table that came with a later update is not in an older backup.
  if (known === undefined) return new Set()
  return new Set(db.prepare(`SELECT id FROM "${table}"`).pluck().all() as string[])
}

/** @throws Refusal when there is no such backup, or it is damaged */
function openBackup(store: string, name: string): Database.Database {
  if (!backupsOf(store).some((one) => one.name === name))
    throw new Refusal(phrase('refusal.backup.none'), 'name')
  const copy = new Database(join(backupFolder(store), name), { readonly: true })
  if (isSound(copy)) return copy
  copy.close()
  throw new Refusal(phrase('refusal.backup.damaged', { name }), 'name')
}

/** Whether SQLite can read all of a copy. @throws Error when it was not read for another reason than damage */
export function isSound(copy: Database.Database): boolean {
  try {
    return copy.pragma('quick_check(1)', { simple: true }) === 'ok'
  } catch (error) {
    if (error instanceof Database.SqliteError) return false
    throw error
  }
}

type Wish = { name: string; forgotten: string[] }
const wishOf = (store: string): string => `${store}.restore`

/**
 * Writes down that the store is to go back to a backup: that is done when it is opened next, before anything reads it, so
 * that no power cut can leave half of one and half of the other.
 *
 * @throws Refusal when there is no such backup, or it is damaged
 */
export function wishRestore(db: Db, store: string, name: string): void {
  openBackup(store, name).close()
  noteWish(store, name, forgottenIn(db))
}

/** Ids of whom this store has been asked to forget. */
export const forgottenIn = (db: Db): string[] =>
  db.$client.prepare('SELECT entity_id FROM forgotten').pluck().all() as string[]

/** The wish itself, where there is no store of which it could be asked. */
export const noteWish = (store: string, name: string, forgotten: string[]): void =>
  written(wishOf(store), JSON.stringify({ name, forgotten } satisfies Wish))

/** Carries out a wish to go back, if there is one; answers who must be forgotten again. Called before the store is opened. */
export function restoreAsWished(store: string): string[] {
  const wish = wishOf(store)
  if (!existsSync(wish)) return []
  const { name, forgotten } = JSON.parse(readFileSync(wish, 'utf8')) as Wish
  const backup = join(backupFolder(store), name)
  if (existsSync(backup)) {
    const part = `${store}.part`
    copyFileSync(backup, part)
    synced(part)
    // The journal belongs to the file that goes.
    for (const ending of ['-wal', '-shm']) rmSync(store + ending, { force: true })
    renameSync(part, store)
    syncFolder(dirname(store))
  }
  return forgotten
}

/** Whoever was forgotten stays forgotten in what came back; then the wish is done. */
export function forgetAgain(db: Db, store: string, forgotten: readonly string[], at: string): void {
  const known = db.$client.prepare('SELECT 1 FROM client WHERE id = ?')
  for (const id of forgotten)
    if (known.get(id) !== undefined) db.$client.transaction(() => forgetClient(db, id, at)).immediate()
  rmSync(wishOf(store), { force: true })
}
