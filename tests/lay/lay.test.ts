import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { makePiece, straightSides } from '../../core/draft/pieces.ts'
import { straightEdgeGore } from '../../core/draft/shapes/gore.ts'
import type { Piece } from '../../core/draft/types.ts'
import { signedArea } from '../../core/geometry/path.ts'
import { assertCuttable, faultsOfLay } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { type Cloth, type Lay, PLAIN_ORDER } from '../../core/lay/types.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { MM_PER } from '../../core/words/units.ts'
import { bodyOf, someBody, WOMAN } from '../support/bodies.ts'
import { refused } from '../support/refused.ts'

const LINEN: Cloth = {
  width: 1500,
  selvedge: 10,
  warpShrinkage: 0.05,
  weftShrinkage: 0.03,
  rightSide: false,
  nap: false,
  thickness: 0.4,
  increment: 100,
}
const named = { code: 'draft.piece.gore' } as const
const rest = (id: string, copies: number, mirrored = false) => ({
  id,
  name: named,
  copies: Array.from({ length: copies }, (_, i) => ({
    id: `${id}${i}`,
    name: named,
    mirrored: mirrored && i % 2 === 1,
  })),
  grain: 'straight' as const,
  turn: [0, 180] as const,
  cloth: 'main' as const,
  sizes: [],
})
const panel = (
  id: string,
  top: number,
  bottom: number,
  height: number,
  copies: number,
  allowance = 0,
): Piece =>
  makePiece(rest(id, copies), {
    sides: straightSides(
      [
        { x: -bottom / 2, y: 0 },
        { x: bottom / 2, y: 0 },
        { x: top / 2, y: height },
        { x: -top / 2, y: height },
      ],
      ['a', 'b', 'c', 'd'].map((side) => ({ id: side, allowance })),
    ),
  })
const gore = (id: string, radius: number, angle: number, copies: number, allowance = 0): Piece => {
  const { hem, right, left } = straightEdgeGore(radius, angle)
  return makePiece(rest(id, copies, true), {
    sides: [
      { id: 'hem', path: hem, allowance },
      { id: 'right', path: right, allowance },
      { id: 'left', path: left, allowance },
    ],
  })
}
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const somePieces = fc
  .array(
    fc.oneof(
      fc
        .tuple(size(40, 600), size(40, 600), size(40, 1200), fc.integer({ min: 1, max: 4 }))
        .map((of) => (i: number) => panel(`p${i}`, of[0], of[1], of[2], of[3], 6)),
      fc
        .tuple(size(150, 900), size(0.1, 0.8), fc.integer({ min: 1, max: 4 }))
        .map((of) => (i: number) => gore(`g${i}`, of[0], of[1], of[2], 10)),
    ),
    { minLength: 1, maxLength: 5 },
  )
  .map((make) => make.map((one, i) => one(i)))
const areaOf = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { cut, copies }) => sum + copies.length * signedArea(cut), 0)

