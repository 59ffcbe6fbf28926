import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { listClients } from '../../core/store/clients.ts'
import { backUp } from '../../core/store/safekeeping/make.ts'
import { lookThrough, openStore, openStoreOrSaved } from '../../core/workroom.ts'
import { agreedWork, gbp } from '../support/agreed-work.ts'
import { refused } from '../support/refused.ts'
import { NOON, newStore, scratch, workroom } from '../support/store.ts'

const LATER = '2026-03-02T15:00:00.000Z'
const at = { now: LATER }
type Described = {
  damaged: {
    missing: boolean
    fromBackup: number
    standIns: number
    apart: { rows: number; path: string } | null
    parts: { part: string; saved: number; lost: number | null }[]
    backup: { name: string } | null
    counted: { what: string; here: number; there: number }[]
  } | null
}

/** Alters one letter of the file where `text` stands, which is JSON: SQLite itself would not mind. */
function spoil(file: string, text: string): void {
  const bytes = readFileSync(file)
  const found = bytes.indexOf(text)
  expect(found).toBeGreaterThan(0)
  bytes[found] = 0x01
  writeFileSync(file, bytes)
}

/** Work agreed and paid for, with a backup of it or none; then its only quote is spoilt. */
async function spoilt({ copied }: { copied: boolean }) {
  const room = await agreedWork()
  const commission = await room.accepted()
  for (let i = 1; i <= 3; i++)
    await room.done('payment.add', { commissionId: commission.id, amount: gbp(100 * i) })
  if (copied) await backUp(room.store, 'hourly', NOON)
  await room.done('payment.add', { commissionId: commission.id, amount: gbp(400) })
  const { path } = room.store
  room.store.close()
  spoil(path, '{"version"')
  return { path, commission, whole: readFileSync(path) }
}

const lookedAt = async (path: string) => {
  const store = openStoreOrSaved(path, at)
  const room = workroom(store)
  const { damaged } = await room.done<Described>('damaged.describe')
  return { ...room, damaged: damaged! }
}

test('a large book is looked through while it is open, and what is found is known when it is opened next', async () => {
  const room = await agreedWork()
  await room.accepted()
  const put = room.store.db.$client.prepare(
    "INSERT INTO sheet (id, kind, name, hash, bytes, pages, created_at) VALUES (?, 'measuringSheet', ?, ?, 1, 1, '2024-01-01')",
  )
  const long = 'x'.repeat(1_000_000)
  for (let i = 0; i < 40; i++) put.run(`s${i}`, long, `${i}`)
  expect(await lookThrough(room.store)).toBe(true)
  const { path } = room.store
  room.store.close()
  spoil(path, '{"version"')
  const opened = openStore(path, at)
  expect(await lookThrough(opened)).toBe(false)
  opened.close()
  expect(refused(() => openStore(path, at)).code).toBe('refusal.store.damaged')
  const saved = await lookedAt(path)
  await saved.done('damaged.goOn', { with: 'saved' })
  saved.store.close()
  const again = openStore(path, at)
  expect(await lookThrough(again)).toBe(true)
  again.close()
})

describe('a damaged book', () => {
  test('is not opened to be written in, and says so', async () => {
    const { path, whole } = await spoilt({ copied: false })
    expect(refused(() => openStore(path, at)).sentence).toContain('It has not been touched.')
    expect(readFileSync(path).equals(whole)).toBe(true)
  })

  test('takes from the newest sound copy what cannot be read, and keeps what came after it', async () => {
    const { path, commission } = await spoilt({ copied: true })
    const { damaged, done, store } = await lookedAt(path)
    expect(damaged).toMatchObject({ missing: false, fromBackup: 1, standIns: 0, apart: { rows: 1 } })
    expect(damaged.parts.filter(({ lost }) => lost !== 0)).toEqual([])
    expect(damaged.parts.find(({ part }) => part === 'money')?.saved).toBe(4)
    expect(damaged.counted.find(({ what }) => what === 'payment')).toMatchObject({ here: 4, there: 3 })
    const { commission: seen } = await done<{ commission: { number: string } }>('commission.get', {
      id: commission.id,
    })
    expect(seen.number).toBe(commission.number)
    store.close()
  })

  test('sets apart, word for word, what hangs on something that no copy has', async () => {
    const { path } = await spoilt({ copied: false })
    const { damaged, store } = await lookedAt(path)
    const lines = readFileSync(damaged.apart!.path, 'utf8').trim().split('\n')
    const rows = lines.map(
      (line) => JSON.parse(line) as { table: string; why: string; row: { number?: string } },
    )
    expect(rows.filter(({ table }) => table === 'payment').map(({ row }) => row.number)).toEqual([
      ...['R-2026-001', 'R-2026-002', 'R-2026-003', 'R-2026-004'],
    ])
    expect(rows.find(({ table }) => table === 'quote')?.why).toBe('unfit')
    store.close()
  })

  test('is gone on with as what was saved: the damaged file is put aside as it was, and numbers go on', async () => {
    const { path, commission, whole } = await spoilt({ copied: true })
    const looked = await lookedAt(path)
    expect(
      await looked.refusal('payment.add', { commissionId: commission.id, amount: gbp(1) }),
    ).toMatchObject({
      code: 'refusal.store.lookOnly',
    })
    await looked.done('damaged.goOn', { with: 'saved' })
    looked.store.close()
    const store = openStore(path, at)
    const { done } = workroom(store)
    const { payment } = await done<{ payment: { number: string } }>('payment.add', {
      ...{ commissionId: commission.id, amount: gbp(500) },
    })
    expect(payment.number).toBe('R-2026-005')
    expect(await done('damaged.describe')).toEqual({ damaged: null })
    store.close()
    const aside = readdirSync(join(path, '..')).filter((name) => /-damaged-.*\.ellwand$/.test(name))
    expect(aside.length).toBe(1)
    expect(readFileSync(join(path, '..', aside[0]!)).equals(whole)).toBe(true)
  })

  test('gives no number of a saved paper again, though its counter is lost', async () => {
    const room = await agreedWork()
    const commission = await room.accepted()
    await room.done('payment.add', { commissionId: commission.id, amount: gbp(100) })
    await room.done('client.add', { name: 'Spoilt Entry' })
    room.store.db.$client.exec('DELETE FROM counter')
    const { path } = room.store
    room.store.close()
    // One entry of the history is enough for the book to be damaged.
    spoil(path, '"name":"Spoilt Entry"')
    const looked = await lookedAt(path)
    expect(looked.damaged.parts.filter(({ lost }) => lost !== 0)).toMatchObject([
      { part: 'history', lost: 1 },
    ])
    const counters = looked.store.db.$client.prepare('SELECT name, next FROM counter ORDER BY name').all()
    looked.store.close()
    expect(counters).toEqual(['R-2026', 'commission-2026', 'quote-2026'].map((name) => ({ name, next: 2 })))
  })

  test('is gone on with as the newest sound copy; whoever was forgotten since stays forgotten', async () => {
    const room = await agreedWork()
    const { client } = await room.done<{ client: { id: string } }>('client.add', { name: 'Ib Falk' })
    await backUp(room.store, 'hourly', NOON)
    await room.done('client.forget', { id: client.id, name: 'Ib Falk' })
    await room.accepted()
    const { path } = room.store
    room.store.close()
    spoil(path, '{"version"')
    const looked = await lookedAt(path)
    // The copy is older than the forgetting: nothing is taken from it, but it can be gone back to.
    expect(looked.damaged).toMatchObject({
      fromBackup: 0,
      backup: { name: expect.stringContaining('hourly') },
    })
    await looked.done('damaged.goOn', { with: 'backup' })
    looked.store.close()
    const store = openStore(path, at)
    expect(listClients(store.db).map(({ name }) => name)).toEqual(['Ása Holt'])
    store.close()
    expect(
      readdirSync(join(path, '..')).filter((name) => /-damaged-|-saved/.test(name)).length,
    ).toBeGreaterThan(1)
  })
})

