import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import Database from 'better-sqlite3'
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { migrate } from './migrate.ts'
import type { Migration } from './migrations.ts'
import { type Copy, copyFor, NO_COPY } from './salvage/copy.ts'
import { type Apart, mendCounters, mendReferences } from './salvage/mend.ts'
import { columnsOf, type Lost, type Row, readRows } from './salvage/rows.ts'
import * as schema from './schema.ts'

/** Of a table: how many rows are in the saved book, and how many are known to be lost; null when that cannot be known. */
export type SavedTable = { table: string; saved: number; lost: number | null }

/** What came of the saving of a damaged store; `standIns` are rows made up for others that need them. */
export type Salvaged = {
  /** The tables that hold or held something. */
  tables: SavedTable[]
  /** Rows that could not be read and were taken from a backup. */
  fromBackup: number
  standIns: number
  /** Rows that could be read and do not fit, and the file in which they are kept word for word. */
  apart: { rows: number; path: string } | null
}

/** Instant, UTC, of what is made up in the saved book, and the migrations that make its tables. */
export type SalvageOptions = { now: string; shipped: readonly Migration[] }

/** Where the rows lie that were set apart from a saved book. */
const apartFile = (target: string): string => `${target}.apart.jsonl`

/**
 * Reads what can be read of a damaged store into a new one, row by row, and puts that right where something was lost. The
 * damaged file is copied with its journal, and only the copies are opened.
 *
 * @param target is written anew; it bears its name only when it is whole and on disk
 * @throws Refusal when the store was written by a newer program
 */
export function salvage(damaged: string, target: string, { now, shipped }: SalvageOptions): Salvaged {
  const copy = `${target}.copy`
  const part = `${target}.part`
  const files = [copy, part].flatMap(withJournal)
  for (const file of [...files, apartFile(target)]) rmSync(file, { force: true })
  try {
    for (const ending of ['', '-wal'])
      if (existsSync(damaged + ending)) copyFileSync(damaged + ending, copy + ending)
    const salvaged = carriedOver({ damaged, copy, part, apartPath: apartFile(target) }, { now, shipped })
    renameSync(part, target)
    return salvaged
  } finally {
    for (const file of files) rmSync(file, { force: true })
  }
}

const withJournal = (file: string): string[] => [file, `${file}-wal`, `${file}-shm`, `${file}-journal`]

type Files = { damaged: string; copy: string; part: string; apartPath: string }

function carriedOver(
  { damaged, copy: file, part, apartPath }: Files,
  { now, shipped }: SalvageOptions,
): Salvaged {
  const source = openDamaged(file)
  const target = new Database(part)
  const apart = apartFileFor(apartPath)
  let copy = NO_COPY
  try {
    migrate(
      target,
      source === undefined ? shipped : shipped.slice(0, migratedTo(source, shipped.length)),
      () => {},
    )
    target.pragma('foreign_keys = OFF')
    const all = target.transaction(() => {
      const names = tablesIn(target)
      const lost = new Map(names.map((table) => [table, carriedTable(source, target, table, apart.keep)]))
      carriedFound(source, target)
      copy = copyBeside(damaged, target, lost.get('forgotten')!)
      const still = new Map([...lost].map(([table, one]) => [table, stillLost(table, one, copy)]))
      const standIns = mendReferences(target, { now, copy, apart: apart.keep })
      mendCounters(target)
      const count = (table: string) =>
        target.prepare(`SELECT count(*) FROM "${table}"`).pluck().get() as number
      const tables = names.map((table) => ({ table, saved: count(table), lost: still.get(table)! }))
      return { tables: tables.filter((one) => one.saved > 0 || one.lost !== 0), standIns }
    })()
    migrate(target, shipped, () => {})
    const found = target.pragma('integrity_check', { simple: true })
    if (found !== 'ok') throw new Error(`what was saved is not sound: ${found}`)
    const rows = apart.rows()
    return { ...all, fromBackup: copy.taken(), apart: rows === 0 ? null : { rows, path: apartPath } }
  } finally {
    source?.close()
    target.close()
    copy.close()
    apart.close()
  }
}

/** How many rows of a table are lost when those that a backup has are put in. */
function stillLost(table: string, { count, ids }: Lost, copy: Copy): number | null {
  const taken = ids.filter((id) => copy.take(table, id)).length
  return count === null ? null : count - taken
}

/** The backup to fill gaps from; none where it can no longer be told who was forgotten. */
function copyBeside(damaged: string, target: Database.Database, { count }: Lost): Copy {
  if (count !== 0) return NO_COPY
  const last = target.prepare('SELECT max(at) FROM forgotten').pluck().get() as string | null
  return copyFor(damaged, last ?? '', (table, row) => {
    const there = columnsOf(target, table).filter((name) => name in row)
    return inserted(insertion(target, table, there), there, row)
  })
}

