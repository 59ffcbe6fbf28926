import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { usableWidth } from '../../core/lay/cloth.ts'
import { purchaseOf, shorterForAStep } from '../../core/lay/purchase.ts'

const CLOTH = {
  width: 1500,
  selvedge: 0,
  warpShrinkage: 0,
  weftShrinkage: 0,
  rightSide: false,
  nap: false,
  thickness: 0.4,
  increment: 1,
}
const BARE = { endAllowance: 0, squaring: 0, testStrip: 0, margin: 0, cuttingGap: 0 }

describe('cloth to buy', () => {
  // Dimensional change is reckoned on the length before washing (AATCC 135, ISO 5077), so it is divided by.
  test('100 cm at 6 % shrinkage is 106.38 cm, and not 106', () => {
    expect(purchaseOf({ length: 1000 }, { ...CLOTH, warpShrinkage: 0.06 }, BARE).needed).toBeCloseTo(
      1063.83,
      2,
    )
  })

  test('5 m bought at 6 % are 4.70 m washed', () => {
    expect(purchaseOf({ length: 4700 }, { ...CLOTH, warpShrinkage: 0.06 }, BARE).needed).toBeCloseTo(5000, 6)
  })

  test('150 cm of cloth at 3 % across is 145.5 cm to lay on, less its selvedges', () => {
    expect(usableWidth({ ...CLOTH, weftShrinkage: 0.03 })).toBeCloseTo(1455, 9)
    expect(usableWidth({ ...CLOTH, weftShrinkage: 0.03, selvedge: 10 })).toBeCloseTo(1480 * 0.97, 9)
  })

  test('is rounded up to the shop’s step, and a step that is met is not passed', () => {
    const buy = (length: number, increment = 100) =>
      purchaseOf({ length }, { ...CLOTH, increment }, BARE).toBuy
    expect([buy(3000), buy(3000.0000001), buy(3000.01), buy(2999.99)]).toEqual([3000, 3000, 3100, 3000])
    expect(buy(0.3 * 3, 0.3)).toBeCloseTo(0.9, 9)
    expect(buy(1000, 914.4)).toBeCloseTo(1828.8, 9)
  })

  test('is never less than the need, which is the sum of what is named', () => {
    const any = (max: number) => fc.double({ min: 0, max, noNaN: true })
    fc.assert(
      fc.property(
        any(20_000),
        any(0.4),
        any(200),
        any(0.2),
        fc.constantFrom(1, 50, 100, 250, 914.4),
        (length, shrink, extra, margin, increment) => {
          const rules = {
            endAllowance: extra,
            squaring: extra / 2,
            testStrip: extra / 3,
            margin,
            cuttingGap: 0,
          }
          const bought = purchaseOf({ length }, { ...CLOTH, warpShrinkage: shrink, increment }, rules)
          const {
            layLength,
            endAllowance,
            squaring,
            testStrip,
            shrinkage,
            margin: over,
            needed,
            toBuy,
          } = bought
          expect(needed).toBeCloseTo(layLength + endAllowance + squaring + testStrip + shrinkage + over, 6)
          expect(toBuy).toBeGreaterThanOrEqual(needed - 1e-6)
          expect(toBuy - needed).toBeLessThan(increment + 1e-6)
          // So much shorter, and a step less is bought; a millimetre longer than that, and it is not.
          const less = shorterForAStep(bought, increment)
          fc.pre(less > 1e-3 && less < length - 1)
          const cloth = { ...CLOTH, warpShrinkage: shrink, increment }
          const buys = (shorter: number) => purchaseOf({ length: length - shorter }, cloth, rules).toBuy
          expect(buys(less + 1e-4)).toBeLessThanOrEqual(toBuy - increment + 1e-6)
          expect(buys(less - 1e-4)).toBeCloseTo(toBuy, 6)
          expect((needed / (1 + margin)) * (1 - shrink)).toBeCloseTo(
            length + endAllowance + squaring + testStrip,
            6,
          )
        },
      ),
    )
  })
})
