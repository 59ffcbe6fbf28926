import { spawn } from 'node:child_process'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { openStore } from '../../core/workroom.ts'
import { chance } from '../support/chance.ts'
import { scratch } from '../support/store.ts'

const LONG = process.env.ELLWAND_LONG === '1'
const KILLS = LONG ? 300 : 20
const CHILD = join(import.meta.dirname, '../support/crash-child.ts')

/** Lets a planner work on a store, kills it so many ms after it has begun, and answers what it was granted by then. */
function killed(file: string, after: number): Promise<[what: string, id: string][]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [CHILD, file], { stdio: ['ignore', 'pipe', 'pipe'] })
    let said = ''
    let wrong = ''
    child.stderr.on('data', (bytes: Buffer) => {
      wrong += bytes.toString()
    })
    child.stdout.on('data', (bytes: Buffer) => {
      const begun = said.includes('ready')
      said += bytes.toString()
      if (!begun && said.includes('ready')) setTimeout(() => child.kill('SIGKILL'), after)
    })
    child.on('exit', (_, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(`the planner ended by itself: ${wrong}`))
      // A line that is cut off was not told.
      const lines = said.split('\n').slice(0, -1).slice(1)
      resolve(lines.map((line) => line.split(' ') as [string, string]))
    })
  })
}

const TABLE: Record<string, string> = {
  ...{ client: 'client', payment: 'payment', note: 'commission_note', time: 'time_entry' },
}

describe(`a planner that is killed ${KILLS} times${LONG ? '' : ' (300 with ELLWAND_LONG=1)'}`, () => {
  test('has kept everything it granted, once, and its numbers go on without a gap', {
    timeout: 600_000,
  }, async () => {
    const file = join(scratch(), 'workroom.ellwand')
    const draw = chance(20)
    const kept: [string, string][] = []
    for (let i = 0; i < KILLS; i++) {
      const granted = await killed(file, 5 + Math.floor(draw.uniform() * 250))
      kept.push(...granted)
      // As the next start does: the journal is carried over, and the lock of the dead is free.
      const store = openStore(file, { now: new Date().toISOString() })
      const sqlite = store.db.$client
      expect(sqlite.pragma('integrity_check', { simple: true })).toBe('ok')
      expect(sqlite.pragma('foreign_key_check')).toEqual([])
      for (const [what, id] of granted) {
        const table = TABLE[what]
        if (table === undefined) continue
        const rows = sqlite.prepare(`SELECT count(*) FROM ${table} WHERE id = ?`).pluck().get(id)
        expect(rows, `${what} ${id}`).toBe(1)
      }
      const numbers = sqlite.prepare('SELECT number FROM payment ORDER BY id').pluck().all() as string[]
      const year = new Date().getFullYear()
      expect(numbers).toEqual(numbers.map((_, n) => `R-${year}-${String(n + 1).padStart(3, '0')}`))
      // Every change is in the history with what it changed: nothing of one and not of the other.
      for (const table of ['payment', 'commission_note']) {
        const lone = sqlite
          .prepare(`SELECT count(*) FROM ${table} WHERE id NOT IN (SELECT entity_id FROM change)`)
          .pluck()
          .get()
        expect(lone).toBe(0)
      }
      store.close()
    }
    expect(kept.length).toBeGreaterThan(KILLS)
  })
})

describe('a journal that breaks off', () => {
  test('anywhere leaves the store as it was after one of the things done, whole', async () => {
    const folder = scratch()
    const file = join(folder, 'source.db')
    const source = new Database(file)
    source.pragma('journal_mode = WAL')
    source.pragma('wal_autocheckpoint = 0')
    source.exec('CREATE TABLE thing (n INTEGER PRIMARY KEY, half INTEGER NOT NULL, other INTEGER NOT NULL)')
    const add = source.transaction((n: number) => {
      source.prepare('INSERT INTO thing VALUES (?, ?, 0)').run(n, n)
      source.prepare('UPDATE thing SET other = ? WHERE n = ?').run(n, n)
    })
    for (let n = 1; n <= 40; n++) add(n)
    const { readFileSync, writeFileSync } = await import('node:fs')
    const [book, wal] = [readFileSync(file), readFileSync(`${file}-wal`)]
    source.close()
    const [header, frame] = [32, 24 + 4096]
    const cuts = Array.from(
      { length: Math.floor((wal.length - header) / frame) + 1 },
      (_, i) => header + i * frame,
    )
    let most = 0
    for (const [i, cut] of cuts.flatMap((at) => [at, at + 1000]).entries()) {
      const copy = join(folder, `cut-${i}.db`)
      writeFileSync(copy, book)
      writeFileSync(`${copy}-wal`, wal.subarray(0, cut))
      const opened = new Database(copy)
      expect(opened.pragma('integrity_check', { simple: true })).toBe('ok')
      const known = opened.prepare("SELECT count(*) FROM sqlite_master WHERE name = 'thing'").pluck().get()
      const rows = known === 1 ? (opened.prepare('SELECT * FROM thing ORDER BY n').all() as Row[]) : []
      for (const [n, row] of rows.entries()) expect(row).toEqual({ n: n + 1, half: n + 1, other: n + 1 })
      expect(rows.length).toBeGreaterThanOrEqual(most)
      if (cut % frame === header % frame) most = rows.length
      opened.close()
    }
    expect(most).toBe(40)
  })
})

type Row = { n: number; half: number; other: number }
