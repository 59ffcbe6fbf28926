import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { usableWidth } from '../../core/lay/cloth.ts'
import { purchaseOf } from '../../core/lay/purchase.ts'
import { comeIn, cut, measure, reserve } from '../../core/plan/stock/acts.ts'
import { clothLength } from '../../core/plan/stock/balance.ts'
import { lengthNeeded, needOf, UNWASHED } from '../../core/plan/stock/need.ts'
import { offerFor } from '../../core/plan/stock/offer.ts'
import type { ClothLength, Shrinkage } from '../../core/plan/stock/types.ts'
import { say } from '../../core/words/say.ts'
import { plainCloth } from '../support/cloth.ts'

const day = '2026-11-02'
const LINEN = plainCloth(1500, { warpShrinkage: 0.06, weftShrinkage: 0.03 })
const RULES = { endAllowance: 20, squaring: 30, testStrip: 100, margin: 0.02, cuttingGap: 2 }
const needFor = (length: number, garmentId = 'tunic') =>
  needOf({ garmentId, clothId: 'linen' }, purchaseOf({ length }, LINEN, RULES), LINEN)
const lying = (
  id: string,
  mm: number,
  {
    width = 1500,
    washed = false,
    shrinkage,
  }: { width?: number; washed?: boolean; shrinkage?: Shrinkage } = {},
): ClothLength => clothLength({ id, clothId: 'linen', shrinkage }, [comeIn([], { day, mm, width, washed })])

describe('what a garment needs', () => {
  test('is longer in unwashed cloth, by what washing takes', () => {
    // (2000 + 20 + 30) × 1.02 washed; with the test strip, and divided by 0.94, unwashed.
    const need = needFor(2000)
    expect(lengthNeeded(need, { washed: true })).toBeCloseTo(2091, 2)
    expect(lengthNeeded(need, UNWASHED)).toBeCloseTo((2150 * 1.02) / 0.94, 2)
    // Where this very length was measured there is no strip to cut, and its own shrinkage counts.
    // 2091 ÷ 0.96 = 2178.125, and a hundredth of a millimetre less would not do.
    expect(lengthNeeded(need, { washed: false, shrinkage: { warp: 0.04, weft: 0 } })).toBe(2178.13)
  })

  test('unwashed is what was to be bought, whatever the cloth', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20_000, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (length, warpShrinkage, margin) => {
          const cloth = plainCloth(1500, { warpShrinkage })
          const purchase = purchaseOf({ length }, cloth, { ...RULES, margin })
          const need = needOf({ garmentId: 'tunic', clothId: 'linen' }, purchase, cloth)
          expect(Math.abs(lengthNeeded(need, UNWASHED) - purchase.needed)).toBeLessThanOrEqual(0.01)
          expect(need.width).toBe(usableWidth(cloth))
        },
      ),
    )
  })
})

describe('what the stock offers', () => {
  test('is the shortest length that is enough, washed or not, and why the others are not', () => {
    const offered = offerFor(
      needFor(2000),
      [
        lying('long', 9000),
        lying('washed', 2100, { width: 1455, washed: true }),
        lying('unwashed', 2340),
        lying('short', 2330),
        lying('narrow', 5000, { width: 1400 }),
        { ...lying('wool', 5000), clothId: 'wool' },
      ],
      100,
    )
    expect(offered.offers).toEqual([
      { lengthId: 'washed', washed: true, takes: 2091, leaves: 9 },
      { lengthId: 'unwashed', washed: false, takes: 2332.98, leaves: 7.02 },
      { lengthId: 'long', washed: false, takes: 2332.98, leaves: 6667.02 },
    ])
    expect(offered.others.map(({ lengthId, why }) => [lengthId, say(why)])).toEqual([
      ['short', 'too short: 233 cm is free, and 233.3 cm is needed'],
      ['narrow', 'too narrow: washed it is 135.8 cm wide, and the lay is for 145.5 cm'],
    ])
    expect(offered.buy).toBeUndefined()
  })

  test('is bought where none serves, by the step of the shop', () => {
    const { offers, buy } = offerFor(needFor(2000), [lying('short', 2000)], 100)
    expect({ offers, buy }).toEqual({ offers: [], buy: { washed: 2091, needed: 2332.98, toBuy: 2400 } })
    expect(offerFor(needFor(0), [], 100)).toEqual({ offers: [], others: [] })
  })

  test('counts what is promised to the garment itself as free for it, and to no other', () => {
    const came = [comeIn([], { day, mm: 2400, width: 1500, washed: false })]
    const held = [...came, reserve(came, { day, garmentId: 'tunic', mm: 1000 })]
    const lengths = [clothLength({ id: 'a', clothId: 'linen' }, held)]
    expect(offerFor(needFor(2000), lengths, 100).offers).toMatchObject([{ lengthId: 'a', leaves: 67.02 }])
    expect(offerFor(needFor(2000, 'hood'), lengths, 100).offers).toEqual([])
  })

  test('never is cloth promised to another, and can be cut in full', () => {
    const millimetres = fc.integer({ min: 1, max: 600_000 }).map((count) => count / 100)
    fc.assert(
      fc.property(
        fc.array(fc.tuple(millimetres, fc.boolean(), millimetres), { maxLength: 8 }),
        millimetres,
        (stock, wanted) => {
          const ledgers = stock.map(([mm, washed, held]) => {
            const came = [comeIn([], { day, mm, width: washed ? 1455 : 1500, washed })]
            return held < mm ? [...came, reserve(came, { day, garmentId: 'hood', mm: held })] : came
          })
          const lengths = ledgers.map((moves, i) => clothLength({ id: `${i}`, clothId: 'linen' }, moves))
          const { offers, buy } = offerFor(needFor(wanted), lengths, 100)
          expect(offers.length === 0).toBe(buy !== undefined)
          const frees = offers.map(({ takes, leaves }) => takes + leaves)
          expect(frees).toEqual([...frees].sort((a, b) => a - b))
          for (const { lengthId, takes } of offers) {
            const moves = ledgers[Number(lengthId)]!
            const promised = [...moves, reserve(moves, { day, garmentId: 'tunic', mm: takes })]
            expect(() => cut(promised, { day, garmentId: 'tunic', mm: takes })).not.toThrow()
            // Washed as the book says, what was promised is what the garment needs.
            const { length, washed } = lengths[Number(lengthId)]!
            if (washed) continue
            const now = { day, mm: length * 0.94, width: 1455, washed: true }
            const { reservedFor } = clothLength({ id: '', clothId: '' }, [
              ...promised,
              measure(promised, now),
            ])
            const mine = reservedFor.find(({ garmentId }) => garmentId === 'tunic')!.mm
            expect(mine).toBeGreaterThan(lengthNeeded(needFor(wanted), { washed: true }) - 0.05)
          }
        },
      ),
      { numRuns: 1000 },
    )
  })
})
