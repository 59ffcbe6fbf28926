import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { named } from '../disk.ts'
import type { Db, Store } from '../open.ts'
import { type BackupFile, type BackupReason, backupFolder, backupName, backupsOf } from './files.ts'
import { keptBackups } from './retention.ts'

/** Pages copied before others get their turn: about a megabyte. */
const PAGES_AT_ONCE = 256

/**
 * Copies a store as it is, on its own connection: requests go on between the parts. The copy is checked before it bears
 * its name, and those that the rule does not keep go.
 *
 * @param report the part that is done, from 0 to 1
 * @throws Error when the copy is not sound; nothing of it stays
 */
export async function backUp(
  { db, path }: Pick<Store, 'db' | 'path'>,
  why: BackupReason,
  now: string,
  report: (done: number) => void = () => {},
): Promise<BackupFile> {
  const folder = backupFolder(path)
  mkdirSync(folder, { recursive: true })
  const name = backupName(path, why, now)
  const part = join(folder, `${name}.part`)
  try {
    await copyWhole(db, part, report)
    named(part, join(folder, name))
  } catch (error) {
    rmSync(part, { force: true })
    throw error
  }
  prune(path, now)
  return backupsOf(path).find((one) => one.name === name)!
}

/**
 * Copies a store as it is into a file that stands alone, and checks it.
 *
 * @throws Error when the copy is not sound
 */
export async function copyWhole(db: Db, to: string, report: (done: number) => void): Promise<void> {
  await db.$client.backup(to, {
    progress: ({ totalPages, remainingPages }) => {
      report(totalPages === 0 ? 0 : 1 - remainingPages / totalPages)
      return PAGES_AT_ONCE
    },
  })
  checkCopy(to)
}

/** A copy stands alone, without files of a journal beside it, and is sound. */
function checkCopy(path: string): void {
  const copy = new Database(path)
  try {
    copy.pragma('journal_mode = DELETE')
    const found = copy.pragma('quick_check(1)', { simple: true })
    if (found !== 'ok') throw new Error(`the backup is not sound: ${found}`)
  } finally {
    copy.close()
  }
}

/** What was asked for, or made before something risky, stays for a day beside those of the hours. */
const DAY = 86_400_000

/** Lets go of the backups that the rule does not keep. */
function prune(store: string, now: string): void {
  const all = backupsOf(store)
  const kept = keptBackups(
    all.map(({ at }) => at),
    now,
  )
  const isYoung = ({ at, why }: BackupFile) =>
    why !== 'start' && why !== 'hourly' && Date.parse(now) - Date.parse(at) < DAY
  for (const one of all)
    if (!kept.has(one.at) && !isYoung(one)) rmSync(join(backupFolder(store), one.name), { force: true })
}
