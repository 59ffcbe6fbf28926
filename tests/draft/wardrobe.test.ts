import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stratifiedBodies } from '../../build/bench/bodies.ts'
import type { Choice } from '../../core/draft/choices.ts'
import { CONSTRUCTIONS, draftGarment } from '../../core/draft/constructions.ts'
import { CLOTH_ROLES } from '../../core/draft/types.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { asCut } from '../../core/lay/as-cut.ts'
import { assertCuttable } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { type Phrase, phrase } from '../../core/words/phrase.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { plainCloth } from '../support/cloth.ts'
import { hasSurvey, surveyBodies } from '../support/survey.ts'

const LONG = process.env.ELLWAND_LONG === '1'

describe.each(CONSTRUCTIONS.map((one) => [one.id, one] as const))('%s', (id, construction) => {
  test('fits every body by default, can be sewn, and is cut from broad cloth and from a narrow loom’s', () => {
    for (const [i, body] of stratifiedBodies.entries()) {
      const draft = construction.draft(body, {}, 'mm')
      expect(faultsOf(draft)).toEqual([])
      expect(draft.fit.filter(({ status }) => status === 'fails')).toEqual([])
      if (i % 4 > 0 && !LONG) continue
      for (const width of [1400, 560]) {
        const cloth = plainCloth(width)
        const cut = asCut(draft, cloth)
        for (const role of CLOTH_ROLES) {
          const pieces = cut.pieces.filter((piece) => piece.cloth === role)
          if (pieces.length > 0) assertCuttable(firstLay(pieces, cloth, DEFAULT_BUYING), pieces, cloth)
        }
      }
    }
  }, 60_000)

  test('gives a garment that can be sewn, or a sentence, whatever is chosen at the ends of the ranges', () => {
    const names = Object.keys(construction.choices)
    const some = fc
      .subarray(names, { minLength: 1, maxLength: Math.min(3, names.length) })
      .chain((few) =>
        fc.record(
          Object.fromEntries(
            few.map((name) => [name, fc.constantFrom(...endsOf(construction.choices[name]!))]),
          ),
        ),
      )
    let made = 0
    fc.assert(
      fc.property(some, fc.constantFrom(...stratifiedBodies.slice(0, 12)), (asked, body) => {
        try {
          expect(faultsOf(construction.draft(body, asked, 'mm'))).toEqual([])
          made++
        } catch (error) {
          if (!(error instanceof Refusal)) throw error
        }
      }),
      { numRuns: LONG ? 2000 : 100 },
    )
    expect(made).toBeGreaterThan(10)
  })

  test('has a name, a period, a summary and a description in words, and labels for its choices', () => {
    const draft = construction.draft(bodyOf(WOMAN), {}, 'mm')
    const sentences = construction.describe(draft).map((one) => say(one))
    expect(sentences.length).toBeGreaterThan(0)
    for (const sentence of sentences) expect(sentence).not.toMatch(/[{}]/)
    for (const one of phrasesIn(draft)) expect(say(one)).not.toMatch(/[{}]/)
    for (const name of Object.keys(construction.choices)) {
      expect(say(phrase(`draft.choice.${name}` as 'draft.choice.length'))).toBeTruthy()
      expect(say(phrase(`draft.help.${name}` as 'draft.help.length'))).toBeTruthy()
    }
    expect(construction.often.every((name) => name in construction.choices)).toBe(true)
    expect(draftGarment(id, bodyOf(WOMAN), {}, 'mm').construction).toBe(id)
  })

  // ANSUR II (US Army 2012, public release).
  test.runIf(hasSurvey)(
    'fits the people of a survey by default',
    () => {
      for (const sex of ['female', 'male'] as const) {
        for (const person of surveyBodies(sex).filter((_, i) => LONG || i % 20 === 0)) {
          const draft = construction.draft(bodyOf(person), {}, 'mm')
          expect(draft.fit.filter(({ status }) => status === 'fails')).toEqual([])
        }
      }
    },
    120_000,
  )
})

const endsOf = (choice: Choice): (number | string | boolean)[] =>
  choice.kind === 'length' ? [...choice.range] : choice.kind === 'yesNo' ? [true, false] : [...choice.options]

/** Every phrase anywhere in a draft. */
function phrasesIn(value: unknown): Phrase[] {
  if (typeof value !== 'object' || value === null) return []
  if ('code' in value) return [value as Phrase]
  return Object.values(value).flatMap(phrasesIn)
}
