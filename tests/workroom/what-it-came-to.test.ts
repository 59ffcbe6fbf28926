import { describe, expect, test } from 'vitest'
import { daysOf, daysOfMonth, PERIODS } from '../../core/words/period.ts'
import { agreedWork } from '../support/agreed-work.ts'
import { WOMAN } from '../support/bodies.ts'
import { chance } from '../support/chance.ts'

type Sum = { minor: number }
type Together = {
  garments: number
  known: number
  inPart: number
  knownNet: Sum
  costs: Sum
  left: Sum
  minutes: { quoted: number; actual: number }
  perHour: { actual: Sum }
}
type Row = { together: Together }
type All = {
  together: Together
  commissions: (Row & { number: string; deliveredDay: string })[]
  months: (Row & { month: string })[]
  advice: { code: string; restsOn: number; commissionId?: string; params?: Record<string, unknown> }[]
}

/** Twelve tunics, delivered over five months on days that chance names, some steps logged more slowly than quoted. */
async function aSpring() {
  const room = await agreedWork()
  const { uniform: random } = chance(7)
  const days: string[] = []
  for (let i = 0; i < 12; i++) {
    const commission = await room.accepted()
    const month = 3 + Math.floor(5 * random())
    const day = `2026-0${month}-${String(1 + Math.floor(28 * random())).padStart(2, '0')}`
    const { steps } = commission.garments[0]! as { steps: { id: string }[] }
    // Every third is logged through, the others in part.
    for (const { id } of i % 3 === 0 ? steps : steps.slice(0, 5))
      await room.done('time.log', { stepIds: [id], minutes: 10 + Math.floor(90 * random()) })
    const { revision } = commission
    await room.done('commission.deliver', { id: commission.id, revision, day })
    days.push(day)
  }
  return { ...room, days }
}

describe('what delivered work came to', () => {
  test('says what of it is not paid, of the same days', async () => {
    const { done, days } = await aSpring()
    type Owed = { owed: { id: string; amount: Sum; customer: string }[] }
    const owed = async (within = {}) => (await done<Owed>('accounts.list', within)).owed
    const all = await owed()
    expect(all.map(({ customer }) => customer)).toEqual(days.map(() => 'Ása Holt'))
    expect(await owed(daysOfMonth('2026-05'))).toHaveLength(
      days.filter((day) => day.startsWith('2026-05')).length,
    )
    // What is paid is owed no more, and what is paid in part is owed but for that.
    const [one, two] = all
    await done('payment.add', { commissionId: one!.id, amount: one!.amount })
    await done('payment.add', { commissionId: two!.id, amount: { ...two!.amount, minor: 1234 } })
    const left = new Map((await owed()).map(({ id, amount }) => [id, amount.minor]))
    expect(left.size).toBe(days.length - 1)
    expect(left.get(two!.id)).toBe(two!.amount.minor - 1234)
  })

  test('stands in the list of clients as the garments that each had', async () => {
    const room = await agreedWork()
    const { client: other } = await room.done<{ client: { id: string } }>('client.add', { name: 'Bea' })
    const { measurementSet } = await room.done<{ measurementSet: { id: string } }>('measurementSet.add', {
      ...{ clientId: other.id, measures: WOMAN },
    })
    type Had = { clients: { name: string; had: { garments: number; last: string } | null }[] }
    const had = async () => (await room.done<Had>('clients.list')).clients.map(({ had }) => had)
    const first = await room.accepted({}, [{ ...room.line, quantity: 2 }])
    const { id, revision } = await room.accepted({}, [
      { ...room.line, wearerId: other.id, measurementSetId: measurementSet.id },
    ])
    expect(await had()).toEqual([null, null])
    await room.done('commission.deliver', { id, revision, day: '2026-04-02' })
    expect(await had()).toEqual([null, { garments: 1, last: '2026-04-02' }])
    await room.done('commission.deliver', { id: first.id, revision: first.revision, day: '2026-03-30' })
    expect(await had()).toEqual([
      { garments: 2, last: '2026-03-30' },
      { garments: 1, last: '2026-04-02' },
    ])
  })

  test('of any time is the sum of what was delivered in it, month by month as well', async () => {
    const { done, days } = await aSpring()
    const all = await done<All>('accounts.list')
    expect(all.commissions.map(({ deliveredDay }) => deliveredDay)).toEqual([...days].sort().reverse())
    for (const { from, to } of [
      {},
      { from: '2026-04-10' },
      { to: '2026-05-31' },
      { from: '2026-04-01', to: '2026-06-15' },
      daysOfMonth('2026-05'),
    ] as { from?: string; to?: string }[]) {
      const found = await done<All>('accounts.list', { ...(from && { from }), ...(to && { to }) })
      const within = all.commissions.filter(
        ({ deliveredDay }) => (from ?? '') <= deliveredDay && deliveredDay <= (to ?? '9999'),
      )
      expect(found.commissions).toEqual(within)
      for (const rows of [within, found.months] as Row[][]) {
        const sum = (pick: (of: Together) => number) =>
          rows.reduce((total, { together }) => total + pick(together), 0)
        for (const pick of [
          (of: Together) => of.garments,
          (of: Together) => of.known,
          (of: Together) => of.inPart,
          (of: Together) => of.knownNet.minor,
          (of: Together) => of.costs.minor,
          (of: Together) => of.left.minor,
          (of: Together) => of.minutes.actual,
          (of: Together) => of.minutes.quoted,
        ])
          expect(sum(pick)).toBeCloseTo(pick(found.together), 6)
      }
      const { left, minutes, perHour, knownNet, costs } = found.together
      expect(knownNet.minor - costs.minor).toBe(left.minor)
      // To the nearest penny.
      expect(Math.abs(perHour.actual.minor - (60 * left.minor) / minutes.actual)).toBeLessThanOrEqual(0.5)
    }
    expect(all.together).toMatchObject({ garments: 12, known: 12, inPart: 8 })
    expect(new Set(all.months.map(({ month }) => month)).size).toBeGreaterThan(2)
  })

  test('names the step that ran over most, and where', async () => {
    const { done, accepted } = await agreedWork()
    const commission = await accepted()
    const { steps } = commission.garments[0]! as { steps: { id: string; key: string }[] }
    await done('time.log', { stepIds: [steps[0]!.id], minutes: 61 })
    await done('time.log', { stepIds: [steps[3]!.id], minutes: 900 })
    await done('commission.deliver', { id: commission.id, revision: commission.revision })
    const { advice } = await done<All>('accounts.list')
    const onStep = (all: All['advice']) => all.find(({ code }) => code === 'plan.advice.step')
    expect(onStep(advice)).toMatchObject({
      ...{ restsOn: 1, commissionId: commission.id },
      params: { number: commission.number, actual: { minutes: 900 } },
    })
    type Account = {
      garments: { steps: { id: string; actual: number | null }[]; account: { inPart: boolean } }[]
    }
    const { garments } = await done<Account>('commission.account', { id: commission.id })
    expect(garments[0]!.account.inPart).toBe(true)
    expect(garments[0]!.steps.filter(({ actual }) => actual !== null).map(({ actual }) => actual)).toEqual([
      61, 900,
    ])
    // Time that is taken off again is no longer the worst.
    const { times } = await done<{ times: { id: string; revision: number; minutes: number }[] }>(
      'times.list',
      {
        commissionId: commission.id,
      },
    )
    const { id, revision } = times.find(({ minutes }) => minutes === 900)!
    await done('time.remove', { id, revision })
    const after = await done<All>('accounts.list')
    expect(onStep(after.advice)).toMatchObject({ params: { actual: { minutes: 61 } } })
  })
})

