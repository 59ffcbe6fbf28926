import { through } from '../../geometry/path.ts'
import { line } from '../../geometry/segment.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { clearOfFloor, fitCheck } from '../fit.ts'
import { bothHalves, overallSizes } from '../flat.ts'
import { makingOf, work } from '../making.ts'
import { finishedSizes, named, pair } from '../names.ts'
import { HANDS, type Hand } from '../places.ts'
import { FELL, hemmed } from '../practice.ts'
import { seam, totalsOf, turnedHem, wholeEdge } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft, Flat, Span } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  drawersLength: { kind: 'option', options: ['aboveKnee', 'belowKnee', 'ankle'], default: 'belowKnee' },
  hipEase: { kind: 'length', range: [40, 900] },
  crotchGusset: { kind: 'length', range: [80, 260], default: 160 },
  rise: { kind: 'length', range: [120, 700] },
  casing: { kind: 'length', range: [12, 60], default: 25 },
  bottomHem: { kind: 'length', range: [5, 60], default: 15 },
} as const satisfies Choices

/** All common practice, mm unless said otherwise. */
const TO_TIE = 500
const USUAL_EASE = 260
const USUAL_SEAT_EASE = 120
const LEAST_HIP_EASE = 100
const LEAST_SEAT_EASE = 60
const THIGH_EASE = 80
/** How far from the knee the shorter legs end, and from the floor the long ones. */
const FROM_KNEE = 60
const OFF_FLOOR = 90
/** The waist to the crotch and back, where it was not measured, ÷ the height between them (from memory). */
const THROUGH_CROTCH = 2.35

/**
 * Two wide straight legs with a square set on its corner between them, and a cord through the folded top: the
 * linen drawers of medieval men, and of women and children later.
 */
