import { describe, expect, test } from 'vitest'
import { uncutFrom } from '../../core/workroom/stock.ts'
import { type Length, stockRoom } from '../support/stock-room.ts'

describe('what is ordered', () => {
  test('comes off the list, is promised to those it is for, and is expected when the shop delivers', async () => {
    const room = await stockRoom()
    const [one, two] = [await room.accepted(), await room.accepted()]
    const before = (await room.listed(room.cloth.id))!
    expect(before.garments.map(({ garmentId }) => garmentId)).toEqual([one.garmentId, two.garmentId])
    expect(before.garments[0]).toMatchObject({ wearer: 'Łucja Ōrme', number: expect.stringMatching(/^C-/) })
    const { length } = await room.done<{ length: Length }>('shopping.order', { clothId: room.cloth.id })
    expect(length).toMatchObject({
      ...{ length: before.buy, orderedDay: '2026-03-02', expectedDay: '2026-03-12', arrivedDay: null },
      supplier: 'Weir Mill',
    })
    expect(length.reservedFor).toEqual(
      before.garments.map(({ garmentId, missing }) => ({ garmentId, mm: missing })),
    )
    expect(await room.listed(room.cloth.id)).toBeUndefined()
    // Nothing of it is free for whoever comes next: a third one is listed, and the others are not listed again.
    const three = await room.accepted()
    const again = (await room.listed(room.cloth.id))!
    expect(again.garments.map(({ garmentId }) => garmentId)).toEqual([three.garmentId])
    expect((await room.refusal('shopping.order', { clothId: 'none' })).code).toBe('refusal.store.notFound')
  })

  test('shorter than all need is promised to those who need it first, and the others stay listed', async () => {
    const room = await stockRoom()
    const [one, two] = [await room.accepted(), await room.accepted()]
    const { missing } = (await room.listed(room.cloth.id))!.garments[0]!
    const { length } = await room.done<{ length: Length }>('shopping.order', {
      ...{ clothId: room.cloth.id, length: missing + 10, expectedDay: '2026-03-09' },
    })
    expect(length.reservedFor).toEqual([{ garmentId: one.garmentId, mm: missing }])
    expect(length.expectedDay).toBe('2026-03-09')
    const left = (await room.listed(room.cloth.id))!
    expect(left.garments.map(({ garmentId }) => garmentId)).toEqual([two.garmentId])
  })

  test('is refused where nothing is missing, and where it would come before it is ordered', async () => {
    const room = await stockRoom()
    expect((await room.refusal('shopping.order', { clothId: room.cloth.id })).code).toBe(
      'refusal.shopping.notListed',
    )
    await room.accepted()
    const early = { clothId: room.cloth.id, orderedDay: '2026-03-02', expectedDay: '2026-03-01' }
    expect(await room.refusal('shopping.order', early)).toMatchObject({
      ...{ code: 'refusal.shopping.before', field: 'expectedDay' },
    })
    expect(await room.lengths()).toEqual([])
  })

  test('is bought again when it will not come', async () => {
    const room = await stockRoom()
    const { garmentId } = await room.accepted()
    const { buy } = (await room.listed(room.cloth.id))!
    const { length } = await room.done<{ length: Length }>('shopping.order', { clothId: room.cloth.id })
    const off = await room.done<{ length: Length }>('stock.callOff', { id: length.id })
    expect(off.length).toMatchObject({ length: 0, reserved: 0, arrivedDay: null })
    expect(await room.listed(room.cloth.id)).toMatchObject({ buy, garments: [{ garmentId }] })
    const { lengths } = await room.done<{ lengths: Length[] }>('stock.list')
    expect(lengths).toEqual([])
    const { arriving } = await room.done<{ arriving: unknown[] }>('today.show')
    expect(arriving).toEqual([])
    await room.done('stock.add', { clothId: room.cloth.id, length: '1 m' })
    const [, here] = await room.lengths()
    expect((await room.refusal('stock.callOff', { id: here!.id })).code).toBe('refusal.stock.isHere')
  })

  test('for nobody is named as what to take, and not bought again', async () => {
    const room = await stockRoom()
    await room.done('stock.add', { clothId: room.cloth.id, length: '4 m', orderedDay: '2026-03-01' })
    const { garmentId } = await room.accepted()
    expect(await room.listed(room.cloth.id)).toBeUndefined()
    expect((await room.shopping()).fromStock).toMatchObject([
      { garmentId, here: false, cloth: 'White linen', wearer: 'Łucja Ōrme' },
    ])
  })

  test('is for lining too', async () => {
    const room = await stockRoom()
    const { cloth } = await room.done<{ cloth: { id: string } }>('cloth.add', {
      ...{ name: 'Lining linen', width: '150 cm', pricePerMetre: { minor: 900, currency: 'GBP' } },
    })
    const { garmentId } = await room.accepted({
      ...{ construction: 'hood', choices: { lined: true }, otherClothIds: { lining: cloth.id } },
    })
    expect((await room.listed(cloth.id))!.garments).toMatchObject([{ garmentId }])
    await room.done('shopping.order', { clothId: cloth.id })
    expect(await room.listed(cloth.id)).toBeUndefined()
    // Without a supplier it is a week on its way, as for any cloth.
    expect((await room.lengths())[0]).toMatchObject({ clothId: cloth.id, expectedDay: '2026-03-09' })
  })

  test('is ordered the days before it is needed that the cloth takes to come', async () => {
    const room = await stockRoom()
    const { commission } = await room.accepted()
    const { id, revision } = commission
    expect(await room.listed(room.cloth.id)).toMatchObject({ orderBy: null, neededBy: null })
    await room.done('commission.change', { id, revision, dueDay: '2026-06-30' })
    const { neededBy, orderBy } = (await room.listed(room.cloth.id))!
    expect(Date.parse(neededBy!) - Date.parse(orderBy!)).toBe(10 * 86_400_000)
    // Too late already: it is needed today.
    await room.done('commission.change', { id, revision: revision + 1, dueDay: '2026-03-02' })
    expect(await room.listed(room.cloth.id)).toMatchObject({ neededBy: '2026-03-02', orderBy: '2026-02-20' })
  })
})

