import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import type { Construction } from '../construction.ts'
import { least } from '../fit-trunk.ts'
import { flatPiece } from '../flat.ts'
import { finishedSizes, sizeIn } from '../names.ts'
import { hemmedCloth } from '../parts/hemmed-cloth.ts'
import { box } from '../shapes/rectangle.ts'
import type { Draft } from '../types.ts'

const CHOICES = {
  side: { kind: 'length', range: [400, 1400], default: 900 },
  edgeHem: { kind: 'length', range: [2, 15], default: 3 },
} as const satisfies Choices

/** What the two points need beyond the head to be tied (common practice), mm. */
const TO_TIE = 300

/** A square of fine linen, folded on the cross and tied over or under the hair. */
export const kerchief: Construction = {
  id: 'kerchief',
  // From memory.
  sources: ['The Workwoman’s Guide (1838), of neckerchiefs and caps'],
  required: [],
  useful: ['headGirth'],
  choices: CHOICES,
  often: ['side'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: (made) => [phrase('draft.describe.kerchief', { side: sizeIn(made, 'side') })],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  const { side, edgeHem } = readChoices(CHOICES, asked, unit)
  const sides = box(side, side)
  return hemmedCloth({
    ...{ construction: kerchief.id, choices: { side, edgeHem } },
    ...{ piece: 'kerchief', sides, written: { square: side }, depth: edgeHem },
    fit: [
      least(body, 'ties', side * Math.SQRT2, () => lengthOf(body, 'headGirth')! + TO_TIE, 'side', [
        'headGirth',
      ]),
    ],
    cautions: [phrase('draft.caution.flame')],
    sizes: finishedSizes({ side }),
    flat: flatPiece(sides.flatMap(({ path }) => path)),
  })
}
