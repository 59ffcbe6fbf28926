import { describe, expect, test } from 'vitest'
import { agreedWork } from '../support/agreed-work.ts'
import { WOMAN } from '../support/bodies.ts'

type Room = Awaited<ReturnType<typeof agreedWork>>
type Wait = { code: string; params?: Record<string, unknown> }
type Listed = { commissions: { id: string; garments: { waits: Wait[]; next: object | null }[] }[] }
type Id = { id: string }

const waitsIn = async (room: Room) =>
  (await room.done<Listed>('commissions.list', {})).commissions.map(({ garments }) =>
    garments.map(({ waits }) => waits.map(({ code }) => code)),
  )
const paid = async (room: Room, commissionId: string) => {
  const { due } = await room.done<{ due: object }>('money.of', { commissionId })
  await room.done('payment.add', { commissionId, amount: due })
}

describe('the list of commissions', () => {
  test('says what each garment waits for, from the deposit to the fitting', async () => {
    const room = await agreedWork({ leadDays: 0 })
    const { id, garments } = await room.accepted()
    const garmentId = garments[0]!.id
    expect(await waitsIn(room)).toEqual([[['waits.deposit', 'waits.wash']]])
    await paid(room, id)
    expect(await waitsIn(room)).toEqual([[['waits.wash']]])
    await room.done('stage.tick', { garmentId, stage: 'prepare' })
    expect(await waitsIn(room)).toEqual([[[]]])
    await room.done('stage.tick', { garmentId, stage: 'cut' })
    await room.done('stage.tick', { garmentId, stage: 'sew' })
    const stages = garments[0]!.steps.map(({ stage }) => stage)
    expect(stages).toContain('fit')
    expect(await waitsIn(room)).toEqual([[['waits.fittingNotBooked']]])
    await room.done('fitting.add', { commissionId: id, day: '2026-03-20' })
    expect(await waitsIn(room)).toEqual([[['waits.fitting']]])
    await room.done('stage.tick', { garmentId, stage: 'fit' })
    expect(await waitsIn(room)).toEqual([[[]]])
  })

  test('says what cloth is to be bought, is on its way, or lies there and is promised to nobody', async () => {
    const room = await agreedWork()
    const { cloth: other } = await room.done<{ cloth: Id }>('cloth.add', {
      ...{
        name: 'Blue wool',
        fibre: 'wool',
        width: '150 cm',
        pricePerMetre: { minor: 900, currency: 'GBP' },
      },
    })
    const { id, garments } = await room.accepted()
    await paid(room, id)
    // Where no length was ever entered it is still to be bought as well.
    expect(await waitsIn(room)).toEqual([[['waits.toBuy']]])
    await room.done('stock.add', { clothId: other.id, length: '5 m' })
    expect(await waitsIn(room)).toEqual([[['waits.toBuy']]])
    const { length } = await room.done<{ length: Id & { revision: number } }>('stock.add', {
      ...{ clothId: room.cloth.id, length: '5 m', orderedDay: '2026-03-02', expectedDay: '2026-03-12' },
    })
    await room.done('stock.reserve', { id: length.id, garmentId: garments[0]!.id })
    const { commissions } = await room.done<Listed>('commissions.list', {})
    expect(commissions[0]!.garments[0]!.waits).toEqual([
      { code: 'waits.coming', params: { day: { date: '2026-03-12' } } },
    ])
    const { lengths } = await room.done<{ lengths: (Id & { revision: number })[] }>('stock.list', {})
    const { revision } = lengths.find((one) => one.id === length.id)!
    await room.done('stock.change', { id: length.id, revision, arrivedDay: '2026-03-03' })
    expect(await waitsIn(room)).toEqual([[['waits.wash']]])
    await room.done('stock.release', { id: length.id, garmentId: garments[0]!.id })
    expect(await waitsIn(room)).toEqual([[['waits.unpromised']]])
  })

  test('names the measures that nobody took, and asks nothing of work that is closed', async () => {
    const guessed = { length: 296, source: 'estimated', sd: 17 }
    const room = await agreedWork({ leadDays: 0 }, { ...WOMAN, upperArmGirth: guessed })
    const one = await room.accepted()
    await paid(room, one.id)
    expect(await waitsIn(room)).toEqual([[['waits.wash', 'waits.measures.one']]])
    await room.done('commission.cancel', { id: one.id, revision: one.revision })
    expect(await waitsIn(room)).toEqual([[[]]])
  })

  test('says so beside the step that is next today, but for the wash, which is a step itself', async () => {
    const room = await agreedWork({ leadDays: 0 })
    const { id } = await room.accepted()
    const next = async () => (await room.done<{ next: { waits: Wait[] }[] }>('today.show')).next
    expect((await next()).map(({ waits }) => waits.map(({ code }) => code))).toEqual([['waits.deposit']])
    await paid(room, id)
    expect(await waitsIn(room)).toEqual([[['waits.wash']]])
    expect((await next()).map(({ waits }) => waits)).toEqual([[]])
  })

  test('puts the order for its cloth first, and what is held up by nothing but time last', async () => {
    const room = await agreedWork()
    const late = await room.accepted({ dueDay: '2026-03-20' })
    await paid(room, late.id)
    type Next = { commissionId: string; first: string | null; waits: Wait[]; orderBy: string | null }
    const next = async () => (await room.done<{ next: Next[] }>('today.show')).next
    expect((await next()).map(({ first }) => first)).toEqual(['waits.toBuy'])
    type List = { suppliers: { items: { orderBy: string }[] }[] }
    const { suppliers } = await room.done<List>('shopping.list')
    expect((await next())[0]!.orderBy).toBe(suppliers[0]!.items[0]!.orderBy)
    await room.done('shopping.order', { clothId: room.cloth.id })
    expect((await next()).map(({ first, waits, orderBy }) => [first, waits[0]!.code, orderBy])).toEqual([
      [null, 'waits.coming', null],
    ])
    // A second one, due later, whose cloth lies here: there is something to do for it today.
    await room.done('stock.add', { clothId: room.cloth.id, length: '5 m' })
    const other = await room.accepted({ dueDay: '2026-06-20' })
    await paid(room, other.id)
    expect((await next()).map(({ commissionId }) => commissionId)).toEqual([other.id, late.id])
  })

  test('asks nothing before cutting once a piece is cut by itself, and undone asks again', async () => {
    const room = await agreedWork({ leadDays: 0 })
    const { garments } = await room.accepted()
    const garmentId = garments[0]!.id
    const { pieces } = await room.done<{ pieces: { piece: string; copy: string }[] }>('pieces.list', {
      garmentId,
    })
    const { piece, copy } = pieces[0]!
    const which = { garmentId, piece, copy, anyway: ['unwashed'] }
    await room.done('piece.cut', which)
    expect(await waitsIn(room)).toEqual([[[]]])
    await room.done('piece.cut', { ...which, cut: false })
    expect(await waitsIn(room)).toEqual([[['waits.deposit', 'waits.wash']]])
  })

  test('asks before cloth is ticked as washed that is not in the house, where a shelf is kept', async () => {
    const room = await agreedWork()
    const { garments } = await room.accepted()
    const [garment] = garments
    const wash = garment!.steps.find(({ key }) => key === 'wash')!
    const { cloth: other } = await room.done<{ cloth: Id }>('cloth.add', {
      ...{ name: 'Blue wool', fibre: 'wool', width: '150 cm' },
      pricePerMetre: { minor: 900, currency: 'GBP' },
    })
    await room.done('stock.add', { clothId: other.id, length: '5 m' })
    const asked = async (name: string, given: object) => {
      const answer = await room.ask(name, given)
      return answer.ok ? 'done' : [answer.error.code, answer.error.field]
    }
    expect(await asked('step.tick', { id: wash.id })).toEqual(['refusal.plan.notBought', 'anyway.absent'])
    await room.done('shopping.order', { clothId: room.cloth.id })
    const whole = { garmentId: garment!.id, stage: 'prepare' }
    expect(await asked('stage.tick', whole)).toEqual(['refusal.plan.onItsWay', 'anyway.absent'])
    expect(await asked('stage.tick', { ...whole, anyway: ['absent'] })).toBe('done')
  })

  test('and the commission says the same of each garment', async () => {
    const room = await agreedWork()
    const { id } = await room.accepted()
    const { commission } = await room.done<{ commission: Listed['commissions'][number] }>('commission.get', {
      id,
    })
    expect(commission.garments[0]!.waits.map(({ code }) => code)).toEqual(['waits.deposit', 'waits.toBuy'])
  })

  test('is read in as many statements for many garments as for one', async () => {
    const room = await agreedWork()
    await room.done('stock.add', { clothId: room.cloth.id, length: '5 m' })
    const client = room.store.db.$client
    const prepare = client.prepare.bind(client)
    const statements = async () => {
      let count = 0
      client.prepare = ((sql: string) => {
        count++
        return prepare(sql)
      }) as typeof client.prepare
      await room.done('commissions.list', {})
      client.prepare = prepare
      return count
    }
    await room.accepted()
    const one = await statements()
    for (let i = 0; i < 3; i++) await room.accepted({}, [room.line, { ...room.line, quantity: 3 }])
    expect((await waitsIn(room)).flat()).toHaveLength(13)
    expect(await statements()).toBeLessThanOrEqual(one)
  })
})
