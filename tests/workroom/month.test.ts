/*
 * This file is long because it goes through whole days of a workroom, request by request, each time from the same
 * beginning.
 */
import { describe, expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { newStore, scratch, workroom } from '../support/store.ts'

type Id = { id: string }
type Money = { minor: number; currency: string }
type Step = Id & { key: string; stage: string }
type Commission = Id & {
  revision: number
  number: string
  state: string
  agreed: Money
  garments: (Id & { cut: boolean; steps: Step[] })[]
}
type Length = Id & {
  length: number
  free: number
  reserved: number
  used: number
  reservedFor: { garmentId: string }[]
}
type MoneyState = {
  paid: Money
  owed: Money
  due: Money
  payments: { number: string }[]
  invoices: (Id & { number: string })[]
}

const gbp = (minor: number): Money => ({ minor, currency: 'GBP' })

async function begun(store = newStore()) {
  const room = workroom(store)
  const { client } = await room.done<{ client: Id }>('client.add', {
    ...{ name: 'Łucja Ōrme', address: ['Weir Cottage'], note: 'allergic to lanolin' },
  })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
    ...{ pricePerMetre: gbp(1650), supplier: 'Weir Mill', leadDays: 10 },
  })
  const line = {
    ...{ wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id },
    construction: 'goredUndertunic',
  }
  const quote = async (lines: object[] = [line], more = {}) =>
    (
      await room.done<{ quote: Id & { number: string; state: string } }>('quote.save', {
        customerId: client.id,
        lines,
        ...more,
      })
    ).quote
  const accept = async (id: string) =>
    (await room.done<{ commission: Commission }>('quote.accept', { id })).commission
  const lengths = async () => (await room.done<{ lengths: Length[] }>('stock.list', { used: true })).lengths
  const money = (commissionId: string) => room.done<MoneyState>('money.of', { commissionId })
  return { ...room, client, measurementSet, cloth, line, quote, accept, lengths, money }
}

