import { existsSync, readdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { backupFolder, backupsOf } from '../../core/store/safekeeping/files.ts'
import { backUp } from '../../core/store/safekeeping/make.ts'
import { keptBackups } from '../../core/store/safekeeping/retention.ts'
import { openStore } from '../../core/workroom.ts'
import { WOMAN } from '../support/bodies.ts'
import { newStore, scratch, workroom } from '../support/store.ts'

type Id = { id: string }
const HOUR = 3_600_000
const instant = (ms: number) => new Date(ms).toISOString()
const NOW = Date.parse('2026-11-26T12:00:00.000Z')

describe('which backups are kept', () => {
  test('one an hour for a day, one a day for a month, one a month for ever', () => {
    // Every half hour for three years, as the rule is applied once a day.
    let kept: string[] = []
    const begin = NOW - 3 * 365 * 24 * HOUR
    for (let at = begin; at <= NOW; at += HOUR / 2) {
      kept.push(instant(at))
      if ((at - begin) % (24 * HOUR) === 0) kept = [...keptBackups(kept, instant(at))]
    }
    kept = [...keptBackups(kept, instant(NOW))]
    const older = (hours: number) => kept.filter((one) => NOW - Date.parse(one) >= hours * HOUR)
    expect(kept.length - older(24).length).toBe(24 + 1)
    expect(older(24).length - older(31 * 24).length).toBeGreaterThanOrEqual(30)
    expect(older(24).length - older(31 * 24).length).toBeLessThanOrEqual(31)
    const months = new Set(older(31 * 24).map((one) => one.slice(0, 7)))
    expect(months.size).toBeGreaterThanOrEqual(35)
    expect(older(31 * 24).length).toBe(months.size)
  })

  test('always the newest, and those that a clock set back has put into the future', () => {
    const times = fc.array(fc.integer({ min: -500 * 24 * HOUR, max: 30 * 24 * HOUR }), {
      minLength: 1,
      maxLength: 60,
    })
    fc.assert(
      fc.property(times, (offsets) => {
        const all = offsets.map((offset) => instant(NOW + offset))
        const kept = keptBackups(all, instant(NOW))
        expect(kept.has([...all].sort().at(-1)!)).toBe(true)
        for (const one of all) if (Date.parse(one) > NOW) expect(kept.has(one)).toBe(true)
        // What is kept is kept again: the rule takes nothing away on a second look.
        expect(keptBackups([...kept], instant(NOW))).toEqual(kept)
      }),
    )
  })
})

describe('a backup', () => {
  test('stands alone, is sound, and holds what was acknowledged', async () => {
    const store = newStore()
    const room = workroom(store)
    await room.done('client.add', { name: 'Łucja Ōrme' })
    const told: number[] = []
    const made = await backUp(store, 'asked', '2026-03-02T13:00:00.000Z', (done) => told.push(done))
    expect(backupsOf(store.path)).toEqual([made])
    expect(made).toMatchObject({ at: '2026-03-02T13:00:00.000Z', why: 'asked' })
    expect(readdirSync(backupFolder(store.path))).toEqual([made.name])
    const copy = new Database(join(backupFolder(store.path), made.name), { readonly: true })
    expect(copy.prepare('SELECT name FROM client').pluck().all()).toEqual(['Łucja Ōrme'])
    copy.close()
    expect(told.every((done) => done >= 0 && done <= 1)).toBe(true)
  })

  test('belongs to its store, and the ones of old to the maker’s own', async () => {
    const folder = scratch()
    const store = newStore(folder)
    await backUp(store, 'start', '2026-03-02T13:00:00.000Z')
    const old = 'before-update-2026-03-01T08-00-00-000Z.ellwand'
    writeFileSync(join(folder, 'backups', old), '')
    expect(backupsOf(store.path).map(({ why }) => why)).toEqual(['start', 'before-update'])
    expect(backupsOf(join(folder, 'tenter-lane.ellwand'))).toEqual([])
  })
})

describe('going back', () => {
  async function twoDays() {
    const folder = scratch()
    const store = newStore(folder)
    const room = workroom(store)
    const add = async (name: string) => (await room.done<{ client: Id }>('client.add', { name })).client.id
    const first = await add('Łucja Ōrme')
    const gone = await add('Ása Holt')
    await room.done('measurementSet.add', { clientId: gone, measures: WOMAN })
    const { backup } = await room.done<{ backup: { name: string } }>('backup.make')
    const second = await add('Ib Falk')
    const names = (of = store) => of.db.$client.prepare('SELECT name FROM client ORDER BY name').pluck().all()
    const reopen = (from = store) => {
      from.close()
      return openStore(from.path, { now: '2026-03-03T12:00:00.000Z' })
    }
    return { ...room, folder, first, gone, second, backup, names, reopen }
  }

  test('shows first what would be gone and what would come back', async () => {
    const room = await twoDays()
    const { counted } = await room.done<{ counted: { what: string }[] }>('backup.preview', {
      name: room.backup.name,
    })
    expect(counted[0]).toEqual({ what: 'client', here: 3, there: 2, onlyHere: 1, onlyThere: 0 })
  })

  test('happens when the store is opened next, and is undone in the same way', async () => {
    const room = await twoDays()
    const { before } = await room.done<{ before: { name: string } }>('backup.restore', {
      name: room.backup.name,
    })
    expect(room.names()).toHaveLength(3)
    const back = room.reopen()
    expect(room.names(back)).toEqual(['Ása Holt', 'Łucja Ōrme'])
    const again = workroom(back)
    await again.done('backup.restore', { name: before.name })
    const forth = room.reopen(back)
    expect(room.names(forth)).toEqual(['Ib Falk', 'Ása Holt', 'Łucja Ōrme'])
    expect(forth.db.$client.pragma('integrity_check', { simple: true })).toBe('ok')
    forth.close()
  })

  test('leaves forgotten whoever was forgotten', async () => {
    const room = await twoDays()
    await room.done('client.forget', { id: room.gone, name: 'Ása Holt' })
    await room.done('backup.restore', { name: room.backup.name })
    const back = room.reopen()
    expect(room.names(back)).toEqual(['Łucja Ōrme'])
    expect(back.db.$client.prepare('SELECT count(*) FROM measurement_set').pluck().get()).toBe(0)
    back.close()
    // And it stays at that: the wish is done.
    expect(existsSync(`${back.path}.restore`)).toBe(false)
  })

  test('is refused to a copy that is gone or damaged, and the store stays', async () => {
    const room = await twoDays()
    expect((await room.refusal('backup.restore', { name: '../workroom.ellwand' })).code).toBe(
      'refusal.backup.none',
    )
    const damaged = 'workroom.asked-2026-03-02T11-00-00-000Z.ellwand'
    writeFileSync(join(dirname(room.store.path), 'backups', damaged), 'not a book at all'.repeat(500))
    expect((await room.refusal('backup.preview', { name: damaged })).code).toBe('refusal.backup.damaged')
    const open = room.reopen()
    expect(room.names(open)).toHaveLength(3)
    open.close()
  })
})
