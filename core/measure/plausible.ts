import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Body } from './body.ts'
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

/** @throws Refusal at the first measure that cannot stand beside another on one body */
export function refuseImpossible(measures: Body['measures']): void {
  for (const [smaller, larger] of SMALLER_THAN) {
    const [small, large] = [measures[smaller]?.mm, measures[larger]?.mm]
    if (small === undefined || large === undefined || small < large) continue
    const params = {
      smaller: phrase(`measure.name.${smaller}`),
      larger: phrase(`measure.name.${larger}`),
      small: { mm: small },
      large: { mm: large },
    }
    throw new Refusal(phrase('refusal.measure.contradiction', params), smaller)
  }
}
