import { describe, expect, test } from 'vitest'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { constructionOf } from '../../core/draft/constructions.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

/** The sentence and the field of the refusal that `work` must end in. */
function refusalOf(work: () => unknown): { sentence: string; field: string | undefined } {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal) return { sentence: say(error.phrase), field: error.field }
    throw error
  }
  throw new Error('nothing was refused')
}
const refused = (choices: Record<string, string | number | boolean>, body = bodyOf(WOMAN)) =>
  refusalOf(() => goredUndertunic.draft(body, choices, 'cm'))

describe('a draft that cannot be made is refused in a sentence', () => {
  test.each([
    [{ length: 'long' }, 'length', 'cannot be read as a length'],
    [{ length: '30 cm' }, 'length', 'end at its own armholes'],
    [{ length: '45 cm' }, 'length', 'room'],
    [{ length: 1e9 }, 'length', 'too long'],
    [{ length: -5 }, 'length', 'less than nothing'],
    [{ length: Number.NaN }, 'length', 'cannot be read'],
    [{ chestEase: 0 }, 'chestEase', 'zero'],
    [{ chestEase: 300 }, 'chestEase', 'between 6 cm and 25 cm'],
    [{ neck: 'polo' }, 'neck', 'keyhole, round, boat, square'],
    [{ gores: 5 }, 'gores', '2, 4, 6, 8'],
    [{ taper: 'yes' }, 'taper', 'true, false'],
    [{ colour: 'red' }, 'colour', 'no choice'],
    [{ length: 1000, hemLevel: 'knee' }, 'length', 'Set only one'],
    [{ sweep: 2000, goreSpread: 200 }, 'sweep', 'Set only one'],
    [{ sweep: 900 }, 'sweep', 'too narrow'],
    [{ sweep: 8000 }, 'sweep', 'badly'],
    [{ goreSpread: 1500 }, 'goreSpread', 'badly'],
    [{ shoulder: 'cutInOne', shoulderSlope: 20 }, 'shoulderSlope', 'no shoulder seam'],
    [{ sleeveLength: 100, gusset: 100 }, 'sleeveLength', 'too short for its gusset'],
    [{ slitLength: 450, gores: 6 }, 'slitLength', 'too far down'],
    [{ armholeEase: 260, gusset: 160, goreTop: 'waist' }, 'goreTop', 'Start the gores lower'],
  ])('%o', (choices, field, words) => {
    const refusal = refused(choices)
    expect(refusal.field).toBe(field)
    expect(refusal.sentence).toContain(words)
  })

  test('a neck that no head passes fails the fit report of a short slit, never silently', () => {
    const draft = goredUndertunic.draft(bodyOf({ ...WOMAN, headGirth: 700 }), { slitLength: 0 }, 'cm')
    expect(draft.fit.find(({ id }) => id === 'head')!.status).toBe('fails')
  })

  test('a neck as wide as its panel is refused', () => {
    const slender = bodyOf({ ...WOMAN, bustGirth: 780, waistGirth: 620, hipGirth: 840 })
    expect(refused({ neckEase: 300, chestEase: 60 }, slender)).toMatchObject({
      field: 'neckEase',
      sentence: expect.stringContaining('leaves no shoulder'),
    })
  })

  test('a missing measure is named', () => {
    const { hipGirth: _, ...rest } = WOMAN
    expect(refused({}, bodyOf(rest))).toEqual({
      sentence: 'The hip girth is needed to draft this garment. Take it and enter it.',
      field: 'hipGirth',
    })
  })

  test('a construction that does not exist is named', () => {
    expect(refusalOf(() => constructionOf('toga')).sentence).toContain('no construction “toga”')
  })
})
