import { createHash } from 'node:crypto'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { openStore } from '../../core/workroom.ts'
import { agreedWork, gbp } from '../support/agreed-work.ts'
import { NOON, scratch } from '../support/store.ts'

const LONG = process.env.ELLWAND_LONG === '1'
/** The journal's format: a header, then frames of a head and a page each (sqlite.org/fileformat2.html, section 4). */
const [HEADER, FRAME] = [32, 24 + 4096]

/** Everything that is in a store, in short. */
function digest(sqlite: Database.Database): string {
  const hash = createHash('sha256')
  const tables = sqlite
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT GLOB 'found_*' ORDER BY name")
    .pluck()
    .all() as string[]
  for (const table of tables) {
    hash.update(table)
    for (const row of sqlite.prepare(`SELECT * FROM "${table}"`).raw().iterate())
      hash.update(JSON.stringify(row))
  }
  return hash.digest('hex')
}

describe('the journal of a workroom', () => {
  test(`cut off at ${LONG ? 'every' : 'every seventh'} frame and within it, leaves the workroom as it was after one of its acts, and none before the last that was whole`, {
    timeout: 600_000,
  }, async () => {
    const room = await agreedWork()
    const { $client } = room.store.db
    $client.pragma('wal_checkpoint(TRUNCATE)')
    $client.pragma('wal_autocheckpoint = 0')
    const { path } = room.store
    /** What the workroom was like after each act, and how long the journal was then. */
    const states = [{ digest: digest($client), length: 0 }]
    const act = async <T>(name: string, payload: object = {}): Promise<T> => {
      const result = await room.done<T>(name, payload)
      states.push({ digest: digest($client), length: readFileSync(`${path}-wal`).length })
      return result
    }
    type Id = { id: string }
    const { quote } = await act<{ quote: Id }>('quote.save', {
      customerId: room.client.id,
      lines: [room.line],
    })
    type Made = { commission: Id & { garments: { steps: Id[] }[] } }
    const { commission } = await act<Made>('quote.accept', { id: quote.id })
    const steps = commission.garments[0]!.steps.map(({ id }) => id)
    for (let i = 0; i < 5; i++) {
      await act('payment.add', { commissionId: commission.id, amount: gbp(100 + i) })
      await act('timer.start', { stepIds: [steps[i]!] })
      await act('timer.stop', { minutes: 5 + i })
      await act('note.add', { commissionId: commission.id, text: `said ${i}` })
      await act('client.add', { name: `Somebody ${i}` })
    }
    const [book, wal] = [readFileSync(path), readFileSync(`${path}-wal`)]
    room.store.close()

    const folder = scratch()
    const frames = (wal.length - HEADER) / FRAME
    expect(Number.isInteger(frames)).toBe(true)
    expect(frames).toBeGreaterThan(100)
    const chosen = Array.from({ length: frames + 1 }, (_, i) => i).filter(
      (i) => LONG || i % 7 === 0 || i === frames,
    )
    const seen = new Set<number>()
    for (const frame of chosen)
      for (const within of [0, 12, 24, 2000]) {
        const cut = Math.min(wal.length, HEADER + frame * FRAME + within)
        const copy = join(folder, 'workroom.ellwand')
        writeFileSync(copy, book)
        writeFileSync(`${copy}-wal`, wal.subarray(0, cut))
        const store = openStore(copy, { now: NOON })
        expect(store.db.$client.pragma('integrity_check', { simple: true })).toBe('ok')
        const found = digest(store.db.$client)
        store.close()
        // The last act whose journal is whole, and no other.
        const expected = states.findLastIndex(({ length }) => length <= cut)
        expect(found, `cut at ${cut}`).toBe(states[expected]!.digest)
        seen.add(expected)
        for (const ending of ['', '-wal', '-shm']) rmSync(copy + ending, { force: true })
      }
    expect(seen.size).toBeGreaterThan(LONG ? states.length - 1 : states.length / 2)
  })
})
