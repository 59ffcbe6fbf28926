import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, refuseBoth } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { cordsUnsafe } from '../cords.ts'
import { headPasses, least } from '../fit-trunk.ts'
import { flatBody } from '../flat.ts'
import { work } from '../making.ts'
import { finishedSizes, named, sizeIn } from '../names.ts'
import { assembled } from '../parts/assembly.ts'
import { bandPiece, bandSewn } from '../parts/band.ts'
import { bodyOf } from '../parts/body.ts'
import { linenFits, linenOf } from '../parts/linen.ts'
import { linenSteps } from '../parts/linen-steps.ts'
import { goreHems } from '../parts/quarter-gores.ts'
import { reversedGores } from '../parts/reversed-gores.ts'
import { sleevesOf } from '../parts/sleeves.ts'
import { allowancesFor, hemmed, SHOULDER_HOLD, TAKEN_UP, THUMB, toFives } from '../practice.ts'
import { totalsOf, turnedHem } from '../seams.ts'
import { type Dip, neckWidthFor } from '../shapes/neckline.ts'
import { SLEEVED_REQUIRED, SLEEVED_USEFUL } from '../sleeved.ts'
import type { Draft, Notion } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hemLevel: { kind: 'option', options: ['knee', 'midCalf', 'ankle'], default: 'midCalf' },
  length: { kind: 'length', range: [450, 1800] },
  chestEase: { kind: 'length', range: [20, 600], default: 240 },
  shoulder: { kind: 'option', options: ['seam', 'cutInOne'], default: 'cutInOne' },
  panelWidth: { kind: 'length', range: [250, 1000] },
  goreWidth: { kind: 'length', range: [30, 450] },
  neckHeight: { kind: 'option', options: ['high', 'low'], default: 'high' },
  fullness: { kind: 'count', options: [1.5, 2, 2.5, 3], default: 2 },
  bandDepth: { kind: 'length', range: [8, 80], default: 25 },
  slitLength: { kind: 'length', range: [80, 450], default: 240 },
  closing: { kind: 'option', options: ['hooks', 'ties'] },
  armholeEase: { kind: 'length', range: [0, 300], default: 150 },
  gusset: { kind: 'length', range: [40, 180] },
  sleeve: { kind: 'option', options: ['wrist', 'elbow'], default: 'wrist' },
  sleeveLength: { kind: 'length', range: [80, 1000] },
  cuffDepth: { kind: 'length', range: [8, 80], default: 25 },
  cuffOpening: { kind: 'length', range: [40, 200], default: 90 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  bottomHem: { kind: 'length', range: [5, 60], default: 15 },
} as const satisfies Choices

/** Rows of gathering thread at the neck, dips of the cut neck ÷ neck base girth, and what a band overlaps (common practice). */
const ROWS = 3
const DIPS = { front: 0.2, back: 0.07 }
const OVERLAP = 20
/** A high band sits this much above the neck base, as a part of its girth; a low one so much below (from memory). */
const BAND_TO_BASE = { high: 0.93, low: 1.35 }
const CUFF_EASE = 30
const NECK_EASE = 15
const TIE = 250

/**
 * A shift of the sixteenth century: straight body, reversed gores and square gussets, with neck and sleeves
 * gathered into bands.
 */
