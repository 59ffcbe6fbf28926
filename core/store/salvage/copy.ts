import { join } from 'node:path'
import Database from 'better-sqlite3'
import { type BackupFile, backupFolder, backupsOf } from '../safekeeping/files.ts'
import { isSound } from '../safekeeping/restore.ts'
import type { Row } from './rows.ts'

/** The newest backup of a store that is sound. @param after an instant it must be younger than */
export const newestSound = (path: string, after = ''): BackupFile | undefined =>
  backupsOf(path).find(({ name, at }) => {
    if (at <= after) return false
    const copy = new Database(join(backupFolder(path), name), { readonly: true })
    try {
      return isSound(copy)
    } finally {
      copy.close()
    }
  })

/** A backup from which single rows are taken in the place of those that cannot be read. */
export type Copy = {
  /** @returns whether the row was there and fits */
  take(table: string, id: unknown): boolean
  taken(): number
  close(): void
}

/** Has no row of anything: for want of a backup, or of knowing who was forgotten since. */
export const NO_COPY: Copy = { take: () => false, taken: () => 0, close: () => {} }

/**
 * Rows are taken only where they are known to be lost, and never from before somebody was forgotten: a client is not
 * brought back by an accident of the disk.
 *
 * @param insert puts a row into a table, and says whether it fits
 */
export function copyFor(
  path: string,
  lastForgotten: string,
  insert: (table: string, row: Row) => boolean,
): Copy {
  const backup = newestSound(path, lastForgotten)
  if (backup === undefined) return NO_COPY
  const db = new Database(join(backupFolder(path), backup.name), { readonly: true })
  const tables = new Set(db.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").pluck().all())
  let taken = 0
  return {
    take: (table, id) => {
      if (!tables.has(table)) return false
      const row = db.prepare(`SELECT * FROM "${table}" WHERE id = ?`).safeIntegers().get(id) as
        | Row
        | undefined
      if (row === undefined || !insert(table, row)) return false
      taken++
      return true
    },
    taken: () => taken,
    close: () => db.close(),
  }
}
