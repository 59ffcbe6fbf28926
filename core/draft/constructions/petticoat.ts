import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { clearOfFloor, fitCheck } from '../fit.ts'
import { flatSkirt } from '../flat.ts'
import { makingOf, work } from '../making.ts'
import { finishedSizes, named } from '../names.ts'
import { bandPiece, bandSewn } from '../parts/band.ts'
import { takenUp } from '../parts/pleats.ts'
import { allowancesFor, hemmed, TAKEN_UP } from '../practice.ts'
import { seam, totalsOf, turnedHem, wholeEdge } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft, Span } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  skirtLength: { kind: 'length', range: [250, 1300] },
  panels: { kind: 'count', options: [2, 3, 4], default: 3 },
  fullness: { kind: 'count', options: [1.5, 2, 2.5, 3, 3.5, 4], default: 2.5 },
  takenUp: { kind: 'option', options: ['gathered', 'knife', 'box', 'cartridge'], default: 'gathered' },
  pleatDepth: { kind: 'length', range: [4, 80] },
  fastening: { kind: 'option', options: ['ties', 'hooks'], default: 'ties' },
  waistEase: { kind: 'length', range: [0, 80], default: 10 },
  opening: { kind: 'length', range: [120, 400], default: 250 },
  bandDepth: { kind: 'length', range: [12, 80], default: 30 },
  tieLength: { kind: 'length', range: [150, 900], default: 350 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'felled' },
  bottomHem: { kind: 'length', range: [10, 150], default: 40 },
} as const satisfies Choices

/** All common practice, mm and parts of one. */
/** What the band overlaps under hooks. */
const OVERLAP = 30
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
  const tied = chosen.fastening === 'ties'
  const around = waist + chosen.waistEase
  const band = {
    length: around + (tied ? 0 : OVERLAP),
    ...{ depth: chosen.bandDepth, tie: tied ? chosen.tieLength : 0 },
  }
  const sweep = band.length * chosen.fullness
  const allowances = allowancesFor(chosen.seamFinish)
  const by = takenUp(chosen.takenUp, sweep, band.length, chosen.pleatDepth)
  const copies = Array.from({ length: chosen.panels }, (_, i) => ({
    id: `width${i + 1}`,
    name: phrase('draft.piece.width', { number: i + 1 }),
    mirrored: false,
  }))
  const pieces = [
    rectangle(
      'skirt',
      {
        ...{ width: sweep / chosen.panels, length },
        added: {
          bottom: hemmed(chosen.bottomHem),
          right: { allowance: allowances.wide },
          top: { allowance: TAKEN_UP },
          left: { allowance: allowances.narrow },
        },
      },
      { copies },
    ),
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
    by,
    { piece: 'tiedBand' },
  )
  const seams = [...joins, ...sewn.seams]
  const slit = allowances.narrow
  const hems = [
    turnedHem({
      ...{ id: 'opening', kind: 'slit', name: named('hem', 'opening'), seen: false },
      ...{ depth: slit / 2, allowance: slit, spans: [right(last, true), left(copies[0]!.id, true)] },
    }),
    ...sewn.hems,
    turnedHem({
      ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: chosen.bottomHem },
      spans: copies.map(({ id }) => whole(id, 'bottom')),
    }),
  ]
  const setting = [
    'pleats' in by ? work('setPleat', by.pleats.count) : work('setGathers', band.length / 1000),
  ]
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  return assertSewable({
    construction: petticoat.id,
    choices: settled({
      ...{ ...chosen, skirtLength: length, opening },
      pleatDepth: 'pleats' in by ? by.pleats.depth : undefined,
    }),
    ...{ pieces, seams, hems },
    steps: [
      ...before,
      step('widths', 'sew', [work('reinforceSlit', 1)], {
        seams: sewing(({ kind }) => kind === 'side').seams,
        hems: ['opening'],
      }),
      pressSeams,
      step('band', 'sew', [...setting, ...(tied ? [] : [work('sewHook', 2)])], {
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
    cautions: hangingCautions(hems, height - length),
    notions: tied ? [] : [{ notion: 'hook', count: 2 }],
    flat: flatSkirt({
      band: around / 2,
      depth: band.depth,
      hem: sweep / 2,
      length,
      slit: opening,
    }),
    sizes: finishedSizes({ skirtLength: length, sweep }),
    totals: totalsOf(pieces, seams, hems),
  })
}
