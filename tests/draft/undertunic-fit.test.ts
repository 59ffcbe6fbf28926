import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { BICEPS_ON_ARM, ELBOW_ON_ARM, TO_CERVICAL_HEIGHT } from '../../core/draft/levels.ts'
import { readBody } from '../../core/measure/read-body.ts'
import { say } from '../../core/words/say.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { hasSurvey, type SurveyBody, surveyBodies } from '../support/survey.ts'

const statuses = (body: ReturnType<typeof bodyOf>, choices: Record<string, string | number | boolean>) =>
  Object.fromEntries(goredUndertunic.draft(body, choices, 'mm').fit.map(({ id, status }) => [id, status]))

describe('the fit report', () => {
  const body = bodyOf(WOMAN)

  test('is good throughout for the defaults', () => {
    expect(new Set(Object.values(statuses(body, {})))).toEqual(new Set(['good']))
  })

  test.each([
    ['chest', { chestEase: 60 }],
    ['biceps', { armholeEase: 20, gusset: 40 }],
    ['elbow', { wristWidth: 150 }],
    ['forearm', { wristWidth: 150 }],
    ['hand', { wristWidth: 200 }],
    ['head', { slitLength: 40 }],
    ['neckStays', { neck: 'boat', neckEase: 230 }],
    ['stride', { hemLevel: 'ankle', goreSpread: 60 }],
    ['floor', { length: 1405 }],
  ] as const)('fails at %s when the choice is bad, and says what would mend it', (id, choices) => {
    const check = goredUndertunic.draft(body, choices, 'mm').fit.find((one) => one.id === id)!
    expect(check.status).toBe('fails')
    expect(say(check.mend!)).toMatch(/\.$/)
    expect(statuses(body, {})[id]).toBe('good')
  })

  test('fails at waist, hip and seat on bodies whose widest girth those are', () => {
    const waisted = bodyOf({ ...WOMAN, waistGirth: 1150, hipGirth: 1160 })
    expect(statuses(waisted, { chestEase: 60 }).waist).toBe('fails')
    const hipped = bodyOf({ ...WOMAN, hipGirth: 1500 })
    expect(statuses(hipped, { chestEase: 60, goreTop: 'hip' })).toMatchObject({ hip: 'fails', seat: 'fails' })
  })

  test('says which measures it lacks instead of guessing a girth', () => {
    const { calfGirth, forearmGirth, ...rest } = WOMAN
    const fit = goredUndertunic.draft(bodyOf(rest), {}, 'mm').fit
    expect(fit.find(({ id }) => id === 'stride')).toMatchObject({
      status: 'unchecked',
      missing: ['calfGirth'],
    })
    expect(fit.find(({ id }) => id === 'forearm')).toMatchObject({
      status: 'unchecked',
      missing: ['forearmGirth'],
    })
    expect([calfGirth, forearmGirth]).toEqual([362, 248])
  })
})

const PART = process.env.ELLWAND_LONG === '1' ? 1 : 10
const skipped = hasSurvey ? '' : ' (skipped: the survey is not beside the project)'

describe.runIf(hasSurvey)(`bodies of ANSUR II${skipped}`, () => {
  const all = (): SurveyBody[] => [...surveyBodies('female'), ...surveyBodies('male')]

  test('are all possible bodies, and the default tunic fits every one of them', () => {
    for (const measures of all().filter((_, i) => i % PART === 0)) {
      const draft = goredUndertunic.draft(readBody(measures as Record<string, number>, 'mm'), {}, 'mm')
      expect(draft.fit.filter(({ status }) => status === 'fails')).toEqual([])
      // The survey has no elbow girth; everything else can be checked.
      expect(draft.fit.filter(({ status }) => status === 'unchecked').map(({ id }) => id)).toEqual(['elbow'])
    }
  })

  test('have the proportions that stand in for heights not measured', () => {
    const bodies = all()
    const mean = (ratio: (b: Record<string, number>) => number) =>
      bodies.reduce((sum, b) => sum + ratio(b as Record<string, number>), 0) / bodies.length
    for (const [id, ratio] of Object.entries(TO_CERVICAL_HEIGHT)) {
      expect(
        mean((b) => b[id]! / b.cervicalHeight!),
        id,
      ).toBeCloseTo(ratio, 2)
    }
    expect(mean((b) => b.upperArmLength! / b.armLength!)).toBeCloseTo(ELBOW_ON_ARM, 2)
    expect(BICEPS_ON_ARM).toBeLessThan(ELBOW_ON_ARM)
  })
})

test.skipIf(hasSurvey)('the survey of bodies is not beside the project, so its checks are skipped', () => {})
