import { describe, expect, test } from 'vitest'
import { differences } from '../../core/measure/differences.ts'
import { doubtsOf } from '../../core/measure/doubts.ts'
import { isGrown } from '../../core/measure/grown.ts'
import { estimateMissing } from '../../core/measure/missing.ts'
import type { Lengths } from '../../core/measure/proportions.ts'
import { isGirth, MEASURE_IDS } from '../../core/measure/vocabulary.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { hasSurvey, surveyBodies } from '../support/survey.ts'

const kinds = (lengths: Lengths, of: 'women' | 'all' | undefined) =>
  doubtsOf(lengths, of).map(({ measure, kind, other }) =>
    other === undefined ? `${measure} ${kind}` : `${measure} ${kind} ${other}`,
  )

describe('a set of measures', () => {
  test('of a middling woman raises no doubt, whoever it is held against', () => {
    for (const of of ['women', 'all', undefined] as const) expect(kinds(WOMAN, of)).toEqual([])
  })

  test('in which inches were written as centimetres says so, and what was meant', () => {
    const [doubt] = doubtsOf({ ...WOMAN, waistGirth: WOMAN.waistGirth / 2.54 }, 'women')
    expect(doubt).toMatchObject({ measure: 'waistGirth', kind: 'unit', sure: true })
    expect(doubt!.rather).toBeCloseTo(WOMAN.waistGirth, 6)
    const [other] = doubtsOf({ ...WOMAN, hipGirth: WOMAN.hipGirth * 2.54 }, 'women')
    expect(other!.rather).toBeCloseTo(WOMAN.hipGirth, 6)
  })

  test('in which two measures changed places says which', () => {
    const swapped = { ...WOMAN, bustGirth: WOMAN.waistGirth, waistGirth: WOMAN.bustGirth }
    expect(kinds(swapped, 'women')).toEqual(['waistGirth swapped bustGirth'])
  })

  test('with a digit that slipped says what would go with the others', () => {
    const [turned] = doubtsOf({ ...WOMAN, calfGirth: 632 }, 'women')
    expect(turned).toMatchObject({ measure: 'calfGirth', kind: 'digit' })
    expect([362]).toContain(turned!.rather)
    const [off] = doubtsOf({ ...WOMAN, upperArmGirth: WOMAN.upperArmGirth + 100 }, 'women')
    expect(off).toMatchObject({ measure: 'upperArmGirth', kind: 'digit', rather: WOMAN.upperArmGirth })
  })

  test('in inches has other digits that may slip', () => {
    const [doubt] = doubtsOf({ ...WOMAN, waistGirth: WOMAN.waistGirth - 254 }, 'women', 'in')
    expect(doubt).toMatchObject({ measure: 'waistGirth', kind: 'digit' })
    expect(doubt!.rather).toBeCloseTo(WOMAN.waistGirth, 6)
    // 41 ½ in where the tape said 14 ½.
    const [turned] = doubtsOf({ ...WOMAN, calfGirth: 41.5 * 25.4 }, 'women', 'in')
    expect(turned).toMatchObject({ measure: 'calfGirth' })
    expect(turned!.rather).toBeCloseTo(14.5 * 25.4, 6)
  })

  test('larger than any body, or in an order that no body has, is doubted even of a child', () => {
    const child = { stature: 1100, cervicalHeight: 900, bustGirth: 580, waistGirth: 540, waistHeight: 660 }
    expect(kinds(child, undefined)).toEqual([])
    expect(kinds({ ...child, bustGirth: 9000 }, undefined)).toEqual(['bustGirth range'])
    expect(kinds({ ...child, bustGirth: 5800 }, undefined)).toEqual(['bustGirth unit'])
    expect(kinds({ ...child, waistHeight: 950 }, undefined)).toEqual([
      'waistHeight contradiction cervicalHeight',
    ])
  })

  test('of few measures is doubted only for what can be known of them', () => {
    expect(doubtsOf({}, 'all')).toEqual([])
    expect(doubtsOf({ stature: 1900 }, 'women')).toEqual([])
    expect(doubtsOf({ elbowGirth: 260, hipHeight: 880 }, 'women')).toEqual([])
  })

  test('is a grown person’s by the birth day, and else by the stature', () => {
    expect(isGrown({ stature: 1100 }, null, '2026-11-26')).toBe(false)
    expect(isGrown({ stature: 1650 }, null, '2026-11-26')).toBe(true)
    expect(isGrown({ stature: 1650 }, '2012-01-01', '2026-11-26')).toBe(false)
    expect(isGrown({ stature: 1350 }, '1980-05-01', '2026-11-26')).toBe(true)
    expect(isGrown({}, '2009-11-26', '2026-11-26')).toBe(true)
    expect(isGrown({}, '2009-11-27', '2026-11-26')).toBe(false)
  })
})

