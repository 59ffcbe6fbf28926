import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Lengths } from './proportions.ts'
import type { MeasureId } from './vocabulary.ts'

/**
 * Pairs of which the first is smaller on every body, by what the measures are: heights of points one above
 * the other on the standing body, and a girth of the arm inside a longer one of the trunk. Held against
 * ANSUR II (US Army 2012, public release) in the tests: no body of that survey breaks one of them.
 */
const SMALLER_THAN: readonly (readonly [smaller: MeasureId, larger: MeasureId])[] = [
  ['cervicalHeight', 'stature'],
  ['waistHeight', 'cervicalHeight'],
  ['hipHeight', 'waistHeight'],
  ['insideLegHeight', 'waistHeight'],
  ['kneeHeight', 'insideLegHeight'],
  ['kneeHeight', 'hipHeight'],
  ['armLength', 'cervicalToWristLength'],
  ['upperArmLength', 'armLength'],
  ['wristGirth', 'forearmGirth'],
  ['upperArmGirth', 'bustGirth'],
  ['upperArmGirth', 'chestGirth'],
  ['neckBaseGirth', 'bustGirth'],
  ['neckBaseGirth', 'chestGirth'],
]

/** Pairs of which the first should be smaller and is not. */
export const contradictions = (lengths: Lengths): (readonly [smaller: MeasureId, larger: MeasureId])[] =>
  SMALLER_THAN.filter(([smaller, larger]) => {
    const [small, large] = [lengths[smaller], lengths[larger]]
    return small !== undefined && large !== undefined && small >= large
  })

/** @throws Refusal at the first measure that cannot stand beside another on one body */
export function refuseImpossible(lengths: Lengths): void {
  const [found] = contradictions(lengths)
  if (found === undefined) return
  const [smaller, larger] = found
  throw new Refusal(
    phrase('refusal.measure.contradiction', {
      smaller: phrase(`measure.name.${smaller}`),
      larger: phrase(`measure.name.${larger}`),
      small: { mm: lengths[smaller]! },
      large: { mm: lengths[larger]! },
    }),
    smaller,
  )
}