describe('the first lay', () => {
  test('is one that an independent check passes, whatever the pieces and the cloth', () => {
    fc.assert(
      fc.property(
        somePieces,
        size(700, 1600),
        fc.boolean(),
        fc.boolean(),
        (pieces, width, rightSide, nap) => {
          const cloth = { ...LINEN, width, rightSide, nap, selvedge: 0, weftShrinkage: 0 }
          const lay = firstLay(pieces, cloth, DEFAULT_BUYING)
          expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
          expect(lay.length * lay.usableWidth).toBeGreaterThanOrEqual(areaOf(pieces) - 1)
          expect(lay.used).toBeCloseTo(areaOf(pieces) / (lay.length * lay.usableWidth), 9)
        },
      ),
      { numRuns: 250 },
    )
  })

  test('lays tunics of all bodies, on wide cloth and on narrow', () => {
    fc.assert(
      fc.property(
        someBody,
        fc.constantFrom(914.4, 1143, 1500),
        fc.constantFrom(2, 4, 6, 8),
        (body, width, gores) => {
          const cloth = { ...LINEN, width }
          const laid = () => {
            const { pieces } = goredUndertunic.draft(body, { gores }, 'mm')
            return faultsOfLay(firstLay(pieces, cloth, DEFAULT_BUYING), pieces, cloth)
          }
          try {
            expect(laid()).toEqual([])
          } catch (error) {
            if (!(error instanceof Refusal)) throw error
            // A small child's front may leave no room for a neck slit above a centre gore.
            const may =
              gores > 4 ? ['refusal.lay.tooNarrow', 'refusal.draft.slitTooLong'] : ['refusal.lay.tooNarrow']
            expect(may).toContain(error.phrase.code)
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  test('uses cloth within reason: four fifths of it for a tunic on 150 cm', () => {
    const { pieces } = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
    const lay = firstLay(pieces, LINEN, DEFAULT_BUYING)
    expect(lay.used).toBeGreaterThan(0.78)
  })

  test('fits rectangles that fill the cloth exactly without a millimetre lost', () => {
    const lay = firstLay(
      [panel('half', 500, 500, 300, 6)],
      { ...LINEN, width: 1000, selvedge: 0, weftShrinkage: 0 },
      DEFAULT_BUYING,
    )
    expect(lay.length).toBeCloseTo(900, 6)
    expect(lay.used).toBeCloseTo(1, 9)
    expect(lay.offcuts).toEqual([])
  })

  test('puts gores head to tail', () => {
    const pieces = [gore('gore', 800, 0.35, 4)]
    const lay = firstLay(pieces, { ...LINEN, width: 700, selvedge: 0, weftShrinkage: 0 }, { cuttingGap: 0 })
    expect(lay.length).toBeLessThan(1000)
  })

  // The Workwoman's Guide (1838), infants' open shirts, 24 small ones on linen of 15 nails: bodies 5 × 10 nl
  // three to the breadth, sleeves 1¼ × 2½; the book cuts them from 93 nails.
  test('cuts the two dozen infants’ shirts of 1838 from no more linen than the book', () => {
    const nl = MM_PER.nl
    const pieces = [
      panel('body', 5 * nl, 5 * nl, 10 * nl, 24),
      panel('sleeve', 1.25 * nl, 1.25 * nl, 2.5 * nl, 48),
    ]
    const cloth = { ...LINEN, width: 15 * nl, selvedge: 0, weftShrinkage: 0 }
    const lay = firstLay(pieces, cloth, { cuttingGap: 0 })
    expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
    expect(lay.length / nl).toBeLessThanOrEqual(93)
    expect(lay.length / nl).toBeGreaterThanOrEqual((24 * 50 + 48 * 1.25 * 2.5) / 15)
  })

  test('is the same every time', () => {
    const { pieces } = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
    expect(firstLay(pieces, LINEN, DEFAULT_BUYING)).toEqual(firstLay(pieces, LINEN, DEFAULT_BUYING))
  })

  test('lays a quantity as that many of every copy', () => {
    const pieces = [panel('a', 300, 300, 400, 2)]
    const lay = firstLay(pieces, LINEN, DEFAULT_BUYING, { ...PLAIN_ORDER, quantity: 3 })
    expect(lay.placements.map(({ copy }) => copy).sort()).toEqual([
      'a0',
      'a0@2',
      'a0@3',
      'a1',
      'a1@2',
      'a1@3',
    ])
    expect(faultsOfLay(lay, pieces, LINEN, { quantity: 3, flaws: [] })).toEqual([])
  })

  test('leaves offcuts that no piece reaches into and none of which overlap', () => {
    fc.assert(
      fc.property(somePieces, (pieces) => {
        const cloth = { ...LINEN, selvedge: 0, weftShrinkage: 0 }
        const lay = firstLay(pieces, cloth, DEFAULT_BUYING)
        const copies = lay.placements.length
        // Each offcut is laid down as one more piece: the check must still pass.
        const filled = lay.offcuts.map(({ width, height }, i) => panel(`offcut${i}`, width, width, height, 1))
        const placements = lay.offcuts.map(({ x, y, width }, i) => ({
          ...{ piece: `offcut${i}`, copy: `offcut${i}0`, angle: 0 as const, flipped: false },
          ...{ x: x + width / 2, y },
        }))
        const whole: Lay = { ...lay, placements: [...lay.placements, ...placements] }
        expect(faultsOfLay(whole, [...pieces, ...filled], cloth)).toEqual([])
        expect(whole.placements.length).toBe(copies + lay.offcuts.length)
      }),
      { numRuns: 60 },
    )
  })

  test('refuses a body cut in one over the shoulder on cloth with a nap', () => {
    const { pieces } = goredUndertunic.draft(bodyOf(WOMAN), { shoulder: 'cutInOne' }, 'mm')
    expect(faultsOfLay(firstLay(pieces, LINEN, DEFAULT_BUYING), pieces, LINEN)).toEqual([])
    const refusal = refused(() => firstLay(pieces, { ...LINEN, nap: true }, DEFAULT_BUYING))
    expect(refusal).toMatchObject({
      field: 'nap',
      sentence: expect.stringContaining('Choose a shoulder seam'),
    })
  })

  test('refuses a piece wider than the cloth, and cloth that cannot be', () => {
    const wide = [panel('wide', 900, 900, 300, 1)]
    const refusal = refused(() => firstLay(wide, { ...LINEN, width: 900 }, DEFAULT_BUYING))
    expect(refusal.sentence).toContain('90 cm wide with its allowances, and the cloth only 85.3 cm')
    for (const [field, value] of [
      ['width', 0],
      ['width', -100],
      ['width', Number.NaN],
      ['width', 1e9],
      ['selvedge', 800],
      ['warpShrinkage', 1],
      ['weftShrinkage', -0.1],
      ['increment', 0],
      ['thickness', 0],
    ] as const) {
      const found = refused(() => firstLay(wide, { ...LINEN, [field]: value }, DEFAULT_BUYING))
      expect(found.field).toBe(field)
      expect(found.sentence).toMatch(/\.$/)
    }
  })
})

describe('the check of a lay', () => {
  const { pieces } = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
  const cloth = { ...LINEN, rightSide: true }
  const sound = firstLay(pieces, cloth, DEFAULT_BUYING)
  const kinds = (spoil: (lay: Lay) => void, on = cloth) => {
    const lay = structuredClone(sound)
    spoil(lay)
    return [...new Set(faultsOfLay(lay, pieces, on).map(({ kind }) => kind))]
  }

  test('passes a sound lay', () => {
    expect(faultsOfLay(sound, pieces, cloth)).toEqual([])
    expect(assertCuttable(sound, pieces, cloth)).toBe(sound)
  })

  test('finds every kind of fault that is planted', () => {
    expect(
      kinds((lay) => {
        lay.placements[0]!.x = lay.placements[1]!.x
        lay.placements[0]!.y = lay.placements[1]!.y
      }),
    ).toContain('overlap')
    expect(
      kinds((lay) => {
        lay.placements[0]!.x -= 2000
      }),
    ).toContain('offCloth')
    expect(
      kinds((lay) => {
        lay.placements.find(({ piece }) => piece === 'front')!.angle = 90
      }),
    ).toContain('angle')
    expect(
      kinds((lay) => {
        lay.placements[0]!.flipped = !lay.placements[0]!.flipped
      }),
    ).toContain('hand')
    expect(
      kinds((lay) => {
        lay.placements.pop()
      }),
    ).toContain('count')
    expect(
      kinds((lay) => {
        lay.placements.push(lay.placements[0]!)
      }),
    ).toContain('count')
    expect(
      kinds((lay) => {
        lay.placements[0]!.copy = 'nobody'
      }),
    ).toContain('count')
    expect(
      kinds((lay) => {
        lay.length += 50
      }),
    ).toEqual(['length'])
    expect(
      kinds((lay) => {
        lay.length -= 50
      }),
    ).toContain('offCloth')
    const turned = { ...cloth, nap: true }
    expect(kinds(() => {}, turned)).toEqual(['angle'])
    expect(() => assertCuttable({ ...sound, placements: [] }, pieces, cloth)).toThrow('cannot be cut')
  })

  test('lets pieces overlap by a tenth of a millimetre and no more', () => {
    const two = [panel('a', 300, 300, 400, 2)]
    const lay = (x: number): Lay => ({
      usableWidth: 1000,
      length: 400,
      used: 0,
      offcuts: [],
      placements: [
        { piece: 'a', copy: 'a0', x: 150, y: 0, angle: 0, flipped: false },
        { piece: 'a', copy: 'a1', x, y: 0, angle: 0, flipped: false },
      ],
    })
    expect(faultsOfLay(lay(450 - 0.09), two, LINEN)).toEqual([])
    expect(faultsOfLay(lay(450 - 0.12), two, LINEN).map(({ kind }) => kind)).toEqual(['overlap'])
  })
})