describe('cloth in the house', () => {
  test('is promised to accepted work, once, and cut when the garment is cut', async () => {
    const room = await begun()
    await room.done('stock.add', { clothId: room.cloth.id, length: '3 m', place: 'shelf 2' })
    const one = await room.accept((await room.quote()).id)
    const [bolt] = await room.lengths()
    expect(bolt!.reservedFor.map(({ garmentId }) => garmentId)).toEqual([one.garments[0]!.id])
    expect(bolt!.free + bolt!.reserved).toBeCloseTo(3000, 2)
    // What is left is not enough for a second one: it must be bought, and is ordered ten days before it is needed.
    const two = await room.accept((await room.quote()).id)
    expect((await room.lengths())[0]!.reservedFor).toHaveLength(1)
    type Shopping = {
      suppliers: { supplier: string | null; items: { article: Id; buy: number; missing: number }[] }[]
    }
    const { suppliers } = await room.done<Shopping>('shopping.list')
    const linen = suppliers.find(({ supplier }) => supplier === 'Weir Mill')!.items[0]!
    expect(linen.article.id).toBe(room.cloth.id)
    expect(linen.buy).toBeGreaterThanOrEqual(linen.missing)
    const refused = await room.refusal('stock.reserve', {
      id: bolt!.id,
      garmentId: two.garments[0]!.id,
      length: '2.9 m',
    })
    expect(refused.code).toBe('refusal.stock.notFree')
    await room.done('stage.tick', { garmentId: one.garments[0]!.id, stage: 'prepare' })
    await room.done('stage.tick', { garmentId: one.garments[0]!.id, stage: 'cut', anyway: ['unmeasured'] })
    const after = (await room.lengths())[0]!
    expect(after.reserved).toBe(0)
    expect(after.used).toBeCloseTo(bolt!.reserved, 2)
  })

  test('is free again when work is called off, and the money says what is kept', async () => {
    const room = await begun()
    await room.done('stock.add', { clothId: room.cloth.id, length: '4 m' })
    const { id, revision, agreed } = await room.accept((await room.quote()).id)
    await room.done('payment.add', { commissionId: id, amount: gbp(10_000) })
    type Settled = { commission: Commission; settled: { keep: Money; refund: Money } }
    const { commission, settled } = await room.done<Settled>('commission.cancel', { id, revision })
    expect(commission.state).toBe('cancelled')
    expect((await room.lengths())[0]!.reserved).toBe(0)
    // Nothing is cut yet, so all of it goes back.
    expect(settled).toMatchObject({ keep: gbp(0), refund: gbp(10_000) })
    expect(agreed.minor).toBeGreaterThan(10_000)
  })

  test('is measured after the wash: the garment is laid on what is there, and cut waits for that', async () => {
    const room = await begun()
    const { garments } = await room.accept((await room.quote()).id)
    const garmentId = garments[0]!.id
    const cut = { garmentId, stage: 'cut' }
    expect((await room.refusal('stage.tick', cut)).field).toBe('anyway.unwashed')
    await room.done('stage.tick', { garmentId, stage: 'prepare' })
    expect((await room.refusal('stage.tick', cut)).field).toBe('anyway.unmeasured')
    expect(await room.refusal('garment.washed', { garmentId, width: '145 cm', length: '1 m' })).toMatchObject(
      {
        ...{ code: 'refusal.wash.short', field: 'length' },
      },
    )
    const { laid } = await room.done<{ laid: { layLength: number; spare: number } }>('garment.washed', {
      ...{ garmentId, width: '1210 mm', length: '4.2 m' },
    })
    expect(laid.layLength).toBeGreaterThan(1000)
    expect(laid.spare).toBeGreaterThan(0)
    const { document } = await room.done<{ document: { pages: number } }>('cuttingSheet.print', { garmentId })
    expect(document.pages).toBeGreaterThan(0)
    const { pieces } = await room.done<{ pieces: { piece: string; copy: string; cut: boolean }[] }>(
      'pieces.list',
      { garmentId },
    )
    const { piece, copy } = pieces[0]!
    await room.done('piece.cut', { garmentId, piece, copy })
    const again = await room.done<{ pieces: { cut: boolean }[] }>('pieces.list', { garmentId })
    expect(again.pieces.filter((one) => one.cut)).toHaveLength(1)
    await room.done('stage.tick', cut)
  })
})

describe('the timer', () => {
  test('goes on while the planner is closed, is one, and logs what it ran', async () => {
    const folder = scratch()
    const store = newStore(folder)
    const room = await begun(store)
    const { garments } = await room.accept((await room.quote()).id)
    const [wash] = garments[0]!.steps
    await room.done('timer.start', { stepIds: [wash!.id] })
    expect((await room.refusal('timer.start', { garmentId: garments[0]!.id, stage: 'sew' })).code).toBe(
      'refusal.timer.running',
    )
    store.close()
    const reopened = workroom(newStore(folder))
    const { timer } = await reopened.done<{ timer: { stepIds: string[]; forgotten: boolean } }>('timer.get')
    expect(timer.stepIds).toEqual([wash!.id])
    const { time } = await reopened.done<{ time: { minutes: number } }>('timer.stop', {})
    expect(time.minutes).toBeGreaterThan(0)
    expect((await reopened.refusal('timer.stop')).code).toBe('refusal.timer.none')
  })

  test('that ran overnight is doubted, and other minutes can be said in its place', async () => {
    const room = await begun()
    const { garments } = await room.accept((await room.quote()).id)
    await room.done('timer.start', { garmentId: garments[0]!.id, stage: 'cut' })
    const later = workroom(room.store)
    later.context.now = () => '2026-03-03T09:00:00.000Z'
    const { timer } = await later.done<{ timer: { forgotten: boolean; guess: number } }>('timer.get')
    expect(timer.forgotten).toBe(true)
    expect(timer.guess).toBeGreaterThan(10)
    const { time } = await later.done<{ time: { minutes: number; day: string } }>('timer.stop', {
      minutes: '1 h',
    })
    expect(time).toMatchObject({ minutes: 60, day: '2026-03-02' })
  })
})

