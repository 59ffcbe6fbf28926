import { describe, expect, test } from 'vitest'
import { stratifiedBodies } from '../../build/bench/bodies.ts'
import { constructionFrom, measuresIn, tryOwn } from '../../core/draft/own/construct.ts'
import type { OwnConstruction } from '../../core/draft/own/definition.ts'
import { faultsOf } from '../../core/draft/verify.ts'
import { pathBox } from '../../core/geometry/segment.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { say } from '../../core/words/say.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { FROCK } from '../support/own.ts'

const body = bodyOf(WOMAN)
/** The frock with something changed, and what is then said of it. */
const spoilt = (change: (own: OwnConstruction) => void): string[] => {
  const own = structuredClone(FROCK)
  change(own)
  return tryOwn(own, 'own:frock', body).faults.map((fault) => say(fault))
}

describe('a construction of the maker’s own', () => {
  test('comes to the seams, hems and area reckoned by hand', () => {
    const { draft, faults } = tryOwn(FROCK, 'own:frock', body)
    expect(faults).toEqual([])
    const width = WOMAN.bustGirth / 2 + 60
    const [reach, wrist] = [WOMAN.armLength / 2, WOMAN.handGirth + 60]
    const slant = Math.hypot(reach, (400 - wrist) / 2)
    expect(draft!.totals.seams.side).toBeCloseTo(2 * 200 + 2 * 400 + 2 * slant + 2 * width + 500, 6)
    expect(draft!.totals.area).toBeCloseTo(2 * width * 400 + reach * (400 + wrist) + 3 * width * 500, 3)
    expect(draft!.seams.find(({ id }) => id === 'waist')).toMatchObject({ ratio: 1.5, gathers: 2 })
    expect(draft!.fit.map(({ status }) => status)).toEqual(['good'])
    expect(faultsOf(draft!)).toEqual([])
  })

  test('is drafted to every body that has its measures', () => {
    for (const one of stratifiedBodies) expect(tryOwn(FROCK, 'own:frock', one).faults).toEqual([])
    expect(measuresIn(FROCK)).toEqual(['bustGirth', 'handGirth', 'armLength'])
    const { bustGirth: _, ...less } = WOMAN
    expect(() => constructionFrom(FROCK, 'own:frock').draft(bodyOf(less), {}, 'mm')).toThrow(Refusal)
  })

  test('is drawn unfolded, no piece upon another', () => {
    const { flat, pieces } = tryOwn(FROCK, 'own:frock', body).draft!
    expect(flat!.edges).toHaveLength(5)
    const areas = flat!.edges.map((path) => pathBox(path)).map(({ width, height }) => width * height)
    const boxes = pieces.flatMap(({ outline, copies }) => copies.map(() => pathBox(outline)))
    expect(areas.reduce((a, b) => a + b, 0)).toBeCloseTo(
      boxes.reduce((sum, { width, height }) => sum + width * height, 0),
      3,
    )
  })

  test.each([
    [
      'a seam that does not walk',
      (own) => {
        own.pieces[1]!.dimensions.topWidth = { fixed: 390 }
      },
      /does not walk: one side is 39 cm long, the other 40 cm/,
    ],
    ['an edge nobody sewed', (own) => void own.hems.pop(), /Nothing is sewn to the lower edge of “skirt”/],
    [
      'an edge sewn twice',
      (own) => void own.hems.push({ ...own.hems[0]!, id: 'again' }),
      /the upper edge of “body 1” is sewn twice/,
    ],
    [
      'a gathered seam that is too short',
      (own) => {
        own.pieces[2]!.dimensions.width = { fixed: 500 }
      },
      /must be the longer/,
    ],
    [
      'an edge that is not there',
      (own) => {
        own.hems[0]!.edges[0]!.edge = 'collar'
      },
      /There is no edge body\/1\/collar/,
    ],
    [
      'sizes that wait for each other',
      (own) => {
        own.pieces[0]!.dimensions.width = { edge: 'top', of: 'skirt', factor: 1 }
      },
      /waits for this piece/,
    ],
    [
      'a size that cannot be cut',
      (own) => {
        own.pieces[0]!.dimensions.length = { fixed: 1 }
      },
      /comes to a size of 0.1 cm/,
    ],
    [
      'a measure’s ease that eats it up',
      (own) => {
        own.pieces[0]!.dimensions.width = { measure: 'bustGirth', factor: 0.5, ease: -900 }
      },
      /comes to a size of/,
    ],
  ] as [string, (own: OwnConstruction) => void, RegExp][])('is told of %s', (_, change, told) => {
    expect(spoilt(change).join(' ')).toMatch(told)
  })

  test('warns when it is too small at a level that was named', () => {
    const own = structuredClone(FROCK)
    own.fit[0]!.ease = 200
    expect(tryOwn(own, 'own:frock', body).draft!.fit.map(({ status }) => status)).toEqual(['fails'])
  })
})
