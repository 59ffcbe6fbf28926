import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { bestPlaces } from '../../core/lay/best-lay.ts'
import { assertCuttable, faultsOfLay } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { layOf } from '../../core/lay/lay-of.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { type LayOrder, PLAIN_ORDER, type Placement } from '../../core/lay/types.ts'
import { searchStart, wishedLay } from '../../core/lay/wished-lay.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { cornered, plainCloth, rectangle, someParts } from '../support/cloth.ts'
import { refused } from '../support/refused.ts'

const RULES = { cuttingGap: 0 }
const order = (more: Partial<LayOrder>): LayOrder => ({ ...PLAIN_ORDER, ...more })
const hood = (copies: number, mirrored: boolean) =>
  cornered(
    'hood',
    [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 200 },
      { x: 200, y: 200 },
      { x: 200, y: 400 },
      { x: 0, y: 400 },
    ],
    copies,
    { mirrored },
  )

describe('doubled cloth', () => {
  test('is cut two at a time: a lay that is its own mirror image about the fold', () => {
    const pieces = [hood(2, true)]
    const cloth = plainCloth(800, { rightSide: true })
    const lay = firstLay(pieces, cloth, RULES, order({ manner: 'doubled' }))
    expect(assertCuttable(lay, pieces, cloth).manner).toBe('doubled')
    const [one, two] = lay.placements as [Placement, Placement]
    expect(one.x + two.x).toBeCloseTo(800, 9)
    expect([one.y, one.flipped]).toEqual([two.y, !two.flipped])
  })

  test('takes an odd symmetric piece on the fold', () => {
    const pieces = [rectangle('back', 500, 400, 1)]
    const lay = firstLay(pieces, plainCloth(600), RULES, order({ manner: 'doubled' }))
    expect(lay.placements[0]!.x).toBeCloseTo(50, 9)
    expect(lay.length).toBeCloseTo(400, 9)
  })

  test('spends both layers on an odd piece that is not symmetric', () => {
    const pieces = [hood(1, false)]
    const lay = firstLay(pieces, plainCloth(700), RULES, order({ manner: 'doubled' }))
    expect(lay.placements.length).toBe(1)
    expect(lay.offcuts[0]!.width).toBeGreaterThan(300)
  })

  test('refuses what is wider than half the cloth and cannot lie on the fold', () => {
    const { sentence, field } = refused(() =>
      firstLay([hood(2, true)], plainCloth(500), RULES, order({ manner: 'doubled' })),
    )
    expect(field).toBe('width')
    expect(sentence).toContain('folded in half')
  })

  test('makes lays that can be cut, whatever the pieces', () => {
    fc.assert(
      fc.property(someParts, fc.boolean(), fc.boolean(), (pieces, rightSide, nap) => {
        const cloth = plainCloth(1300, { rightSide, nap })
        const lay = firstLay(pieces, cloth, RULES, order({ manner: 'doubled' }))
        expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

describe('a torn lay', () => {
  test('keeps every piece within one band between two tears', () => {
    fc.assert(
      fc.property(someParts, (pieces) => {
        const cloth = plainCloth(900)
        const lay = firstLay(pieces, cloth, RULES, order({ manner: 'torn' }))
        expect(lay.tears!.at(-1)).toBeCloseTo(lay.length, 6)
        expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
        // The check of tears can fail: one through the middle of a band is found.
        const across = { ...lay, tears: [lay.tears![0]! / 2] }
        expect(faultsOfLay(across, pieces, cloth).map(({ kind }) => kind)).toContain('torn')
      }),
      { numRuns: 60 },
    )
  })

  test('is found again and again in other orders, and never gets longer', () => {
    const { pieces } = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
    const cloth = plainCloth(1450)
    const { layable, start } = searchStart(pieces, cloth, DEFAULT_BUYING, order({ manner: 'torn' }))
    const spent = (sweeps: number) => sweeps / 40
    const { places } = bestPlaces(layable.strip, 'torn', start, { spent }, 1, { found: () => {} })
    expect(places.length).toBeLessThanOrEqual(start.length)
    assertCuttable(layOf(pieces, layable, places), pieces, cloth)
  })
})

describe('what lies fixed', () => {
  const pieces = [rectangle('a', 300, 400, 3)]
  const cloth = plainCloth(1000)

  test('a flaw in the cloth is left bare', () => {
    const flaws = [{ x: 250, y: 100, width: 100, height: 50 }]
    const lay = firstLay(pieces, cloth, RULES, order({ flaws }))
    expect(faultsOfLay(lay, pieces, cloth, { quantity: 1, flaws })).toEqual([])
    expect(lay.flaws).toEqual(flaws)
    const blind = firstLay(pieces, cloth, RULES)
    expect(faultsOfLay(blind, pieces, cloth, { quantity: 1, flaws }).map(({ kind }) => kind)).toContain(
      'flaw',
    )
  })

  test('a copy laid by hand stays, and the others are laid around it', () => {
    const locked: Placement = { piece: 'a', copy: 'a1', x: 350, y: 20, angle: 0, flipped: false }
    const lay = firstLay(pieces, cloth, RULES, order({ locked: [locked] }))
    expect(lay.placements.find(({ copy }) => copy === 'a1')).toEqual(locked)
    expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
    const { layable, start } = searchStart(pieces, cloth, RULES, order({ locked: [locked] }))
    const spent = (sweeps: number) => sweeps / 50
    const { places } = bestPlaces(layable.strip, 'single', start, { spent }, 1, { found: () => {} })
    const found = layOf(pieces, layable, places)
    expect(found.placements.find(({ copy }) => copy === 'a1')).toEqual(locked)
    expect(faultsOfLay(found, pieces, cloth)).toEqual([])
  })

  test('a search goes on from copies laid by hand', () => {
    const row = (copy: string, x: number, y: number): Placement => ({
      ...{ piece: 'a', copy, x, y, angle: 0, flipped: false },
    })
    // Longer than the first lay, but hers: nothing in it is nearer the cut end than she put it.
    const placements = [row('a0', 0, 0), row('a1', 0, 500), row('a2', 100, 1000)]
    const { layable, start } = searchStart(pieces, cloth, RULES, { ...order({}), placements })
    const laid = layOf(pieces, layable, start)
    expect(laid.placements).toEqual(placements)
    expect(laid.length).toBe(1400)
    const over = [row('a0', 0, 0), row('a1', 0, 200), row('a2', 400, 0)]
    const other = searchStart(pieces, cloth, RULES, { ...order({}), placements: over })
    expect(other.start.length).toBe(400)
  })

  test('a copy locked beyond the cloth, or turned as it may not be, is refused', () => {
    const at = (more: Partial<Placement>): Placement => ({
      ...{ piece: 'a', copy: 'a1', x: 0, y: 0, angle: 0, flipped: false, ...more },
    })
    const sentence = (more: Partial<Placement>) =>
      refused(() => firstLay(pieces, cloth, RULES, order({ locked: [at(more)] }))).sentence
    expect(sentence({ x: 800 })).toContain('beyond the cloth')
    expect(sentence({ angle: 90 })).toContain('may not lie')
  })
})

describe('a lay given by its places', () => {
  const pieces = [hood(2, true)]
  const cloth = plainCloth(900, { rightSide: true })

  test('comes out as it was found', () => {
    for (const manner of ['single', 'doubled', 'torn'] as const) {
      const lay = firstLay(pieces, cloth, RULES, order({ manner }))
      const { placements, tears } = lay
      const again = wishedLay(pieces, cloth, RULES, { ...order({ manner }), placements, tears })
      expect(again.placements).toEqual(placements)
      expect(again.length).toBeCloseTo(lay.length, 9)
      expect(again.manner).toBe(lay.manner)
    }
  })

  test('is refused when a copy is missing, doubled, unknown or lies over another', () => {
    const pieces = [rectangle('panel', 300, 400, 2)]
    const { placements } = firstLay(pieces, cloth, RULES)
    const [one, two] = placements as [Placement, Placement]
    for (const spoilt of [
      [one],
      [one, one],
      [one, { ...two, copy: 'other' }],
      [one, { ...two, x: two.x - 30 }],
    ]) {
      expect(() => wishedLay(pieces, cloth, RULES, { ...PLAIN_ORDER, placements: spoilt })).toThrow('stale')
    }
  })
})

describe('a piece on the bias', () => {
  test('lies at half a quarter turn', () => {
    const pieces = [rectangle('binding', 40, 400, 2, { grain: 'bias' })]
    const cloth = plainCloth(600)
    const lay = firstLay(pieces, cloth, RULES)
    expect(lay.placements.every(({ angle }) => angle % 90 === 45)).toBe(true)
    expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
    const straight = lay.placements.map((placement) => ({ ...placement, angle: 0 as const }))
    expect(faultsOfLay({ ...lay, placements: straight }, pieces, cloth).map(({ kind }) => kind)).toContain(
      'angle',
    )
  })
})
