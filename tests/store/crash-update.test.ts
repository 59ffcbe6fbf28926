import { spawn } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { listClients } from '../../core/store/clients.ts'
import { migrate } from '../../core/store/migrate.ts'
import { readMigrations } from '../../core/store/migrations.ts'
import { openStore } from '../../core/workroom.ts'
import { NOON, scratch } from '../support/store.ts'

const LONG = process.env.ELLWAND_LONG === '1'
const CHILD = join(import.meta.dirname, '../support/update-child.ts')
const shipped = readMigrations(resolve(import.meta.dirname, '../../migrations'))
/** A store of before workroom days: the update that makes and rebuilds most. */
const BEFORE = shipped.findIndex(({ name }) => name.includes('workroom_days'))
const statements = shipped.slice(BEFORE).reduce((sum, one) => sum + one.statements.length, 0)

function oldStore(): string {
  const path = join(scratch(), 'workroom.ellwand')
  const sqlite = new Database(path)
  sqlite.pragma('journal_mode = wal')
  migrate(sqlite, shipped.slice(0, BEFORE), () => {})
  const add = sqlite.prepare(
    "INSERT INTO client (id, name, address, email, phone, note, created_at) VALUES (?, 'Ada', '[]', '', '', ?, ?)",
  )
  for (let i = 0; i < 100; i++) add.run(`client-${i}`, 'likes madder '.repeat(50), NOON)
  sqlite.close()
  return path
}

/** Updates a store in a process that is killed before one of its statements; answers how far it said it came. */
function killedAt(path: string, statement: number): Promise<string> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [CHILD, path, String(statement)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    let said = ''
    child.stdout.on('data', (bytes: Buffer) => {
      said += bytes.toString()
      child.kill('SIGKILL')
    })
    child.on('close', () => done(said.trim()))
  })
}

describe('an update that the power cuts off', () => {
  const places = Array.from({ length: statements }, (_, i) => i).filter((i) => LONG || i % 8 === 0)

  test(`before any of its steps (${places.length} of ${statements}), leaves the store as it was, and is done when it is opened next`, {
    timeout: 300_000,
  }, async () => {
    for (const place of places) {
      const path = oldStore()
      expect(await killedAt(path, place)).toBe('there')
      const left = new Database(path)
      expect(left.pragma('integrity_check', { simple: true })).toBe('ok')
      expect(left.prepare('SELECT count(*) FROM migration').pluck().get()).toBe(BEFORE)
      expect(left.prepare('SELECT count(*) FROM client').pluck().get()).toBe(100)
      left.close()
      const store = openStore(path, { now: NOON })
      expect(listClients(store.db).length).toBe(100)
      expect(store.db.$client.prepare('SELECT count(*) FROM migration').pluck().get()).toBe(shipped.length)
      store.close()
      expect(readdirSync(join(dirname(path), 'backups')).length).toBe(1)
    }
  })

  test('after its last step, leaves it updated', async () => {
    const path = oldStore()
    expect(await killedAt(path, -1)).toBe('through')
    const store = openStore(path, { now: NOON })
    expect(listClients(store.db).length).toBe(100)
    store.close()
  })
})
