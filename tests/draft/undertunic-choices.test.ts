import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Choice } from '../../core/draft/choices.ts'
import { goredUndertunic } from '../../core/draft/constructions/gored-undertunic.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { bodyOf, someBody, WOMAN } from '../support/bodies.ts'

/** Any value that a choice's own description allows, the ends of its range included. */
function anyOf(choice: Choice): fc.Arbitrary<string | number | boolean> {
  if (choice.kind === 'yesNo') return fc.boolean()
  if (choice.kind !== 'length') return fc.constantFrom<string | number>(...choice.options)
  const [min, max] = choice.range
  return fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }))
}

const anyChoices = fc
  .record(
    Object.fromEntries(Object.entries(goredUndertunic.choices).map(([id, choice]) => [id, anyOf(choice)])),
    {
      requiredKeys: [],
    },
  )
  .map((choices) => {
    // Of two choices that say the same thing the maker sets one.
    const { length, sweep, sleeveLength, ...rest } = choices
    if (choices.hemLevel === undefined && length !== undefined) rest.length = length
    if (choices.goreSpread === undefined && sweep !== undefined) rest.sweep = sweep
    if (choices.sleeve === undefined && sleeveLength !== undefined) rest.sleeveLength = sleeveLength
    return rest as Record<string, string | number | boolean>
  })

describe('all choices on all bodies', () => {
  test('give a tunic that can be sewn, or a sentence; never anything else', () => {
    let drafted = 0
    let refused = 0
    fc.assert(
      fc.property(someBody, anyChoices, (body, choices) => {
        try {
          expect(faultsOf(goredUndertunic.draft(body, choices, 'mm'))).toEqual([])
          drafted++
        } catch (error) {
          if (!(error instanceof Refusal)) throw error
          expect(error.field).toBeDefined()
          refused++
        }
      }),
      { numRuns: 3000 },
    )
    expect(drafted).toBeGreaterThan(300)
    expect(refused).toBeGreaterThan(300)
  })

  test('one choice at a time, at any allowed value, mostly gives a tunic', () => {
    const body = bodyOf(WOMAN)
    for (const [id, choice] of Object.entries(goredUndertunic.choices)) {
      const values = fc.sample(anyOf(choice), { numRuns: 25, seed: 1 })
      const drafts = values.filter((value) => {
        try {
          return faultsOf(goredUndertunic.draft(body, { [id]: value }, 'mm')).length === 0
        } catch (error) {
          if (error instanceof Refusal) return false
          throw error
        }
      })
      expect(drafts.length, id).toBeGreaterThan(0)
    }
  })

  test('asking again for the values a draft reports gives the same draft', () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const first = goredUndertunic.draft(body, {}, 'mm')
        const { hemLevel, sleeve, goreTop, sweep, ...rest } = first.choices
        const again = goredUndertunic.draft(
          body,
          { ...rest, ...(goreTop === 'waist' ? {} : { goreTop: goreTop! }) },
          'mm',
        )
        expect(again.totals.area).toBeCloseTo(first.totals.area, 3)
      }),
      { numRuns: 200 },
    )
  })
})

describe('gores', () => {
  const body = bodyOf(WOMAN)
  test.each([
    [2, 2],
    [4, 4],
    [6, 6],
    [8, 8],
  ])('%i of them are %i copies, and the hem takes each once', (gores, copies) => {
    for (const goreCut of ['straightEdge', 'symmetrical']) {
      const draft = goredUndertunic.draft(body, { gores, goreCut }, 'mm')
      const pieces = draft.pieces.filter(({ id }) => id === 'gore' || id === 'centreGore')
      expect(pieces.flatMap((piece) => piece.copies)).toHaveLength(copies)
      const width = draft.pieces.find(({ id }) => id === 'front')!.sizes[0]!.mm
      expect(draft.totals.hems.bottom).toBeCloseTo(
        2 * width + gores * (draft.choices.goreSpread as number),
        6,
      )
    }
  })

  test('with a straight edge come in equal hands, so that the bias edge lies against every body edge', () => {
    const draft = goredUndertunic.draft(body, { gores: 8 }, 'mm')
    for (const id of ['gore', 'centreGore']) {
      const { copies } = draft.pieces.find((piece) => piece.id === id)!
      expect(copies.filter(({ mirrored }) => mirrored)).toHaveLength(2)
    }
    const bodySides = draft.seams.filter(({ kind }) => kind === 'gore').flatMap(({ a }) => a)
    expect(new Set(bodySides.map(({ edge }) => edge))).toEqual(new Set(['right']))
  })

  test('in centre slits take the slits’ allowances out of the finished sweep', () => {
    const open = goredUndertunic.draft(body, { gores: 6, seamFinish: 'open', seamAllowance: 12 }, 'mm')
    const sweep = open.sizes.find(({ id }) => id === 'sweep')!.mm
    expect(open.totals.hems.bottom! - sweep).toBeCloseTo(2 * 2 * 12, 6)
  })
})
