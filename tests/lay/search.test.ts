import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Piece } from '../../core/draft/types.ts'
import { signedArea } from '../../core/geometry/path.ts'
import { bestPlaces } from '../../core/lay/best-lay.ts'
import { faultsOfLay } from '../../core/lay/check.ts'
import { layOf } from '../../core/lay/lay-of.ts'
import { type Cloth, type Lay, type LayOrder, PLAIN_ORDER } from '../../core/lay/types.ts'
import { searchStart } from '../../core/lay/wished-lay.ts'
import { MM_PER } from '../../core/words/units.ts'
import { cornered, plainCloth, rectangle, someParts } from '../support/cloth.ts'

const RULES = { cuttingGap: 0 }

/** A search of so many sweeps. */
function found(
  pieces: readonly Piece[],
  cloth: Cloth,
  sweeps: number,
  order: LayOrder = PLAIN_ORDER,
  seed = 1,
): { lay: Lay; first: number; told: number[] } {
  const { layable, start } = searchStart(pieces, cloth, RULES, order)
  const told: number[] = []
  const spent = (gone: number) => gone / sweeps
  const { places } = bestPlaces(layable.strip, layable.manner, start, { spent }, seed, {
    found: ({ length }) => told.push(length),
  })
  return { lay: layOf(pieces, layable, places), first: start.length, told }
}

const RUNS = process.env.ELLWAND_LONG === '1' ? 2000 : 60

describe('the search for a short lay', () => {
  test('loses and doubles nothing, and ends in a lay that the independent check passes', () => {
    fc.assert(
      fc.property(
        someParts,
        fc.double({ min: 620, max: 1600, noNaN: true }),
        fc.boolean(),
        fc.boolean(),
        fc.integer({ min: 1, max: 1000 }),
        (pieces, width, rightSide, nap, seed) => {
          const cloth = plainCloth(width, { rightSide, nap })
          const { lay, first, told } = found(pieces, cloth, 25, PLAIN_ORDER, seed)
          expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
          expect(lay.length).toBeLessThanOrEqual(first)
          expect(told).toEqual([...told].sort((a, b) => b - a))
        },
      ),
      { numRuns: RUNS },
    )
  }, 600_000)

  test('comes to the same lay from the same seed and number of sweeps', () => {
    fc.assert(
      fc.property(someParts, fc.integer({ min: 1, max: 99 }), (pieces, seed) => {
        const cloth = plainCloth(1000)
        const [one, two] = [1, 2].map(() => found(pieces, cloth, 20, PLAIN_ORDER, seed))
        expect(one).toEqual(two)
      }),
      { numRuns: 10 },
    )
  })

  test('finds the shortest lay of a handful of rectangles, as trying all of them does', () => {
    const side = fc.integer({ min: 1, max: 8 }).map((n) => n * 50)
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 5 }), (sizes) => {
        const pieces = sizes.map(([w, h], i) => rectangle(`r${i}`, w, h, 1))
        const { lay } = found(pieces, plainCloth(500), 3000)
        expect(lay.length).toBeCloseTo(shortestOf(sizes, 500), 6)
      }),
      { numRuns: RUNS / 2 },
    )
  }, 600_000)

  // Two wedges head to tail make a rectangle: sizes our own, the area is the proof.
  test('lays wedges head to tail until nothing is lost', () => {
    const wedge = cornered(
      'wedge',
      [
        { x: 0, y: 0 },
        { x: 300, y: 0 },
        { x: 100, y: 600 },
        { x: 0, y: 600 },
      ],
      4,
    )
    const { lay } = found([wedge], plainCloth(400), 200)
    expect(lay.length).toBeCloseTo(1200, 3)
  })
})

/** Exhaustive: every order, every place that is pushed down and to the side against something. */
function shortestOf(sizes: readonly (readonly [number, number])[], width: number): number {
  type Box = { x: number; y: number; w: number; h: number }
  let best = sizes.reduce((sum, [, h]) => sum + h, 0)
  const place = (laid: Box[], rest: readonly (readonly [number, number])[], length: number) => {
    if (length >= best) return
    if (rest.length === 0) {
      best = length
      return
    }
    const xs = [0, ...laid.map(({ x, w }) => x + w)]
    const ys = [0, ...laid.map(({ y, h }) => y + h)]
    rest.forEach(([w, h], i) => {
      for (const x of xs) {
        if (x + w > width) continue
        for (const y of ys) {
          if (laid.some((b) => x < b.x + b.w && b.x < x + w && y < b.y + b.h && b.y < y + h)) continue
          place([...laid, { x, y, w, h }], rest.toSpliced(i, 1), Math.max(length, y + h))
        }
      }
    })
  }
  place([], sizes, 0)
  return best
}

// The Workwoman's Guide (1838): parts by the six or two dozen, in nails, length along the selvage first; the
// figures of the book, or the bound of the area where the parts as listed need more.
const HANDBOOK: {
  name: string
  width: number
  parts: [along: number, across: number, count: number][]
  nails: number
  within: number
}[] = [
  {
    name: 'infants’ open shirts, small, two dozen',
    width: 15,
    parts: [
      [10, 5, 24],
      [1.25, 2.5, 48],
      [1, 1, 45],
    ],
    nails: 93,
    within: 0,
  },
  {
    name: 'men’s larger shirts, figures 9 and 10, by the six',
    width: 14,
    parts: [
      [36, 14, 6],
      [8, 8, 12],
      [12, 3, 12],
      [8, 3, 6],
      [4, 2.5, 12],
      [4, 1.5, 12],
      [3, 3, 12],
      [2, 2, 6],
      [0.5, 0.5, 6],
      [1, 1, 12],
    ],
    nails: 337,
    within: 0.02,
  },
]

describe('the handbook’s own examples', () => {
  test.each(HANDBOOK)('$name', ({ width, parts, nails, within }) => {
    const nl = MM_PER.nl
    const pieces = parts.map(([along, across, count], i) =>
      rectangle(`p${i}`, across * nl, along * nl, count),
    )
    const cloth = plainCloth(width * nl, { rightSide: true })
    const area = pieces.reduce((sum, { cut, copies }) => sum + copies.length * signedArea(cut), 0)
    const { lay } = found(pieces, cloth, 400)
    expect(faultsOfLay(lay, pieces, cloth)).toEqual([])
    const shortest = Math.max(nails, area / nl / nl / width)
    expect(lay.length / nl).toBeLessThanOrEqual(shortest * (1 + within) + 1e-9)
  })
})