describe('a book that is not in its place', () => {
  const begun = async () => {
    const room = await agreedWork()
    await backUp(room.store, 'hourly', NOON)
    const { path } = room.store
    room.store.close()
    return path
  }

  test.for(['deleted', 'emptied'])(
    '%s, is not begun anew where there are copies, and comes back from one',
    async (how) => {
      const path = await begun()
      if (how === 'deleted') rmSync(path)
      else writeFileSync(path, '')
      expect(refused(() => openStore(path, at)).code).toBe('refusal.store.missing')
      const looked = await lookedAt(path)
      expect(looked.damaged.missing).toBe(true)
      expect(await looked.refusal('damaged.goOn', { with: 'saved' })).toMatchObject({ field: 'with' })
      await looked.done('damaged.goOn', { with: 'backup' })
      looked.store.close()
      const store = openStore(path, at)
      expect(listClients(store.db).map(({ name }) => name)).toEqual(['Ása Holt'])
      store.close()
    },
  )

  test('is nothing but a new one where there was none', () => {
    const store = newStore()
    expect(listClients(store.db)).toEqual([])
  })

  test('but another program’s file is, is left alone', () => {
    const path = join(scratch(), 'workroom.ellwand')
    const other = new Database(path)
    other.exec('CREATE TABLE recipe (name TEXT); INSERT INTO recipe VALUES (?)'.replace('?', "'weld'"))
    other.close()
    const before = readFileSync(path)
    expect(refused(() => openStore(path, at)).code).toBe('refusal.store.damaged')
    expect(readFileSync(path).equals(before)).toBe(true)
  })
})

describe('going on, cut off by the power', () => {
  test.for(['saved', 'backup'] as const)(
    'after any of its steps, comes to the same end: %s',
    async (choice) => {
      const steps = [
        () => {},
        // The damaged file was put aside, and nothing else was done.
        (path: string) => renameSync(path, path.replace('.ellwand', '-damaged-before.ellwand')),
      ]
      for (const done of steps) {
        const { path, commission } = await spoilt({ copied: true })
        const looked = await lookedAt(path)
        await looked.done('damaged.goOn', { with: choice })
        looked.store.close()
        done(path)
        const store = openStore(path, at)
        const { commission: seen } = await workroom(store).done<{ commission: { id: string } }>(
          'commission.get',
          {
            ...{ id: commission.id },
          },
        )
        expect(seen.id).toBe(commission.id)
        store.close()
        expect(existsSync(`${path}.go-on`) || existsSync(`${path}.restore`)).toBe(false)
        openStore(path, at).close()
      }
    },
  )

  test('after what was saved stood in its place, leaves it there', async () => {
    const { path } = await spoilt({ copied: true })
    const looked = await lookedAt(path)
    await looked.done('damaged.goOn', { with: 'saved' })
    looked.store.close()
    const wish = readFileSync(`${path}.go-on`)
    openStore(path, at).close()
    const book = readFileSync(path)
    writeFileSync(`${path}.go-on`, wish)
    openStore(path, at).close()
    expect(readFileSync(path).equals(book)).toBe(true)
  })
})
