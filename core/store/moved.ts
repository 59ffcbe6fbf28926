import { mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Database } from 'better-sqlite3'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { backupFolder, backupName } from './safekeeping/files.ts'

/** The files of an open store, by what the system knows them by: a name may come to mean another file. */
export type Held = { path: string; files: { name: string; mark: string }[]; rescued: boolean }

/** Marks the files of a store that was just opened, for `refuseMoved` to hold them against. */
export const heldPlace = (path: string): Held => ({
  path,
  files: [path, `${path}-wal`].map((name) => ({ name, mark: markOf(name) })),
  rescued: false,
})

function markOf(name: string): string {
  const found = statSync(name, { bigint: true, throwIfNoEntry: false })
  return found === undefined ? '' : `${found.dev} ${found.ino}`
}

/**
 * Refuses to go on writing into a file that was moved or deleted under the planner's hands: the system would let it, and
 * all would be gone with the planner's end. What the file held is copied among the backups, once.
 *
 * @throws Refusal when the store or its journal is no longer in its place
 */
export function refuseMoved(sqlite: Database, held: Held): void {
  if (held.files.every(({ name, mark }) => markOf(name) === mark)) return
  if (!held.rescued) held.rescued = rescue(sqlite, held.path)
  throw new Refusal(
    phrase(held.rescued ? 'refusal.store.moved' : 'refusal.store.movedAway', { path: held.path }),
  )
}

/** @returns whether a copy could be written */
function rescue(sqlite: Database, path: string): boolean {
  try {
    mkdirSync(backupFolder(path), { recursive: true })
    const name = backupName(path, 'moved', new Date().toISOString())
    sqlite.prepare('VACUUM INTO ?').run(join(backupFolder(path), name))
    return true
  } catch {
    // The disk itself may be gone: the sentence says so.
    return false
  }
}
