import { describe, expect, test } from 'vitest'
import { addDays } from '../../core/words/dates.ts'
import { agreedWork } from '../support/agreed-work.ts'

type Room = Awaited<ReturnType<typeof agreedWork>>
type Plan = {
  day: string
  free: { begins: string | null; last: string | null; from: string }
  daysOff: { days: number; spans: { from: string; note: string; who: string | null }[] }
  commissions: { finish: string; dayOff: string | null }[]
}
type Would = { minutes: number; cloth: string | null; promise: string; changed: unknown[] }
type Waiting = { id: string; promised: string | null; dayOff: string | null; would: Would | null }

const plan = (room: Room) => room.done<Plan>('plan.show')
const waiting = async (room: Room) => (await room.done<{ quotes: Waiting[] }>('plan.waiting')).quotes
type Quote = { id: string; snapshot: { promised: string } }
const quoted = async (room: Room, more: object = {}) =>
  (
    await room.done<{ quote: Quote }>('quote.save', {
      customerId: room.client.id,
      lines: [room.line],
      ...more,
    })
  ).quote

describe('the head of the weeks', () => {
  test('says from when on they are free, before and after work is accepted', async () => {
    const room = await agreedWork()
    const { day, free } = await plan(room)
    expect(free).toMatchObject({ begins: null, last: null, from: day })
    await room.accepted()
    const after = await plan(room)
    // Cloth that nobody has entered is ordered today and here ten days later.
    expect(after.free.begins! >= addDays(day, 10)).toBe(true)
    expect(after.free.last! <= after.commissions[0]!.finish).toBe(true)
    expect(after.free.from > after.free.last!).toBe(true)
  })

  test('counts the days off of the weeks shown, with the word for them and who is off', async () => {
    const room = await agreedWork()
    const { day } = await plan(room)
    expect((await plan(room)).daysOff).toEqual({ days: 0, spans: [] })
    await room.done('away.add', { from: addDays(day, 10), to: addDays(day, 12), note: 'Easter' })
    await room.done('away.add', { from: addDays(day, 100), to: addDays(day, 110), note: 'the fair' })
    const week = [300, 300, 300, 300, 300, 0, 0]
    const { person } = await room.done<{ person: { id: string; revision: number } }>('person.add', {
      ...{ name: 'Ida', skills: ['handSewing'], week },
    })
    await room.done('person.add', { name: 'Ása', skills: ['handSewing'], week })
    await room.done('away.add', { personId: person.id, from: addDays(day, 12), to: addDays(day, 13) })
    const { daysOff } = await plan(room)
    expect(daysOff.days).toBe(4)
    expect(daysOff.spans).toMatchObject([
      { from: addDays(day, 10), note: 'Easter', who: null },
      { from: addDays(day, 12), note: '', who: 'Ida' },
    ])
    await room.done('person.retire', { id: person.id, revision: person.revision })
    expect((await plan(room)).daysOff.days).toBe(3)
  })

  test('says of a promised day that it is a day off', async () => {
    const room = await agreedWork()
    const { day } = await plan(room)
    await room.accepted({ dueDay: addDays(day, 30) })
    expect((await plan(room)).commissions[0]!.dayOff).toBeNull()
    await room.done('away.add', { from: addDays(day, 29), to: addDays(day, 30), note: 'May fair' })
    expect((await plan(room)).commissions[0]!.dayOff).toBe('May fair')
  })
})

describe('quotes that wait', () => {
  test('say what they would take and by when they could be promised, as the quote itself does', async () => {
    const room = await agreedWork()
    const { id } = await quoted(room)
    const [one, ...others] = await waiting(room)
    expect(others).toEqual([])
    const { day } = await plan(room)
    const { promise } = await room.done<Would>('plan.whatIf', { quoteId: id })
    expect(one).toMatchObject({
      id,
      promised: null,
      would: { promise, cloth: addDays(day, 10), changed: [] },
    })
    // What is accepted is planned by the same hours.
    await room.done('quote.accept', { id })
    const { weeks } = await room.done<{ weeks: { planned: number }[] }>('plan.show')
    expect(one!.would!.minutes).toBeCloseTo(
      weeks.reduce((sum, { planned }) => sum + planned, 0),
      6,
    )
    expect(await waiting(room)).toEqual([])
  })

  test('need no cloth that is on the shelf', async () => {
    const room = await agreedWork()
    await room.done('stock.add', { clothId: room.cloth.id, length: '12 m' })
    await quoted(room)
    expect((await waiting(room))[0]!.would!.cloth).toBeNull()
  })

  test('keep the day they promise until other work takes the time, and say when it is a day off', async () => {
    const room = await agreedWork()
    const { snapshot } = await quoted(room, { promise: 'reckoned' })
    const { promised } = snapshot
    const kept = (await waiting(room))[0]!
    expect(kept).toMatchObject({ promised, dayOff: null })
    expect(kept.would!.promise <= promised).toBe(true)
    await room.done('away.add', { from: promised, to: promised, note: 'the fair' })
    expect((await waiting(room))[0]!.dayOff).toBe('the fair')
    await room.accepted({ dueDay: promised }, [{ ...room.line, quantity: 3 }])
    expect((await waiting(room))[0]!.would!.promise > promised).toBe(true)
  })

  test('are not reckoned where they change accepted work, and not told once they have run out', async () => {
    const room = await agreedWork()
    const first = await quoted(room)
    await room.done('quote.accept', { id: first.id })
    await quoted(room, { supersedes: first.id })
    expect(await waiting(room)).toMatchObject([{ would: null }])
    const { now } = room.context
    room.context.now = () => new Date(Date.parse(now()) + 60 * 86_400_000).toISOString()
    expect(await waiting(room)).toEqual([])
  })
})
