import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueNow } from '../../core/plan/money/due.ts'
import { scheduleAfter } from '../../core/plan/money/parts.ts'
import { balanceOf } from '../../core/plan/money/payments.ts'
import { PAYMENT_EVENTS } from '../../core/plan/money/types.ts'
import { sumMoney } from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'
import { entry, gbp, PARTS, whole } from './agreed.ts'

const spread = (paid: number, total: number, schedule = PARTS) =>
  scheduleAfter({ schedule, paid: gbp(paid), total: gbp(total) }).map(({ when, amount }) => [
    when,
    amount.minor,
  ])

describe('the payments after what was agreed has changed', () => {
  test('keep what was paid, and spread the rest as it was', () => {
    // £1,000 become £1,200 and £400 are paid: £800 over two equal parts.
    expect(spread(40_000, 120_000)).toEqual([
      ['acceptance', 40_000],
      ['cutting', 40_000],
      ['delivery', 40_000],
    ])
    expect(spread(0, 50_000)).toEqual([
      ['acceptance', 20_000],
      ['cutting', 15_000],
      ['delivery', 15_000],
    ])
    // £100 of the first part are paid; £900.01 by 300 : 300 : 300, the penny to the first.
    expect(spread(10_000, 100_001)).toEqual([
      ['acceptance', 40_001],
      ['cutting', 30_000],
      ['delivery', 30_000],
    ])
  })

  test('put what is new on the delivery where all is paid', () => {
    expect(spread(100_000, 105_000)).toEqual([
      ['acceptance', 40_000],
      ['cutting', 30_000],
      ['delivery', 35_000],
    ])
    expect(spread(40_000, 45_000, PARTS.slice(0, 1))).toEqual([
      ['acceptance', 40_000],
      ['delivery', 5000],
    ])
    expect(spread(0, 45_000, [])).toEqual([['delivery', 45_000]])
  })

  test('of less than was paid end where the total does, and the rest goes back', () => {
    expect(spread(70_000, 55_000)).toEqual([
      ['acceptance', 40_000],
      ['cutting', 15_000],
    ])
    expect(balanceOf(gbp(55_000), [entry('a', 70_000)]).over).toEqual(gbp(15_000))
    expect(spread(70_000, 0)).toEqual([])
    expect(refused(() => spread(0, -1)).field).toBe('total')
  })

  test('sum to the new total, none below what it was paid, nothing due anew that is paid', () => {
    const part = fc.record({
      when: fc.constantFrom(...PAYMENT_EVENTS),
      amount: fc.nat({ max: 90_000 }).map(gbp),
    })
    fc.assert(
      fc.property(
        fc.uniqueArray(part, { maxLength: 4, selector: ({ when }) => when }),
        fc.nat({ max: 400_000 }),
        fc.nat({ max: 400_000 }),
        (schedule, paid, total) => {
          const parts = scheduleAfter({ schedule, paid: gbp(paid), total: gbp(total) })
          const amounts = parts.map(({ amount }) => amount)
          whole(amounts)
          expect(sumMoney(amounts, 'GBP').minor).toBe(total)
          for (const { minor } of amounts) expect(minor).toBeGreaterThan(0)
          const places = parts.map(({ when }) => PAYMENT_EVENTS.indexOf(when))
          expect(places).toEqual([...new Set(places)].sort((a, b) => a - b))
          // A part that was paid in full is not asked for again.
          const payments = paid === 0 ? [] : [entry('a', paid)]
          const { due } = dueNow({ total: gbp(total), schedule: parts }, payments, {
            acceptance: '2026-11-01',
          })
          const deposit = schedule.find(({ when }) => when === 'acceptance')?.amount.minor ?? 0
          if (paid >= deposit) expect(due.minor).toBe(0)
          expect(due.minor).toBeLessThanOrEqual(Math.max(0, total - paid))
        },
      ),
      { numRuns: 2000 },
    )
  })
})
