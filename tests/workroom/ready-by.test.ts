import { describe, expect, test } from 'vitest'
import { addDays } from '../../core/words/dates.ts'
import { agreedWork } from '../support/agreed-work.ts'

type Room = Awaited<ReturnType<typeof agreedWork>>
type ReadyBy = { day: string; answerBy: string; clothThere: string; cloth: string }
type Planned = { id: string; finish: string; late: number | null; dueDay: string }

const DAY = 86_400_000
/** Two weeks: whole weeks later everything falls on the same days of the week. */
const WEEKS = { leadDays: 14 }

const garmentOf = ({ line: { wearerId: _, ...garment } }: Room) => garment
const readyBy = (room: Room) => room.done<ReadyBy>('garment.promise', garmentOf(room))
/** Lets days go by. */
const later = (room: Room, days: number) => {
  const { now } = room.context
  room.context.now = () => new Date(Date.parse(now()) + days * DAY).toISOString()
}
const quoted = (room: Room) =>
  room.done<{ quote: { id: string; snapshot: { promised: string; answerBy: string } } }>('quote.save', {
    ...{ customerId: room.client.id, lines: [room.line], promise: 'reckoned' },
  })
const planned = async (room: Room) =>
  (await room.done<{ commissions: Planned[] }>('plan.show', {})).commissions[0]!

describe('the day that is promised', () => {
  test('counts from the last day of a yes, and from when cloth comes that is ordered then', async () => {
    const room = await agreedWork(WEEKS)
    const bought = await readyBy(room)
    expect(bought).toMatchObject({ answerBy: '2026-03-09', clothThere: '2026-03-23', cloth: 'order' })
    await room.done('stock.add', { clothId: room.cloth.id, length: '12 m' })
    const shelved = await readyBy(room)
    expect(shelved).toMatchObject({ answerBy: '2026-03-09', clothThere: '2026-03-09', cloth: 'here' })
    expect(addDays(shelved.day, 14)).toBe(bought.day)
  })

  test('does not count a length that is too short, or that is promised to other work', async () => {
    const room = await agreedWork(WEEKS)
    const { day } = await readyBy(room)
    await room.done('stock.add', { clothId: room.cloth.id, length: '40 cm' })
    expect((await readyBy(room)).day).toBe(day)
    await room.done('stock.add', { clothId: room.cloth.id, length: '3 m' })
    expect((await readyBy(room)).clothThere).toBe('2026-03-09')
    // What is accepted takes what it needs of the length.
    await room.accepted()
    expect((await readyBy(room)).clothThere).toBe('2026-03-23')
  })

  test('counts a length that is on its way and promised to nobody, and nobody orders it twice', async () => {
    const room = await agreedWork(WEEKS)
    await room.done('stock.add', {
      ...{ clothId: room.cloth.id, length: '3 m', orderedDay: '2026-03-02', expectedDay: '2026-03-12' },
    })
    expect(await readyBy(room)).toMatchObject({
      answerBy: '2026-03-09',
      clothThere: '2026-03-12',
      cloth: 'coming',
    })
    const { id, garments } = await room.accepted()
    const first = async () =>
      (await room.done<{ next: { first: string | null }[] }>('today.show')).next.map((one) => one.first)
    expect(await first()).toEqual(['waits.deposit'])
    const { due } = await room.done<{ due: object }>('money.of', { commissionId: id })
    await room.done('payment.add', { commissionId: id, amount: due })
    expect(await first()).toEqual(['waits.unpromised.coming'])
    // The commission offers it too, before it tells anybody to buy.
    type Offer = { offered: { offers: { lengthId: string }[]; buy?: object } }
    const { offered } = await room.done<Offer>('stock.offer', { garmentId: garments[0]!.id })
    expect(offered.offers).toHaveLength(1)
    expect(offered.buy).toBeUndefined()
    expect((await planned(room)).finish > '2026-03-12').toBe(true)
  })

  // Whether she says yes at once or on the last day: ordered on the day of the yes, the cloth is there in time.
  test.each([0, 7])('is kept with a yes %i days later and the cloth ordered then', async (days) => {
    const room = await agreedWork(WEEKS)
    const { quote } = await quoted(room)
    later(room, days)
    const { commission } = await room.done<{ commission: { dueDay: string } }>('quote.accept', {
      id: quote.id,
    })
    expect(commission.dueDay).toBe(quote.snapshot.promised)
    const before = await planned(room)
    expect(before.late).toBeLessThanOrEqual(0)
    type List = { suppliers: { items: { orderBy: string }[] }[] }
    const { suppliers } = await room.done<List>('shopping.list', {})
    const today = addDays('2026-03-02', days)
    expect(suppliers[0]!.items[0]!.orderBy >= today).toBe(true)
    await room.done('shopping.order', { clothId: room.cloth.id })
    const ordered = await planned(room)
    expect(ordered.late).toBeLessThanOrEqual(0)
    expect(ordered.finish).toBe(before.finish)
    expect(ordered.finish > addDays(today, 14)).toBe(true)
  })

  test('is settled anew when the yes comes later than that', async () => {
    const room = await agreedWork(WEEKS)
    const { quote } = await quoted(room)
    later(room, 14)
    const { promise } = await room.done<{ promise: string }>('plan.whatIf', { quoteId: quote.id })
    expect(promise > quote.snapshot.promised).toBe(true)
    const { commission } = await room.done<{ commission: { dueDay: string } }>('quote.accept', {
      id: quote.id,
    })
    expect(commission.dueDay).toBe(promise)
    expect((await planned(room)).late).toBeLessThanOrEqual(0)
  })

  test('waits for cloth that nobody entered until it must have come, or anything is done', async () => {
    const room = await agreedWork(WEEKS)
    const { garments } = await room.accepted()
    const { finish } = await planned(room)
    expect(finish > '2026-03-16').toBe(true)
    await room.done('stage.tick', { garmentId: garments[0]!.id, stage: 'prepare' })
    const washed = await planned(room)
    expect(washed.finish < '2026-03-16').toBe(true)
  })
})

describe('room for more work', () => {
  type Room20 = { promise: string; changed: unknown[] }
  const more = (room: Room, hours: number, cloth?: string) =>
    room.done<Room20>('plan.room', { hours, ...(cloth === undefined ? {} : { cloth }) })

  test('is told of eight weeks, the days of people as the workroom has them', async () => {
    const room = await agreedWork()
    const { weeks } = await room.done<{ weeks: { hours: number; planned: number }[] }>('plan.show', {})
    // 25 hours a week.
    expect(weeks.map(({ hours, planned }) => [hours, planned])).toEqual(Array(8).fill([1500, 0]))
  })

  test('says when so many hours would be done, after what is accepted, and once their cloth is there', async () => {
    const room = await agreedWork({ leadDays: 0 })
    // Fifty hours are two weeks of 25 and, kept four times in five, more than that.
    const { promise } = await more(room, 50)
    expect(promise > '2026-03-13').toBe(true)
    expect((await more(room, 10)).promise < promise).toBe(true)
    expect((await more(room, 50, '2026-03-16')).promise).toBe(addDays(promise, 14))
    await room.accepted()
    const after = await more(room, 50)
    expect(after.promise > promise).toBe(true)
    expect(after.changed).toEqual([])
  })
})
