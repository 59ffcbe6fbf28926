import { describe, expect, test } from 'vitest'
import { type Length, stockRoom } from '../support/stock-room.ts'

type Remnant = {
  id: string
  width: number
  length: number
  place: string
  washed: boolean
  usedAt: string | null
  stockId: string | null
}

async function cutTunic(inStock: boolean, washed = true) {
  const room = await stockRoom()
  if (inStock) await room.done('stock.add', { clothId: room.cloth.id, length: '8 m', washed })
  const { garmentId } = await room.accepted()
  if (washed) await room.stage(garmentId, 'prepare')
  await room.stage(garmentId, 'cut')
  const keep = async (place = '') =>
    (await room.done<{ remnants: Remnant[] }>('remnants.keep', { garmentId, place })).remnants
  return { ...room, garmentId, keep }
}

describe('a remnant', () => {
  test('lies where it is put, and is washed if the cloth was before it was cut', async () => {
    const room = await cutTunic(false)
    const [first] = await room.keep('drawer 3')
    expect(first).toMatchObject({ place: 'drawer 3', washed: true, stockId: null })
    const { remnant } = await room.done<{ remnant: Remnant }>('remnant.place', {
      ...{ id: first!.id, place: 'chest' },
    })
    expect(remnant.place).toBe('chest')
    const unwashed = await cutTunic(false, false)
    expect((await unwashed.keep())[0]).toMatchObject({ place: '', washed: false })
    // The cloth being washed later makes nothing of what was cut before.
    await unwashed.stage(unwashed.garmentId, 'prepare')
    expect((await unwashed.keep())[0]!.washed).toBe(false)
  })

  test('put with the lengths is written off the length it was cut from, and the two add up', async () => {
    const room = await cutTunic(true)
    const kept = await room.keep('shelf 2')
    const [before] = await room.lengths()
    const big = kept.reduce((a, b) => (a.width * a.length > b.width * b.length ? a : b))
    const put = await room.done<{ length: Length & { parentId: string; place: string; washed: boolean } }>(
      'remnant.toStock',
      { id: big.id },
    )
    expect(put.length).toMatchObject({ parentId: before!.id, place: 'shelf 2', length: big.length })
    expect(put.length).toMatchObject({ washed: true, free: big.length, clothId: room.cloth.id })
    const after = await room.lengths()
    expect(after).toHaveLength(2)
    expect(after[0]).toMatchObject({ length: before!.length, used: before!.used })
    // It lies in one place only.
    expect((await room.refusal('remnant.putBack', { id: big.id })).code).toBe('refusal.remnant.inStock')
    expect((await room.refusal('remnant.toStock', { id: big.id })).code).toBe('refusal.remnant.used')
    // What lies in stock was cut, so its cutting is not taken back.
    const undo = { garmentId: room.garmentId, stage: 'cut' }
    expect((await room.refusal('stage.untick', undo)).code).toBe('refusal.stock.offcutsKept')
    expect(await room.lengths()).toEqual(after)
  })

  test('across the whole cloth is offered for a garment that is short enough', async () => {
    const room = await cutTunic(false)
    const kept = await room.keep()
    const across = Math.floor(1500 * 0.97)
    expect(kept.filter(({ width }) => width < across).length).toBeGreaterThan(0)
    // A lay of narrow pieces leaves nothing across the cloth, so a piece of that size is entered in its place.
    const row = room.store.db.$client
    row.prepare('update remnant set width = ?, length = 2900 where id = ?').run(across, kept[0]!.id)
    const { length } = await room.done<{ length: Length }>('remnant.toStock', { id: kept[0]!.id })
    expect(length).toMatchObject({ width: 1455, length: 2900, free: 2900 })
    const { garmentId } = await room.accepted()
    expect((await room.lengths())[0]!.reservedFor).toMatchObject([{ garmentId }])
    expect(await room.listed(room.cloth.id)).toBeUndefined()
  })
})