describe('a change of mind', () => {
  test('is a quote that takes the place of the accepted one; what is the same goes on as it is', async () => {
    const room = await begun()
    const hood = { ...room.line, construction: 'hood' }
    const first = await room.quote([room.line, hood])
    const before = await room.accept(first.id)
    await room.done('step.tick', { id: before.garments[0]!.steps[0]!.id })
    const apron = { ...room.line, construction: 'apron' }
    const second = await room.quote([room.line, apron], { supersedes: first.id })
    type Got = {
      quote: { state: string }
      difference?: { dropped: object[]; added: object[]; more: Money; before: Money; after: Money }
    }
    const { difference } = await room.done<Got>('quote.get', { id: second.id })
    expect(difference!.dropped).toHaveLength(1)
    expect(difference!.added).toHaveLength(1)
    expect(difference!.more.minor).toBe(difference!.after.minor - difference!.before.minor)
    expect((await room.done<Got>('quote.get', { id: first.id })).quote.state).toBe('accepted')
    const after = await room.accept(second.id)
    expect(after.id).toBe(before.id)
    expect(after.garments).toHaveLength(2)
    expect(after.garments[0]!.id).toBe(before.garments[0]!.id)
    expect(after.agreed).toEqual(difference!.after)
    expect((await room.done<Got>('quote.get', { id: first.id })).quote.state).toBe('superseded')
    const { commission } = await room.done<{
      commission: Commission & { garments: { steps: { doneAt: string | null }[] }[] }
    }>('commission.get', { id: after.id })
    expect(commission.garments[0]!.steps[0]!.doneAt).not.toBeNull()
    expect(
      await room.refusal('quote.save', {
        customerId: room.client.id,
        lines: [room.line],
        supersedes: first.id,
      }),
    ).toMatchObject({
      field: 'supersedes',
    })
  })
})

describe('the money of a commission', () => {
  test('adds up from deposit to invoice, and in the year’s list', async () => {
    const room = await begun()
    const { id, agreed } = await room.accept((await room.quote()).id)
    const before = await room.money(id)
    expect(before.due.minor).toBe(Math.round(agreed.minor * 0.4))
    await room.done('payment.add', {
      commissionId: id,
      amount: before.due,
      for: 'acceptance',
      method: 'cash',
    })
    const paid = await room.money(id)
    expect(paid.due.minor).toBe(0)
    expect(paid.paid.minor + paid.owed.minor).toBe(agreed.minor)
    expect(paid.payments[0]!.number).toBe('R-2026-001')
    // Nothing is handed over yet, so that no invoice is missing.
    const missing = async () =>
      (await room.done<{ commissions: (Id & { agreed: Money })[] }>('money.notInvoiced')).commissions
    expect(await missing()).toEqual([])
    await room.done('commission.deliver', { id, revision: 1 })
    expect(await missing()).toMatchObject([{ id, agreed }])
    expect((await room.money(id)).due).toEqual(paid.owed)
    type Made = { invoice: Id & { number: string; total: Money; balance: Money } }
    const { invoice } = await room.done<Made>('invoice.make', { commissionId: id })
    expect(invoice).toMatchObject({ number: 'I-2026-001', total: agreed, balance: paid.owed })
    expect(await missing()).toEqual([])
    const { invoice: note } = await room.done<Made>('invoice.cancel', {
      id: invoice.id,
      reason: 'wrong name',
    })
    expect(note).toMatchObject({ number: 'I-2026-002', total: gbp(-agreed.minor) })
    // The one that is cancelled holds no more.
    expect(await missing()).toMatchObject([{ id }])
    expect((await room.refusal('invoice.cancel', { id: invoice.id, reason: 'again' })).code).toBe(
      'refusal.money.cancelled',
    )
    const { rows, csv } = await room.done<{ rows: { number: string }[]; csv: string }>('money.year', {
      year: 2026,
    })
    expect(rows.map(({ number }) => number).sort()).toEqual(['I-2026-001', 'I-2026-002', 'R-2026-001'])
    expect(csv.trim().split('\r\n')).toHaveLength(4)
    expect(() => room.store.db.$client.exec('UPDATE payment SET amount_minor = 1')).toThrow('frozen')
  })
})

