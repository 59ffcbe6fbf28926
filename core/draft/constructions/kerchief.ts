import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import type { Construction } from '../construction.ts'
import { fitCheck } from '../fit.ts'
import { makingOf } from '../making.ts'
import { hem, totalsOf, wholeEdge } from '../seams.ts'
import { alone, rectangle } from '../shapes/rectangle.ts'
import type { Draft } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  side: { kind: 'length', range: [400, 1400], default: 900 },
  edgeHem: { kind: 'length', range: [2, 15], default: 3 },
} as const satisfies Choices

/** First turning of a narrow hem, mm (common practice). */
const TURNING = 4
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
  finishPlan: 'allByHand',
  draft,
  describe: ({ sizes }) => [phrase('draft.describe.kerchief', { side: { mm: sizes[0]!.mm } })],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  const { side, edgeHem } = readChoices(CHOICES, asked, unit)
  const turned = { allowance: edgeHem + TURNING, turned: true }
  const name = phrase('draft.piece.kerchief')
  const pieces = [
    rectangle({
      ...{ id: 'square', name, copies: alone('square', name), width: side, length: side },
      sides: { bottom: turned, right: turned, top: turned, left: turned },
    }),
  ]
  const hems = [
    hem({
      ...{ id: 'edge', kind: 'edge', name: phrase('draft.hem.edge'), seen: true, fullness: 0 },
      ...{ depth: edgeHem, allowance: turned.allowance },
      spans: ['bottom', 'right', 'top', 'left'].map((edge) => wholeEdge(pieces, 'square', 'square', edge)),
    }),
  ]
  const { step, hemming, before, after } = makingOf(pieces, [], hems)
  return assertSewable({
    construction: kerchief.id,
    choices: { side, edgeHem },
    ...{ pieces, seams: [], hems },
    steps: [
      ...before,
      step(
        'edges',
        'hem',
        [],
        hemming(() => true),
      ),
      ...after,
    ],
    fit: [
      fitCheck(body, {
        ...{ id: 'ties', from: ['headGirth'], bound: 'least', mend: phrase('draft.mend.side') },
        garment: () => side * Math.SQRT2,
        needs: () => lengthOf(body, 'headGirth')! + TO_TIE,
      }),
    ],
    cautions: [phrase('draft.caution.flame')],
    sizes: [{ id: 'side', name: phrase('draft.finished.side'), mm: side }],
    totals: totalsOf(pieces, [], hems),
  })
}
