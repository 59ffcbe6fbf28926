import { createHash } from 'node:crypto'
import {
  createReadStream,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
} from 'node:fs'
import { copyFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { named, refuseNoRoom } from '../disk.ts'
import type { Store } from '../open.ts'
import { pointTo } from '../whereabouts.ts'
import { backupFolder, backupName, backupsOf } from './files.ts'
import { copyWhole } from './make.ts'
import { folderAt, refuseUnwritable } from './places.ts'

/** Folders beside a store whose files go along with it. */
const ALONG = ['attachments', 'backups'] as const

type Steps = { report: (done: number) => void; signal: AbortSignal }
type File = { within: string; name: string; bytes: number }

/**
 * Puts a store somewhere else with its papers, pictures and backups: all is copied and checked, and from then on nothing
 * more is written here. It lies in the other folder as soon as it is opened next; what was here stays as a backup.
 *
 * @param report the part that is done, from 0 to 1
 * @throws Refusal when the folder may not be written in, has no room or holds a workroom; nothing was changed then
 */
export async function moveStore(store: Store, typed: string, { report, signal }: Steps): Promise<string> {
  const folder = folderAt(typed)
  const target = join(folder, basename(store.home))
  if (folder === dirname(store.path)) throw new Refusal(phrase('refusal.place.same'), 'folder')
  if (existsSync(target)) throw new Refusal(phrase('refusal.place.taken', { folder }), 'folder')
  refuseUnwritable(folder)
  const along = filesAlong(store)
  const size = statSync(store.path).size
  const all = along.reduce((sum, { bytes }) => sum + bytes, size)
  refuseNoRoom(folder, all)
  const made: string[] = []
  const back = store.leave(folder)
  try {
    let done = 0
    for (const one of along) {
      signal.throwIfAborted()
      await bring(one, dirname(store.path), folder, made)
      done += one.bytes
      report(done / all)
    }
    const part = `${target}.part`
    made.push(part)
    await copyWhole(store.db, part, (copied) => {
      signal.throwIfAborted()
      report((done + copied * size) / all)
    })
    made.push(target)
    named(part, target)
    pointTo(store.home, folder)
    report(1)
    return folder
  } catch (error) {
    for (const file of made) rmSync(file, { force: true })
    for (const within of ALONG) removeEmpty(join(folder, within))
    back()
    throw error
  }
}

function filesAlong(store: Store): File[] {
  const own = new Set(backupsOf(store.path).map(({ name }) => name))
  return ALONG.flatMap((within) => {
    const inside = join(dirname(store.path), within)
    if (!existsSync(inside)) return []
    return readdirSync(inside, { withFileTypes: true })
      .filter((entry) => entry.isFile() && !entry.name.endsWith('.part'))
      .filter(({ name }) => within === 'attachments' || own.has(name))
      .map(({ name }) => ({ within, name, bytes: statSync(join(inside, name)).size }))
  })
}

async function bring({ within, name }: File, from: string, to: string, made: string[]): Promise<void> {
  const [source, target] = [join(from, within, name), join(to, within, name)]
  const wanted = await digest(source)
  if (existsSync(target) && (await digest(target)) === wanted) return
  mkdirSync(join(to, within), { recursive: true })
  const part = `${target}.part`
  made.push(part, target)
  await copyFile(source, part)
  if ((await digest(part)) !== wanted)
    throw new Refusal(phrase('refusal.place.notWhole', { file: target }), 'folder')
  named(part, target)
}

async function digest(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer)
  return hash.digest('hex')
}

function removeEmpty(folder: string): void {
  if (existsSync(folder) && readdirSync(folder).length === 0) rmdirSync(folder)
}

/** A store that lies where it is not looked for any more is put among the backups there. */
export function leaveAsBackup(path: string, now: string): void {
  if (!existsSync(path)) return
  mkdirSync(backupFolder(path), { recursive: true })
  const left = new Database(path)
  left.pragma('journal_mode = DELETE')
  left.close()
  renameSync(path, join(backupFolder(path), backupName(path, 'before-moving', now)))
}