type Money = { minor: number; currency: string }
type Quoted = {
  quote: {
    snapshot: {
      lines: {
        estimate: {
          price: { lines: { kind: string; amount: Money }[]; net: Money; materials: Money }
          attendance: { total: { mean: number; p80: number } }
          sewing: { total: { mean: number } }
        }
      }[]
    }
  }
}
type Bad = {
  number: string
  quoteId: string
  customer: string
  garments: { wearer: string }[]
  asked: Record<'net' | 'reckoned' | 'floor' | 'target', Money>
  minutes: { quoted: number; actual: number }
  earned: Money
  overrun: { quoted: number; actual: number } | null
  why: { code: string; params: Record<string, Money & { minutes: number }> }[]
}
type WithBad = All & {
  badlyPaid: { all: number; worst: Bad[] }
  onTheTable: { minutes: number; commissions: { id: string; minutes: number }[] }
}

const OVERHEAD = { minor: 450, currency: 'GBP' }
const TARGET = { minor: 1700, currency: 'GBP' }

/** A workroom with a known aim and known costs, and how a garment is sold, worked at some pace, and handed over. */
async function priced() {
  const room = await agreedWork()
  await room.done('settings.set', {
    ...{ revision: 0, changes: { rates: { overheadPerHour: OVERHEAD, targetPerHour: TARGET } } },
  })
  const sold = async (pace: number, price: object = {}, more: object = {}) => {
    const commission = await room.accepted({}, [{ ...room.line, price, ...more }])
    type Step = { id: string; minutes: { mean: number } }
    const { steps } = commission.garments[0]! as unknown as { steps: Step[] }
    let logged = 0
    for (const { id, minutes } of steps) {
      const spent = Math.max(1, Math.round(pace * minutes.mean))
      logged += spent
      await room.done('time.log', { stepIds: [id], minutes: spent, day: '2026-03-05' })
    }
    const { quoteId } = commission as unknown as { quoteId: string }
    const { quote } = await room.done<Quoted>('quote.get', { id: quoteId })
    return { ...commission, logged, estimate: quote.snapshot.lines[0]!.estimate }
  }
  const deliver = ({ id, revision }: { id: string; revision: number }, day = '2026-03-09') =>
    room.done('commission.deliver', { id, revision, day })
  const all = (days: object = {}) => room.done<WithBad>('accounts.list', days)
  return { ...room, sold, deliver, all }
}

