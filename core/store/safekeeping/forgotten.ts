import { copyFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import Database from 'better-sqlite3'
import { drizzle } from 'drizzle-orm/better-sqlite3'
import { named } from '../disk.ts'
import { forgetClient } from '../forget.ts'
import { migrate } from '../migrate.ts'
import { readMigrations } from '../migrations.ts'
import type { Store } from '../open.ts'
import * as schema from '../schema.ts'
import { backupFolder, backupsOf } from './files.ts'
import { forgottenIn, isSound } from './restore.ts'

type Kept = Pick<Store, 'db' | 'path' | 'migrations'>

/** How many people a backup still holds who were forgotten since; null where it cannot be read. */
export const forgottenStillIn = ({ db, path }: Kept, name: string): number | null => {
  const copy = new Database(join(backupFolder(path), name), { readonly: true })
  try {
    return peopleIn(copy, forgottenIn(db)).length
  } catch (error) {
    if (error instanceof Database.SqliteError) return null
    throw error
  } finally {
    copy.close()
  }
}

/** Who of some people has more than an empty name in a store. */
function peopleIn(sqlite: Database.Database, ids: readonly string[]): string[] {
  if (ids.length === 0) return []
  return sqlite
    .prepare("SELECT id FROM client WHERE id IN (SELECT value FROM json_each(?)) AND name <> '—'")
    .pluck()
    .all(JSON.stringify(ids)) as string[]
}

/**
 * Takes whoever was forgotten since out of every backup that can be read. A backup of an older planner is brought up to
 * date by that, as going back to it would do.
 *
 * @param report the part that is done, from 0 to 1
 * @returns how many backups held somebody
 */
export async function forgetInBackups(
  store: Kept,
  now: string,
  report: (done: number) => void,
): Promise<number> {
  const all = backupsOf(store.path)
  const held = all.filter(({ name }) => (forgottenStillIn(store, name) ?? 0) > 0)
  for (const [i, { name }] of held.entries()) {
    report(i / held.length)
    await setImmediate()
    rewrite(join(backupFolder(store.path), name), forgottenIn(store.db), store.migrations, now)
  }
  return held.length
}

function rewrite(backup: string, forgotten: readonly string[], migrations: string, now: string): void {
  const part = `${backup}.part`
  try {
    copyFileSync(backup, part)
    const sqlite = new Database(part)
    try {
      sqlite.pragma('secure_delete = 1')
      migrate(sqlite, readMigrations(migrations), () => {})
      const db = drizzle(sqlite, { schema })
      const people = peopleIn(sqlite, forgotten)
      const forget = () => {
        for (const id of people) forgetClient(db, id, now)
      }
      sqlite.transaction(forget).immediate()
      sqlite.exec('VACUUM')
      if (!isSound(sqlite)) throw new Error(`${backup} would not be sound`)
    } finally {
      sqlite.close()
    }
    named(part, backup)
  } finally {
    rmSync(part, { force: true })
  }
}