describe('measures that were not taken', () => {
  test('are estimated with their spread, which more measures make smaller', () => {
    const few = { stature: 1650, bustGirth: 952, waistGirth: 782, hipGirth: 1014 }
    const [alone] = estimateMissing(few, 'women', ['upperArmGirth'])
    const [more] = estimateMissing({ ...few, forearmGirth: 248, wristGirth: 162 }, 'women', ['upperArmGirth'])
    expect(alone!.mm).toBeGreaterThan(270)
    expect(alone!.mm).toBeLessThan(330)
    expect(more!.sd).toBeLessThan(alone!.sd)
    expect(estimateMissing(few, 'women', ['elbowGirth', 'waistGirth'])).toEqual([])
    // Bust and chest are one dimension of the survey: what is known is not estimated again.
    expect(estimateMissing(few, 'all', ['chestGirth'])).toEqual([])
  })

  test('are the chest of a man and the bust of a woman', () => {
    const ids = (of: 'women' | 'men') => estimateMissing({ stature: 1700 }, of).map(({ measure }) => measure)
    expect(ids('women')).toContain('bustGirth')
    expect(ids('women')).not.toContain('chestGirth')
    expect(ids('men')).toContain('chestGirth')
    expect(ids('men')).not.toContain('bustGirth')
  })
})

describe('two sets', () => {
  test('differ in what was changed, added and left out', () => {
    const before = bodyOf({ stature: 1650, waistGirth: 780, hipGirth: 1000 }).measures
    const after = bodyOf({ stature: 1650.2, waistGirth: 805, calfGirth: 360 }).measures
    expect(differences(before, after)).toEqual([
      { measure: 'waistGirth', before: 780, after: 805, by: 25 },
      { measure: 'hipGirth', before: 1000 },
      { measure: 'calfGirth', after: 360 },
    ])
  })
})

// ANSUR II (US Army 2012, public release); the bench of bodies tries people the proportions do not know.
describe.runIf(hasSurvey)(`surveyed people${hasSurvey ? '' : ' (skipped: no survey here)'}`, () => {
  const sexes = [
    ['female', 'women'],
    ['male', 'men'],
  ] as const

  test('are doubted in at most 2 of 100 sets, and never surely', () => {
    for (const [sex, of] of sexes) {
      const doubts = surveyBodies(sex).map((body) => doubtsOf(body, of))
      expect(doubts.filter((found) => found.length > 0).length / doubts.length).toBeLessThanOrEqual(0.02)
      expect(doubts.filter((found) => found.some(({ sure }) => sure)).length / doubts.length).toBeLessThan(
        0.002,
      )
    }
  })

  test('are found out when inches are written for centimetres on any girth', () => {
    for (const [sex, of] of sexes) {
      for (const body of surveyBodies(sex).filter((_, i) => i % 40 === 0)) {
        for (const id of MEASURE_IDS.filter((one) => isGirth(one) && body[one] !== undefined)) {
          expect(doubtsOf({ ...body, [id]: body[id] / 2.54 }, of).map(({ measure }) => measure)).toContain(id)
        }
      }
    }
  })
})