describe('a garment that was never cut', () => {
  test('has its cloth promised again, and what is left of it is on no shelf', async () => {
    const room = await stockRoom()
    await room.done('stock.add', { clothId: room.cloth.id, length: '8 m' })
    const { garmentId } = await room.accepted()
    const other = await room.accepted()
    const before = (await room.lengths())[0]!
    await room.stage(garmentId, 'cut')
    await room.done('remnants.keep', { garmentId })
    expect((await room.lengths())[0]).toMatchObject({ used: before.reservedFor[0]!.mm })
    uncutFrom(garmentId, room.context)
    const after = (await room.lengths())[0]!
    expect(after).toMatchObject({ length: 8000, used: 0, free: before.free, usedBy: [] })
    const held = (all: Length) => new Map(all.reservedFor.map((one) => [one.garmentId, one.mm]))
    expect(held(after)).toEqual(held(before))
    expect(held(after).has(other.garmentId)).toBe(true)
    expect(await room.done('remnants.list')).toEqual({ remnants: [] })
    // Undone twice it is undone once.
    uncutFrom(garmentId, room.context)
    expect((await room.lengths())[0]).toEqual(after)
  })
})

describe('the drawer', () => {
  test('gives a garment its thread when it is sewn through, once, and has it back when it is not', async () => {
    const room = await stockRoom()
    const { garmentId } = await room.accepted()
    await room.stage(garmentId, 'sew')
    expect(await room.drawer('thread:hand')).toMatchObject({ counted: false, left: 0 })
    await room.stage(garmentId, 'sew', false)
    await room.done('supply.count', { supply: 'thread:hand', amount: 900 })
    const needed = (await room.listed('thread:machine'))!.missing
    expect(needed).toBeGreaterThan(0)
    await room.stage(garmentId, 'sew')
    const { left } = await room.drawer('thread:hand')
    expect(left).toBeGreaterThan(0)
    expect(left).toBeLessThan(900)
    // What was never counted stays unknown.
    expect(await room.drawer('thread:machine')).toMatchObject({ counted: false, left: 0 })
    await room.stage(garmentId, 'sew')
    expect((await room.drawer('thread:hand')).left).toBe(left)
    await room.stage(garmentId, 'sew', false)
    expect((await room.drawer('thread:hand')).left).toBe(900)
    await room.stage(garmentId, 'sew')
    expect((await room.drawer('thread:hand')).left).toBe(left)
  })
})
