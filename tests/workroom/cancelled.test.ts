import { describe, expect, test } from 'vitest'
import { type Amount, agreedWork, type FollowedCommission, gbp } from '../support/agreed-work.ts'
import { workroom } from '../support/store.ts'

type Room = Awaited<ReturnType<typeof agreedWork>>
type Figure = 'agreed' | 'paid' | 'due' | 'owed' | 'over'
type MoneyState = Record<Figure, Amount> & { parts: object[]; since: object | null }
type Ring = { ring: { why: string; number: string; amount: Amount }[] }

const moneyOf = (room: Room, commissionId: string) => room.done<MoneyState>('money.of', { commissionId })
const pay = (room: Room, commissionId: string, minor: number) =>
  room.done('payment.add', { commissionId, amount: gbp(minor) })
const cut = (room: Room, { garments }: FollowedCommission) =>
  room.done('stage.tick', { garmentId: garments[0]!.id, stage: 'cut', anyway: ['unwashed'] })
const cancel = (room: Room, { id, revision }: FollowedCommission) =>
  room.done('commission.cancel', { id, revision })
const ringOn = async (room: Room, day: string) => {
  const later = workroom(room.store)
  later.context.now = () => `${day}T12:00:00.000Z`
  return (await later.done<Ring>('today.show')).ring.filter(({ why }) => why === 'due')
}
/** The deposit of the workroom as it comes: two fifths. */
const deposit = ({ agreed }: FollowedCommission) => Math.round(agreed.minor * 0.4)

describe('a commission that is called off', () => {
  test('owes nothing before its cloth is cut, and what was paid goes back', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    expect((await moneyOf(room, one.id)).due.minor).toBe(deposit(one))
    await pay(room, one.id, 5_000)
    await cancel(room, one)
    expect(await moneyOf(room, one.id)).toMatchObject({
      ...{ due: gbp(0), owed: gbp(0), over: gbp(5_000), paid: gbp(5_000), parts: [], since: null },
    })
    expect(await ringOn(room, '2026-04-20')).toEqual([])
  })

  test('owes once it is cut what is missing of the deposit and no more, and is asked for just that', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    await pay(room, one.id, 5_000)
    await cut(room, one)
    await cancel(room, one)
    const missing = gbp(deposit(one) - 5_000)
    expect(await moneyOf(room, one.id)).toMatchObject({
      ...{ due: missing, owed: missing, over: gbp(0), paid: gbp(5_000) },
      since: { when: 'acceptance', day: '2026-03-02' },
      parts: [{ when: 'acceptance', amount: gbp(deposit(one)), paid: gbp(5_000), left: missing }],
    })
    expect(await ringOn(room, '2026-03-15')).toEqual([])
    expect(await ringOn(room, '2026-03-16')).toMatchObject([{ number: one.number, amount: missing }])
    await pay(room, one.id, missing.minor)
    expect(await ringOn(room, '2026-03-16')).toEqual([])
  })

  test('keeps by the terms its quote was made with, whatever is set since', async () => {
    const room = await agreedWork()
    const before = await room.accepted()
    const keep = { changes: { keepDepositOnceCut: false } }
    await room.done('settings.set', { revision: 0, ...keep })
    const { settings } = await room.done<{ settings: { keepDepositOnceCut: boolean } }>('settings.get')
    expect(settings.keepDepositOnceCut).toBe(false)
    const after = await room.accepted()
    for (const one of [before, after]) {
      await pay(room, one.id, deposit(one))
      await cut(room, one)
      await cancel(room, one)
    }
    expect(await moneyOf(room, before.id)).toMatchObject({ over: gbp(0), due: gbp(0) })
    expect(await moneyOf(room, after.id)).toMatchObject({ over: gbp(deposit(after)), due: gbp(0) })
  })
})

describe('before a commission is called off', () => {
  test('the first piece that is cut by itself has cut its cloth, and undone has not', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    const garmentId = one.garments[0]!.id
    const { pieces } = await room.done<{ pieces: { piece: string; copy: string }[] }>('pieces.list', {
      garmentId,
    })
    const { piece, copy } = pieces[0]!
    const which = { garmentId, piece, copy, anyway: ['unwashed'] }
    const owed = async () => {
      const { ifCancelled } = await room.done<{ ifCancelled: { owed: Amount } }>('money.of', {
        commissionId: one.id,
      })
      return ifCancelled.owed.minor
    }
    expect(await owed()).toBe(0)
    await room.done('piece.cut', which)
    expect(await owed()).toBe(deposit(one))
    await room.done('piece.cut', { ...which, cut: false })
    expect(await owed()).toBe(0)
  })

  test('its timer is stopped, so that the time is kept; a timer on other work runs on', async () => {
    const room = await agreedWork()
    const [one, two] = [await room.accepted(), await room.accepted()]
    await room.done('timer.start', { stepIds: [one.garments[0]!.steps[0]!.id] })
    const asked = { id: one.id, revision: one.revision }
    expect((await room.refusal('commission.cancel', asked)).code).toBe('refusal.timer.calledOff')
    await cancel(room, two)
    await room.done('timer.stop', { minutes: 20 })
    await cancel(room, one)
    const { times } = await room.done<{ times: { minutes: number }[] }>('times.list', {
      commissionId: one.id,
    })
    expect(times.map(({ minutes }) => minutes)).toEqual([20])
  })
})

describe('an invoice', () => {
  test('is not made of what was called off; one that was made before can be taken back', async () => {
    const room = await agreedWork()
    const [one, two] = [await room.accepted(), await room.accepted()]
    const { invoice } = await room.done<{ invoice: { id: string } }>('invoice.make', {
      commissionId: two.id,
    })
    for (const called of [one, two]) await cancel(room, called)
    const { code, field } = await room.refusal('invoice.make', { commissionId: one.id })
    expect([code, field]).toEqual(['refusal.money.calledOff', 'commissionId'])
    expect(await room.done('money.of', { commissionId: one.id })).toMatchObject({ invoices: [] })
    await room.done('invoice.cancel', { id: invoice.id, reason: 'called off' })
    const { invoices } = await room.done<{ invoices: { total: Amount }[] }>('money.of', {
      commissionId: two.id,
    })
    expect(invoices.reduce((sum, { total }) => sum + total.minor, 0)).toBe(0)
  })
})

describe('whom to ring', () => {
  test('names work that is handed over and not paid, until it is, and not for ever', async () => {
    const room = await agreedWork()
    const one = await room.accepted()
    await room.done('commission.deliver', { id: one.id, revision: one.revision, day: '2026-03-02' })
    expect(await ringOn(room, '2026-04-20')).toMatchObject([{ number: one.number, amount: one.agreed }])
    expect(await ringOn(room, '2027-04-20')).toEqual([])
    await pay(room, one.id, one.agreed.minor)
    expect(await ringOn(room, '2026-04-20')).toEqual([])
    // Much that was called off since does not hide it.
    for (let i = 0; i < 21; i++) await cancel(room, await room.accepted())
    // Given back, it is owed again.
    await room.done('payment.add', { commissionId: one.id, kind: 'refund', amount: gbp(300) })
    expect(await ringOn(room, '2026-04-20')).toMatchObject([{ amount: gbp(300) }])
  })
})
