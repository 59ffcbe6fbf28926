import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DEFAULT_RATES, DEFAULT_THREAD_STOCK } from '../../core/price/parameters.ts'
import { type Priced, priceOf } from '../../core/price/price.ts'
import { profitOn } from '../../core/price/profit.ts'
import { threadCost } from '../../core/price/thread-stock.ts'
import type { Price, Rates } from '../../core/price/types.ts'
import { minutesOf } from '../../core/sew/minutes.ts'
import { money, sumMoney } from '../../core/words/money.ts'
import { say } from '../../core/words/say.ts'
import { refused } from '../support/refused.ts'

const gbp = (minor: number) => money(minor, 'GBP')
const plain: Rates = {
  ...DEFAULT_RATES,
  profit: { kind: 'markup', basisPoints: 0 },
  rounding: { step: 1, direction: 'nearest' },
}
const byHand = (minutes: number): Pick<Priced, 'threads' | 'hours'> => ({
  threads: [],
  hours: { bySkill: { handSewing: minutesOf(minutes, 0) }, total: minutesOf(minutes, 0) },
})
const sum = (price: Price, ...kinds: string[]) =>
  sumMoney(
    price.lines.filter(({ kind }) => kinds.includes(kind)).map(({ amount }) => amount),
    'GBP',
  ).minor

describe('profit', () => {
  // Markup k: P = C(1 + k). Margin m: P = C ÷ (1 − m). A markup of 50 % is a margin of 33⅓ %; a margin of 50 %
  // is a markup of 100 %.
  test('is a markup on cost or a margin of price, never the one for the other', () => {
    expect(profitOn(gbp(10_000), { kind: 'markup', basisPoints: 5000 }).minor).toBe(5000)
    expect(5000 / 15_000).toBeCloseTo(1 / 3, 9)
    expect(profitOn(gbp(10_000), { kind: 'margin', basisPoints: 5000 }).minor).toBe(10_000)
    expect(refused(() => profitOn(gbp(1), { kind: 'margin', basisPoints: 10_000 })).field).toBe('profit')
  })

  test('as a margin is that part of the price, to the minor unit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000_000 }),
        fc.integer({ min: 0, max: 9000 }),
        (cost, basisPoints) => {
          const profit = profitOn(gbp(cost), { kind: 'margin', basisPoints }).minor
          expect(Math.abs(profit - ((cost + profit) * basisPoints) / 10_000)).toBeLessThanOrEqual(0.5 + 1e-6)
        },
      ),
    )
  })
})

describe('the worked price', () => {
  // Worked example of craft pricing: linen 3.3 m × 18, thread 4.20, 12.0 h × 16, overhead 12 h × 6:
  // cost 327.60; a markup of 20 % gives 393.12, a margin of 20 % 409.50.
  const reckon = (profit: Rates['profit']) =>
    priceOf({
      cloths: [{ name: 'linen', pricePerMetre: gbp(1800), length: 3300 }],
      ...{ notions: [], notionStock: {} },
      ...byHand(720),
      threads: [{ work: 'hand', sewn: 80, wasted: 7.5, metres: 87.5 }],
      rates: {
        ...plain,
        profit,
        overheadPerHour: gbp(600),
        perHour: { ...plain.perHour, handSewing: gbp(1600) },
      },
      threadStock: {
        ...DEFAULT_THREAD_STOCK,
        hand: { name: 'thread', metresPerReel: 100, pricePerReel: gbp(480) },
      },
    })

  test('comes to 327.60, 393.12 and 409.50', () => {
    const price = reckon({ kind: 'markup', basisPoints: 2000 })
    expect(price.materials.minor).toBe(5940 + 420)
    expect(price.labour.minor).toBe(19_200)
    expect(price.overhead.minor).toBe(7200)
    expect(price.cost.minor).toBe(32_760)
    expect(price.net.minor).toBe(39_312)
    expect(reckon({ kind: 'margin', basisPoints: 2000 }).net.minor).toBe(40_950)
  })

  // craftprofessional.com: materials 8, labour 48 min at 15 = 12, overhead 3, profit 7: 30.
  test('materials + labour + overhead + profit: 8 + 12 + 3 + 7 = 30', () => {
    const price = priceOf({
      cloths: [{ name: 'cloth', pricePerMetre: gbp(800), length: 1000 }],
      ...{ notions: [], notionStock: {} },
      ...byHand(48),
      rates: {
        ...plain,
        perHour: { ...plain.perHour, handSewing: gbp(1500) },
        overheadPerHour: gbp(375),
        profit: { kind: 'markup', basisPoints: 3043 },
      },
      threadStock: DEFAULT_THREAD_STOCK,
    })
    expect(
      [price.materials, price.labour, price.overhead, price.profit, price.net].map(({ minor }) => minor),
    ).toEqual([800, 1200, 300, 700, 3000])
  })

  test('says of each line what it was reckoned from', () => {
    const lines = reckon({ kind: 'margin', basisPoints: 2000 }).lines.map(
      ({ name, how }) => `${say(name)}: ${say(how)}`,
    )
    expect(lines).toEqual([
      'linen: 330 cm at £18.00 a metre',
      'thread: 88 m of a reel at £4.80; reels to have ready: 1',
      'sewing by hand: 12 h at £16.00 an hour',
      'workroom costs: 12 h at £6.00 an hour',
      'profit: 20 % of the price',
      'VAT: 0 %',
    ])
  })
})

