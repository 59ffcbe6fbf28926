import { execFileSync, spawn } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import Database from 'better-sqlite3'
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core'
import { describe, expect, test } from 'vitest'
import { attachmentPath, putAttachment, readAttachment } from '../../core/store/attachments.ts'
import { insertClient, listClients, updateClient } from '../../core/store/clients.ts'
import { takeNumber } from '../../core/store/counters.ts'
import { migrate } from '../../core/store/migrate.ts'
import { readMigrations } from '../../core/store/migrations.ts'
import { openStore } from '../../core/store/open.ts'
import * as schema from '../../core/store/schema.ts'
import { refused } from '../support/refused.ts'
import { NOON, newStore, scratch } from '../support/store.ts'

const person = (id: string) => ({
  id,
  name: 'Ada',
  address: [],
  email: '',
  phone: '',
  note: '',
  createdAt: NOON,
})
const shipped = readMigrations(resolve(import.meta.dirname, '../../migrations'))
const child = (script: string, ...args: string[]) => [resolve(import.meta.dirname, script), ...args]

describe('a store', () => {
  test('keeps its settings: write-ahead log, full sync, foreign keys', () => {
    const { db } = newStore()
    const pragma = (name: string) => db.$client.pragma(name, { simple: true })
    expect([pragma('journal_mode'), pragma('synchronous'), pragma('foreign_keys')]).toEqual(['wal', 2, 1])
  })

  test('has the tables and columns of its schema, every one strict', () => {
    const { db } = newStore()
    const strict = db.$client
      .prepare<[], { name: string; strict: number }>(
        "SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite_%' AND name NOT GLOB 'found*'",
      )
      .all()
    expect(strict.filter((table) => table.strict !== 1)).toEqual([])
    const tables = Object.values(schema).filter(
      (one): one is SQLiteTable & typeof one => typeof one === 'object' && 'getSQL' in one,
    )
    expect(tables.length).toBe(strict.length - 1)
    for (const table of tables) {
      const { name, columns, primaryKeys } = getTableConfig(table)
      const together = primaryKeys.flatMap((key) => key.columns.map((column) => column.name))
      const stored = db.$client
        .prepare<[string], { name: string; type: string; notnull: number; pk: number }>(
          'SELECT name, type, "notnull", pk FROM pragma_table_info(?)',
        )
        .all(name)
      const expected = columns.map((column) => ({
        name: column.name,
        type: column.getSQLType().toUpperCase(),
        notnull: column.notNull ? 1 : 0,
        pk: column.primary ? 1 : together.indexOf(column.name) + 1,
      }))
      expect(
        stored.map((column) => ({ ...column, type: column.type.toUpperCase() })),
        name,
      ).toEqual(expected)
    }
  })

  test('refuses what is frozen: quotes, prints, history, and measures a quote has used', () => {
    const store = newStore()
    insertClient(store.db, person('c'))
    const run = (sql: string) => store.db.$client.exec(sql)
    run(
      `INSERT INTO quote (id, number, customer_id, day, snapshot, snapshot_version, created_at) VALUES ('q', 'Q-1', 'c', '2026-03-02', '{}', 1, '${NOON}')`,
    )
    run(
      `INSERT INTO measurement_set (id, client_id, day, taken_by, over, note, unit, measures, created_at) VALUES ('m', 'c', '2026-03-02', '', '', '', 'cm', '{}', '${NOON}')`,
    )
    run(
      `INSERT INTO quote_garment (id, quote_id, position, wearer_id, measurement_set_id, construction, quantity) VALUES ('g', 'q', 1, 'c', 'm', 'x', 1)`,
    )
    run(
      `INSERT INTO document (id, kind, quote_id, name, hash, bytes, pages, created_at) VALUES ('d', 'quote', 'q', 'n', 'h', 1, 1, '${NOON}')`,
    )
    run(`INSERT INTO change (at, actor, request, entity, entity_id) VALUES ('${NOON}', 'a', 'r', 'e', 'i')`)
    run("UPDATE measurement_set SET note = 'before it is used' WHERE id = 'm'")
    run(`UPDATE measurement_set SET used_at = '${NOON}' WHERE id = 'm'`)
    for (const [table, column] of [
      ['quote', 'number'],
      ['quote_garment', 'construction'],
      ['document', 'name'],
      ['change', 'actor'],
      ['measurement_set', 'measures'],
    ]) {
      expect(() => run(`UPDATE ${table} SET ${column} = 'other'`), table).toThrow(`frozen: ${table}`)
      expect(() => run(`DELETE FROM ${table}`), table).toThrow(/frozen|FOREIGN KEY/)
    }
    expect(() => run("DELETE FROM client WHERE id = 'c'")).toThrow('FOREIGN KEY')
  })

  test('keeps a use case whole or not at all, and its numbers without gaps', () => {
    const store = newStore()
    const number = () => store.transaction(() => takeNumber(store.db, 'quote-2026'))
    expect(number()).toBe(1)
    expect(() =>
      store.transaction(() => {
        takeNumber(store.db, 'quote-2026')
        insertClient(store.db, person('lost'))
        throw new Error('half way')
      }),
    ).toThrow('half way')
    expect(listClients(store.db)).toEqual([])
    expect(number()).toBe(2)
    expect(() => store.transaction(() => store.transaction(() => {}))).toThrow('one transaction')
  })

  test('refuses a change to a row that was changed meanwhile', () => {
    const { db } = newStore()
    insertClient(db, person('c'))
    expect(updateClient(db, 'c', 1, { name: 'Bea' })).toMatchObject({ name: 'Bea', revision: 2 })
    expect(refused(() => updateClient(db, 'c', 1, { name: 'Cleo' }))).toMatchObject({
      code: 'refusal.store.stale',
      field: 'revision',
    })
    expect(refused(() => updateClient(db, 'nobody', 1, {})).sentence).toBe(
      'There is no client with the id nobody.',
    )
  })

  test('is opened again as it was', () => {
    const folder = scratch()
    const store = newStore(folder)
    insertClient(store.db, { ...person('c'), name: 'Þórunn Ἑλένη Łucja' })
    store.close()
    expect(listClients(newStore(folder).db).map(({ name }) => name)).toEqual(['Þórunn Ἑλένη Łucja'])
  })
})

