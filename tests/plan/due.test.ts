import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueNow, remindOn } from '../../core/plan/money/due.ts'
import { balanceOf } from '../../core/plan/money/payments.ts'
import { PAYMENT_EVENTS, type Part, type Payment, type Reached } from '../../core/plan/money/types.ts'
import { sumMoney } from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'
import { entry, gbp, PARTS, whole } from './agreed.ts'

const AGREED = { total: gbp(100_000), schedule: PARTS }

describe('what is due', () => {
  test('is what has come and is not paid, since the event it waited on', () => {
    const at = (reached: Reached, ...payments: Payment[]) => {
      const { due, since } = dueNow(AGREED, payments, reached)
      return [due.minor, since?.when, since?.day]
    }
    expect(at({})).toEqual([0, undefined, undefined])
    const accepted = { acceptance: '2026-09-01' }
    expect(at(accepted)).toEqual([40_000, 'acceptance', '2026-09-01'])
    expect(at(accepted, entry('a', 40_000))).toEqual([0, undefined, undefined])
    const cut = { ...accepted, cutting: '2026-10-05' }
    expect(at(cut, entry('a', 39_000))).toEqual([31_000, 'acceptance', '2026-09-01'])
    expect(at(cut, entry('a', 50_000))).toEqual([20_000, 'cutting', '2026-10-05'])
    // Given back, it is due again.
    expect(at(cut, entry('a', 70_000), entry('b', 10_000, 'refund'))).toEqual([
      10_000,
      'cutting',
      '2026-10-05',
    ])
    // What is delivered has been fitted, whether that was written down or not.
    expect(at({ ...cut, delivery: '2026-11-20' }, entry('a', 70_000))).toEqual([
      ...[30_000, 'delivery', '2026-11-20'],
    ])
    expect(at({ delivery: '2026-11-20' })).toEqual([100_000, 'acceptance', '2026-11-20'])
  })

  test('is reminded of so many days after, while it is due', () => {
    const due = dueNow(AGREED, [], { acceptance: '2026-12-20' })
    expect(remindOn(due, 14)).toBe('2027-01-03')
    expect(remindOn(dueNow(AGREED, [entry('a', 40_000)], { acceptance: '2026-12-20' }), 14)).toBeNull()
  })

  test('of parts that do not sum to the total is refused', () => {
    const total = gbp(99_999)
    expect(refused(() => dueNow({ total, schedule: PARTS }, [], {})).sentence).toBe(
      'The payments agreed come to £1,000.00, and the total is £999.99. They must be the same.',
    )
  })

  test('of any parts is the sum of what has come, less what is paid, and nothing is due twice', () => {
    const part = fc.record({
      when: fc.constantFrom(...PAYMENT_EVENTS),
      amount: fc.nat({ max: 90_000 }).map((minor) => gbp(minor)),
    })
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 5 }),
        fc.nat({ max: 300_000 }),
        fc.nat({ max: 4 }),
        (schedule: Part[], paid, come) => {
          const total = sumMoney(
            schedule.map(({ amount }) => amount),
            'GBP',
          )
          const events = PAYMENT_EVENTS.slice(0, come)
          const reached = Object.fromEntries(events.map((when, i) => [when, `2026-11-0${i + 1}`]))
          const payments = paid === 0 ? [] : [entry('a', paid)]
          const { due, parts } = dueNow({ total, schedule }, payments, reached)
          const came = schedule.filter(({ when }) => events.includes(when))
          const sum = came.reduce((all, { amount }) => all + amount.minor, 0)
          expect(due.minor).toBe(Math.max(0, sum - paid))
          whole(parts.flatMap((one) => [one.amount, one.paid, one.left]))
          const left = parts.reduce((all, one) => all + one.left.minor, 0)
          expect(left).toBe(balanceOf(total, payments).owed.minor)
        },
      ),
      { numRuns: 1000 },
    )
  })
})