/** A damaged file as far as SQLite will have it; errors in its schema hide only what they concern. */
function openDamaged(copy: string): Database.Database | undefined {
  if (!existsSync(copy) || statSync(copy).size === 0) return undefined
  const db = new Database(copy)
  try {
    db.unsafeMode(true)
    db.pragma('writable_schema = ON')
    // The schema is read before cells are looked over: one broken entry of it would hide all that stand behind it.
    db.prepare('SELECT 1 FROM sqlite_master LIMIT 1').get()
    db.pragma('cell_size_check = ON')
    return db
  } catch (error) {
    db.close()
    if (error instanceof Database.SqliteError) return undefined
    throw error
  }
}

/** Tables of our own whose rows are carried over as they are: the search index is made anew. */
const tablesIn = (db: Database.Database): string[] =>
  db
    .prepare(
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT GLOB 'found*' AND name NOT IN ('migration', 'search_entry')",
    )
    .pluck()
    .all() as string[]

/** How many migrations a damaged store has had; all that are shipped, where it does not say. */
function migratedTo(source: Database.Database, shipped: number): number {
  let rows = 0
  readRows(source, 'migration', () => {
    rows++
  })
  if (rows > shipped) throw new Refusal(phrase('refusal.store.newer'))
  return rows === 0 ? shipped : rows
}

function carriedTable(
  source: Database.Database | undefined,
  target: Database.Database,
  table: string,
  apart: (one: Apart) => void,
): Lost {
  if (source === undefined) return { count: null, ids: [] }
  const columns = columnsOf(target, table)
  const insert = insertion(target, table, columns)
  const inJson = jsonColumns(table)
  const unfit: Row[] = []
  const { count, ids } = readRows(source, table, (row) => {
    if (inJson.every((name) => isJson(row[name])) && inserted(insert, columns, row)) return
    apart({ table, why: 'unfit', row })
    unfit.push(row)
  })
  const unfitIds = unfit.flatMap(({ id }) => (typeof id === 'string' ? [id] : []))
  return { count: count === null ? null : count + unfit.length, ids: [...ids, ...unfitIds] }
}

const insertion = (db: Database.Database, table: string, columns: readonly string[]): Database.Statement => {
  const list = columns.map((name) => `"${name}"`).join(', ')
  return db.prepare(`INSERT INTO "${table}" (${list}) VALUES (${columns.map(() => '?').join(', ')})`)
}

function inserted(insert: Database.Statement, columns: readonly string[], row: Row): boolean {
  try {
    insert.run(columns.map((name) => row[name] ?? null))
    return true
  } catch (error) {
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_CONSTRAINT')) return false
    throw error
  }
}

const TABLES = Object.values(schema).filter(
  (one): one is SQLiteTable & typeof one => typeof one === 'object' && 'getSQL' in one,
)

/** The columns of a table whose text is JSON, by their names in the store. */
export function jsonColumns(table: string): string[] {
  const known = TABLES.map((one) => getTableConfig(one)).find(({ name }) => name === table)
  return (known?.columns ?? [])
    .filter(({ columnType }) => columnType === 'SQLiteTextJson')
    .map(({ name }) => name)
}

function isJson(value: unknown): boolean {
  if (value === null || value === undefined) return true
  try {
    JSON.parse(String(value))
    return true
  } catch {
    return false
  }
}

/** The search index anew from the words it kept; what is not among them is found again when it is next changed. */
function carriedFound(source: Database.Database | undefined, target: Database.Database): void {
  if (source === undefined) return
  const insert = target.prepare(
    'INSERT INTO found (rowid, kind, entity_id, title, words) VALUES (?, ?, ?, ?, ?)',
  )
  const entry = target.prepare('INSERT OR IGNORE INTO search_entry (entity_id, row) VALUES (?, ?)')
  readRows(source, 'found_content', ({ id, c0, c1, c2, c3 }) => {
    if (typeof c1 !== 'string' || entry.run(c1, id).changes === 0) return
    insert.run(id, ...[c0, c1, c2, c3].map((text) => String(text)))
  })
}

/** A file of rows, one JSON object a line, that is there only when it holds one. */
function apartFileFor(path: string) {
  let file: number | undefined
  let rows = 0
  return {
    keep: (one: Apart) => {
      file ??= openSync(path, 'w', 0o600)
      writeSync(
        file,
        `${JSON.stringify(one, (_, value) => (typeof value === 'bigint' ? numberOrText(value) : value))}\n`,
      )
      rows++
    },
    rows: () => rows,
    close: () => {
      if (file === undefined) return
      fsyncSync(file)
      closeSync(file)
    },
  }
}

/** Whole numbers beyond what JSON's readers hold exactly are written as text. */
const numberOrText = (value: bigint): number | string =>
  Number.isSafeInteger(Number(value)) ? Number(value) : String(value)