describe('dates', () => {
  type Plan = {
    commissions: { id: string; finish: string; p80: string; late: number | null; reasons: object[] }[]
    weeks: object[]
  }

  test('say when work is done, that it is late and why, and what a holiday does to it', async () => {
    const room = await begun()
    const { id, revision } = await room.accept((await room.quote()).id)
    const plan = async () => (await room.done<Plan>('plan.show')).commissions[0]!
    const free = await plan()
    expect(free.finish > '2026-03-02').toBe(true)
    expect(free.p80 >= free.finish).toBe(true)
    await room.done('commission.change', { id, revision, dueDay: '2026-03-03' })
    const late = await plan()
    expect(late.late!).toBeGreaterThan(0)
    expect(late.reasons.length).toBeGreaterThan(0)
    await room.done('away.add', { from: '2026-03-03', to: '2026-03-13' })
    expect((await plan()).finish > free.finish).toBe(true)
    expect((await room.refusal('away.add', { from: '2026-03-09', to: '2026-03-03' })).field).toBe('to')
    await room.done('person.add', {
      ...{ name: 'Ada', skills: ['cutting'], week: [0, 0, 0, 0, 0, 0, 0] },
    })
    type Never = { commissions: { never: { code: string }[] }[] }
    const { commissions } = await room.done<Never>('plan.show')
    expect(commissions[0]!.never).toHaveLength(1)
  })

  test('wait for cloth that is on its way, and a quote says what can be promised and what it puts off', async () => {
    const room = await begun()
    await room.done('stock.add', { clothId: room.cloth.id, length: '4 m', expectedDay: '2026-03-20' })
    const { id, garments } = await room.accept((await room.quote()).id)
    const [bolt] = await room.lengths()
    await room.done('stock.reserve', { id: bolt!.id, garmentId: garments[0]!.id })
    const { commissions } = await room.done<Plan>('plan.show')
    expect(commissions.find((one) => one.id === id)!.finish > '2026-03-20').toBe(true)
    const waiting = await room.quote()
    const asked = await room.done<{ promise: string; changed: object[] }>('plan.whatIf', {
      quoteId: waiting.id,
    })
    expect(asked.promise > '2026-03-02').toBe(true)
  })

  test('and today says what to do next, who comes, what arrives and whom to ring', async () => {
    const room = await begun()
    const { id, garments } = await room.accept((await room.quote()).id)
    await room.done('stock.add', { clothId: room.cloth.id, length: '4 m', expectedDay: '2026-03-05' })
    await room.done('fitting.add', {
      commissionId: id,
      garmentId: garments[0]!.id,
      day: '2026-03-06',
      time: '14:30',
    })
    type Today = {
      next: { key?: string; garmentId: string }[]
      fittings: object[]
      arriving: object[]
      ring: { why: string }[]
    }
    const now = await room.done<Today>('today.show')
    expect(now.next[0]!.garmentId).toBe(garments[0]!.id)
    expect(now.fittings).toHaveLength(1)
    expect(now.arriving).toHaveLength(1)
    // The deposit is not paid, and holds the work up from the first day.
    expect(now.ring.map(({ why }) => why)).toEqual(['deposit'])
    const later = workroom(room.store)
    later.context.now = () => '2026-03-20T12:00:00.000Z'
    expect((await later.done<Today>('today.show')).ring.map(({ why }) => why)).toEqual(['deposit'])
    await room.done('stage.tick', {
      garmentId: garments[0]!.id,
      stage: 'cut',
      anyway: ['unwashed', 'unmeasured'],
    })
    expect((await later.done<Today>('today.show')).ring).toMatchObject([
      { why: 'depositBegun', day: '2026-03-02', garments: [{ wearer: 'Łucja Ōrme' }] },
    ])
  })
})

