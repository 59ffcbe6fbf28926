import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { alternativesOf } from '../../core/price/alternatives.ts'
import { attendanceOf } from '../../core/price/attendance.ts'
import { earningOf, leftOf, perHour } from '../../core/price/earning.ts'
import { cutOf, estimate, type Habits, type Wanted } from '../../core/price/estimate.ts'
import { DEFAULT_RATES } from '../../core/price/parameters.ts'
import { minutesOf } from '../../core/sew/minutes.ts'
import { USUAL_WAYS } from '../../core/sew/parameters.ts'
import { money } from '../../core/words/money.ts'
import { DEFAULT_SETTINGS } from '../../core/workroom/default-settings.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { chance } from '../support/chance.ts'

const gbp = (minor: number) => money(minor, 'GBP')
const terms = { overheadPerHour: gbp(600), targetPerHour: gbp(1400) }
const { buying, threadRules, threadStock, rates } = DEFAULT_SETTINGS
const habits: Habits = { unit: 'mm', buying, threadRules, threadStock, rates }
const cloth = {
  ...{ name: 'linen', width: 1500, selvedge: 0, warpShrinkage: 0.05, weftShrinkage: 0.03 },
  ...{ rightSide: false, nap: false, thickness: 0.4, increment: 100, pricePerMetre: gbp(1650) },
}
const wanted: Wanted = {
  ...{ construction: 'goredUndertunic', body: bodyOf(WOMAN), choices: {}, cloth },
  finishPlan: 'machineWhereHidden',
}

describe('what a price earns', () => {
  // A price of 25, materials 5, overhead 2 in all, 3 h: 18 are left, 6 an hour.
  test('an hour is what materials and workroom costs leave, over the hours', () => {
    const left = leftOf(gbp(2500), gbp(500), 180, gbp(67))
    expect(left.minor).toBe(2500 - 500 - 201)
    expect(perHour(left, 180).minor).toBe(Math.round(1799 / 3))
    expect(perHour(left, 0).minor).toBe(0)
  })

  // Drawn 40 000 times from the log-normal distribution of the same mean and spread.
  test('the floor earns the target four times in five, and the odds at any price are those of drawing it', () => {
    const hours = minutesOf(900, 260)
    const sigma = Math.sqrt(Math.log(1 + (260 / 900) ** 2))
    const draw = chance(11)
    const drawn = Array.from({ length: 40_000 }, () => hours.p50 * Math.exp(sigma * draw.normal()))
    const under = (net: number) =>
      drawn.filter((minutes) => ((net - 6000) / minutes) * 60 - 600 < 1400).length / drawn.length
    const { floor } = earningOf(gbp(0), gbp(6000), hours, terms)
    expect(under(floor.minor)).toBeCloseTo(0.2, 2)
    for (const net of [25_000, 36_000, 45_000])
      expect(earningOf(gbp(net), gbp(6000), hours, terms).under).toBeCloseTo(under(net), 1.5)
  })

  test('the odds fall as the price rises, and the floor rises with target and hours', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200_000 }),
        fc.integer({ min: 0, max: 50_000 }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 0.8, noNaN: true }),
        (net, more, mean, spread) => {
          const hours = minutesOf(mean, mean * spread)
          const at = (price: number) => earningOf(gbp(price), gbp(3000), hours, terms)
          expect(at(net + more).under).toBeLessThanOrEqual(at(net).under + 1e-9)
          expect(at(net).under).toBeGreaterThanOrEqual(0)
          expect(at(net).under).toBeLessThanOrEqual(1)
          expect(at(at(net).floor.minor).under).toBeLessThanOrEqual(0.2 + 1e-9)
          const higher = { ...terms, targetPerHour: gbp(1500) }
          expect(earningOf(gbp(net), gbp(3000), hours, higher).floor.minor).toBeGreaterThanOrEqual(
            at(net).floor.minor,
          )
          expect(Number.isSafeInteger(at(net).floor.minor)).toBe(true)
        },
      ),
    )
  })
})

describe('the hours around a garment', () => {
  test('are shared among the garments of an order, all but what is put right on each', () => {
    const alone = attendanceOf(1, false, USUAL_WAYS)
    const third = attendanceOf(3, false, USUAL_WAYS)
    expect(alone).toEqual({ consult: 45, source: 30, office: 30, putRight: 20 })
    expect(third).toEqual({ consult: 15, source: 10, office: 10, putRight: 20 })
    expect(attendanceOf(1, true, USUAL_WAYS).consult!).toBeLessThan(alone.consult!)
    expect(attendanceOf(1, false, { minutes: { consult: 0 } }).consult).toBe(0)
  })

  test('are in the price, and in the hours its odds are reckoned from', () => {
    const one = estimate(wanted, habits)
    const many = estimate({ ...wanted, garments: 5 }, habits)
    expect(one.price.total.minor).toBeGreaterThan(many.price.total.minor)
    expect(one.price.earning!.hours.mean).toBeCloseTo(one.sewing.total.mean + one.attendance!.total.mean, 6)
    expect(one.attendance!.total.mean).toBeCloseTo(125, 6)
  })
})

