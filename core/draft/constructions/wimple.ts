import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { least } from '../fit-trunk.ts'
import { flatPiece } from '../flat.ts'
import { finishedSizes, sizeIn } from '../names.ts'
import { hemmedCloth } from '../parts/hemmed-cloth.ts'
import { toFives } from '../practice.ts'
import { box } from '../shapes/rectangle.ts'
import type { Draft } from '../types.ts'

const CHOICES = {
  wimpleLength: { kind: 'length', range: [400, 1400] },
  wimpleDepth: { kind: 'length', range: [200, 700], default: 400 },
  edgeHem: { kind: 'length', range: [2, 15], default: 3 },
} as const satisfies Choices

/** Beyond the way under the chin to the crown and back: by default, and at least for the pins (common practice), mm. */
const USUAL = 300
const TO_PIN = 150

/** A length of fine linen under the chin, its ends pinned on the crown beneath a veil. */
export const wimple: Construction = {
  id: 'wimple',
  // From memory.
  sources: ['E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450'],
  required: [['headGirth']],
  useful: [],
  choices: CHOICES,
  often: ['wimpleLength', 'wimpleDepth'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: (made) => [
    phrase('draft.describe.wimple', { length: sizeIn(made, 'across'), depth: sizeIn(made, 'depth') }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(wimple, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const head = lengthOf(body, 'headGirth')!
  const length = chosen.wimpleLength ?? toFives(head + USUAL)
  const sides = box(chosen.wimpleDepth, length)
  return hemmedCloth({
    ...{ construction: wimple.id, choices: { ...chosen, wimpleLength: length } },
    ...{ piece: 'wimple', sides, written: { width: chosen.wimpleDepth, length }, depth: chosen.edgeHem },
    fit: [least(body, 'reaches', length, () => head + TO_PIN, 'wimpleLength')],
    cautions: [phrase('draft.caution.pinned'), phrase('draft.caution.flame')],
    sizes: finishedSizes({ across: length, depth: chosen.wimpleDepth }),
    flat: flatPiece(sides.flatMap(({ path }) => path)),
  })
}
