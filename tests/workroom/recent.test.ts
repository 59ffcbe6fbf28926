import { describe, expect, test } from 'vitest'
import { agreedWork, gbp } from '../support/agreed-work.ts'

type Recent = { recent: { kind: string; id: string; title: string }[] }
type Id = { id: string }

/** One white dot: the smallest PNG there is. */
const DOT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg=='

describe('what was changed lately', () => {
  test('is named once each, the latest first', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    const two = await room.accepted()
    const lately = async (most = 8) => (await room.done<Recent>('recent.list', { most })).recent
    expect((await lately()).map(({ kind }) => kind)).toEqual([
      ...['commission', 'quote', 'commission', 'quote', 'client'],
    ])
    expect((await lately())[0]).toEqual({
      ...{ kind: 'commission', id: two.id, title: `${two.number} Ása Holt` },
      garments: [{ title: { code: 'draft.construction.goredUndertunic' }, wearer: 'Ása Holt' }],
    })
    await room.done('client.change', {
      ...{ id: room.client.id, revision: 1, client: { name: 'Ása Holt', phone: '0123' } },
    })
    expect((await lately())[0]).toMatchObject({ kind: 'client', id: room.client.id, title: 'Ása Holt' })
    await room.done('step.tick', { id: one.garments[0]!.steps[0]!.id })
    expect((await lately(2)).map(({ id }) => id)).toEqual([one.id, room.client.id])
  })

  test('leads from measures to their client, and from a logged time to its commission', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    const { client: other } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Ōrme' })
    await room.done('time.log', { stepIds: [one.garments[0]!.steps[0]!.id], minutes: 20 })
    const first = async () => (await room.done<Recent>('recent.list', { most: 1 })).recent[0]!
    expect((await first()).id).toBe(one.id)
    await room.done('measurementSet.add', { clientId: other.id, measures: { waistGirth: '70 cm' } })
    expect(await first()).toMatchObject({ kind: 'client', id: other.id, title: 'Łucja Ōrme' })
  })

  test('leads to a commission from whatever was done in it', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    const two = await room.accepted()
    const [garment] = one.garments
    const of = { commissionId: one.id }
    const { pieces } = await room.done<{ pieces: object[] }>('pieces.list', { garmentId: garment!.id })
    const { piece, copy } = pieces[0] as { piece: string; copy: string }
    const acts: [string, object][] = [
      ['note.add', { ...of, text: 'a belt' }],
      ['picture.add', { ...of, name: 'sketch', data: DOT }],
      ['fitting.add', { ...of, day: '2026-03-20' }],
      ['payment.add', { ...of, amount: gbp(500) }],
      ['invoice.make', of],
      ['piece.cut', { garmentId: garment!.id, piece, copy, anyway: ['unwashed'] }],
    ]
    const first = async () => (await room.done<Recent>('recent.list', { most: 1 })).recent[0]!.id
    for (const [name, payload] of acts) {
      await room.done('commission.change', { id: two.id, revision: await revisionOf(two.id), note: name })
      expect(await first()).toBe(two.id)
      await room.done(name, payload)
      expect(await first(), name).toBe(one.id)
    }
    async function revisionOf(id: string): Promise<number> {
      return (await room.done<{ commission: { revision: number } }>('commission.get', { id })).commission
        .revision
    }
  })

  test('leaves out who was forgotten', async () => {
    const room = await agreedWork()
    const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Ōrme' })
    const ids = async () => (await room.done<Recent>('recent.list', {})).recent.map(({ id }) => id)
    expect(await ids()).toEqual([client.id, room.client.id])
    await room.done('client.forget', { id: client.id, name: 'Łucja Ōrme' })
    expect(await ids()).toEqual([room.client.id])
  })
})