describe('cloth', () => {
  const clothLine = (asked: Wanted) => estimate(asked, habits).price.lines[0]!

  test('is charged as bought, or as used of a length in stock', () => {
    const { purchase } = cutOf(wanted, habits)
    expect(clothLine(wanted).amount.minor).toBe(Math.round((1650 * purchase.toBuy) / 1000))
    const used = clothLine({ ...wanted, cloth: { ...cloth, charged: 'used' } })
    expect(used.amount.minor).toBe(Math.round((1650 * Math.round(purchase.needed * 100)) / 100_000))
    expect(used.amount.minor).toBeLessThan(clothLine(wanted).amount.minor)
  })

  test('that the customer brings costs nothing, and is held against what is needed', () => {
    const { needed } = cutOf(wanted, habits).purchase
    const enough = estimate({ ...wanted, brought: needed + 1 }, habits)
    expect(enough.price.lines[0]!.amount.minor).toBe(0)
    expect(enough.brought).toEqual({ length: needed + 1, needed, enough: true })
    expect(estimate({ ...wanted, brought: needed - 1 }, habits).brought!.enough).toBe(false)
  })
})

describe('what is agreed', () => {
  const priced = (price: Wanted['price'], of: Wanted = wanted) => estimate({ ...of, price }, habits).price

  test('puts a part on top for haste, then takes a part off, each as a line', () => {
    const plain = priced({})
    const usual = plain.cost.minor + plain.profit.minor
    const { lines } = priced({ rush: 2000, discount: 1000 })
    const amount = (kind: string) => lines.find((line) => line.kind === kind)!.amount.minor
    expect(amount('rush')).toBe(Math.round(usual * 0.2))
    expect(amount('discount')).toBe(-Math.round((usual + amount('rush')) * 0.1))
    expect(plain.lines.some(({ kind }) => kind === 'rush' || kind === 'discount')).toBe(false)
  })

  test('lets her set the price, and says what that earns', () => {
    const set = priced({ set: gbp(20_000) })
    expect(set.net.minor).toBe(20_000)
    expect(set.lines.some(({ kind }) => kind === 'set')).toBe(true)
    expect(set.lines.some(({ kind }) => kind === 'rounding')).toBe(false)
    expect(set.earnedPerHour.minor).toBeLessThan(priced({}).earnedPerHour.minor)
    expect(set.earning!.under).toBeGreaterThan(priced({}).earning!.under)
    expect(set.lines.reduce((sum, { amount }) => sum + amount.minor, 0)).toBe(set.total.minor)
  })

  test('may tax one garment otherwise', () => {
    const price = priced({ tax: 500, set: gbp(10_000) })
    expect(price.tax.minor).toBe(500)
    expect(DEFAULT_RATES.tax.basisPoints).toBe(0)
  })
})

describe('the alternatives', () => {
  const linen = { ...cloth, name: 'narrow linen', width: 900 }
  const cloak: Wanted = { ...wanted, construction: 'circleCloak', choices: { lined: false } }

  test('are the other ways of sewing, the other cloths, and the lining put in or left out', () => {
    const found = alternativesOf(cloak, [{ id: 'narrow', cloth: linen }], habits)
    expect(found.map(({ change }) => change)).toEqual([
      {},
      { finishPlan: 'allByHand' },
      { finishPlan: 'allByMachine' },
      { clothId: 'narrow' },
      { lined: true },
    ])
  })

  test('are each what an estimate of it alone would be', () => {
    for (const { change, estimate: found } of alternativesOf(
      cloak,
      [{ id: 'narrow', cloth: linen }],
      habits,
    )) {
      const alone = estimate(
        {
          ...cloak,
          ...(change.finishPlan === undefined ? {} : { finishPlan: change.finishPlan }),
          ...(change.clothId === undefined ? {} : { cloth: linen }),
          ...(change.lined === undefined ? {} : { choices: { lined: change.lined } }),
        },
        habits,
      )
      expect(found!.price).toEqual(alone.price)
      expect(found!.purchase).toEqual(alone.purchase)
    }
  })

  test('that cannot be cut say why and leave the others', () => {
    const found = alternativesOf(wanted, [{ id: 'ribbon', cloth: { ...cloth, width: 60 } }], habits)
    expect(found.filter(({ refused }) => refused !== undefined)).toHaveLength(1)
    expect(found.filter(({ estimate: one }) => one !== undefined)).toHaveLength(3)
  })
})
