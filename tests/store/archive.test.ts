import { createHash } from 'node:crypto'
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, onTestFinished, test } from 'vitest'
import { contentsOf } from '../../core/store/archive/contents.ts'
import { exportStore } from '../../core/store/archive/export.ts'
import { importArchive } from '../../core/store/archive/import.ts'
import { holdsNothing, tablesOf } from '../../core/store/archive/tables.ts'
import { bytesOf, zipEntries } from '../../core/store/archive/zip-read.ts'
import { readMigrations } from '../../core/store/migrations.ts'
import type { Db } from '../../core/store/open.ts'
import { english } from '../../core/words/catalogue/english.ts'
import { openStore } from '../../core/workroom.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'
import { foundIn, fullWorkroom } from '../support/taken-out.ts'

const MIGRATIONS = resolve(import.meta.dirname, '../../migrations')
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

async function textOf(archive: string, name: string): Promise<string> {
  const entry = zipEntries(archive).find((one) => one.name === name)!
  const chunks: Buffer[] = []
  for await (const chunk of bytesOf(archive, entry)) chunks.push(chunk)
  return Buffer.concat(chunks).toString('utf8')
}

describe('a whole workroom as one archive', () => {
  test('comes back exactly: taken out, brought in, taken out again, it is the same file', async () => {
    const { store, archive, forgotten } = await fullWorkroom()
    const told: number[] = []
    const out = await exportStore(store, archive, { now: NOON, report: (done) => told.push(done) })
    expect(out.missing).toEqual([])
    expect(told).toEqual(told.toSorted((a, b) => a - b))
    expect(told.at(-1)).toBeCloseTo(1)

    const other = workroom()
    const brought = await other.done<{ rows: Record<string, number>; missing: number }>('store.import', {
      path: archive,
    })
    expect(brought.missing).toBe(0)
    expect(brought.rows.commission).toBe(6)
    const again = join(scratch(), 'again.zip')
    await exportStore(other.store, again, { now: NOON })
    expect(readFileSync(again).equals(readFileSync(archive))).toBe(true)

    // What is made of the rest is there too, and is made for the same people: whoever was forgotten is not found.
    expect(foundIn(other.store)).toEqual(foundIn(store))
    expect(JSON.stringify(foundIn(other.store))).not.toContain(forgotten)
    expect(await textOf(again, 'tables/quote.json')).toContain(forgotten)
    expect(other.store.db.$client.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(other.store.db.$client.pragma('foreign_key_check')).toEqual([])
    expect(readdirSync(join(other.store.path, '..')).filter((name) => name.includes('.part'))).toEqual([])
  })

  test('is frozen again where it was frozen, and numbers its history on', async () => {
    const { store, archive } = await fullWorkroom()
    await exportStore(store, archive, { now: NOON })
    const other = workroom()
    await other.done('store.import', { path: archive })
    const db = other.store.db.$client
    expect(() => db.exec("UPDATE quote SET day = '2020-01-01'")).toThrow('frozen: quote')
    expect(() => db.exec('DELETE FROM payment')).toThrow('frozen: payment')
    const last = 'SELECT seq FROM sqlite_sequence WHERE name = ?'
    const before = db.prepare(last).pluck().get('change')
    expect(before).toBe(store.db.$client.prepare(last).pluck().get('change'))
    await other.done('client.add', { name: 'Sunniva Ash' })
    expect(db.prepare('SELECT max(id) FROM change').pluck().get()).toBe(Number(before) + 1)
  })

  test('says in plain words what each of its files is, and lists it with its hash', async () => {
    const { store, archive } = await fullWorkroom()
    await exportStore(store, archive, { now: NOON })
    const { header } = await contentsOf(archive, readMigrations(MIGRATIONS))
    const names = zipEntries(archive).map(({ name }) => name)
    expect([...header.files.map(({ name }) => name), 'ellwand.json'].toSorted()).toEqual(names.toSorted())
    expect(header.madeAt).toBe(NOON)
    const readme = await textOf(archive, 'README.txt')
    const tables = tablesOf(store.db.$client).map(({ name }) => name)
    for (const table of tables) {
      expect(english).toHaveProperty([`archive.table.${table}`])
      expect(readme).toContain(
        `tables/${table}.json\n    ${english[`archive.table.${table}` as keyof typeof english]}`,
      )
      const text = await textOf(archive, `tables/${table}.json`)
      const rows = JSON.parse(text) as Record<string, unknown>[]
      expect(rows).toHaveLength(header.files.find(({ name }) => name === `tables/${table}.json`)!.rows!)
      for (const row of rows) expect(Object.keys(row)).toEqual(Object.keys(row).toSorted())
    }
    const ids = (JSON.parse(await textOf(archive, 'tables/client.json')) as { id: string }[]).map(
      ({ id }) => id,
    )
    expect(ids).toEqual(ids.toSorted())
    const papers = header.files.filter(({ name }) => name.startsWith('attachments/'))
    // A quote and a measuring sheet printed, a picture, and the mark.
    expect(papers.map(({ name }) => name.replace(/^[^.]+/, '')).toSorted()).toEqual([
      '.mark.png',
      '.pdf',
      '.pdf',
      '.png',
    ])
    for (const { name, sha256: hash } of papers) expect(name).toContain(hash)
  })

  test('takes only the files of this workroom, and says which are gone or altered', async () => {
    const { store, archive } = await fullWorkroom()
    const [pdf] = readdirSync(store.attachments).filter((name) => name.endsWith('.pdf'))
    writeFileSync(join(store.attachments, pdf!), 'altered')
    const strange = `${sha256(Buffer.from('of another workroom'))}.pdf`
    writeFileSync(join(store.attachments, strange), 'of another workroom')
    expect((await exportStore(store, archive, { now: NOON })).missing).toEqual([pdf])
    const names = zipEntries(archive).map(({ name }) => name)
    expect(names).not.toContain(`attachments/${strange}`)
    expect(names).not.toContain(`attachments/${pdf}`)
    const { missing } = await workroom().done<{ missing: number }>('store.import', { path: archive })
    expect(missing).toBe(1)
  })

  test('is of one moment, though work goes on while it is written', async () => {
    const room = workroom()
    for (let i = 0; i < 50; i++) await room.done('client.add', { name: `Client ${i}` })
    const archive = join(scratch(), 'out.zip')
    const writing = exportStore(room.store, archive, { now: NOON })
    for (let i = 50; i < 80; i++) await room.done('client.add', { name: `Client ${i}` })
    await writing
    const [clients, changes] = await Promise.all(
      ['client', 'change'].map(
        async (table) => JSON.parse(await textOf(archive, `tables/${table}.json`)) as unknown[],
      ),
    )
    expect(changes!.length).toBe(clients!.length)
    expect(clients!.length).toBeGreaterThanOrEqual(50)
  })

  test('stopped half way, leaves nothing', async () => {
    const { store, archive, folder } = await fullWorkroom()
    const stop = new AbortController()
    const report = (done: number) => done > 0.5 && stop.abort()
    await expect(exportStore(store, archive, { now: NOON, report, signal: stop.signal })).rejects.toThrow(
      'abort',
    )
    expect(existsSync(archive)).toBe(false)
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([])
  })

  test.each<[string, (db: Database.Database) => void]>([
    [
      'lost rows from an index',
      (db) => {
        const from = "(SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_timer_1')"
        db.exec(`UPDATE sqlite_schema SET rootpage = ${from} WHERE name = 'sqlite_autoindex_client_1'`)
      },
    ],
    [
      'lost a page',
      (db) => {
        const page = "(SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_timer_1')"
        db.exec(`UPDATE sqlite_schema SET rootpage = ${page} WHERE name = 'client'`)
      },
    ],
  ])('is not made of a book that %s', async (_, harm) => {
    const room = workroom()
    await room.done('client.add', { name: 'Sunniva Ash' })
    const { path, attachments } = room.store
    room.store.close()
    const harmed = new Database(path)
    harmed.unsafeMode(true)
    harmed.pragma('writable_schema = ON')
    harm(harmed)
    harmed.close()
    const db = { $client: new Database(path) } as Db
    const archive = join(scratch(), 'out.zip')
    const writing = exportStore({ db, attachments }, archive, { now: NOON })
    await expect(writing).rejects.toThrow('refusal.archive.bookDamaged')
    expect(readdirSync(join(archive, '..'))).toEqual([])
    db.$client.close()
  })

  test('of an older planner is brought up to date as its store would have been', async () => {
    const old = join(scratch(), 'migrations')
    cpSync(MIGRATIONS, old, { recursive: true })
    const journal = join(old, 'meta', '_journal.json')
    const { entries, ...rest } = JSON.parse(readFileSync(journal, 'utf8')) as { entries: unknown[] }
    writeFileSync(journal, JSON.stringify({ ...rest, entries: entries.slice(0, 8) }))
    const folder = scratch()
    const before = openStore(join(folder, 'workroom.ellwand'), { now: NOON, migrations: old })
    onTestFinished(() => before.close())
    const db = before.db.$client
    db.pragma('foreign_keys = OFF')
    db.exec(`INSERT INTO remnant (id, cloth_name, garment_id, offcut, width, length, revision, created_at)
      SELECT 'r', 'White linen', 'g', 0, 300, 200.5, 1, '${NOON}'`)
    const archive = join(folder, 'old.zip')
    await exportStore(before, archive, { now: NOON })
    // A row that refers to what is not there is not taken, however old it is.
    await expect(importArchive(archive, newStore())).rejects.toThrow('refusal.archive.damaged')
    db.exec('DELETE FROM remnant')
    db.exec(`INSERT INTO client (id, name, address, email, phone, note, revision, created_at)
      VALUES ('c', 'Old Client', '[]', '', '', '', 1, '${NOON}')`)
    await exportStore(before, archive, { now: NOON })
    const store = newStore()
    await importArchive(archive, store)
    expect(store.db.$client.prepare('SELECT name FROM client').pluck().all()).toEqual(['Old Client'])
    expect(tablesOf(store.db.$client).length).toBeGreaterThan(tablesOf(db).length)
  })

  test('goes only into a workroom that holds nothing', async () => {
    const { store, archive } = await fullWorkroom()
    await exportStore(store, archive, { now: NOON })
    const room = workroom()
    await room.done('client.add', { name: 'Sunniva Ash' })
    expect((await room.refusal('store.import', { path: archive })).code).toBe('refusal.archive.notEmpty')
    expect(await room.done('clients.list')).toMatchObject({ clients: [{ name: 'Sunniva Ash' }] })
    expect(holdsNothing(room.store.db.$client)).toBe(false)
  })

  test('is refused by a workroom that was begun while it came in', async () => {
    const { store, archive } = await fullWorkroom()
    await exportStore(store, archive, { now: NOON })
    const room = workroom()
    const coming = room.refusal('store.import', { path: archive })
    await room.done('client.add', { name: 'Sunniva Ash' })
    expect((await coming).code).toBe('refusal.archive.notEmpty')
    expect(await room.done('clients.list')).toMatchObject({ clients: [{ name: 'Sunniva Ash' }] })
    expect(existsSync(room.store.attachments) ? readdirSync(room.store.attachments) : []).toEqual([])
  })

  test('of the sample is not taken for a maker’s own', async () => {
    const sample = workroom()
    await sample.done('workroom.sample')
    const archive = join(scratch(), 'sample.zip')
    await exportStore(sample.store, archive, { now: NOON })
    const room = workroom()
    expect((await room.refusal('store.import', { path: archive })).code).toBe('refusal.archive.sample')
    expect(holdsNothing(room.store.db.$client)).toBe(true)
  })
})