describe('a badly paid commission', () => {
  test('is named with its price, the reckoned one, the floor, and its hours, reckoned here once more', async () => {
    const room = await priced()
    const set = { minor: 15_000, currency: 'GBP' }
    const one = await room.sold(1, { set })
    await room.deliver(one)
    const { badlyPaid, advice } = await room.all()
    expect(badlyPaid.all).toBe(1)
    const [bad] = badlyPaid.worst
    const { price, sewing, attendance } = one.estimate
    // The reckoning with nothing set: every line but what she set and the tax.
    const reckoned = price.lines
      .filter(({ kind }) => kind !== 'set' && kind !== 'tax')
      .reduce((sum, { amount }) => sum + amount.minor, 0)
    const around = attendance.total.mean
    const minutes = one.logged + around
    const left = set.minor - price.materials.minor - Math.round((OVERHEAD.minor * minutes) / 60)
    expect(bad).toMatchObject({
      ...{ number: one.number, customer: 'Ása Holt', garments: [{ wearer: 'Ása Holt' }], overrun: null },
      asked: { net: set, reckoned: { minor: reckoned }, target: TARGET },
      earned: { minor: Math.round((60 * left) / minutes) },
    })
    expect(bad!.minutes.actual).toBeCloseTo(minutes, 6)
    expect(bad!.minutes.quoted).toBeCloseTo(sewing.total.mean + around, 6)
    const { under, off } = bad!.why[0]!.params
    expect(bad!.why.map(({ code }) => code)).toEqual(['plan.why.asked'])
    expect(off!.minor).toBe(reckoned - set.minor)
    expect(under!.minor).toBe(bad!.asked.floor.minor - set.minor)
    // Sold at the floor, and with the hours that four times in five are enough, an hour earns what was meant.
    const { earning } = one.estimate.price as unknown as { earning: { hours: { p80: number } } }
    const atFloor = bad!.asked.floor.minor - price.materials.minor
    const anHour = (60 * atFloor) / Math.ceil(earning.hours.p80)
    expect(Math.abs(anHour - OVERHEAD.minor - TARGET.minor)).toBeLessThan(1)
    // One garment is enough for advice, and it says on how many it rests.
    expect(advice.find(({ code }) => code === 'plan.advice.raise')!.restsOn).toBe(1)
  })

  test('says of hours that ran over by how much, and names the step', async () => {
    const room = await priced()
    const one = await room.sold(2)
    await room.deliver(one)
    const [bad] = (await room.all()).badlyPaid.worst
    const hours = bad!.why.find(({ code }) => code === 'plan.why.hours')!
    const { sewing } = one.estimate
    expect(hours.params.more!.minutes).toBeCloseTo(one.logged - sewing.total.mean, 6)
    expect(bad!.overrun!.actual).toBeGreaterThanOrEqual(bad!.overrun!.quoted + 15)
    expect(bad!.why.map(({ code }) => code)).not.toContain('plan.why.asked')
  })

  test('blames the aim where price and hours held and more is meant to be earned now', async () => {
    const room = await priced()
    await room.deliver(await room.sold(1))
    expect((await room.all()).badlyPaid).toEqual({ all: 0, worst: [] })
    const target = { minor: 9900, currency: 'GBP' }
    await room.done('settings.set', { revision: 1, changes: { rates: { targetPerHour: target } } })
    const [bad] = (await room.all()).badlyPaid.worst
    expect(bad!.why.at(-1)).toMatchObject({
      ...{ code: 'plan.why.target', params: { before: TARGET, target } },
    })
  })

  test('stands with the worst paid first, and three at the most', async () => {
    const room = await priced()
    const prices = [16_000, 12_000, 14_000, 13_000, 90_000]
    for (const minor of prices) await room.deliver(await room.sold(1, { set: { minor, currency: 'GBP' } }))
    const { badlyPaid } = await room.all()
    expect(badlyPaid.all).toBe(4)
    expect(badlyPaid.worst.map(({ asked }) => asked.net.minor)).toEqual([12_000, 13_000, 14_000])
  })
})

