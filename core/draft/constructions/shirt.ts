import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { placesOnSleeve } from '../arm.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { chestOf, clearsFloor, headPasses, least, trunkFits } from '../fit-trunk.ts'
import { flatBody } from '../flat.ts'
import { levelsOf } from '../levels.ts'
import { work } from '../making.ts'
import { finishedSizes, named, one, pair, sizeIn } from '../names.ts'
import { type Assembly, assembled } from '../parts/assembly.ts'
import { type Band, bandPiece, bandSewn } from '../parts/band.ts'
import { bodyOf, type SewnBody } from '../parts/body.ts'
import { linenSteps } from '../parts/linen-steps.ts'
import { sleevesOf } from '../parts/sleeves.ts'
import { cutPiece, straightSides } from '../pieces.ts'
import { HANDS, PARTS } from '../places.ts'
import { allowancesFor, hemmed, LEAST_EASE, TAKEN_UP, THUMB, toFives } from '../practice.ts'
import { edgesOn, part, partFromEnd, seam, totalsOf, turnedHem } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import { SLEEVED_REQUIRED, SLEEVED_USEFUL } from '../sleeved.ts'
import type { Copy, Draft, Span } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  chestEase: { kind: 'length', range: [80, 700], default: 300 },
  bodyWidth: { kind: 'length', range: [250, 1100] },
  backLength: { kind: 'length', range: [350, 1300] },
  frontShorter: { kind: 'length', range: [0, 150], default: 60 },
  shoulderWidth: { kind: 'length', range: [40, 400] },
  neckGusset: { kind: 'length', range: [20, 180], default: 75 },
  collarLength: { kind: 'length', range: [200, 700] },
  collarDepth: { kind: 'length', range: [20, 160], default: 75 },
  slitLength: { kind: 'length', range: [80, 450], default: 270 },
  armholeDepth: { kind: 'length', range: [80, 450] },
  gusset: { kind: 'length', range: [40, 260], default: 130 },
  sleeveWidth: { kind: 'length', range: [150, 1000] },
  sleeveLength: { kind: 'length', range: [120, 900] },
  cuffLength: { kind: 'length', range: [100, 400] },
  cuffDepth: { kind: 'length', range: [10, 90], default: 40 },
  cuffOpening: { kind: 'length', range: [40, 200], default: 90 },
  sideSlit: { kind: 'length', range: [60, 500], default: 220 },
  binderWidth: { kind: 'length', range: [30, 260], default: 85 },
  binderLength: { kind: 'length', range: [120, 900] },
  strapWidth: { kind: 'length', range: [15, 150], default: 40 },
  bottomHem: { kind: 'length', range: [3, 40], default: 6 },
} as const satisfies Choices

/** Rows of gathering thread at neck and wrist, what bands overlap, and room beyond neck and wrist (common practice). */
const ROWS = 2
const OVERLAP = 20
const COLLAR_EASE = 20
const CUFF_EASE = 35
/** Fullness of neck and sleeve when nothing else decides (common practice). */
const FULL = { neck: 1.7, sleeve: 1.25 }
/** Shirt tails end this part of the way from crotch to knee (common practice). */
const TAIL = 0.55
/** Side of the little squares at slits and wrists ÷ neck gusset (the guide of 1838 has ¼ to ½). */
const SMALL = 0.4
/** Felled down all round on the inside, mm. */
const LAID = 6
const BUTTONS = { collar: 2, wrists: 2 }

/**
 * The man's shirt of the eighteenth and early nineteenth century: nineteen straight parts, gathered into collar
 * and wristbands, with gussets under the arms and beside the neck and linings where it strains.
 */
