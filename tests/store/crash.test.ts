import { spawn } from 'node:child_process'
import { join, resolve } from 'node:path'
import type Database from 'better-sqlite3'
import { build } from 'vite'
import { beforeAll, describe, expect, test } from 'vitest'
import { openStore } from '../../core/workroom.ts'
import { chance } from '../support/chance.ts'
import { scratch } from '../support/store.ts'

const LONG = process.env.ELLWAND_LONG === '1'
const KILLS = LONG ? 300 : 20
const root = resolve(import.meta.dirname, '../..')
/** The planner that is killed, in one piece: it is started so often that most of the time would be spent on reading it. */
const CHILD = join(root, 'dist/crash/crash-child.js')
beforeAll(async () => {
  await build({
    ...{
      configFile: false,
      logLevel: 'warn',
      root,
      publicDir: false,
      ssr: { noExternal: true, external: ['better-sqlite3', 'pdfkit'] },
    },
    build: {
      ssr: join(root, 'tests/support/crash-child.ts'),
      outDir: join(root, 'dist/crash'),
      target: 'node24',
    },
  })
})

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
  ...{ quote: 'quote', commission: 'commission' },
}

/** A timer runs just when the last that the history says of timers is that one was started. */
function timersIn(sqlite: Database.Database): {
  running: boolean
  last: string | undefined
  started: Set<unknown>
} {
  const last = sqlite
    .prepare("SELECT request FROM change WHERE entity = 'timer' ORDER BY id DESC")
    .pluck()
    .get()
  const started = sqlite
    .prepare("SELECT json_extract(after, '$.startedAt') FROM change WHERE request = 'timer.start'")
    .pluck()
    .all()
  const running = sqlite.prepare('SELECT count(*) FROM timer').pluck().get() === 1
  return { running, last: last as string | undefined, started: new Set(started) }
}

describe(`a planner that is killed ${KILLS} times${LONG ? '' : ' (300 with ELLWAND_LONG=1)'}`, () => {
  test('has kept everything it granted, once, and its numbers go on without a gap', {
    timeout: 1_200_000,
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
      const year = new Date().getFullYear()
      for (const [table, letter] of Object.entries({ payment: 'R', quote: 'Q', commission: 'C' })) {
        const numbers = sqlite.prepare(`SELECT number FROM "${table}" ORDER BY id`).pluck().all() as string[]
        expect(numbers).toEqual(numbers.map((_, n) => `${letter}-${year}-${String(n + 1).padStart(3, '0')}`))
      }
      const timers = timersIn(sqlite)
      expect(timers.running).toBe(timers.last === 'timer.start')
      for (const [what, startedAt] of granted)
        if (what === 'timer') expect(timers.started).toContain(startedAt)
      // Every change is in the history with what it changed: nothing of one and not of the other.
      for (const table of ['payment', 'commission_note', 'quote', 'commission']) {
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
