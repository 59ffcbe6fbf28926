import { createHash } from 'node:crypto'
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { beforeAll, describe, expect, test } from 'vitest'
import { insertClient } from '../../core/store/clients.ts'
import { openStore, openStoreOrSaved, type Store } from '../../core/workroom.ts'
import { chance } from '../support/chance.ts'
import { refused } from '../support/refused.ts'
import { NOON, scratch, workroom } from '../support/store.ts'

const PAGE = 4096
const OWN = "type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT GLOB 'found*'"
type Row = Record<string, unknown>

/** A workroom of some years in small: the sample, and clients enough that their table has pages of its own. */
async function populated(folder: string): Promise<Store> {
  const store = openStore(join(folder, 'workroom.ellwand'), { now: NOON })
  const { done } = workroom(store)
  await done('workroom.sample')
  store.transaction(() => {
    for (let i = 0; i < 150; i++)
      insertClient(store.db, {
        ...{ id: `client-${i}`, name: `Somebody ${i}`, address: ['Weir Lane'], email: '', phone: '' },
        ...{ note: `likes madder ${'and weld '.repeat(20)}`, createdAt: NOON },
      })
  })
  return store
}

/** A journal that is empty says as much as none. */
const hashOf = (file: string) =>
  createHash('sha256')
    .update(existsSync(file) ? readFileSync(file) : '')
    .digest('hex')
const hashes = (file: string) => [hashOf(file), hashOf(`${file}-wal`)]

/** The rows of a file by table and number, as far as each can be read by its number. */
function readableRows(file: string, numbers: Map<string, number[]>): Map<string, string[]> {
  const copy = `${file}.oracle`
  for (const ending of ['', '-wal']) if (existsSync(file + ending)) copyFileSync(file + ending, copy + ending)
  const db = new Database(copy)
  // What is cut short is read as far as it goes.
  db.unsafeMode(true)
  db.pragma('writable_schema = ON')
  const found = new Map<string, string[]>()
  for (const [table, rowids] of numbers) {
    const rows = rowids.flatMap((rowid) => {
      try {
        const row = db.prepare(`SELECT * FROM "${table}" WHERE rowid = ?`).get(rowid)
        return row === undefined ? [] : [JSON.stringify(row)]
      } catch (error) {
        if (error instanceof Database.SqliteError) return []
        throw error
      }
    })
    found.set(table, rows)
  }
  db.close()
  return found
}

function numbersIn(file: string): Map<string, number[]> {
  const db = new Database(file, { readonly: true })
  const tables = db.prepare(`SELECT name FROM sqlite_master WHERE ${OWN}`).pluck().all() as string[]
  const numbers = new Map(
    tables
      .filter((table) => !['migration', 'search_entry', 'counter'].includes(table))
      .map((table) => [table, db.prepare(`SELECT rowid FROM "${table}"`).pluck().all() as number[]]),
  )
  db.close()
  return numbers
}

const allRows = (db: Database.Database, table: string) =>
  (db.prepare(`SELECT * FROM "${table}"`).all() as Row[]).map((row) => JSON.stringify(row))

const DAMAGES = ['flipped', 'zeroed', 'noise', 'cut'] as const

/** Damage of a kind somewhere in a file. */
function harmed(whole: Buffer, kind: (typeof DAMAGES)[number], seed: number): Buffer {
  const { uniform } = chance(seed)
  const below = (n: number) => Math.floor(uniform() * n)
  const bytes = Buffer.from(whole)
  const pages = Math.floor(bytes.length / PAGE)
  const some = 1 + below(4)
  switch (kind) {
    case 'flipped':
      for (let i = 0; i < 1 + below(60); i++) bytes[below(bytes.length)]! ^= 1 << below(8)
      return bytes
    case 'zeroed':
      for (let i = 0; i < some; i++) {
        const at = PAGE * below(pages)
        bytes.fill(0, at, at + PAGE)
      }
      return bytes
    case 'noise':
      for (let i = 0; i < some; i++) {
        const at = PAGE * below(pages)
        for (let j = 0; j < PAGE; j++) bytes[at + j] = below(256)
      }
      return bytes
    case 'cut':
      return bytes.subarray(0, below(bytes.length))
  }
}

