import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, refuseBoth } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { cordsUnsafe } from '../cords.ts'
import { headPasses, least, most } from '../fit-trunk.ts'
import { flatBody } from '../flat.ts'
import { work } from '../making.ts'
import { finishedSizes, named, sizeIn } from '../names.ts'
import { assembled } from '../parts/assembly.ts'
import { bodyOf } from '../parts/body.ts'
import { linenFits, linenOf } from '../parts/linen.ts'
import { linenSteps } from '../parts/linen-steps.ts'
import { goreHems } from '../parts/quarter-gores.ts'
import { reversedGores } from '../parts/reversed-gores.ts'
import { sleevesOf } from '../parts/sleeves.ts'
import { allowancesFor, hemmed, SHOULDER_HOLD, THUMB, TURNING, toFives } from '../practice.ts'
import { totalsOf, turnedHem } from '../seams.ts'
import { type Dip, neckPerimeter } from '../shapes/neckline.ts'
import { SLEEVED_REQUIRED, SLEEVED_USEFUL } from '../sleeved.ts'
import type { Draft } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hemLevel: { kind: 'option', options: ['knee', 'midCalf', 'ankle'], default: 'knee' },
  length: { kind: 'length', range: [450, 1800] },
  chestEase: { kind: 'length', range: [20, 500], default: 180 },
  shoulder: { kind: 'option', options: ['seam', 'cutInOne'], default: 'cutInOne' },
  panelWidth: { kind: 'length', range: [250, 1000] },
  goreWidth: { kind: 'length', range: [30, 450] },
  neckWidth: { kind: 'length', range: [100, 500] },
  neckDepth: { kind: 'length', range: [20, 260] },
  neckEnd: { kind: 'option', options: ['drawn', 'hemmed'] },
  armholeEase: { kind: 'length', range: [0, 300], default: 130 },
  gusset: { kind: 'length', range: [40, 180] },
  sleeve: { kind: 'option', options: ['wrist', 'elbow'], default: 'elbow' },
  sleeveLength: { kind: 'length', range: [80, 1000] },
  sleeveEnd: { kind: 'option', options: ['hemmed', 'banded'], default: 'hemmed' },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  bottomHem: { kind: 'length', range: [5, 60], default: 15 },
  wristHem: { kind: 'length', range: [3, 40], default: 8 },
} as const satisfies Choices

/** Depth of the casing at a drawn neck, and what its tape needs beyond it (common practice), mm. */
const CASING = 8
const TO_TIE = 500
/** Width of the neck beyond the neck itself ÷ both shoulders, and its dips ÷ neck base girth (common practice). */
const BARE = 0.5
const DIPS = { front: 0.4, back: 0.12 }
/** What a sleeve band gains beyond the arm and the sleeve beyond the band. */
const BAND = { depth: 20, ease: 50 }

/**
 * A straight body in one length over the shoulder, flared by the gores cut off its own sides, with square gussets and a
 * wide neck on a tape: the body linen of women in the eighteenth century.
 */