describe('opening', () => {
  test('is refused where there is no folder, where a folder stands, and on what is no store', () => {
    const folder = scratch()
    expect(refused(() => openStore(join(folder, 'no', 'a.ellwand'), { now: NOON })).code).toBe(
      'refusal.store.noFolder',
    )
    mkdirSync(join(folder, 'dir'))
    expect(refused(() => openStore(join(folder, 'dir'), { now: NOON })).code).toBe('refusal.store.notAStore')
    writeFileSync(join(folder, 'letter.txt'), 'Dear Sir, this is not a store. '.repeat(100))
    expect(refused(() => openStore(join(folder, 'letter.txt'), { now: NOON })).code).toBe(
      'refusal.store.damaged',
    )
    expect(readFileSync(join(folder, 'letter.txt'), 'utf8')).toMatch(/^Dear Sir/)
  })

  test('is refused on a store with a damaged page', () => {
    const folder = scratch()
    const store = newStore(folder)
    for (let i = 0; i < 400; i++) insertClient(store.db, { ...person(`c${i}`), note: 'x'.repeat(200) })
    store.close()
    const path = join(folder, 'workroom.ellwand')
    const bytes = readFileSync(path)
    bytes.fill(0xff, 4096 * 3, 4096 * 20)
    writeFileSync(path, bytes)
    expect(refused(() => openStore(path, { now: NOON })).code).toBe('refusal.store.damaged')
  })

  test('is refused while another process has the store, and granted when that process is killed', async () => {
    const folder = scratch()
    const path = join(folder, 'workroom.ellwand')
    const holder = spawn(process.execPath, child('hold.ts', path), { stdio: ['ignore', 'pipe', 'inherit'] })
    await new Promise((ready) => holder.stdout.once('data', ready))
    expect(refused(() => openStore(path, { now: NOON })).code).toBe('refusal.store.busy')
    holder.kill('SIGKILL')
    await new Promise((gone) => holder.once('exit', gone))
    openStore(path, { now: NOON }).close()
  })

  test('finds everything that was acknowledged, though the process was killed while writing', async () => {
    const kills = process.env.ELLWAND_LONG === '1' ? 20 : 4
    for (let i = 0; i < kills; i++) {
      const folder = scratch()
      const path = join(folder, 'workroom.ellwand')
      const writer = spawn(process.execPath, child('write.ts', path), {
        stdio: ['ignore', 'pipe', 'inherit'],
      })
      let said = ''
      writer.stdout.on('data', (data) => {
        said += data
      })
      await new Promise<void>((ready) => {
        writer.stdout.on('data', () => {
          if (said.split('\n').length > 20 + 15 * i) ready()
        })
      })
      writer.kill('SIGKILL')
      await new Promise((gone) => writer.once('close', gone))
      const acknowledged = said.split('\n').slice(0, -1)
      const store = openStore(path, { now: NOON })
      const stored = new Set(listClients(store.db).map(({ id }) => id))
      store.close()
      expect(acknowledged.length).toBeGreaterThanOrEqual(20)
      expect(acknowledged.filter((id) => !stored.has(id))).toEqual([])
    }
  })
})

