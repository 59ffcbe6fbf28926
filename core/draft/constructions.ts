import type { Body } from '../measure/body.ts'
import { isMeasureId } from '../measure/vocabulary.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { LengthUnit } from '../words/units.ts'
import type { Asked } from './choices.ts'
import type { Construction } from './construction.ts'
import { alteration } from './constructions/alteration.ts'
import { apron } from './constructions/apron.ts'
import { circleCloak } from './constructions/circle-cloak.ts'
import { coif } from './constructions/coif.ts'
import { drawers } from './constructions/drawers.ts'
import { goredUndertunic } from './constructions/gored-undertunic.ts'
import { hood } from './constructions/hood.ts'
import { hose } from './constructions/hose.ts'
import { kerchief } from './constructions/kerchief.ts'
import { lacedKirtle } from './constructions/laced-kirtle.ts'
import { overtunic } from './constructions/overtunic.ts'
import { petticoat } from './constructions/petticoat.ts'
import { shift } from './constructions/shift.ts'
import { shirt } from './constructions/shirt.ts'
import { sidelessOvergown } from './constructions/sideless-overgown.ts'
import { smock } from './constructions/smock.ts'
import { strapDress } from './constructions/strap-dress.ts'
import { veil } from './constructions/veil.ts'
import { wimple } from './constructions/wimple.ts'
import { cordCautions } from './cords.ts'
import { draftWithExtras, type Extras } from './extras.ts'
import type { Draft } from './types.ts'

/** Every garment the planner can draft. */
export const CONSTRUCTIONS: readonly Construction[] = [
  goredUndertunic,
  overtunic,
  shift,
  smock,
  shirt,
  circleCloak,
  hose,
  strapDress,
  sidelessOvergown,
  lacedKirtle,
  petticoat,
  drawers,
  apron,
  veil,
  wimple,
  coif,
  hood,
  kerchief,
  alteration,
]

/** @throws Refusal when there is no such construction */
export function constructionOf(id: string): Construction {
  const found = CONSTRUCTIONS.find((construction) => construction.id === id)
  if (found !== undefined) return found
  const known = CONSTRUCTIONS.map((construction) => construction.id).join(', ')
  throw new Refusal(phrase('refusal.draft.unknownConstruction', { id, known }))
}

/**
 * Drafts a garment by its construction, or the id of one.
 * @throws Refusal at `construction`, `measures.<id>`, `choices.<id>` or `extras.<id>`
 */
export function draftGarment(
  which: string | Construction,
  body: Body,
  choices: Asked,
  unit: LengthUnit,
  extras: Extras = {},
): Draft {
  const construction =
    typeof which === 'string' ? refusingAt('construction', () => constructionOf(which)) : which
  try {
    const draft = draftWithExtras(construction, body, choices, unit, extras)
    return { ...draft, cautions: [...cordCautions(body), ...draft.cautions] }
  } catch (error) {
    if (!(error instanceof Refusal) || error.field === undefined) throw error
    if (error.field.startsWith('extras')) throw error
    throw error.within(isMeasureId(error.field) ? 'measures' : 'choices')
  }
}