describe('every price', () => {
  const rates = fc.record({
    hourly: fc.integer({ min: 0, max: 20_000 }),
    overhead: fc.integer({ min: 0, max: 5000 }),
    profit: fc.record({
      kind: fc.constantFrom('markup', 'margin'),
      basisPoints: fc.integer({ min: 0, max: 9000 }),
    }),
    tax: fc.integer({ min: 0, max: 3000 }),
    step: fc.constantFrom(0, 1, 5, 50, 100, 500, 1000),
    direction: fc.constantFrom('up', 'down', 'nearest'),
    deposit: fc.integer({ min: 0, max: 10_000 }),
  })

  test('is the sum of its lines, exactly, and rounded as asked', () => {
    fc.assert(
      fc.property(
        rates,
        fc.integer({ min: 0, max: 20_000 }),
        fc.double({ min: 0, max: 10_000, noNaN: true }),
        fc.double({ min: 0, max: 9000, noNaN: true }),
        (given, perMetre, toBuy, minutes) => {
          const price = priceOf({
            cloths: [{ name: 'cloth', pricePerMetre: gbp(perMetre), length: toBuy }],
            ...{ notions: [], notionStock: {} },
            ...byHand(minutes),
            rates: {
              ...plain,
              perHour: { ...plain.perHour, handSewing: gbp(given.hourly) },
              overheadPerHour: gbp(given.overhead),
              profit: given.profit,
              tax: { name: 'tax', basisPoints: given.tax },
              rounding: { step: given.step, direction: given.direction },
              depositBasisPoints: given.deposit,
            },
            threadStock: DEFAULT_THREAD_STOCK,
          })
          expect(sum(price, 'cloth', 'thread', 'notion')).toBe(price.materials.minor)
          expect(sum(price, 'labour')).toBe(price.labour.minor)
          expect(sum(price, 'cloth', 'thread', 'notion', 'labour', 'overhead')).toBe(price.cost.minor)
          expect(sum(price, 'cloth', 'thread', 'notion', 'labour', 'overhead', 'profit', 'rounding')).toBe(
            price.net.minor,
          )
          expect(price.lines.reduce((all, { amount }) => all + amount.minor, 0)).toBe(price.total.minor)
          if (given.step > 1) expect(price.net.minor % given.step).toBe(0)
          if (given.direction === 'up')
            expect(price.net.minor).toBeGreaterThanOrEqual(price.cost.minor + price.profit.minor)
          expect(price.deposit.minor).toBeLessThanOrEqual(price.total.minor)
          for (const { amount } of price.lines) expect(Number.isSafeInteger(amount.minor)).toBe(true)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('rises with the hours', () => {
    const at = (minutes: number) =>
      priceOf({
        cloths: [{ name: 'c', pricePerMetre: gbp(1000), length: 1000 }],
        ...{ notions: [], notionStock: {} },
        ...byHand(minutes),
        rates: DEFAULT_RATES,
        threadStock: DEFAULT_THREAD_STOCK,
      }).total.minor
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (minutes, more) => {
          expect(at(minutes + more)).toBeGreaterThanOrEqual(at(minutes))
        },
      ),
    )
  })

  // craftprofessional-style check of loss: price 25, materials 5, overhead 2, 3 h at 10 = 37: a loss of 12.
  test('tells what an hour really earns', () => {
    const price = priceOf({
      cloths: [{ name: 'c', pricePerMetre: gbp(500), length: 1000 }],
      ...{ notions: [], notionStock: {} },
      ...byHand(180),
      rates: { ...plain, perHour: { ...plain.perHour, handSewing: gbp(1000) }, overheadPerHour: gbp(67) },
      threadStock: DEFAULT_THREAD_STOCK,
    })
    expect(price.earnedPerHour.minor).toBe(1000)
    expect(price.cost.minor - 2500).toBe(1201)
  })
})

test('thread is charged by the part of the reel it takes, and reels are told whole', () => {
  const use = { work: 'machine' as const, sewn: 500, wasted: 1, metres: 501 }
  const { amount, reels } = threadCost(use, DEFAULT_THREAD_STOCK)
  expect(reels).toBe(2)
  expect(amount.minor).toBe(Math.round((501 / 500) * 520))
})
