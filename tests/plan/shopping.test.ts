import { describe, expect, test } from 'vitest'
import { cut, measure } from '../../core/plan/stock/acts.ts'
import { lengthNeeded, UNWASHED } from '../../core/plan/stock/need.ts'
import type { Move } from '../../core/plan/stock/types.ts'
import { refused } from '../support/refused.ts'
import { ARTICLES, came, day, lying, need, promised, SUPPLIERS, shop } from './open-work.ts'

describe('the shopping list', () => {
  test('is by supplier, each thing with the last day to order it', () => {
    const { suppliers, fromStock } = shop({
      cloths: [
        { need: need('tunic', 'linen', 2000), day: '2026-12-10' },
        { need: need('shift', 'linen', 1000), day: '2026-12-01' },
        { need: need('cloak', 'wool', 4000), day: '2027-01-10' },
      ],
      smalls: [
        { articleId: 'silk', garmentId: 'tunic', amount: 160, day: '2026-12-10' },
        { articleId: 'silk', garmentId: 'shift', amount: 90, day: '2026-12-01' },
        { articleId: 'buttons', garmentId: 'cloak', amount: 12, day: null },
      ],
      left: new Map([
        ['silk', 120],
        ['buttons', 2],
      ]),
    })
    expect(fromStock).toEqual([])
    const lines = suppliers.map(({ supplier, orderBy, items }) => [
      ...[supplier?.id, orderBy],
      ...items.map(({ article, missing, buy, steps, orderBy: by }) => [article.id, missing, buy, steps, by]),
    ])
    expect(lines).toEqual([
      // 2040 ÷ 0.94 and 1020 ÷ 0.94 are 2170.22 and 1085.11; five days before 1 December. The first garment has its
      // silk: 120 m less 90 m leave 30 m, and 130 m are missing for the second, in two reels.
      [
        'draper',
        '2026-11-26',
        ['linen', 3255.33, 3300, 33, '2026-11-26'],
        ['silk', 130, 200, 2, '2026-12-05'],
      ],
      // 4080 ÷ 0.94 = 4340.43, in yards of 914.4 mm five; six weeks before 10 January.
      ['weaver', '2026-11-29', ['wool', 4340.43, 4572, 5, '2026-11-29']],
      [undefined, null, ['buttons', 10, 10, 10, null]],
    ])
  })

  test('leaves out what is promised, cut, or free in one piece, and counts nothing twice', () => {
    const tunic = { need: need('tunic', 'linen', 2000), day: '2026-12-10' }
    const shift = { need: need('shift', 'linen', 2000), day: '2026-12-01' }
    const free = lying('a', 'linen', came(2200))
    expect(shop({ cloths: [tunic], lengths: [free] })).toEqual({
      suppliers: [],
      fromStock: [{ lengthId: 'a', garmentId: 'tunic', mm: 2170.22 }],
    })
    // The shift is needed first and has it; then there is none for the tunic.
    const both = shop({ cloths: [tunic, shift], lengths: [free] })
    expect(both.fromStock).toMatchObject([{ garmentId: 'shift' }])
    expect(both.suppliers[0]!.items[0]!.garments).toEqual([
      { garmentId: 'tunic', missing: 2170.22, day: '2026-12-10' },
    ])
    const held = lying('a', 'linen', promised(came(2200), 'tunic', 2170.22))
    expect(shop({ cloths: [tunic], lengths: [held] })).toEqual({ suppliers: [], fromStock: [] })
  })

  test('lists what a washing took beyond the margin, and not what the margin covers', () => {
    const before = promised(came(2200), 'tunic', 2170.22)
    const washedTo = (mm: number) =>
      lying('a', 'linen', [...before, measure(before, { day, mm, width: 1455, washed: true })])
    const cloths = [{ need: need('tunic', 'linen', 2000), day: null }]
    expect(shop({ cloths, lengths: [washedTo(2060)] }).suppliers).toEqual([])
    // Of 2000 mm left the tunic has 1972.92: 67.08 mm are missing, and 71.37 unwashed.
    expect(shop({ cloths, lengths: [washedTo(2000)] }).suppliers[0]!.items[0]).toMatchObject({
      missing: 71.37,
      buy: 100,
    })
  })

  test('counts what is cut already, as the cloth lay when it was cut', () => {
    const cutFrom = (mm: number, washed: boolean) => {
      const moves = promised(came(2200, washed), 'tunic', mm)
      return [...moves, cut(moves, { day, garmentId: 'tunic', mm })]
    }
    const cloths = [{ need: need('tunic', 'linen', 2000), day: null }]
    const missing = (moves: readonly Move[]) =>
      shop({ cloths, lengths: [lying('a', 'linen', moves)] }).suppliers[0]?.items[0]?.missing
    expect(missing(cutFrom(2000, true))).toBeUndefined()
    expect(missing(cutFrom(2171, false))).toBeUndefined()
    // 2050 mm cut unwashed are 1927 mm of the tunic; of its 2040 mm 113 are missing, which are 120.22 unwashed. What
    // becomes of the rest of the length changes nothing of that.
    const unwashed = cutFrom(2050, false)
    const washed = { day, mm: 110, width: 1455, washed: true }
    expect(missing([...unwashed, measure(unwashed, washed)])).toBe(120.22)
    // 113 mm of washed cloth would do, and are promised instead of bought.
    expect(missing([...unwashed, measure(unwashed, { ...washed, mm: 113 })])).toBeUndefined()
  })

  test('counts what is promised to a garment once, though it needs the cloth twice', () => {
    const cloths = ['outside', 'lining'].map(() => ({ need: need('hood', 'linen', 1000), day: null }))
    const lengths = [lying('a', 'linen', promised(came(1085.11), 'hood', 1085.11))]
    expect(shop({ cloths, lengths }).suppliers[0]!.items[0]).toMatchObject({ missing: 1085.11, buy: 1100 })
  })

  test('of a supplier or a shop that cannot be is refused', () => {
    const cloths = [{ need: need('tunic', 'linen', 2000), day }]
    const late = SUPPLIERS.map((one) => ({ ...one, leadDays: 1.5 }))
    expect(refused(() => shop({ cloths, suppliers: late })).field).toBe('leadDays')
    const free = ARTICLES.map((one) => ({ ...one, step: 0 }))
    expect(refused(() => shop({ cloths, articles: free })).field).toBe('step')
    expect(() => shop({ cloths, articles: [] })).toThrow('nobody sells')
  })
})

test('what is missing is unwashed cloth', () => {
  const cloth = need('hood', 'linen', 500, 100)
  const [draper] = shop({ cloths: [{ need: cloth, day }] }).suppliers
  expect(draper!.items[0]!.missing).toBe(lengthNeeded(cloth, UNWASHED))
})
