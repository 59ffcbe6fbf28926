import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { pieced } from '../../core/draft/piecing.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { pathBox } from '../../core/geometry/segment.ts'
import { assertCuttable } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { bodyOf, someBody, WOMAN } from '../support/bodies.ts'
import { plainCloth } from '../support/cloth.ts'

const sum = (all: Partial<Record<string, number>>) => Object.values(all).reduce((a, b) => a! + b!, 0)!

describe('a piece wider than the cloth', () => {
  const draft = goredUndertunic.draft(bodyOf(WOMAN), {}, 'mm')
  const widest = Math.max(...draft.pieces.map(({ cut }) => pathBox(cut).width))

  test('is left whole on cloth that is wide enough', () => {
    expect(pieced(draft, widest)).toBe(draft)
  })

  test('is joined from a part and a strip: same garment, one straight seam more for each', () => {
    const made = pieced(draft, widest - 60)
    expect(faultsOf(made)).toEqual([])
    expect(made.totals.area).toBeCloseTo(draft.totals.area, 3)
    const { piecing, ...others } = made.totals.seams
    expect(others).toEqual(draft.totals.seams)
    expect(made.totals.hems).toEqual(draft.totals.hems)
    // Front and back are joined from hem to shoulder: each join as long as the garment.
    const length = draft.choices.length as number
    expect(piecing).toBeCloseTo(2 * length, 3)
    for (const { cut } of made.pieces) expect(pathBox(cut).width).toBeLessThanOrEqual(widest - 60 + 1e-6)
    expect(made.steps.find(({ stage }) => stage === 'sew')!.id).toBe('piecing')
    expect(made.cautions.map(({ code }) => code)).toContain('draft.caution.pieced')
  })

  test('is never joined across the neck or in the middle, nor with a strip under 4 cm', () => {
    for (const usable of [500, 560, 640]) {
      const made = pieced(draft, usable)
      const whole = draft.pieces.find(({ id }) => id === 'front')!
      const middle = pathBox(whole.outline).x + pathBox(whole.outline).width / 2
      for (const { id, edges, outline } of made.pieces) {
        if (id.startsWith('front')) expect(pathBox(outline).width).toBeGreaterThanOrEqual(40 - 1e-6)
        if (!id.startsWith('front')) continue
        for (const join of edges.filter((edge) => edge.id.startsWith('join'))) {
          expect(Math.abs(join.path[0]!.from.x - middle)).toBeGreaterThanOrEqual(40)
        }
      }
    }
  })

  test('may need more than one strip, each a piece of its own', () => {
    const stout = {
      ...{ stature: 2021, cervicalHeight: 1773, waistHeight: 1170, insideLegHeight: 851, kneeHeight: 496 },
      ...{ bustGirth: 1665, waistGirth: 1166, hipGirth: 1466, neckBaseGirth: 533, headGirth: 548 },
      ...{ shoulderLength: 124, armLength: 620, upperArmGirth: 610, forearmGirth: 493, elbowGirth: 544 },
      ...{ handGirth: 209, calfGirth: 633 },
    }
    const made = pieced(goredUndertunic.draft(bodyOf(stout), {}, 'mm'), 560)
    const ids = made.pieces.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.filter((id) => id.startsWith('front-strip'))).toHaveLength(2)
    expect(faultsOf(made)).toEqual([])
  })

  test('makes garments that can be sewn and cut from a narrow loom’s cloth, whatever the body', () => {
    let joined = 0
    fc.assert(
      fc.property(
        someBody,
        fc.constantFrom(560, 686, 800),
        fc.constantFrom('felled', 'open'),
        fc.constantFrom('keyhole', 'round', 'boat', 'square'),
        (body, usable, seamFinish, neck) => {
          try {
            const plain = goredUndertunic.draft(body, { seamFinish, neck }, 'mm')
            const made = pieced(plain, usable)
            expect(faultsOf(made)).toEqual([])
            expect(sum(made.totals.hems)).toBeCloseTo(sum(plain.totals.hems), 3)
            assertCuttable(
              firstLay(made.pieces, plainCloth(usable), DEFAULT_BUYING),
              made.pieces,
              plainCloth(usable),
            )
            if (made !== plain) joined++
          } catch (error) {
            if (!(error instanceof Refusal)) throw error
          }
        },
      ),
      { numRuns: 150 },
    )
    expect(joined).toBeGreaterThan(5)
  })
})
