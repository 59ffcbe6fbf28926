import fc from 'fast-check'
import type { Body } from '../../core/measure/body.ts'
import type { MeasureId } from '../../core/measure/vocabulary.ts'

/** A grown woman of middling size, invented. mm */
export const WOMAN = {
  stature: 1650,
  cervicalHeight: 1412,
  headGirth: 562,
  neckBaseGirth: 382,
  shoulderLength: 122,
  bustGirth: 952,
  waistGirth: 782,
  hipGirth: 1014,
  armLength: 575,
  upperArmGirth: 296,
  elbowGirth: 262,
  forearmGirth: 248,
  wristGirth: 162,
  handGirth: 188,
  waistHeight: 1018,
  hipHeight: 860,
  insideLegHeight: 765,
  kneeHeight: 455,
  calfGirth: 362,
  neckGirth: 340,
  underbustGirth: 808,
  thighGirth: 590,
  kneeGirth: 366,
  ankleGirth: 222,
  heelGirth: 320,
  footLength: 242,
} as const satisfies Partial<Record<MeasureId, number>>

export const bodyOf = (measures: Partial<Record<MeasureId, number>>): Body => ({
  measures: Object.fromEntries(
    Object.entries(measures).map(([id, mm]) => [id, { mm, source: 'taken' as const }]),
  ) as Body['measures'],
})

/** Proportions to the nape's height between which grown and growing bodies lie, wider than any survey. */
const PROPORTIONS = {
  stature: [1.14, 1.19],
  waistHeight: [0.66, 0.76],
  insideLegHeight: [0.48, 0.6],
  kneeHeight: [0.28, 0.36],
  shoulderLength: [0.07, 0.1],
  armLength: [0.35, 0.44],
} as const

/** Bodies from a small child to the tallest and widest adult, with or without the measures one may leave out. */
export const someBody: fc.Arbitrary<Body> = fc
  .record({
    cervicalHeight: fc.double({ min: 650, max: 1800, noNaN: true }),
    build: fc.double({ min: 0.5, max: 1, noNaN: true }),
    waist: fc.double({ min: 0.7, max: 1.2, noNaN: true }),
    hip: fc.double({ min: 0.88, max: 1.2, noNaN: true }),
    arm: fc.double({ min: 0.24, max: 0.4, noNaN: true }),
    parts: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
    left: fc.subarray([
      'stature',
      'insideLegHeight',
      'kneeHeight',
      'calfGirth',
      'forearmGirth',
      'elbowGirth',
    ] as const),
  })
  .map(({ cervicalHeight, build, waist, hip, arm, parts, left }) => {
    const heights = Object.fromEntries(
      Object.entries(PROPORTIONS).map(([id, [low, high]], i) => [
        id,
        cervicalHeight * (low + (high - low) * parts[i]!),
      ]),
    )
    const bustGirth = Math.max(420, cervicalHeight * build)
    const upperArmGirth = bustGirth * arm
    const measures: Partial<Record<MeasureId, number>> = {
      ...heights,
      cervicalHeight,
      bustGirth,
      waistGirth: bustGirth * waist,
      hipGirth: bustGirth * hip,
      upperArmGirth,
      forearmGirth: upperArmGirth * (0.78 + 0.1 * parts[6]!),
      elbowGirth: upperArmGirth * 0.86,
      handGirth: 120 + cervicalHeight * 0.05,
      headGirth: 420 + cervicalHeight * 0.09 * (0.8 + 0.4 * parts[7]!),
      neckBaseGirth: 200 + bustGirth * 0.2,
      calfGirth: bustGirth * 0.38,
    }
    for (const id of left) delete measures[id]
    return bodyOf(measures)
  })
