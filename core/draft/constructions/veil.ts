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
import { halfCircle, wholeCircle } from '../shapes/round.ts'
import type { Draft } from '../types.ts'

const CHOICES = {
  veilShape: { kind: 'option', options: ['rectangle', 'halfCircle', 'circle'], default: 'rectangle' },
  veilLength: { kind: 'length', range: [500, 3000], default: 1700 },
  veilDepth: { kind: 'length', range: [250, 1400], default: 650 },
  edgeHem: { kind: 'length', range: [2, 15], default: 3 },
} as const satisfies Choices

/** A veil reaches over the head and down to both shoulders: this many head girths (common practice). */
const OVER_THE_HEAD = 1.5

/** A hemmed length, half circle or circle of fine linen or silk, pinned over the hair. */
export const veil: Construction = {
  id: 'veil',
  // From memory.
  sources: ['E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450'],
  required: [],
  useful: ['headGirth'],
  choices: CHOICES,
  often: ['veilShape', 'veilLength', 'veilDepth'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: (made) => [
    phrase(`draft.describe.veil.${made.choices.veilShape as Shape}`, {
      ...{ length: sizeIn(made, 'across'), depth: sizeIn(made, 'depth') },
    }),
  ],
}

type Shape = 'rectangle' | 'halfCircle' | 'circle'

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  const chosen = readChoices(CHOICES, asked, unit)
  const { veilShape, edgeHem } = chosen
  const radius = chosen.veilLength / 2
  const depth = { rectangle: chosen.veilDepth, halfCircle: radius, circle: 2 * radius }[veilShape]
  const { curve, straight } = halfCircle(radius)
  const sides = {
    rectangle: box(depth, chosen.veilLength),
    halfCircle: [
      { id: 'curve', path: curve },
      { id: 'straight', path: straight },
    ],
    circle: [{ id: 'curve', path: wholeCircle(radius) }],
  }[veilShape]
  return hemmedCloth({
    ...{ construction: veil.id, choices: { ...chosen, veilDepth: depth } },
    ...{ piece: 'veil', sides, depth: edgeHem },
    written: veilShape === 'rectangle' ? { width: depth, length: chosen.veilLength } : { radius },
    fullness: veilShape === 'rectangle' ? 0 : (2 * edgeHem) / radius,
    fit: [
      least(
        body,
        'covers',
        chosen.veilLength,
        () => lengthOf(body, 'headGirth')! * OVER_THE_HEAD,
        'veilLength',
        ['headGirth'],
      ),
    ],
    cautions: [phrase('draft.caution.flame')],
    sizes: finishedSizes({ across: chosen.veilLength, depth }),
    flat: flatPiece(sides.flatMap(({ path }) => path)),
  })
}
