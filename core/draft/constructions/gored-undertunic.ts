import type { Body } from '../../measure/body.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { SLEEVED_REQUIRED, SLEEVED_USEFUL } from '../sleeved.ts'
import type { Draft } from '../types.ts'
import { CHOICES } from './gored-tunic/choices.ts'
import { describeTunic, draftTunic, NO_EXTRAS, refuseTwice } from './gored-tunic/tunic.ts'

/**
 * A tunic of straight panels, tapered sleeves, square underarm gussets and gores from the waist: the
 * under-layer of the eleventh to fourteenth centuries in much of Europe, and outer tunics on the same cut.
 */
export const goredUndertunic: Construction = {
  id: 'goredUndertunic',
  // From memory; to be held against the books.
  sources: [
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
    'E. Østergård: Woven into the Earth',
    'D. K. Burnham: Cut My Cote',
  ],
  required: SLEEVED_REQUIRED,
  useful: SLEEVED_USEFUL,
  choices: CHOICES,
  often: ['hemLevel', 'length', 'chestEase', 'neck', 'sleeve', 'gores', 'sweep'],
  usualFibre: 'linen',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: describeTunic,
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(goredUndertunic, body)
  refuseTwice(asked)
  return draftTunic(goredUndertunic.id, body, readChoices(CHOICES, asked, unit), asked, NO_EXTRAS)
}