export const smock: Construction = {
  id: 'smock',
  // From memory.
  sources: ['J. Arnold, J. Tiramani, S. Levey: Patterns of Fashion 4', 'D. K. Burnham: Cut My Cote'],
  required: [...SLEEVED_REQUIRED, ['wristGirth']],
  useful: [...SLEEVED_USEFUL, 'neckGirth'],
  choices: CHOICES,
  often: ['hemLevel', 'length', 'neckHeight', 'fullness', 'chestEase', 'closing'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: ({ choices, sizes }) => [
    phrase('draft.describe.smock', {
      length: sizeIn({ sizes }, 'length'),
      sweep: sizeIn({ sizes }, 'sweep'),
    }),
    phrase(`draft.describe.smockNeck.${choices.neckHeight as 'high' | 'low'}`, {
      band: sizeIn({ sizes }, 'neckBand'),
    }),
    phrase('draft.describe.smockCuffs', { cuff: sizeIn({ sizes }, 'wrist') }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(smock, body)
  refuseBoth(asked, 'hemLevel', 'length')
  refuseBoth(asked, 'sleeve', 'sleeveLength')
  const chosen = readChoices(CHOICES, asked, unit)
  const linen = linenOf(body, chosen)
  const { length, armhole, gusset, arm, flared, sleeveLength, head } = linen
  const { width, flare } = flared
  const finish = chosen.seamFinish
  const allowances = allowancesFor(finish)
  const base = lengthOf(body, 'neckBaseGirth')!
  const close = chosen.closing ?? (cordsUnsafe(body) ? 'hooks' : 'ties')
  const tie = close === 'ties' ? TIE : 0
  const round = Math.max(
    base * BAND_TO_BASE[chosen.neckHeight],
    (lengthOf(body, 'neckGirth') ?? 0) + NECK_EASE,
  )
  const neckBand = toFives(round) + (tie > 0 ? 0 : OVERLAP)
  const neck = gatheredNeck(base, neckBand * chosen.fullness, width)
  // A band goes round what lies where the sleeve ends.
  const low = sleeveLength < linen.places.forearm ? 'elbowGirth' : 'wristGirth'
  const girth = lengthOf(body, low) ?? lengthOf(body, 'upperArmGirth')!
  const cuff = {
    length: Math.min(head, toFives(girth + CUFF_EASE) + OVERLAP),
    depth: chosen.cuffDepth,
    tie: 0,
  }
  const hem = hemmed(chosen.bottomHem)
  const opening = Math.min(chosen.cuffOpening, (sleeveLength - gusset) / 2)
  const slit = Math.min(chosen.slitLength, length - arm)
  const trunk = bodyOf({
    ...{ inOne: chosen.shoulder === 'cutInOne', width, front: length, back: length, arm, flare },
    ...{ neck, slit, finish },
    allowances: { ...allowances, neck: TAKEN_UP, hem },
  })
  const gores = reversedGores(trunk, { flare, length: length - arm, hem, finish, allowances })
  const shape = { head, wrist: head, length: sleeveLength, gusset, armhole, opening, wristHem: 0 }
  const sleeves = sleevesOf({ ...shape, band: cuff, finish, allowances }, trunk)
  const band = { length: neckBand, depth: chosen.bandDepth, tie }
  const { pieces, seams, hems } = assembled([
    trunk,
    gores,
    sleeves,
    { pieces: [bandPiece(band, 'neckband')] },
    bandSewn(band, [...trunk.neck('front'), ...trunk.neck('back')], { gathers: ROWS }, { piece: 'neckband' }),
    {
      hems: [
        turnedHem({ id: 'slit', kind: 'slit', name: named('hem', 'slit'), spans: trunk.slit, depth: 4 }),
        turnedHem({
          ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom') },
          ...{ spans: [...trunk.hem, ...goreHems(gores)], depth: chosen.bottomHem },
        }),
      ],
    },
  ])
  const hooks = close === 'hooks' ? 1 : 0
  const notions: Notion[] = [{ notion: 'hook', count: hooks + 2 }]
  return assertSewable({
    construction: smock.id,
    choices: {
      ...chosen,
      ...{ length, panelWidth: width, goreWidth: flare, closing: close, gusset, sleeveLength },
      ...{ slitLength: slit, cuffOpening: opening },
    },
    ...{ pieces, seams, hems },
    steps: linenSteps(pieces, seams, hems, {
      atNeck: [work('reinforceSlit', 1), ...(hooks > 0 ? [work('sewHook', hooks)] : [])],
      atWrists: [work('sewHook', 2)],
      levelled: flared.sweep,
    }),
    fit: [
      ...linenFits(body, linen),
      least(body, 'cuffCloses', cuff.length - OVERLAP, () => girth, 'armholeEase'),
      least(
        body,
        'hand',
        cuff.length + 2 * opening,
        () => lengthOf(body, 'handGirth')! + THUMB,
        'cuffOpening',
      ),
      headPasses(body, neckBand + 2 * slit, 'slitLength'),
    ],
    cautions: [
      ...(tie > 0 ? [phrase('draft.caution.cordEnds')] : []),
      ...hangingCautions(hems, linen.levels.cervicalHeight - length),
    ],
    notions,
    flat: flatBody({
      ...{ half: width / 2, length, neck: { ...neck, width: neckBand / Math.PI }, slit, armhole, gusset },
      sleeve: { wrist: cuff.length, length: sleeveLength + cuff.depth },
      skirt: { from: arm, by: 2 * flare, seam: flare },
    }),
    sizes: finishedSizes({
      ...{ length, chest: 2 * width, sweep: flared.sweep, neckBand, wrist: cuff.length },
      backToWrist: width / 2 + sleeveLength + cuff.depth,
    }),
    totals: totalsOf(pieces, seams, hems),
  })
}

/** A neck so wide that its edge is `around` long, as far as the panel allows. */
function gatheredNeck(base: number, around: number, panel: number): { width: number; front: Dip; back: Dip } {
  const front: Dip = { form: 'arc', depth: toFives(base * DIPS.front) }
  const back: Dip = { form: 'arc', depth: toFives(base * DIPS.back) }
  const width = neckWidthFor(around, base / Math.PI, panel - 2 * SHOULDER_HOLD, front, back)
  return { width, front, back }
}
