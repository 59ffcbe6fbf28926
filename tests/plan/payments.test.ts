import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueWhenCancelled, settledOnCancel } from '../../core/plan/money/cancelled.ts'
import { balanceOf, enterPayment } from '../../core/plan/money/payments.ts'
import type { Payment } from '../../core/plan/money/types.ts'
import { money } from '../../core/words/money.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { refused } from '../support/refused.ts'
import { entry, gbp, whole } from './agreed.ts'

const TOTAL = gbp(100_000)

describe('what is paid and owed', () => {
  test('counts refunds off, and tells what is too much', () => {
    const paid = [entry('a', 40_000), entry('b', 70_000), entry('c', 4000, 'refund')]
    expect(balanceOf(TOTAL, paid)).toEqual({
      ...{ agreed: TOTAL, received: gbp(110_000), refunded: gbp(4000), paid: gbp(106_000) },
      ...{ owed: gbp(0), over: gbp(6000) },
    })
  })

  test('takes no payment of nothing, none twice, and gives back no more than came', () => {
    const before = [entry('a', 5000)]
    const code = (one: Payment) => refused(() => enterPayment(TOTAL, before, one)).code
    expect(code(entry('b', 0))).toBe('refusal.money.nothing')
    expect(code(entry('b', -1))).toBe('refusal.money.nothing')
    expect(code(entry('b', 0.5))).toBe('refusal.money.unreadable')
    expect(code(entry('a', 1))).toBe('refusal.money.twice')
    expect(code(entry('b', 5001, 'refund'))).toBe('refusal.money.refund')
    expect(code({ ...entry('b', 1), amount: money(1, 'EUR') })).toBe('refusal.money.currencies')
    expect(code({ ...entry('b', 1), day: '2026-02-30' })).toBe('refusal.date.unreadable')
  })

  test('adds up after any payments and refunds, in whole minor units', () => {
    const act = fc.record({
      kind: fc.constantFrom('payment' as const, 'payment' as const, 'refund' as const),
      minor: fc.integer({ min: -10, max: 50_000 }),
      id: fc.nat({ max: 60 }),
    })
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 500_000 }),
        fc.array(act, { maxLength: 40, size: 'max' }),
        (agreed, acts) => {
          let payments: readonly Payment[] = Object.freeze([])
          let [plain, ids] = [0, new Set<number>()]
          for (const { kind, minor, id } of acts) {
            const can = minor > 0 && !ids.has(id) && (kind === 'payment' || minor <= plain)
            const before = [...payments]
            try {
              payments = Object.freeze([
                ...payments,
                enterPayment(gbp(agreed), payments, entry(`${id}`, minor, kind)),
              ])
              expect(can).toBe(true)
              plain += kind === 'payment' ? minor : -minor
              ids = new Set([...ids, id])
            } catch (error) {
              if (!(error instanceof Refusal)) throw error
              expect(can).toBe(false)
              expect(payments).toEqual(before)
            }
            const { received, refunded, paid, owed, over } = balanceOf(gbp(agreed), payments)
            whole([received, refunded, paid, owed, over])
            expect(paid.minor).toBe(plain)
            expect(received.minor - refunded.minor + owed.minor - over.minor).toBe(agreed)
            expect(Math.min(paid.minor, owed.minor, over.minor)).toBeGreaterThanOrEqual(0)
            expect(Math.min(owed.minor, over.minor)).toBe(0)
          }
        },
      ),
      { numRuns: 2000 },
    )
  })
})

describe('a commission that is cancelled', () => {
  // Common practice: once the cloth is cut it serves nobody else, and the deposit pays for it.
  test('gives back the deposit until the cloth is cut, and keeps it then if the terms say so', () => {
    const settle = (paid: number, cutYet: boolean, keepDepositOnceCut: boolean) => {
      const { keep, refund, owed } = settledOnCancel({
        ...{ deposit: gbp(40_000), paid: gbp(paid), cutYet, keepDepositOnceCut },
      })
      return [keep.minor, refund.minor, owed.minor]
    }
    expect(settle(40_000, false, true)).toEqual([0, 40_000, 0])
    expect(settle(40_000, true, true)).toEqual([40_000, 0, 0])
    expect(settle(70_000, true, true)).toEqual([40_000, 30_000, 0])
    expect(settle(40_000, true, false)).toEqual([0, 40_000, 0])
    expect(settle(15_000, true, true)).toEqual([15_000, 0, 25_000])
  })

  test('then what was paid, what is still due and what goes back come to what is kept', () => {
    const pence = fc.integer({ min: 0, max: 200_000 })
    fc.assert(
      fc.property(pence, pence, fc.boolean(), fc.boolean(), (deposit, paid, cutYet, keepDepositOnceCut) => {
        const settled = settledOnCancel({
          deposit: gbp(deposit),
          paid: gbp(paid),
          cutYet,
          keepDepositOnceCut,
        })
        const { due, since, parts } = dueWhenCancelled(settled, '2026-03-02')
        const kept = cutYet && keepDepositOnceCut ? deposit : 0
        expect(paid + due.minor - settled.refund.minor).toBe(kept)
        expect(since === null).toBe(due.minor === 0)
        expect(parts.reduce((sum, { amount }) => sum + amount.minor, 0)).toBe(kept)
        for (const { amount, paid: of, left } of parts) expect(of.minor + left.minor).toBe(amount.minor)
      }),
    )
  })
})
