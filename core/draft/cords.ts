import type { Body } from '../measure/body.ts'
import { type Phrase, phrase } from '../words/phrase.ts'

/**
 * EN 14682 (safety of children's clothing: cords and drawstrings), as summarised by market authorities: the
 * strictest rules to seven years or 134 cm, others to fourteen. The standard itself decides, and local law.
 */
const SMALL = { age: 7, stature: 1340 }
const CHILD = { age: 14 }

/** Whether a cord at hood or neck is left off unless the maker asks for it. */
export const cordsUnsafe = (body: Body): boolean => cordCautions(body).length > 0

/** The cautions on cords for a child, by age, and where that is not known by stature. */
export function cordCautions({ age, measures }: Body): Phrase[] {
  const stature = measures.stature?.mm
  const small = age === undefined ? stature !== undefined && stature <= SMALL.stature : age < SMALL.age
  if (small) return [phrase('draft.caution.cordsSmall')]
  return age !== undefined && age < CHILD.age ? [phrase('draft.caution.cordsChild')] : []
}
