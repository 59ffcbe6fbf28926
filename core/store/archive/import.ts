import { existsSync, rmSync, statfsSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { attachmentPath, putAttachment, removeAttachment } from '../attachments.ts'
import { readMigrations } from '../migrations.ts'
import { MIGRATIONS, type Store } from '../open.ts'
import { type ArchiveFile, type Contents, checked, contentsOf, damaged } from './contents.ts'
import { rebuild } from './rebuild.ts'
import { holdsNothing, listed, quotedName, sequencesOf, setSequences, tablesOf } from './tables.ts'

/** What goes with the reading of an archive; an aborted `signal` stops it, and the store stays as it was. */
export type ImportOptions = {
  /** The part that is done, from 0 to 1. */
  report?: (done: number) => void
  signal?: AbortSignal
  /** Called in the transaction that keeps the rows, once they are there: for what is made of them. */
  derived?: () => void
  migrations?: string
}

/**
 * Brings everything of an archive into a store that holds nothing. The book is built beside the store first, and every
 * file checked; only then is it taken over, in one transaction. Whatever refuses it, the store is as empty as it was.
 *
 * No change is written into the history: the history is brought along, and is to be the one that was taken out.
 *
 * @returns how many rows each table has now, and the files that were missing when the archive was made
 * @throws Refusal when the store is not empty; when it is no archive, a damaged one, a newer planner's, or the sample's;
 * when the disk has no room
 */
export async function importArchive(
  archive: string,
  store: Store,
  { report = () => {}, signal, derived = () => {}, migrations = MIGRATIONS }: ImportOptions = {},
): Promise<{ rows: Record<string, number>; missing: string[] }> {
  refuseFull(store)
  const shipped = readMigrations(migrations)
  const contents = await contentsOf(archive, shipped)
  const all = contents.files.reduce((sum, { entry }) => sum + entry.bytes, 0)
  refuseWithoutRoom(dirname(store.path), all)
  let done = 0
  const step = (bytes: number) => {
    signal?.throwIfAborted()
    done += bytes
    report(all === 0 ? 1 : done / all)
  }
  const book = `${store.path}.brought.part`
  const added: ArchiveFile[] = []
  // What a broken attempt left behind.
  removeBook(book)
  try {
    await rebuild(contents, book, shipped, step)
    refuseSample(book)
    await takeFiles(contents, store.attachments, added, step)
    takeOver(store, book, derived)
  } catch (error) {
    for (const { is } of added)
      if (is.is === 'attachment') removeAttachment(store.attachments, is.hash, is.ending)
    throw error
  } finally {
    removeBook(book)
  }
  const rows = contents.files.flatMap(({ is, told }) =>
    is.is === 'table' ? [[is.table, told.rows ?? 0] as const] : [],
  )
  return { rows: Object.fromEntries(rows), missing: contents.header.missing }
}

function refuseFull({ db }: Pick<Store, 'db'>): void {
  if (!holdsNothing(db.$client)) throw new Refusal(phrase('refusal.archive.notEmpty'))
}

/** The book is there twice for a while: as it is built, and in the store. */
function refuseWithoutRoom(folder: string, bytes: number): void {
  const { bavail, bsize } = statfsSync(folder)
  const needed = 2 * bytes
  if (bavail * bsize < needed)
    throw new Refusal(phrase('refusal.archive.noRoom', { needed: Math.ceil(needed / 1e6) }))
}

/** The sample stays where it is, for it would be taken for the maker's own work. */
function refuseSample(book: string): void {
  const db = new Database(book, { readonly: true })
  try {
    if (db.prepare("SELECT 1 FROM workroom WHERE kind = 'sample'").get() !== undefined)
      throw new Refusal(phrase('refusal.archive.sample'))
  } finally {
    db.close()
  }
}

/** A paper or picture larger than this is none that the planner takes, bytes. */
const LARGEST_FILE = 1 << 28

/** Puts papers and pictures in their folder, each under the hash of its bytes; `added` gets those that were not there. */
async function takeFiles(
  { path, files }: Contents,
  folder: string,
  added: ArchiveFile[],
  step: (bytes: number) => void,
): Promise<void> {
  for (const file of files) {
    const { is, entry, told } = file
    if (is.is === 'table') continue
    if (entry.bytes > LARGEST_FILE) throw damaged()
    const chunks: Buffer[] = []
    for await (const chunk of checked(path, file)) {
      step(chunk.length)
      chunks.push(chunk)
    }
    if (is.is !== 'attachment') continue
    if (told.sha256 !== is.hash) throw damaged()
    if (!existsSync(attachmentPath(folder, is.hash, is.ending))) added.push(file)
    putAttachment(folder, Buffer.concat(chunks), is.ending)
  }
}

/** Takes the rows of a book over into the store: all of them, or none. */
function takeOver(store: Store, book: string, derived: () => void): void {
  const db = store.db.$client
  db.prepare('ATTACH ? AS brought').run(book)
  try {
    store.transaction(() => {
      // Somebody may have begun to work in it meanwhile.
      refuseFull(store)
      db.pragma('defer_foreign_keys = ON')
      for (const { name, columns, key } of tablesOf(db)) {
        const table = quotedName(name)
        db.exec(
          `INSERT INTO main.${table} (${listed(columns)}) SELECT ${listed(columns)} FROM brought.${table} ORDER BY ${listed(key)}`,
        )
      }
      setSequences(db, sequencesOf(db, 'brought'))
      derived()
    })
  } finally {
    db.exec('DETACH brought')
  }
}

function removeBook(book: string): void {
  for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(book + ending, { force: true })
}