export const shirt: Construction = {
  id: 'shirt',
  // The first was read; the others as others give them.
  sources: [
    'The Workwoman’s Guide (1838), plate 17: labourers’ shirts',
    'F. A. de Garsault: L’Art de la lingère (1771)',
    'Instructions for Cutting Out Apparel for the Poor (1789)',
  ],
  required: [...SLEEVED_REQUIRED, ['wristGirth']],
  useful: [...SLEEVED_USEFUL, 'neckGirth'],
  choices: CHOICES,
  often: ['chestEase', 'backLength', 'collarLength', 'collarDepth', 'sleeveLength', 'slitLength'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: ({ sizes }) => [
    phrase('draft.describe.shirt', {
      length: sizeIn({ sizes }, 'length'),
      chest: sizeIn({ sizes }, 'chest'),
    }),
    phrase('draft.describe.shirtEnds', {
      collar: sizeIn({ sizes }, 'neckBand'),
      cuff: sizeIn({ sizes }, 'wrist'),
    }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(shirt, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const levels = levelsOf(body)
  const g = chosen.neckGusset
  const around = Math.max(chestOf(body), measure('waistGirth'), measure('hipGirth') - SLIT_GIVES)
  const width = chosen.bodyWidth ?? toFives((around + chosen.chestEase) / 2)
  const back = chosen.backLength ?? toFives(tailLength(levels))
  const front = back - chosen.frontShorter
  const neckGirth = lengthOf(body, 'neckGirth') ?? measure('neckBaseGirth') * NECK_TO_BASE
  const collarLength = chosen.collarLength ?? toFives(neckGirth + COLLAR_EASE) + OVERLAP
  const wanted = (FULL.neck * collarLength - 2 * g * Math.SQRT2) / 2 + 2 * g
  const shoulder = chosen.shoulderWidth ?? Math.max(40, (width - toFives(Math.max(wanted, 2 * g + 40))) / 2)
  const neck = width - 2 * shoulder
  if (neck < 2 * g + 20)
    throw new Refusal(
      phrase('refusal.draft.shoulderTooWide', {
        shoulder: { mm: shoulder },
        most: { mm: Math.floor((width - 2 * g - 20) / 2) },
      }),
      'shoulderWidth',
    )
  const armhole = chosen.armholeDepth ?? toFives((measure('upperArmGirth') + 110) / 2)
  const gusset = chosen.gusset
  const arm = armhole + gusset
  if (front < arm + SHORTEST_SIDE)
    throw new Refusal(
      phrase('refusal.draft.shorterThanArmhole', {
        length: { mm: back },
        least: { mm: Math.ceil(arm + SHORTEST_SIDE + chosen.frontShorter) },
      }),
      'backLength',
    )
  const sideSlit = Math.min(chosen.sideSlit, front - arm - 40)
  const slit = Math.min(chosen.slitLength, front - 60)
  const places = placesOnSleeve(body, width)
  const cuff: Band = {
    length: chosen.cuffLength ?? toFives(measure('wristGirth') + CUFF_EASE) + OVERLAP,
    ...{ depth: chosen.cuffDepth, tie: 0 },
  }
  const sleeveWidth = chosen.sleeveWidth ?? toFives(Math.max(2 * armhole * FULL.sleeve, cuff.length * 1.5))
  const sleeveLength = chosen.sleeveLength ?? Math.max(gusset + 120, toFives(places.wrist + 30 - cuff.depth))
  if (sleeveLength < gusset + 60)
    throw new Refusal(
      phrase('refusal.draft.sleeveTooShort', { length: { mm: sleeveLength }, least: { mm: gusset + 60 } }),
      'sleeveLength',
    )
  if (sleeveWidth < 2 * armhole || sleeveWidth < cuff.length)
    throw new Refusal(
      phrase('refusal.draft.sleeveTooNarrow', {
        width: { mm: sleeveWidth },
        least: { mm: Math.max(2 * armhole, cuff.length) },
      }),
      'sleeveWidth',
    )
  const opening = Math.min(chosen.cuffOpening, sleeveLength - gusset - 20)
  const binderLength = chosen.binderLength ?? toFives(Math.min(back, arm + 60) * 2)
  const strap = { width: chosen.strapWidth, length: shoulder + g / Math.SQRT2 }

  const allowances = allowancesFor('felled')
  const hem = hemmed(chosen.bottomHem)
  const trunk = bodyOf({
    ...{ inOne: true, width, front, back, arm, flare: 0, neck: { cut: neck }, slit, finish: 'felled' },
    allowances: { ...allowances, neck: TAKEN_UP, hem },
  })
  const shape = {
    head: sleeveWidth,
    wrist: sleeveWidth,
    length: sleeveLength,
    gusset,
    armhole,
    opening,
    wristHem: 0,
  }
  const sleeves = sleevesOf({ ...shape, band: cuff, finish: 'felled', allowances }, trunk)
  const collar = { length: collarLength, depth: chosen.collarDepth, tie: 0 }
  const small = Math.max(12, toFives(g * SMALL))
  const sewnNeck = neckSewn(trunk, g, collar)
  const { pieces, seams, hems } = assembled([
    trunk,
    sleeves,
    sewnNeck,
    laidOn('strap', strap.width, strap.length, pair('strap', false)),
    laidOn('binder', chosen.binderWidth, binderLength, pair('binder', false)),
    laidOn('sideGusset', small, small, pair('sideGusset', false)),
    laidOn('wristGusset', small, small, pair('wristGusset', false)),
    laidOn('bosomGusset', small, small, one('bosomGusset')),
    sidesOf(trunk, front - arm - sideSlit),
    {
      hems: [
        turnedHem({ id: 'slit', kind: 'slit', name: named('hem', 'slit'), spans: trunk.slit, depth: 4 }),
        turnedHem({
          id: 'bottom',
          kind: 'bottom',
          name: named('hem', 'bottom'),
          spans: trunk.hem,
          depth: chosen.bottomHem,
        }),
      ],
    },
  ])
  const buttons = BUTTONS.collar + BUTTONS.wrists
  // Below the side slits the tails hang apart, and the hip has the room it takes.
  const girthAt = (level: number) => (level > front - sideSlit ? Infinity : 2 * width)
  return assertSewable({
    construction: shirt.id,
    choices: {
      ...chosen,
      ...{ bodyWidth: width, backLength: back, shoulderWidth: shoulder, collarLength, slitLength: slit },
      ...{ armholeDepth: armhole, sleeveWidth, sleeveLength, cuffLength: cuff.length, cuffOpening: opening },
      ...{ sideSlit, binderLength },
    },
    ...{ pieces, seams, hems },
    steps: linenSteps(pieces, seams, hems, {
      atNeck: [
        work('reinforceSlit', 1),
        work('setGusset', 2),
        ...[work('sewButton', BUTTONS.collar), work('workButtonhole', BUTTONS.collar)],
      ],
      atWrists: [work('sewButton', BUTTONS.wrists), work('workButtonhole', BUTTONS.wrists)],
    }),
    fit: [
      ...trunkFits(body, { levels, length: Math.min(front, levels.hip - 1), girthAt, by: 'chestEase' }),
      least(
        body,
        'hip',
        2 * width + 2 * Math.max(0, levels.hip - (front - sideSlit)),
        () => measure('hipGirth') + LEAST_EASE,
        'sideSlit',
      ),
      least(body, 'biceps', 2 * armhole + gusset, () => measure('upperArmGirth') + 60, 'armholeDepth'),
      least(body, 'cuffCloses', cuff.length - OVERLAP, () => measure('wristGirth'), 'cuffLength'),
      least(body, 'hand', cuff.length + 2 * opening, () => measure('handGirth') + THUMB, 'cuffOpening'),
      headPasses(body, collarLength + 2 * slit, 'slitLength'),
      least(body, 'collarCloses', collarLength - OVERLAP, () => measure('neckGirth'), 'collarLength', [
        'neckGirth',
      ]),
      clearsFloor(body, levels, back, 'backLength'),
    ],
    cautions: [phrase('draft.caution.flame')],
    notions: [{ notion: 'button', count: buttons }],
    flat: flatBody({
      ...{ half: width / 2, length: back, slit, armhole, gusset },
      neck: {
        width: collarLength / Math.PI,
        front: { form: 'arc', depth: 30 },
        back: { form: 'arc', depth: 10 },
      },
      sleeve: { wrist: cuff.length, length: sleeveLength + cuff.depth },
      skirt: { from: arm, by: 0 },
    }),
    sizes: finishedSizes({
      ...{ length: back, chest: 2 * width, neckBand: collarLength, wrist: cuff.length },
      backToWrist: width / 2 + sleeveLength + cuff.depth,
    }),
    totals: totalsOf(pieces, seams, hems),
  })
}

/** Mean of ANSUR II, neck girth ÷ neck base girth (0.89 women, 0.915 men). */
const NECK_TO_BASE = 0.9
/** What the open sides give at the hip before it must be wider, and the least side below the gusset, mm. */
const SLIT_GIVES = 120
const SHORTEST_SIDE = 140

const tailLength = ({ cervicalHeight, crotchHeight, hems }: ReturnType<typeof levelsOf>): number => {
  const crotch = cervicalHeight - crotchHeight
  return crotch + TAIL * (hems.knee - crotch)
}

/**
 * The neck: small squares halved on the cross at both ends of the cut, then all of its edge gathered to the collar:
 * 2(N − 2g) + 2g√2 for a cut N and squares of g.
 */
function neckSewn(trunk: SewnBody, g: number, collar: Band): Assembly {
  const corners = [
    { x: 0, y: 0 },
    { x: g, y: 0 },
    { x: 0, y: g },
  ]
  const sides = straightSides(corners, [
    { id: 'front', allowance: 8 },
    { id: 'collar', allowance: TAKEN_UP },
    { id: 'back', allowance: 8 },
  ])
  const shape = { copies: pair('neckGusset', true), turn: [0, 90, 180, 270] as const, sizes: { square: g } }
  const gussets = [cutPiece('neckGusset', { sides }, shape)]
  const edge = edgesOn(gussets)
  // Each half of the cut runs from the middle outward on one side and back again on the other.
  const half = (of: 'front' | 'back', hand: 'left' | 'right'): Span => {
    const [right, left] = trunk.neck(of)
    return hand === 'left' ? right! : left!
  }
  const outward = (span: Span) => span.edge === 'neckRightRight' || span.edge === 'neckLeftRight'
  const ending = (span: Span): Span => (outward(span) ? partFromEnd(span, 0, g) : part(span, 0, g))
  const rest = (span: Span): Span => (outward(span) ? part(span, 0, span.to - g) : part(span, g, span.to))
  const into = HANDS.flatMap((hand) => [
    ...PARTS.map((of) => rest(half(of, hand))),
    edge('neckGusset', 'collar', hand),
  ])
  const sewn = bandSewn(collar, into, { gathers: ROWS }, { piece: 'collar' })
  return {
    pieces: [...gussets, bandPiece(collar, 'collar')],
    seams: [
      ...HANDS.flatMap((hand) =>
        PARTS.map((of) =>
          seam({
            ...{ id: `neck-gusset-${of}-${hand}`, kind: 'gusset', finish: 'felled' },
            name: named('seam', 'neckGusset', `${of}${hand === 'left' ? 'Left' : 'Right'}`),
            a: [edge('neckGusset', of, hand)],
            b: [ending(half(of, hand))],
          }),
        ),
      ),
      ...sewn.seams,
    ],
    hems: sewn.hems,
  }
}

/** A straight piece turned in and felled down all round on the inside of another. */
function laidOn(id: string, width: number, length: number, copies: Copy[]): Assembly {
  const pieces = [
    rectangle(id, { width, length, added: { allowance: LAID } }, { copies, turn: [0, 90, 180, 270] }),
  ]
  return {
    ...{ pieces, seams: [] },
    hems: copies.map((copy) => {
      const spans = ['bottom', 'right', 'top', 'left'].map((edge) => edgesOn(pieces)(id, edge, copy.id))
      const laid = { depth: LAID, allowance: LAID, seen: false }
      return turnedHem({
        id: `${id}-${copy.id}`,
        kind: 'laidOn',
        name: named('hem', 'laidOn'),
        spans,
        ...laid,
      })
    }),
  }
}

/** The sides: sewn down from the gusset for `sewn` mm, then open and hemmed to the end of each tail. */
function sidesOf(trunk: SewnBody, sewn: number): Assembly {
  const open = { depth: 3, allowance: allowancesFor('felled').wide, seen: true }
  return {
    pieces: [],
    seams: HANDS.map((hand) =>
      seam({
        ...{ id: `side-${hand}`, kind: 'side', name: named('seam', 'side', hand), finish: 'felled' },
        a: [trunk.skirt('back', hand, 0, sewn)],
        b: [trunk.skirt('front', hand, 0, sewn)],
      }),
    ),
    hems: HANDS.map((hand) => {
      const spans = PARTS.map((of) => trunk.skirt(of, hand, sewn, trunk.skirtLength(of)))
      return turnedHem({
        id: `side-slit-${hand}`,
        kind: 'slit',
        name: named('hem', 'sideSlit', hand),
        spans,
        ...open,
      })
    }),
  }
}
