import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { paymentsOf } from '../../core/quote/payments.ts'
import { money, partOf, sumMoney } from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'

const basisPoints = fc.integer({ min: 0, max: 10_000 })

describe('payments', () => {
  test('sum to the total, each within a minor unit of its part, whatever the parts', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000_000 }),
        fc.array(basisPoints, { minLength: 1, maxLength: 3 }),
        (total, asked) => {
          const [deposit, cutting = 0, fitting = 0] = asked
          fc.pre(deposit! + cutting + fitting <= 10_000)
          const parts = paymentsOf(money(total, 'GBP'), {
            depositBasisPoints: deposit!,
            instalments: [
              { when: 'cutting', basisPoints: cutting },
              { when: 'fitting', basisPoints: fitting },
            ],
          })
          const amounts = parts.map(({ amount }) => amount)
          expect(sumMoney(amounts, 'GBP').minor).toBe(total)
          for (const { minor } of amounts) expect(Number.isSafeInteger(minor)).toBe(true)
          const first = parts.find(({ when }) => when === 'acceptance')?.amount.minor ?? 0
          expect(Math.abs(first - partOf(money(total, 'GBP'), deposit!).minor)).toBeLessThanOrEqual(1)
        },
      ),
    )
  })

  test('of a deposit alone are that and the rest on delivery', () => {
    const parts = paymentsOf(money(10_001, 'GBP'), { depositBasisPoints: 4000, instalments: [] })
    expect(parts).toEqual([
      { when: 'acceptance', amount: money(4000, 'GBP') },
      { when: 'delivery', amount: money(6001, 'GBP') },
    ])
  })

  test('of more than the whole are refused', () => {
    const asked = { depositBasisPoints: 8000, instalments: [{ when: 'cutting' as const, basisPoints: 3000 }] }
    expect(refused(() => paymentsOf(money(100, 'GBP'), asked)).field).toBe('instalments')
  })

  // Tax line by line may differ from tax on the total by half a minor unit a line, and by no more.
  test('tax by line and tax on the total differ by no more than half a minor unit a line', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 0, max: 3000 }),
        (lines, rate) => {
          const byLine = lines.reduce((sum, net) => sum + partOf(money(net, 'GBP'), rate).minor, 0)
          const all = lines.reduce((sum, net) => sum + net, 0)
          const onTotal = partOf(money(all, 'GBP'), rate).minor
          expect(Math.abs(byLine - onTotal)).toBeLessThanOrEqual(lines.length / 2 + 0.5)
        },
      ),
    )
  })
})
