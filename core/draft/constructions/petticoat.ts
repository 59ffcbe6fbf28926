import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { clearOfFloor, fitCheck } from '../fit.ts'
import { makingOf, work } from '../making.ts'
import { bandPiece, bandSewn } from '../parts/band.ts'
import { hem, seam, totalsOf, wholeEdge } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft, Span } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  skirtLength: { kind: 'length', range: [250, 1300] },
  panels: { kind: 'count', options: [2, 3, 4], default: 3 },
  fullness: { kind: 'count', options: [1.5, 2, 2.5, 3], default: 2.5 },
  waistEase: { kind: 'length', range: [0, 80], default: 10 },
  opening: { kind: 'length', range: [120, 400], default: 250 },
  bandDepth: { kind: 'length', range: [12, 80], default: 30 },
  tieLength: { kind: 'length', range: [150, 900], default: 350 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  bottomHem: { kind: 'length', range: [10, 150], default: 40 },
} as const satisfies Choices

/** All common practice, mm and parts of one. */
const TURNING = 8
const GATHERED = 12
const ROWS = 3
const FELL = { wide: 14, narrow: 6 }
const OPEN = 12
const OFF_FLOOR = 0.1
const HIP_EASE = 150

/**
 * A skirt of straight widths gathered to a band that ties: petticoats and country skirts from the sixteenth
 * century on. One seam is left open at the top, so that it goes over the hips.
 */
export const petticoat: Construction = {
  id: 'petticoat',
  // From memory.
  sources: ['The Workwoman’s Guide (1838), of petticoats', 'D. K. Burnham: Cut My Cote'],
  required: [['waistGirth'], ['hipGirth'], ['waistHeight']],
  useful: [],
  choices: CHOICES,
  often: ['skirtLength', 'panels', 'fullness'],
  finishPlan: 'machineWhereHidden',
  draft,
  describe: ({ choices, sizes }) => [
    phrase('draft.describe.petticoat', {
      ...{ length: { mm: sizes[0]!.mm }, sweep: { mm: sizes[1]!.mm }, panels: choices.panels as number },
    }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(petticoat, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const [waist, height] = [lengthOf(body, 'waistGirth')!, lengthOf(body, 'waistHeight')!]
  const length = chosen.skirtLength ?? Math.round(height * (1 - OFF_FLOOR))
  const opening = Math.min(chosen.opening, length / 2)
  const band = { length: waist + chosen.waistEase, depth: chosen.bandDepth, tie: chosen.tieLength }
  const sweep = band.length * chosen.fullness
  const felled = chosen.seamFinish === 'felled'
  const name = phrase('draft.piece.skirt')
  const copies = Array.from({ length: chosen.panels }, (_, i) => ({
    id: `width${i + 1}`,
    name: phrase('draft.piece.width', { number: i + 1 }),
    mirrored: false,
  }))
  const pieces = [
    rectangle({
      ...{ id: 'skirt', name, copies, width: sweep / chosen.panels, length },
      sides: {
        bottom: { allowance: chosen.bottomHem + TURNING, turned: true },
        right: { allowance: felled ? FELL.wide : OPEN },
        top: { allowance: GATHERED },
        left: { allowance: felled ? FELL.narrow : OPEN },
      },
    }),
    bandPiece(band, 'tiedBand'),
  ]
  const whole = (copy: string, edge: string) => wholeEdge(pieces, 'skirt', copy, edge)
  /** The right edge runs up from the hem, the left one down to it: below the opening. */
  const right = (copy: string, above: boolean): Span =>
    above
      ? { ...whole(copy, 'right'), from: length - opening }
      : { ...whole(copy, 'right'), to: length - opening }
  const left = (copy: string, above: boolean): Span =>
    above ? { ...whole(copy, 'left'), to: opening } : { ...whole(copy, 'left'), from: opening }
  const last = copies.at(-1)!.id
  const joins = copies.map(({ id }, i) => {
    const next = copies[(i + 1) % copies.length]!.id
    const closes = id === last
    return seam({
      ...{ id: `width-${i + 1}`, kind: 'side', finish: chosen.seamFinish },
      name: phrase('draft.seam.width', { number: i + 1 }),
      a: [closes ? right(id, false) : whole(id, 'right')],
      b: [closes ? left(next, false) : whole(next, 'left')],
    })
  })
  const sewn = bandSewn(
    band,
    copies.map(({ id }) => whole(id, 'top')),
    { gathers: ROWS },
    { piece: 'tiedBand' },
  )
  const seams = [...joins, ...sewn.seams]
  const slit = felled ? FELL.narrow : OPEN
  const hems = [
    hem({
      ...{ id: 'opening', kind: 'slit', name: phrase('draft.hem.opening'), seen: false, fullness: 0 },
      ...{ depth: slit / 2, allowance: slit, spans: [right(last, true), left(copies[0]!.id, true)] },
    }),
    ...sewn.hems,
    hem({
      ...{ id: 'bottom', kind: 'bottom', name: phrase('draft.hem.bottom'), seen: true, fullness: 0 },
      ...{ depth: chosen.bottomHem, allowance: chosen.bottomHem + TURNING },
      spans: copies.map(({ id }) => whole(id, 'bottom')),
    }),
  ]
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  return assertSewable({
    construction: petticoat.id,
    choices: { ...chosen, skirtLength: length, opening },
    ...{ pieces, seams, hems },
    steps: [
      ...before,
      step('widths', 'sew', [work('reinforceSlit', 1)], {
        seams: sewing(({ kind }) => kind === 'side').seams,
        hems: ['opening'],
      }),
      pressSeams,
      step('band', 'sew', [work('setGathers', band.length / 1000)], {
        seams: sewing(({ kind }) => kind === 'band').seams,
        hems: hemming(({ kind }) => kind === 'band').hems,
      }),
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
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
        ...{ id: 'goesOn', bound: 'least', mend: phrase('draft.mend.opening') },
        garment: () => band.length + 2 * opening,
        needs: () => lengthOf(body, 'hipGirth')! * 0.95,
      }),
      fitCheck(body, {
        ...{ id: 'hip', bound: 'least', mend: phrase('draft.mend.fullness') },
        garment: () => sweep,
        needs: () => lengthOf(body, 'hipGirth')! + HIP_EASE,
      }),
      clearOfFloor(body, length, phrase('draft.mend.skirtLength')),
    ],
    cautions: [phrase('draft.caution.flame')],
    sizes: [
      { id: 'length', name: phrase('draft.finished.skirtLength'), mm: length },
      { id: 'sweep', name: phrase('draft.finished.sweep'), mm: sweep },
    ],
    totals: totalsOf(pieces, seams, hems),
  })
}
