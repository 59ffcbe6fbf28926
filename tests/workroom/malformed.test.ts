import { createHash } from 'node:crypto'
import { cpSync, mkdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type Database from 'better-sqlite3'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { english } from '../../core/words/catalogue/english.ts'
import { openStore, requests } from '../../core/workroom.ts'
import { malformed, odd, oddText, type Schema } from '../support/malformed.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'

const LONG = process.env.ELLWAND_LONG === '1'
const ASKED = LONG ? 20_000 : 1000
/** So many are asked of a workroom before it is a fresh one: some of them are granted, and forget clients. */
const IN_A_ROW = 200

/** Everything in a store. */
function digest(sqlite: Database.Database): string {
  const hash = createHash('sha256')
  const tables = sqlite
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
    .pluck()
    .all()
  for (const table of tables as string[])
    for (const row of sqlite.prepare(`SELECT * FROM "${table}"`).raw().iterate())
      hash.update(JSON.stringify(row, (_, value) => (typeof value === 'bigint' ? String(value) : value)))
  return hash.digest('hex')
}

/** Every id that there is in a store. */
function idsIn(sqlite: Database.Database): string[] {
  const tables = [
    'client',
    'cloth',
    'measurement_set',
    'quote',
    'commission',
    'garment',
    'step',
    'stock_length',
    'time_entry',
  ]
  return tables.flatMap(
    (table) => sqlite.prepare(`SELECT id FROM "${table}" LIMIT 6`).pluck().all() as string[],
  )
}

/** What would take long, and has tests of its own where it is granted. */
const SLOW = new Set(['backup.seal', 'backup.unseal', 'lay.search'])

describe('requests that are not as they should be', () => {
  test(`${ASKED} of all kinds${LONG ? '' : ' (20,000 with ELLWAND_LONG=1)'}: each is refused in a sentence or granted, and what is refused has changed nothing`, {
    timeout: 1_800_000,
  }, async () => {
    const folder = scratch()
    const first = newStore(join(made(folder, 'first')))
    await workroom(first).done('workroom.sample')
    const ids = idsIn(first.db.$client)
    const { path } = first
    first.close()
    const faults = new Map<string, string>()
    const counted = { granted: 0, refused: 0 }
    const names = requests.map(({ name }) => name)
    const schemas = new Map(
      requests.map(({ name, input }) => [
        name,
        malformed(z.toJSONSchema(input, { io: 'input' }) as Schema, ids),
      ]),
    )
    const asked = fc.sample(
      fc.oneof(
        {
          weight: 40,
          arbitrary: fc
            .constantFrom(...names)
            .chain((name) => fc.tuple(fc.constant<string>(name), schemas.get(name)!)),
        },
        { weight: 1, arbitrary: fc.tuple(oddText, odd) },
      ),
      { seed: 10, numRuns: ASKED },
    )
    for (let begin = 0; begin < asked.length; begin += IN_A_ROW) {
      const place = made(folder, String(begin))
      cpSync(dirname(path), place, { recursive: true })
      const store = openStore(join(place, 'workroom.ellwand'), { now: NOON })
      const { ask, context } = workroom(store)
      context.searchLay = async (_, start) => ({ places: start, ended: 'done' })
      const { $client } = store.db
      const changes = $client.prepare('SELECT total_changes()').pluck()
      for (const [name, payload] of asked.slice(begin, begin + IN_A_ROW)) {
        if (SLOW.has(name) && typeof payload === 'object') continue
        const [before, whole] = [changes.get(), digest($client)]
        try {
          const answered = await ask(name, payload)
          expect($client.inTransaction, name).toBe(false)
          if (answered.ok) counted.granted++
          else {
            counted.refused++
            expect(Object.keys(english)).toContain(answered.error.code)
            expect(answered.error.message.length, answered.error.code).toBeGreaterThan(10)
            expect(answered.error.message, answered.error.code).not.toMatch(/\{\w+\}|undefined|\[object/)
            if (changes.get() !== before) expect(digest($client), name).toBe(whole)
          }
        } catch (error) {
          faults.set(
            `${name}: ${String(error).slice(0, 150)}`,
            `${(error as Error).stack?.split('\n').slice(1, 6).join('\n')}\n${shown(payload)}`,
          )
        }
      }
      expect($client.pragma('integrity_check', { simple: true })).toBe('ok')
      expect($client.pragma('foreign_key_check')).toEqual([])
      expect(({} as Record<string, unknown>).polluted).toBeUndefined()
      store.close()
    }
    expect([...faults].map(([fault, where]) => `${fault}\n${where}`).join('\n\n')).toBe('')
    expect(counted.refused).toBeGreaterThan(ASKED / 2)
    expect(counted.granted).toBeGreaterThan(ASKED / 50)
  })
})

function made(folder: string, name: string): string {
  const place = join(folder, name)
  mkdirSync(place, { recursive: true })
  return place
}

function shown(value: unknown): string {
  try {
    return (
      JSON.stringify(value, (_, one) => (typeof one === 'bigint' ? `${one}n` : one))?.slice(0, 600) ??
      'undefined'
    )
  } catch {
    return 'too deep to show'
  }
}
