import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addMoney,
  minorDigits,
  money,
  partOf,
  payFor,
  priceOfLength,
  printMoney,
  roundMoney,
  shareOf,
  splitMoney,
  subtractMoney,
  sumMoney,
} from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'

const gbp = (minor: number) => money(minor, 'GBP')

describe('money', () => {
  test('is whole minor units', () => {
    expect(refused(() => money(0.5, 'GBP')).code).toBe('refusal.money.unreadable')
    expect(refused(() => money(Number.NaN, 'GBP')).code).toBe('refusal.money.unreadable')
    expect(refused(() => addMoney(gbp(1), money(1, 'EUR'))).code).toBe('refusal.money.currencies')
  })

  test('rounds half away from zero', () => {
    expect(shareOf(gbp(1), 1, 2).minor).toBe(1)
    expect(shareOf(gbp(-1), 1, 2).minor).toBe(-1)
    expect(shareOf(gbp(10), 1, 3).minor).toBe(3)
    expect(partOf(gbp(12_345), 2000).minor).toBe(2469)
  })

  test('never passes through a float: a share is the rational number rounded', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), fc.integer({ min: 0, max: 10_000 }), (minor, basisPoints) => {
        const twice = 2n * BigInt(Math.abs(minor)) * BigInt(basisPoints)
        const expected = (twice + 10_000n) / 20_000n
        expect(BigInt(Math.abs(partOf(gbp(minor), basisPoints).minor))).toBe(expected)
      }),
    )
  })

  // A worked price in a trade handbook's manner: linen 3.3 m at 18.00, 12.0 h at 16.00.
  test('prices a length and pays a time', () => {
    expect(priceOfLength(gbp(1800), 3300).minor).toBe(5940)
    expect(payFor(gbp(1600), 720).minor).toBe(19_200)
  })

  test('rounds to steps', () => {
    expect(roundMoney(gbp(34_275), 500, 'up').minor).toBe(34_500)
    expect(roundMoney(gbp(34_275), 500, 'down').minor).toBe(34_000)
    expect(roundMoney(gbp(34_275), 500, 'nearest').minor).toBe(34_500)
    expect(roundMoney(gbp(34_275), 0, 'up').minor).toBe(34_275)
    expect(roundMoney(gbp(34_500), 500, 'up').minor).toBe(34_500)
  })

  test('splits so that the parts are the whole', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 }),
        (minor, weights) => {
          fc.pre(weights.some((weight) => weight > 0))
          const parts = splitMoney(gbp(minor), weights)
          expect(sumMoney(parts, 'GBP').minor).toBe(minor)
          const total = weights.reduce((sum, weight) => sum + weight, 0)
          parts.forEach((part, i) => {
            expect(Math.abs(part.minor - (minor * weights[i]!) / total)).toBeLessThan(1)
          })
        },
      ),
    )
    expect(splitMoney(gbp(100), [1, 1, 1]).map(({ minor }) => minor)).toEqual([34, 33, 33])
    expect(refused(() => splitMoney(gbp(1), [0])).code).toBe('refusal.money.noWeights')
  })

  // ISO 4217: the yen has no minor unit, the Kuwaiti dinar three digits of it.
  test('prints in the digits of its currency', () => {
    expect([minorDigits('GBP'), minorDigits('JPY'), minorDigits('KWD')]).toEqual([2, 0, 3])
    expect(printMoney(gbp(34_500), 'en-GB')).toBe('£345.00')
    expect(printMoney(gbp(-5), 'en-GB')).toBe('-£0.05')
    expect(printMoney(money(34_500, 'JPY'), 'en-GB')).toContain('34,500')
    expect(printMoney(money(34_500, 'KWD'), 'en-GB')).toContain('34.500')
    expect(printMoney(subtractMoney(gbp(1), gbp(1)), 'en-GB')).toBe('£0.00')
  })
})
