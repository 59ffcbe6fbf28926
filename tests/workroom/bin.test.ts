import { describe, expect, test } from 'vitest'
import { agreedWork, type FollowedCommission } from '../support/agreed-work.ts'
import { NOON, workroom } from '../support/store.ts'

type Made = { id: string; revision: number }
type Taken = { kind: string; id: string; number: string; customer: string; day: string; until: string }
type Bin = { taken: Taken[]; days: number }
type What = { what: { code: string; params: object } }

/** A commission with a note, a fitting and a logged time, all taken off in this order. */
async function emptied() {
  const room = await agreedWork()
  const commission = await room.accepted()
  const of = { commissionId: commission.id }
  const { note } = await room.done<{ note: Made }>('note.add', { ...of, text: 'wants the neck closer' })
  const { fitting } = await room.done<{ fitting: Made }>('fitting.add', { ...of, day: '2026-03-20' })
  const { time } = await room.done<{ time: Made }>('time.log', {
    ...{ stepIds: [commission.garments[0]!.steps[0]!.id], minutes: 35 },
  })
  await room.done('note.remove', { id: note.id, revision: note.revision })
  await room.done('fitting.remove', { id: fitting.id, revision: fitting.revision })
  await room.done('time.remove', { id: time.id, revision: time.revision })
  return { room, commission, note, fitting, time }
}

describe('what was taken off', () => {
  test('stands in the list, the latest first, with its commission and the day until which it stands there', async () => {
    const { room, commission, note, fitting, time } = await emptied()
    const { taken, days } = await room.done<Bin>('bin.list')
    expect(taken.map(({ kind, id }) => [kind, id])).toEqual([
      ['timeEntry', time.id],
      ['fitting', fitting.id],
      ['note', note.id],
    ])
    for (const one of taken)
      expect(one).toMatchObject({ number: commission.number, customer: 'Ása Holt', day: '2026-03-02' })
    // 2 March and thirty days, counted on the calendar: March has 31.
    expect([days, taken[0]!.until]).toEqual([30, '2026-04-01'])
    expect((taken as (Taken & What)[]).map(({ what }) => what)).toMatchObject([
      { code: 'bin.time', params: { time: { minutes: 35 } } },
      { code: 'bin.fitting', params: { day: { date: '2026-03-20' } } },
      { code: 'bin.note', params: { text: 'wants the neck closer' } },
    ])
  })

  test('is put back in its place, once', async () => {
    const { room, commission, note, fitting, time } = await emptied()
    for (const [kind, { id }] of Object.entries({ note, fitting, timeEntry: time })) {
      await room.done('bin.putBack', { kind, id })
      expect((await room.refusal('bin.putBack', { kind, id })).code).toBe('refusal.bin.there')
    }
    expect((await room.done<Bin>('bin.list')).taken).toEqual([])
    const of = { commissionId: commission.id }
    expect((await room.done<{ notes: Made[] }>('notes.list', of)).notes).toHaveLength(1)
    expect((await room.done<{ fittings: Made[] }>('fittings.list', of)).fittings).toHaveLength(1)
    const { times } = await room.done<{ times: { removedAt: string | null }[] }>('times.list', of)
    expect(times.map(({ removedAt }) => removedAt)).toEqual([null])
  })

  test('brings back with a fitting the work that it led to', async () => {
    const room = await agreedWork()
    const { id } = await room.accepted()
    const { fitting } = await room.done<{ fitting: Made }>('fitting.add', {
      ...{ commissionId: id, day: '2026-03-20' },
    })
    const held = await room.done<{ fitting: Made }>('fitting.hold', {
      ...{ id: fitting.id, revision: fitting.revision, found: 'tight at the wrist', added: 45 },
    })
    const altering = async () => {
      const { commission } = await room.done<{ commission: FollowedCommission }>('commission.get', { id })
      return commission.garments[0]!.steps.flatMap(({ key }) => (key.startsWith('alter:') ? [key] : []))
    }
    const led = await altering()
    expect(led).toEqual([`alter:${fitting.id}`])
    await room.done('fitting.remove', { id: fitting.id, revision: held.fitting.revision })
    expect(await altering()).toEqual([])
    await room.done('bin.putBack', { kind: 'fitting', id: fitting.id })
    expect(await altering()).toEqual(led)
  })

  test('taken off a second time it stands there once', async () => {
    const { room, note } = await emptied()
    await room.done('bin.putBack', { kind: 'note', id: note.id })
    await room.done('note.remove', { id: note.id, revision: note.revision + 2 })
    const { taken } = await room.done<Bin>('bin.list')
    expect(taken.filter(({ id }) => id === note.id)).toHaveLength(1)
    expect(taken[0]!.id).toBe(note.id)
  })

  test('leaves the list after thirty days and is erased from nothing', async () => {
    const { room, note } = await emptied()
    const later = workroom(room.store)
    const day = 86_400_000
    // Taken off on 2 March at noon, they stand until 1 April, in its evening too.
    later.context.now = () => new Date(Date.parse(NOON) + 30 * day + 8 * 3_600_000).toISOString()
    expect((await later.done<Bin>('bin.list')).taken).toHaveLength(3)
    later.context.now = () => new Date(Date.parse(NOON) + 31 * day).toISOString()
    expect((await later.done<Bin>('bin.list')).taken).toEqual([])
    await later.done('bin.putBack', { kind: 'note', id: note.id })
  })

  test('is found beyond the first page of the history', async () => {
    const { room, note, commission } = await emptied()
    const { note: other } = await room.done<{ note: Made }>('note.add', {
      ...{ commissionId: commission.id, text: 'a belt' },
    })
    for (let i = 0; i < 210; i++)
      await room.done('note.change', { id: other.id, revision: other.revision + i, text: `a belt, ${i}` })
    const { taken } = await room.done<Bin>('bin.list')
    expect(taken.map(({ id }) => id)).toContain(note.id)
  })
})