export const drawers: Construction = {
  id: 'drawers',
  // From memory.
  sources: [
    'D. K. Burnham: Cut My Cote',
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
  ],
  required: [['hipGirth'], ['waistHeight'], ['insideLegHeight'], ['kneeHeight']],
  useful: ['totalCrotchLength', 'thighGirth'],
  choices: CHOICES,
  often: ['drawersLength', 'hipEase', 'crotchGusset'],
  usualFibre: 'linen',
  finishPlan: 'allByMachine',
  draft,
  describe: ({ sizes }) => [
    phrase('draft.describe.drawers', { length: { mm: sizes[0]!.mm }, leg: { mm: sizes[1]!.mm } }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(drawers, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const measure = (id: 'hipGirth' | 'waistHeight' | 'insideLegHeight' | 'kneeHeight') => lengthOf(body, id)!
  const [waist, crotch, knee] = [measure('waistHeight'), measure('insideLegHeight'), measure('kneeHeight')]
  const through = lengthOf(body, 'totalCrotchLength') ?? (waist - crotch) * THROUGH_CROTCH
  const ends = { aboveKnee: knee + FROM_KNEE, belowKnee: knee - FROM_KNEE, ankle: OFF_FLOOR }
  const gusset = chosen.crotchGusset
  const thigh = lengthOf(body, 'thighGirth') ?? 0
  const hipEase = chosen.hipEase ?? Math.max(USUAL_EASE, 2 * (thigh + THIGH_EASE) - measure('hipGirth'))
  const leg = (measure('hipGirth') + hipEase) / 2
  // Front and back alike: straight legs, with the square's diagonal between them.
  const rise = chosen.rise ?? Math.round((through + USUAL_SEAT_EASE - gusset * Math.SQRT2) / 2)
  const inseam = Math.max(60, Math.round(crotch - ends[chosen.drawersLength]))
  const length = rise + gusset + inseam
  const pieces = [
    rectangle(
      'leg',
      {
        ...{ width: leg, length },
        added: {
          bottom: hemmed(chosen.bottomHem),
          right: { allowance: FELL.wide },
          top: hemmed(chosen.casing),
          left: { allowance: FELL.narrow },
        },
      },
      { copies: pair('leg', true) },
    ),
    rectangle(
      'gusset',
      { width: gusset, length: gusset, added: { allowance: FELL.narrow } },
      { code: 'crotchGusset', turn: [0, 90, 180, 270] },
    ),
  ]
  const edge = (hand: Hand, id: string) => wholeEdge(pieces, 'leg', hand, id)
  /** Down from the waist along a leg's edge: the right one is drawn upwards, the left one downwards. */
  const down = (hand: Hand, side: 'right' | 'left', from: number, to: number): Span =>
    side === 'left'
      ? { ...edge(hand, 'left'), from, to }
      : { ...edge(hand, 'right'), from: length - to, to: length - from }
  const square = (side: string) => wholeEdge(pieces, 'gusset', 'gusset', side)
  const placed = (code: 'crotchGusset' | 'inseam', hand: Hand) => named('seam', code, hand)
  // The mirrored left leg has its front edge where the right leg has its back one.
  const seams = [
    ...(['front', 'back'] as const).map((part) => {
      const side = part === 'front' ? 'right' : 'left'
      return seam({
        ...{ id: `rise-${part}`, kind: 'side', name: phrase(`draft.seam.rise.${part}`), finish: 'felled' },
        a: [down('left', side, 0, rise)],
        b: [down('right', side, 0, rise)],
      })
    }),
    ...HANDS.flatMap((hand, i) =>
      (['right', 'left'] as const).map((side, k) =>
        seam({
          ...{
            id: `gusset-${hand}-${side}`,
            kind: 'gusset',
            name: placed('crotchGusset', hand),
            finish: 'felled',
          },
          a: [square([['bottom', 'right'] as const, ['top', 'left'] as const][i]![k]!)],
          b: [down(hand, side, rise, rise + gusset)],
        }),
      ),
    ),
    ...HANDS.map((hand) =>
      seam({
        ...{ id: `inseam-${hand}`, kind: 'side', name: placed('inseam', hand), finish: 'felled' },
        a: [down(hand, 'right', rise + gusset, length)],
        b: [down(hand, 'left', rise + gusset, length)],
      }),
    ),
  ]
  const hems = [
    turnedHem({
      ...{ id: 'casing', kind: 'edge', name: named('hem', 'casing'), depth: chosen.casing },
      spans: HANDS.map((hand) => edge(hand, 'top')),
    }),
    turnedHem({
      ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'legs'), depth: chosen.bottomHem },
      spans: HANDS.map((hand) => edge(hand, 'bottom')),
    }),
  ]
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  return assertSewable({
    construction: drawers.id,
    choices: { ...chosen, hipEase, rise },
    ...{ pieces, seams, hems },
    steps: [
      ...before,
      step(
        'crotch',
        'sew',
        [work('setGusset', 1)],
        sewing(({ kind }) => kind === 'gusset'),
      ),
      step(
        'legs',
        'sew',
        [],
        sewing(({ kind }) => kind === 'side'),
      ),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'casing',
        'hem',
        [work('drawCord', 1)],
        hemming(({ id }) => id === 'casing'),
      ),
      step(
        'bottom',
        'hem',
        [],
        hemming(({ kind }) => kind === 'bottom'),
      ),
      ...after,
    ],
    fit: [
      fitCheck(body, {
        ...{ id: 'hip', bound: 'least', mend: phrase('draft.mend.hipEase') },
        garment: () => 2 * leg,
        needs: () => measure('hipGirth') + LEAST_HIP_EASE,
      }),
      fitCheck(body, {
        ...{ id: 'thigh', from: ['thighGirth'], bound: 'least', mend: phrase('draft.mend.hipEase') },
        garment: () => leg,
        needs: () => lengthOf(body, 'thighGirth')! + THIGH_EASE,
      }),
      fitCheck(body, {
        ...{
          id: 'seatDepth',
          from: ['totalCrotchLength'],
          bound: 'least',
          mend: phrase('draft.mend.rise'),
        },
        garment: () => 2 * rise + gusset * Math.SQRT2,
        needs: () => lengthOf(body, 'totalCrotchLength')! + LEAST_SEAT_EASE,
      }),
      clearOfFloor(body, length, phrase('draft.mend.drawersLength')),
    ],
    cautions: [phrase('draft.caution.cordEnds')],
    notions: [{ notion: 'cord', mm: 2 * leg + TO_TIE }],
    flat: flatDrawers(leg, rise + gusset / 2, inseam + gusset / 2),
    sizes: finishedSizes({ skirtLength: length, leg }),
    totals: totalsOf(pieces, seams, hems),
  })
}

/** From the front: the waist drawn out, legs hanging apart below the crotch. */
function flatDrawers(leg: number, rise: number, inseam: number): Flat {
  const at = (x: number, y: number) => ({ x, y })
  const apart = leg * 0.06
  const outer = through([
    at(0, inseam + rise),
    at(leg / 2, inseam + rise),
    at(leg / 2 + apart, 0),
    at(apart, 0),
    at(0, inseam),
  ])
  const edges = bothHalves(outer)
  return {
    edges,
    seams: [[line(at(0, inseam + rise), at(0, inseam))]],
    behind: [],
    sizes: overallSizes(edges, { top: inseam + rise, bottom: 0, half: leg / 2 + apart }),
  }
}