export const shift: Construction = {
  id: 'shift',
  // The first was read; the others are from memory.
  sources: [
    'The Workwoman’s Guide (1838), plate 6: gored shifts',
    'Instructions for Cutting Out Apparel for the Poor (1789)',
    'D. K. Burnham: Cut My Cote',
  ],
  required: SLEEVED_REQUIRED,
  useful: SLEEVED_USEFUL,
  choices: CHOICES,
  often: ['hemLevel', 'length', 'chestEase', 'sleeve', 'sleeveEnd', 'neckEnd'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: ({ choices, sizes }) => [
    phrase('draft.describe.shift', {
      length: sizeIn({ sizes }, 'length'),
      sweep: sizeIn({ sizes }, 'sweep'),
    }),
    phrase(`draft.describe.shiftNeck.${choices.neckEnd as 'drawn' | 'hemmed'}`),
    phrase(`draft.describe.sleeveEnd.${choices.sleeveEnd as 'hemmed' | 'banded'}`, {
      reach: sizeIn({ sizes }, 'backToWrist'),
    }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(shift, body)
  refuseBoth(asked, 'hemLevel', 'length')
  refuseBoth(asked, 'sleeve', 'sleeveLength')
  const chosen = readChoices(CHOICES, asked, unit)
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const linen = linenOf(body, chosen)
  const { length, armhole, gusset, arm, flared, sleeveLength, head } = linen
  const { width } = flared
  const neck = neckOf(body, chosen, width)
  // A band lets the hand through, and goes round what lies where the sleeve ends.
  const round =
    sleeveLength < linen.places.forearm
      ? (lengthOf(body, 'elbowGirth') ?? measure('upperArmGirth') * 0.9) + BAND.ease
      : 0
  const bandLength = Math.min(head, toFives(Math.max(measure('handGirth') + THUMB, round)))
  const banded = chosen.sleeveEnd === 'banded'
  const finish = chosen.seamFinish
  const allowances = allowancesFor(finish)
  const drawn = (chosen.neckEnd ?? (cordsUnsafe(body) ? 'hemmed' : 'drawn')) === 'drawn'
  const neckDepth = drawn ? CASING : 4
  const hem = hemmed(chosen.bottomHem)
  const trunk = bodyOf({
    ...{
      inOne: chosen.shoulder === 'cutInOne',
      width,
      front: length,
      back: length,
      arm,
      flare: flared.flare,
    },
    ...{ neck, slit: 0, finish },
    allowances: { ...allowances, neck: neckDepth + TURNING, hem },
  })
  const gores = reversedGores(trunk, { flare: flared.flare, length: length - arm, hem, finish, allowances })
  const sleeves = sleevesOf(
    {
      ...{ head, wrist: head, length: sleeveLength, gusset, armhole, opening: 0, wristHem: chosen.wristHem },
      ...(banded ? { band: { length: bandLength, depth: BAND.depth, tie: 0 } } : {}),
      ...{ finish, allowances },
    },
    trunk,
  )
  const around = [...trunk.neck('front'), ...trunk.neck('back')]
  const perimeter = neckPerimeter(neck.width, neck.front, neck.back)
  const { pieces, seams, hems } = assembled([
    trunk,
    gores,
    sleeves,
    {
      hems: [
        turnedHem({
          id: 'neck',
          kind: 'neck',
          name: named('hem', drawn ? 'drawnNeck' : 'neck'),
          spans: around,
          depth: neckDepth,
          allowance: neckDepth + TURNING,
        }),
        turnedHem({
          id: 'bottom',
          kind: 'bottom',
          name: named('hem', 'bottom'),
          spans: [...trunk.hem, ...goreHems(gores)],
          depth: chosen.bottomHem,
        }),
      ],
    },
  ])
  const end = banded ? bandLength : head
  return assertSewable({
    construction: shift.id,
    choices: {
      ...chosen,
      ...{
        length,
        panelWidth: width,
        goreWidth: flared.flare,
        neckWidth: neck.width,
        neckDepth: neck.front.depth,
      },
      ...{ neckEnd: drawn ? 'drawn' : 'hemmed', gusset, sleeveLength },
    },
    ...{ pieces, seams, hems },
    steps: linenSteps(pieces, seams, hems, {
      atNeck: [work('clipNeck', perimeter / 1000), ...(drawn ? [work('drawCord', 1)] : [])],
      levelled: flared.sweep,
    }),
    fit: [
      ...linenFits(body, linen),
      least(body, 'hand', end, () => measure('handGirth') + THUMB, 'armholeEase'),
      headPasses(body, perimeter, 'neckWidth'),
      ...(drawn ? [] : [most(body, 'neckStays', neck.width, () => neck.widest, 'neckWidth')]),
    ],
    cautions: [
      ...(drawn ? [phrase('draft.caution.cordEnds')] : []),
      ...hangingCautions(hems, linen.levels.cervicalHeight - length),
    ],
    notions: drawn ? [{ notion: 'tape', mm: perimeter + TO_TIE }] : [],
    flat: flatBody({
      ...{ half: width / 2, length, neck, armhole, gusset },
      sleeve: { wrist: head, length: sleeveLength },
      skirt: { from: arm, by: 2 * flared.flare, seam: flared.flare },
    }),
    sizes: finishedSizes({
      ...{ length, chest: 2 * width, sweep: flared.sweep, backToWrist: width / 2 + sleeveLength },
    }),
    totals: totalsOf(pieces, seams, hems),
  })
}

type Neck = { width: number; front: Dip; back: Dip; widest: number }

/** A wide round neck: half of each shoulder bare unless it is asked otherwise. */
function neckOf(
  body: Body,
  chosen: { neckWidth: number | undefined; neckDepth: number | undefined },
  panel: number,
): Neck {
  const base = lengthOf(body, 'neckBaseGirth')!
  const shoulders = 2 * lengthOf(body, 'shoulderLength')!
  const widest = base / Math.PI + shoulders - 2 * SHOULDER_HOLD
  const width =
    chosen.neckWidth ?? Math.min(toFives(base / Math.PI + BARE * shoulders), panel - 2 * SHOULDER_HOLD)
  if (width > panel - 2 * SHOULDER_HOLD)
    throw new Refusal(
      phrase('refusal.draft.neckTooWide', { width: { mm: width }, panel: { mm: panel } }),
      'neckWidth',
    )
  const depth = (part: number): Dip => ({ form: 'arc', depth: toFives(base * part) })
  const front: Dip =
    chosen.neckDepth === undefined ? depth(DIPS.front) : { form: 'arc', depth: chosen.neckDepth }
  return { width, front, back: depth(DIPS.back), widest }
}