describe('migrations', () => {
  const rebuild = {
    name: 'rebuild',
    hash: 'rebuild',
    when: 0,
    statements: [
      'CREATE TABLE `new_client` (`id` text PRIMARY KEY NOT NULL, `name` text NOT NULL, `address` text NOT NULL, `email` text NOT NULL, `phone` text NOT NULL, `note` text NOT NULL, `birth_day` text, `retired_at` text, `revision` integer DEFAULT 1 NOT NULL, `created_at` text NOT NULL, `pronoun` text) STRICT',
      'INSERT INTO `new_client` SELECT *, NULL FROM `client`',
      'DROP TABLE `client`',
      'ALTER TABLE `new_client` RENAME TO `client`',
    ],
  }
  const populated = () => {
    const store = newStore()
    insertClient(store.db, person('c'))
    store.db.$client.exec(
      `INSERT INTO measurement_set (id, client_id, day, taken_by, over, note, unit, measures, created_at) VALUES ('m', 'c', '2026-03-02', '', '', '', 'cm', '{}', '${NOON}')`,
    )
    return store
  }
  const count = (db: Database.Database, table: string) =>
    db.prepare<[], { n: number }>(`SELECT count(*) AS n FROM ${table}`).get()!.n

  test('may rebuild a table that others hang on, and lose none of them', () => {
    const { db } = populated()
    let backups = 0
    migrate(db.$client, [...shipped, rebuild], () => backups++)
    expect([count(db.$client, 'client'), count(db.$client, 'measurement_set'), backups]).toEqual([1, 1, 1])
    expect(db.$client.pragma('foreign_keys', { simple: true })).toBe(1)
    expect(() => db.$client.exec("DELETE FROM client WHERE id = 'c'")).toThrow('FOREIGN KEY')
  })

  test('that fail half way leave the store as it was', () => {
    const { db } = populated()
    const broken = {
      ...rebuild,
      statements: [...rebuild.statements.slice(0, 3), 'SELECT 1 FROM nowhere'],
    }
    expect(() => migrate(db.$client, [...shipped, broken], () => {})).toThrow('nowhere')
    expect([count(db.$client, 'client'), count(db.$client, 'measurement_set')]).toEqual([1, 1])
    expect(db.$client.pragma('foreign_keys', { simple: true })).toBe(1)
    const orphans = { ...rebuild, statements: ["DELETE FROM client WHERE id = 'c'"] }
    expect(() => migrate(db.$client, [...shipped, orphans], () => {})).toThrow(
      'references without their rows',
    )
    expect(count(db.$client, 'client')).toBe(1)
  })

  test('of a newer program are refused, and nothing is touched', () => {
    const { db } = populated()
    migrate(db.$client, [...shipped, rebuild], () => {})
    expect(refused(() => migrate(db.$client, shipped, () => {})).code).toBe('refusal.store.newer')
    const other = [{ ...shipped[0]!, hash: 'other' }, ...shipped.slice(1), rebuild]
    expect(refused(() => migrate(db.$client, other, () => {})).code).toBe('refusal.store.newer')
  })

  test('begin with a checked copy of the store beside it', () => {
    const folder = scratch()
    const store = newStore(folder)
    insertClient(store.db, person('c'))
    store.close()
    const migrations = join(folder, 'migrations')
    mkdirSync(join(migrations, 'meta'), { recursive: true })
    const source = resolve(import.meta.dirname, '../../migrations')
    for (const file of readdirSync(source).filter((name) => name.endsWith('.sql')))
      writeFileSync(join(migrations, file), readFileSync(join(source, file)))
    writeFileSync(join(migrations, '9999_rebuild.sql'), rebuild.statements.join('--> statement-breakpoint\n'))
    const entries = [
      ...shipped.map(({ name, when }) => ({ tag: name, when })),
      { tag: '9999_rebuild', when: 1 },
    ]
    writeFileSync(join(migrations, 'meta', '_journal.json'), JSON.stringify({ entries }))
    openStore(join(folder, 'workroom.ellwand'), { now: NOON, migrations }).close()
    const [backup] = readdirSync(join(folder, 'backups'))
    const copy = new Database(join(folder, 'backups', backup!), { readonly: true })
    expect(count(copy, 'client')).toBe(1)
    expect(count(copy, 'migration')).toBe(shipped.length)
    copy.close()
  })

  test('say what the schema says: generating again finds nothing to change', () => {
    const said = execFileSync('npx', ['drizzle-kit', 'check', '--config', 'build/drizzle.config.ts'], {
      encoding: 'utf8',
      cwd: resolve(import.meta.dirname, '../..'),
    })
    expect(said).toContain("Everything's fine")
  })
})

