import { describe, expect, test } from 'vitest'
import { daysOf, daysOfMonth, PERIODS } from '../../core/words/period.ts'
import { agreedWork } from '../support/agreed-work.ts'
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
  advice: { code: string; params?: Record<string, unknown> }[]
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
    const [said] = advice
    expect(said).toMatchObject({
      code: 'plan.advice.step',
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
    expect(after.advice[0]).toMatchObject({ params: { actual: { minutes: 61 } } })
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
