import { type Phrase, phrase } from '../words/phrase.ts'
import { MOST_FULLNESS } from './practice.ts'
import type { Hem } from './types.ts'

/** Hems nearer to the floor than this trail by the fire and on the stairs (common practice), mm. */
const TRAILING = 120

/**
 * What to say of a garment by the way it hangs: hems so deep that they pucker on their curve, a hem that trails, and
 * last, of every one, flame.
 *
 * @param fromFloor of the lowest hem, mm; not given for what hangs nowhere near it
 */
export function hangingCautions(hems: readonly Hem[], fromFloor = Infinity): Phrase[] {
  const puckering = new Set(
    hems.filter(({ fullness }) => fullness > MOST_FULLNESS + 1e-9).map(({ depth }) => depth),
  )
  return [
    ...[...puckering].map((mm) => phrase('draft.caution.hemPuckers', { depth: { mm } })),
    ...(fromFloor < TRAILING ? [phrase('draft.caution.trailing')] : []),
    phrase('draft.caution.flame'),
  ]
}