describe('finding and putting back', () => {
  test('finds by the beginnings of words, whatever their accents, and nothing of who is forgotten', async () => {
    const room = await begun()
    const { id } = await room.accept((await room.quote()).id)
    await room.done('note.add', { commissionId: id, text: 'wants horn buttons' })
    type Found = { hits: { kind: string; id: string }[] }
    const find = async (text: string) =>
      (await room.done<Found>('search.find', { text })).hits.map(({ kind }) => kind)
    expect(new Set(await find('orme'))).toEqual(new Set(['client', 'quote', 'commission']))
    expect(await find('horn but')).toEqual(['note'])
    expect(await find('lanolin')).toEqual(['client'])
    expect(await find('"')).toEqual([])
    expect(await find('linen XOR (')).toEqual([])
    await room.done('client.forget', { id: room.client.id, name: 'Łucja Ōrme' })
    expect(await find('orme')).toEqual([])
    expect(await find('horn')).toEqual([])
  })

  test('puts back notes, pictures, fittings and times that were taken off', async () => {
    const room = await begun()
    const { id, garments } = await room.accept((await room.quote()).id)
    const { note } = await room.done<{ note: Id }>('note.add', { commissionId: id, text: 'blue tape' })
    // One white dot: the smallest PNG there is.
    const dot =
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg=='
    const { picture } = await room.done<{ picture: Id }>('picture.add', {
      commissionId: id,
      name: 'sketch',
      data: dot,
    })
    const shown = await room.done<{ address: string }>('picture.get', { id: picture.id })
    expect(shown.address).toBe(`data:image/png;base64,${dot}`)
    expect(
      (await room.refusal('picture.add', { commissionId: id, name: 'sketch', data: 'PHN2Zz4=' })).code,
    ).toBe('refusal.picture.kind')
    const { time } = await room.done<{ time: Id & { revision: number } }>('time.log', {
      stepIds: [garments[0]!.steps[0]!.id],
      minutes: 10,
    })
    await room.done('note.remove', { id: note.id, revision: 1 })
    await room.done('picture.remove', { id: picture.id })
    await room.done('time.remove', { id: time.id, revision: time.revision })
    const { taken } = await room.done<{ taken: { kind: string; id: string }[] }>('bin.list')
    expect(taken.map(({ kind }) => kind).sort()).toEqual(['note', 'picture', 'timeEntry'])
    for (const one of taken) await room.done('bin.putBack', { kind: one.kind, id: one.id })
    expect((await room.done<{ taken: object[] }>('bin.list')).taken).toEqual([])
    const { notes, pictures } = await room.done<{ notes: object[]; pictures: object[] }>('notes.list', {
      commissionId: id,
    })
    expect([notes.length, pictures.length]).toEqual([1, 1])
  })
})

describe('a fitting', () => {
  test('is booked, put off, held with what it found, and then no longer put off', async () => {
    const room = await begun()
    const { id, garments } = await room.accept((await room.quote()).id)
    const { fitting } = await room.done<{ fitting: Id }>('fitting.add', {
      commissionId: id,
      garmentId: garments[0]!.id,
      day: '2026-03-09',
    })
    await room.done('fitting.move', { id: fitting.id, revision: 1, day: '2026-03-10', time: '10:00' })
    await room.done('fitting.hold', {
      ...{ id: fitting.id, revision: 2, found: 'two fingers wider at the hip', added: '45 min' },
      ...{ measurementSetId: room.measurementSet.id, recut: ['side gore, left'] },
    })
    const { fittings } = await room.done<{ fittings: { minutesAdded: number; heldAt: string }[] }>(
      'fittings.list',
      { commissionId: id },
    )
    expect(fittings[0]).toMatchObject({ minutesAdded: 45 })
    expect(
      (await room.refusal('fitting.move', { id: fitting.id, revision: 3, day: '2026-03-12' })).code,
    ).toBe('refusal.fitting.held')
  })
})
