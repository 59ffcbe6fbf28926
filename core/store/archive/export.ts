import { createReadStream, existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { englishReader, type Reader } from '../../words/say.ts'
import type { Store } from '../open.ts'
import { isWhole, namedFiles, noting } from './export-files.ts'
import { ATTACHMENT_NAME, HEADER, type Header, headerJson, README, tableFile, VERSION } from './header.ts'
import { readmeOf } from './readme.ts'
import { rowsOf, sequencesOf, tableJson, tablesOf } from './tables.ts'
import { writeZip, type ZipWriter } from './zip-write.ts'

/** Pages copied before others get their turn: about a megabyte. */
const PAGES_AT_ONCE = 256
/** How far it is when the book is copied, and when its tables are packed: the rest is papers and pictures. */
const COPIED = 0.1
const PACKED = 0.8

/** What goes with the making of an archive; an aborted `signal` stops it before the next part. */
export type ExportOptions = {
  /** Instant, UTC; the archive bears it. */
  now: string
  /** The part that is done, from 0 to 1. */
  report?: (done: number) => void
  signal?: AbortSignal
  /** Whom the page that says what is in it speaks to; in English, if not said. */
  reader?: Reader
}

/**
 * Writes a whole store into one archive: every table, and the papers and pictures that rows name. It is made from a copy
 * of one moment, so that requests go on meanwhile, and bears its name only once all of it is on the disk.
 *
 * @returns how large it is, and the files that rows name and the store no longer has as they were put there
 * @throws Refusal when the store is damaged, or too large for the format
 */
export async function exportStore(
  { db, attachments }: Pick<Store, 'db' | 'attachments'>,
  target: string,
  { now, report = () => {}, signal, reader = englishReader }: ExportOptions,
): Promise<{ bytes: number; missing: string[] }> {
  const [part, book] = [`${target}.part`, `${target}.book.part`]
  const told = (done: number) => {
    signal?.throwIfAborted()
    report(done)
  }
  let copy: Database.Database | undefined
  let zip: ZipWriter | undefined
  try {
    await db.$client.backup(book, {
      progress: ({ totalPages, remainingPages }) => {
        told(totalPages === 0 ? 0 : COPIED * (1 - remainingPages / totalPages))
        return PAGES_AT_ONCE
      },
    })
    copy = new Database(book)
    zip = writeZip(part)
    const header = await written(copy, attachments, zip, told, reader)
    await zip.add(HEADER, [Buffer.from(headerJson({ ...header, madeAt: now }))])
    zip.end()
    zip.close()
    zip = undefined
    renameSync(part, target)
    told(1)
    return { bytes: statSync(target).size, missing: header.missing }
  } catch (error) {
    throw isCorrupt(error) ? new Refusal(phrase('refusal.archive.bookDamaged')) : error
  } finally {
    zip?.close()
    copy?.close()
    for (const path of [part, ...['', '-wal', '-shm', '-journal'].map((ending) => book + ending)])
      rmSync(path, { force: true })
  }
}

const isCorrupt = (error: unknown): boolean =>
  error instanceof Database.SqliteError &&
  (error.code === 'SQLITE_NOTADB' || error.code.startsWith('SQLITE_CORRUPT'))

/** Puts everything but the header into the archive, and answers with what the header says of it. */
async function written(
  copy: Database.Database,
  attachments: string,
  zip: ZipWriter,
  told: (done: number) => void,
  reader: Reader,
): Promise<Omit<Header, 'madeAt'>> {
  const files: Header['files'] = []
  const tables = tablesOf(copy).map((table) => ({ ...table, rows: rowsOf(copy, table) }))
  files.push(
    await added(
      README,
      [
        Buffer.from(
          readmeOf(
            tables.map(({ name }) => name),
            reader,
          ),
        ),
      ],
      zip,
    ),
  )
  const all = tables.reduce((sum, { rows }) => sum + rows, 0)
  const hashes = new Set<string>()
  let done = 0
  for (const table of tables) {
    let rows = 0
    const json = tableJson(copy, table, () => {
      rows++
      told(COPIED + ((PACKED - COPIED) * ++done) / all)
    })
    files.push({ ...(await added(tableFile(table.name), noting(json, hashes), zip)), rows })
    // An index that has lost rows of its table would leave them out without a word.
    if (rows !== table.rows) throw new Refusal(phrase('refusal.archive.bookDamaged'))
  }
  const beside = existsSync(attachments) ? readdirSync(attachments).sort() : []
  const named = beside.filter((name) => hashes.has(ATTACHMENT_NAME.exec(name)?.[1] ?? ''))
  const whole = new Set<string>()
  for (const [i, name] of named.entries()) {
    const path = join(attachments, name)
    if (await isWhole(path, name)) {
      whole.add(name)
      files.push(await added(`attachments/${name}`, createReadStream(path), zip))
    }
    told(PACKED + ((1 - PACKED) * (i + 1)) / named.length)
  }
  return {
    ...{ format: 'ellwand', version: VERSION, files, sequences: sequencesOf(copy) },
    migrations: copy.prepare('SELECT hash FROM migration ORDER BY position').pluck().all() as string[],
    missing: namedFiles(copy).filter((name) => !whole.has(name)),
  }
}

const added = async (name: string, chunks: Parameters<ZipWriter['add']>[1], zip: ZipWriter) => ({
  name,
  ...(await zip.add(name, chunks)),
})