describe('a damaged book', () => {
  let whole: Buffer
  let wal: Buffer
  let numbers: Map<string, number[]>
  let original: Map<string, string[]>
  beforeAll(async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ellwand-test-'))
    const file = join(folder, 'workroom.ellwand')
    const store = await populated(folder)
    store.db.$client.pragma('wal_checkpoint(TRUNCATE)')
    numbers = numbersIn(file)
    store.transaction(() =>
      store.db.$client.exec("UPDATE client SET note = 'in the journal' WHERE id = 'client-7'"),
    )
    whole = readFileSync(file)
    wal = readFileSync(`${file}-wal`)
    store.close()
    original = readableRows(file, numbers)
    rmSync(folder, { recursive: true })
  })

  test.for(DAMAGES)(
    '%s in fifty ways: never written to, opened to be looked at, with every row that can still be read',
    { timeout: 240_000 },
    async (kind) => {
      const folder = scratch()
      let [damaged, rows] = [0, 0]
      for (let seed = 0; seed < 50; seed++) {
        const room = join(folder, `${seed}`)
        mkdirSync(room)
        const file = join(room, 'workroom.ellwand')
        writeFileSync(file, harmed(whole, kind, seed))
        if (seed % 2 === 0) writeFileSync(`${file}-wal`, wal)
        const before = hashes(file)
        const store = openedOrNot(file)
        if (store !== undefined) {
          // What changed was neither SQLite's structure nor JSON: a letter of a name, or ground that nothing lies on.
          store.close()
          continue
        }
        damaged++
        expect(hashes(file)).toEqual(before)
        const saved = openStoreOrSaved(file, { now: NOON })
        expect(hashes(file)).toEqual(before)
        expect(saved.damaged?.missing).toBe(false)
        const { $client: db } = saved.db
        expect(db.pragma('integrity_check', { simple: true })).toBe('ok')
        expect(db.pragma('foreign_key_check')).toEqual([])
        const { apart } = saved.damaged!.saved
        const apartLines = apart === null ? [] : readFileSync(apart.path, 'utf8').trim().split('\n')
        expect(apartLines.length).toBe(apart?.rows ?? 0)
        const setApart = new Set(
          apartLines.map((line) => JSON.stringify((JSON.parse(line) as { row: Row }).row)),
        )
        for (const [table, readable] of readableRows(file, numbers)) {
          const kept = new Set(allRows(db, table))
          const known = new Set(original.get(table))
          // What is read as it was written is kept as it was written, or is set apart word for word.
          const lost = readable.filter((row) => known.has(row) && !kept.has(row) && !setApart.has(row))
          expect(lost, `${kind} ${seed} ${table}`).toEqual([])
          rows += kept.size
        }
        const { ask } = workroom(saved)
        const described = await ask('damaged.describe')
        expect(described.ok).toBe(true)
        expect(await ask('client.add', { name: 'Ada' })).toMatchObject({
          ...{ ok: false, error: { code: 'refusal.store.lookOnly' } },
        })
        saved.close()
        expect(hashes(file)).toEqual(before)
      }
      expect(damaged).toBeGreaterThan(25)
      expect(rows).toBeGreaterThan(1000)
    },
  )
})

/** Opens a store, or nothing where it is refused as damaged. */
function openedOrNot(file: string): Store | undefined {
  try {
    return openStore(file, { now: NOON })
  } catch {
    expect(refused(() => openStore(file, { now: NOON })).code).toMatch(/^refusal\.store\.(damaged|newer)$/)
    return undefined
  }
}