describe('attachments', () => {
  test('lie under the hash of their bytes and come back as they were', () => {
    const folder = join(scratch(), 'attachments')
    const bytes = new TextEncoder().encode('a cutting sheet')
    const { hash, path } = putAttachment(folder, bytes, 'pdf')
    // SHA-256 as any other tool reckons it.
    expect(hash).toBe(execFileSync('sha256sum', [path], { encoding: 'utf8' }).slice(0, 64))
    expect(putAttachment(folder, bytes, 'pdf').path).toBe(path)
    expect(Buffer.from(readAttachment(folder, hash, 'pdf')).toString()).toBe('a cutting sheet')
    expect(readdirSync(folder)).toEqual([`${hash}.pdf`])
  })

  test('that are missing or altered are refused in a sentence', () => {
    const folder = join(scratch(), 'attachments')
    const { hash } = putAttachment(folder, Uint8Array.of(1, 2, 3), 'pdf')
    writeFileSync(attachmentPath(folder, hash, 'pdf'), 'something else')
    expect(refused(() => readAttachment(folder, hash, 'pdf')).code).toBe('refusal.store.attachmentAltered')
    expect(refused(() => readAttachment(folder, '0'.repeat(64), 'pdf')).code).toBe(
      'refusal.store.attachmentMissing',
    )
    expect(existsSync(attachmentPath(folder, hash, 'pdf'))).toBe(true)
  })
})
