import { type Body, lengthOf, type Measure } from '../../measure/body.ts'
import type { MeasureId } from '../../measure/vocabulary.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { least } from '../fit-trunk.ts'
import { THUMB } from '../practice.ts'
import { SLEEVED_REQUIRED, SLEEVED_USEFUL } from '../sleeved.ts'
import type { Draft } from '../types.ts'
import { CHOICES as TUNIC } from './gored-tunic/choices.ts'
import { describeTunic, draftTunic, refuseTwice } from './gored-tunic/tunic.ts'

const CHOICES = {
  ...TUNIC,
  chestEase: { kind: 'length', range: [60, 350], default: 140 },
  beneath: { kind: 'length', range: [0, 20], default: 2 },
  forearm: { kind: 'option', options: ['plain', 'buttoned'], default: 'plain' },
  forearmOpening: { kind: 'length', range: [60, 400], default: 180 },
  buttonSpacing: { kind: 'length', range: [10, 60], default: 22 },
  sideSlit: { kind: 'length', range: [0, 700], default: 0 },
  lined: { kind: 'yesNo', default: false },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
} as const satisfies Choices

/** What is worn beneath lies round these. */
const OVER: readonly MeasureId[] = [
  ...(['bustGirth', 'chestGirth', 'waistGirth', 'hipGirth', 'upperArmGirth'] as const),
  ...(['elbowGirth', 'forearmGirth', 'calfGirth'] as const),
]
/** A buttoned wrist closes on the arm with so much room (common practice), mm. */
const CLOSED = 25

/**
 * The tunic worn over another, of wool: the undertunic’s cut with room for what is beneath, lined or not, its forearms
 * buttoned and its sides slit if one likes.
 */
export const overtunic: Construction = {
  id: 'overtunic',
  // From memory.
  sources: [
    'E. Østergård: Woven into the Earth',
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
  ],
  required: SLEEVED_REQUIRED,
  useful: [...SLEEVED_USEFUL, 'wristGirth'],
  choices: CHOICES,
  often: ['hemLevel', 'length', 'chestEase', 'forearm', 'sideSlit', 'lined', 'gores'],
  usualFibre: 'wool',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: (made) => [
    ...describeTunic(made),
    ...(made.choices.forearm === 'buttoned' ? [phrase('draft.describe.forearmButtoned')] : []),
    ...((made.choices.sideSlit as number) > 0
      ? [phrase('draft.describe.sideSlits', { slit: { mm: made.choices.sideSlit as number } })]
      : []),
    ...(made.choices.lined === true ? [phrase('draft.describe.lined')] : []),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(overtunic, body)
  refuseTwice(asked)
  const { beneath, forearm, forearmOpening, buttonSpacing, sideSlit, lined, ...chosen } = readChoices(
    CHOICES,
    asked,
    unit,
  )
  const buttoned = forearm === 'buttoned'
  const opening = buttoned ? forearmOpening : 0
  const buttons = buttoned ? 2 * (Math.floor(opening / buttonSpacing) + 1) : 0
  const made = draftTunic(
    overtunic.id,
    dressed(body, beneath, buttoned),
    // A lining is its own facing.
    lined ? { ...chosen, neckFinish: 'rolled' } : chosen,
    asked,
    {
      ...{ forearm: opening, side: sideSlit, lined, buttons },
      notions: buttons > 0 ? [{ notion: 'button', count: buttons }] : [],
    },
  )
  const wrist = made.choices.wristWidth as number
  return {
    ...made,
    choices: settled({
      ...made.choices,
      beneath,
      forearm,
      forearmOpening: opening,
      buttonSpacing,
      sideSlit,
      lined,
    }),
    fit: made.fit.map((check) =>
      check.id === 'hand'
        ? least(body, 'hand', wrist + 2 * opening, () => lengthOf(body, 'handGirth')! + THUMB, 'wristWidth')
        : check,
    ),
  }
}

/**
 * The body as the tunic finds it: rounder by 2π × the thickness of what is worn beneath; and where the forearm is
 * buttoned, only the wrist must pass its end.
 */
function dressed(body: Body, beneath: number, buttoned: boolean): Body {
  const round = Object.fromEntries(
    OVER.flatMap((id): [MeasureId, Measure][] => {
      const measure = body.measures[id]
      return measure === undefined ? [] : [[id, { ...measure, mm: measure.mm + 2 * Math.PI * beneath }]]
    }),
  )
  const wrist = lengthOf(body, 'wristGirth')
  const hand = body.measures.handGirth!
  const closed = buttoned && wrist !== undefined ? { handGirth: { ...hand, mm: wrist + CLOSED - THUMB } } : {}
  return { ...body, measures: { ...body.measures, ...round, ...closed } }
}
