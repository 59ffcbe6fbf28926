import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { straightEdgeGore } from '../../core/draft/shapes/gore.ts'
import type { Draft } from '../../core/draft/types.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { pathLength } from '../../core/geometry/path.ts'
import type { Body } from '../../core/measure/body.ts'
import { someBody } from '../support/bodies.ts'

/** Length of an arc on a chord by its sagitta, by the half-angle formula rather than the planner's own way. */
const arcOn = (chord: number, depth: number): number => {
  const radius = (chord * chord) / 4 / (2 * depth) + depth / 2
  const angle = 2 * Math.asin(Math.min(1, chord / 2 / radius))
  return radius * (depth <= chord / 2 ? angle : 2 * Math.PI - angle)
}
const segmentUnder = (chord: number, depth: number): number => {
  const radius = (chord * chord) / 4 / (2 * depth) + depth / 2
  const angle = arcOn(chord, depth) / radius
  return (radius * radius * (angle - Math.sin(angle))) / 2
}

const draftOf = (body: Body, choices: Record<string, string | number | boolean> = {}): Draft =>
  goredUndertunic.draft(body, choices, 'mm')

/** What the tunic's figures say its lengths and area must be, from the choices the draft reports. */
function oracle(body: Body, draft: Draft, width: number) {
  const c = draft.choices as Record<string, number>
  const D = (body.measures.upperArmGirth!.mm + c.armholeEase!) / 2
  const g = c.gusset!
  const R = draft.pieces.find(({ id }) => id === 'gore')!.sizes[0]!.mm
  const S = c.sleeveLength!
  const w = c.wristWidth!
  const n = body.measures.neckBaseGirth!.mm / Math.PI + c.neckEase!
  const back = body.measures.neckBaseGirth!.mm / 15
  const P = arcOn(n, c.neckDepth!) + arcOn(n, back)
  const L = c.length!
  return {
    seams: {
      armhole: 4 * D,
      gusset: 8 * g,
      side: 2 * (L - D - g - R),
      gore: 4 * R,
      goreToGore: 2 * R,
      shoulder: width - n,
      underarm: 2 * (Math.hypot(S, D - w / 2) - g),
      facing: P + 2 * c.slitLength!,
    },
    bottom: 2 * width + 4 * c.goreSpread!,
    wrist: 2 * w,
    area:
      2 * width * L +
      S * (2 * D + w) +
      2 * g * g +
      2 * R * c.goreSpread! -
      segmentUnder(n, c.neckDepth!) -
      segmentUnder(n, back),
  }
}

describe('a tunic of four gores and straight shoulders', () => {
  test('has the seams, hems and area that its figures give', () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const draft = draftOf(body)
        const width = draft.pieces.find(({ id }) => id === 'front')!.sizes[0]!.mm
        const expected = oracle(body, draft, width)
        for (const [kind, length] of Object.entries(expected.seams)) {
          expect(draft.totals.seams[kind as 'side'] ?? 0, kind).toBeCloseTo(length, 6)
        }
        expect(draft.totals.hems.bottom).toBeCloseTo(expected.bottom, 6)
        expect(draft.totals.hems.wrist).toBeCloseTo(expected.wrist, 6)
        const facings = draft.pieces.filter(({ id }) => id.startsWith('facing'))
        const facing = facings.reduce((sum, { sizes }) => sum + sizes[0]!.mm * sizes[1]!.mm, 0)
        const n = body.measures.neckBaseGirth!.mm / Math.PI + 20
        const cutAway =
          segmentUnder(n, draft.choices.neckDepth as number) +
          segmentUnder(n, body.measures.neckBaseGirth!.mm / 15)
        expect(draft.totals.area).toBeCloseTo(expected.area + facing - cutAway, 3)
      }),
      { numRuns: 1500 },
    )
  })

  test('covers chest, waist and hip: W = max(bust + e, waist + e, hip + e − gores at the hip) ÷ 2', () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const draft = draftOf(body)
        const c = draft.choices as Record<string, number>
        const m = (id: 'bustGirth' | 'waistGirth' | 'hipGirth' | 'cervicalHeight' | 'waistHeight') =>
          body.measures[id]!.mm
        const R = draft.pieces.find(({ id }) => id === 'gore')!.sizes[0]!.mm
        const hipLevel = m('cervicalHeight') - (body.measures.hipHeight?.mm ?? 0.86 * m('waistHeight'))
        const down = Math.min(R, Math.max(0, hipLevel - (c.length! - R)))
        const atHip = (4 * c.goreSpread! * down) / R
        const around = Math.max(m('bustGirth') + 120, m('waistGirth') + 120, m('hipGirth') + 120 - atHip)
        expect(draft.sizes.find(({ id }) => id === 'chest')!.mm).toBeCloseTo(around, 6)
      }),
      { numRuns: 500 },
    )
  })

  test('asked for by its sweep has that sweep: spread of each gore = (sweep − 2W) ÷ 4', () => {
    fc.assert(
      fc.property(someBody, fc.double({ min: 1.02, max: 1.3, noNaN: true }), (body, more) => {
        const sweep = draftOf(body).sizes.find(({ id }) => id === 'sweep')!.mm * more
        const draft = draftOf(body, { sweep })
        expect(draft.totals.hems.bottom).toBeCloseTo(sweep, 6)
        expect(faultsOf(draft)).toEqual([])
      }),
      { numRuns: 300 },
    )
  })

  test('with a sloped shoulder keeps slope + armhole + gusset + side + gore = length', () => {
    fc.assert(
      fc.property(someBody, fc.integer({ min: 1, max: 40 }), (body, slope) => {
        const draft = draftOf(body, { shoulderSlope: slope })
        const c = draft.choices as Record<string, number>
        const side = (draft.totals.seams.side ?? 0) / 2
        const R = draft.pieces.find(({ id }) => id === 'gore')!.sizes[0]!.mm
        expect(slope + draft.totals.seams.armhole! / 4 + c.gusset! + side + R).toBeCloseTo(c.length!, 6)
        const width = draft.pieces.find(({ id }) => id === 'front')!.sizes[0]!.mm
        const n = body.measures.neckBaseGirth!.mm / Math.PI + 20
        expect(draft.totals.seams.shoulder).toBeCloseTo(2 * Math.hypot((width - n) / 2, slope), 6)
      }),
      { numRuns: 300 },
    )
  })
})

// Sector geometry of checks in print: gore of top 8.75, hem 40 and side 90 cm in a skirt of eight (70 → 320 cm).
test('a gore is a sector: a hem of 40 cm on a radius of 25.2 + 90 cm spans 19.894°', () => {
  const gore = straightEdgeGore(1152, (19.894 * Math.PI) / 180)
  expect(pathLength(gore.hem)).toBeCloseTo(400, 1)
  expect(pathLength(gore.right)).toBeCloseTo(1152, 9)
})