describe('the account of a commission', () => {
  type Line = { id: string; quoted: Money; actual: Money | null }
  type One = {
    costs: Line[]
    account: { left: { quoted: Money; actual: Money }; net: Money; minutes: { actual: number } }
  }

  test('adds up to the penny: the price less every cost is what is left, as it was quoted and as it came out', async () => {
    const room = await priced()
    const { uniform: random } = chance(3)
    for (let i = 0; i < 6; i++) {
      const set = { minor: 20_000 + Math.floor(30_000 * random()), currency: 'GBP' }
      const one = await room.sold(0.7 + random(), i % 2 === 0 ? { set } : {})
      const cloth = `${(2.5 + 2 * random()).toFixed(2)} m`
      if (i > 1) await room.done('garment.took', { garmentId: one.garments[0]!.id, cloth })
      const { garments } = await room.done<{ garments: One[] }>('commission.account', { id: one.id })
      const { costs, account } = garments[0]!
      for (const when of ['quoted', 'actual'] as const) {
        const spent = costs.reduce((sum, line) => sum + line[when]!.minor, 0)
        expect(account.net.minor - spent).toBe(account.left[when].minor)
      }
      const lines = Object.fromEntries(costs.map((line) => [line.id, line]))
      const workroom = (minutes: number) => Math.round((OVERHEAD.minor * minutes) / 60)
      expect(lines.workroom!.actual!.minor).toBe(workroom(account.minutes.actual))
      const { lines: bill } = one.estimate.price
      const billed = (kind: string) =>
        bill.filter((line) => line.kind === kind).reduce((sum, { amount }) => sum + amount.minor, 0)
      expect(lines.workroom!.quoted.minor).toBe(billed('overhead'))
      expect(lines.cloth!.quoted.minor).toBe(billed('cloth'))
      expect(lines.thread!.quoted.minor).toBe(billed('thread'))
      // The linen is 16.50 a metre; what it took beyond what was charged costs that much more.
      if (i > 1) {
        const { purchase } = one.estimate as unknown as { purchase: { toBuy: number } }
        const more = 1000 * Number.parseFloat(cloth) - purchase.toBuy
        const metre = 1650
        expect(Math.abs(lines.cloth!.actual!.minor - billed('cloth') - (more * metre) / 1000)).toBeLessThan(1)
      } else expect(lines.cloth!.actual).toEqual(lines.cloth!.quoted)
    }
  })
})

describe('work that is on the table', () => {
  test('is the time logged in those days on what is open, and is not counted in what was earned', async () => {
    const room = await priced()
    const given = await room.sold(1)
    await room.deliver(given)
    const open = await room.accepted()
    const { steps } = open.garments[0]! as { steps: { id: string }[] }
    const log = (i: number, minutes: number, day: string) =>
      room.done<{ time: { id: string; revision: number } }>('time.log', {
        ...{ stepIds: [steps[i]!.id], minutes, day },
      })
    await log(0, 40, '2026-02-28')
    await log(1, 55, '2026-03-01')
    await log(2, 65, '2026-03-31')
    await log(3, 30, '2026-04-01')
    const { time } = await log(4, 500, '2026-03-15')
    await room.done('time.remove', { id: time.id, revision: time.revision })
    const march = await room.all(daysOfMonth('2026-03'))
    expect(march.onTheTable.minutes).toBe(120)
    expect(march.onTheTable.commissions).toMatchObject([{ id: open.id, minutes: 120 }])
    const ever = await room.all()
    expect(ever.onTheTable.minutes).toBe(190)
    expect(march.together.minutes.actual).toBeCloseTo(given.logged + given.estimate.attendance.total.mean, 6)
    await room.deliver(open, '2026-04-02')
    expect((await room.all(daysOfMonth('2026-03'))).onTheTable).toEqual({ minutes: 0, commissions: [] })
  })
})

describe('a stretch of time', () => {
  test.each([
    ['thisMonth', '2026-12-31', '2026-12-01', '2026-12-31'],
    ['thisMonth', '2028-02-10', '2028-02-01', '2028-02-29'],
    ['lastMonth', '2026-01-15', '2025-12-01', '2025-12-31'],
    ['lastMonth', '2026-03-31', '2026-02-01', '2026-02-28'],
    ['thisYear', '2026-06-01', '2026-01-01', '2026-12-31'],
    ['lastYear', '2026-06-01', '2025-01-01', '2025-12-31'],
  ] as const)('%s on %s is from %s to %s', (period, today, from, to) => {
    expect(daysOf(period, today)).toEqual({ from, to })
  })

  test('is every day of a month, and no other', () => {
    for (let month = 1; month <= 12; month++) {
      const name = `2027-${String(month).padStart(2, '0')}`
      // Day 0 of a month is the last of the one before it.
      const last = new Date(Date.UTC(2027, month, 0)).getUTCDate()
      expect(daysOfMonth(name)).toEqual({ from: `${name}-01`, to: `${name}-${last}` })
    }
    expect(PERIODS.map((id) => Object.keys(daysOf(id, '2026-05-05')).length)).toEqual([0, 2, 2, 2, 2])
  })
})
