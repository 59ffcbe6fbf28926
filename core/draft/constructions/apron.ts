import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { clearOfFloor, fitCheck } from '../fit.ts'
import { flatSkirt } from '../flat.ts'
import { makingOf, work } from '../making.ts'
import { finishedSizes, named } from '../names.ts'
import { bandPiece, bandSewn } from '../parts/band.ts'
import { hemmed, TAKEN_UP } from '../practice.ts'
import { totalsOf, turnedHem, wholeEdge } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  skirtLength: { kind: 'length', range: [250, 1200] },
  apronBand: { kind: 'length', range: [150, 1200] },
  fullness: { kind: 'count', options: [1.5, 2, 2.5, 3], default: 2 },
  bandDepth: { kind: 'length', range: [12, 80], default: 25 },
  tieLength: { kind: 'length', range: [200, 1200], default: 650 },
  bottomHem: { kind: 'length', range: [5, 80], default: 20 },
} as const satisfies Choices

/** All common practice, mm and parts of one. */
const SIDE_HEM = 6
const ROWS = 2
/** The band covers this part of the waist; the apron ends this far above the floor. */
const OF_WAIST = 0.5
const OFF_FLOOR = 0.3
/** What the ties need beyond the waist for a bow. */
const BOW = 300

/** A straight width gathered to a band with ties: worn for work and for show in most centuries. */
export const apron: Construction = {
  id: 'apron',
  // From memory.
  sources: ['The Workwoman’s Guide (1838), of aprons'],
  required: [['waistGirth'], ['waistHeight']],
  useful: [],
  choices: CHOICES,
  often: ['skirtLength', 'apronBand', 'fullness'],
  usualFibre: 'linen',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: ({ sizes }) => [
    phrase('draft.describe.apron', { length: { mm: sizes[0]!.mm }, width: { mm: sizes[1]!.mm } }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(apron, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const [waist, height] = [lengthOf(body, 'waistGirth')!, lengthOf(body, 'waistHeight')!]
  const length = chosen.skirtLength ?? Math.round(height * (1 - OFF_FLOOR))
  const band = {
    length: chosen.apronBand ?? Math.round(waist * OF_WAIST),
    depth: chosen.bandDepth,
    tie: chosen.tieLength,
  }
  const width = band.length * chosen.fullness
  const pieces = [
    rectangle('apron', {
      ...{ width, length },
      added: {
        bottom: hemmed(chosen.bottomHem),
        ...{ right: hemmed(SIDE_HEM), top: { allowance: TAKEN_UP }, left: hemmed(SIDE_HEM) },
      },
    }),
    bandPiece(band, 'tiedBand'),
  ]
  const edge = (id: string) => wholeEdge(pieces, 'apron', 'apron', id)
  const sewn = bandSewn(band, [edge('top')], { gathers: ROWS }, { piece: 'tiedBand' })
  const hems = [
    turnedHem({
      ...{ id: 'sides', kind: 'edge', name: named('hem', 'sides'), depth: SIDE_HEM },
      spans: [edge('right'), edge('left')],
    }),
    turnedHem({
      ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: chosen.bottomHem },
      spans: [edge('bottom')],
    }),
    ...sewn.hems,
  ]
  const { step, sewing, hemming, before, after } = makingOf(pieces, sewn.seams, hems)
  return assertSewable({
    construction: apron.id,
    choices: { ...chosen, skirtLength: length, apronBand: band.length },
    ...{ pieces, seams: sewn.seams, hems },
    steps: [
      ...before,
      step(
        'edges',
        'hem',
        [],
        hemming(({ kind }) => kind !== 'band'),
      ),
      step('band', 'sew', [work('setGathers', band.length / 1000)], {
        seams: sewing(() => true).seams,
        hems: hemming(({ kind }) => kind === 'band').hems,
      }),
      ...after,
    ],
    fit: [
      fitCheck(body, {
        ...{ id: 'ties', bound: 'least', mend: phrase('draft.mend.tieLength') },
        garment: () => band.length + 2 * band.tie,
        needs: () => waist + BOW,
      }),
      clearOfFloor(body, length, phrase('draft.mend.skirtLength')),
    ],
    cautions: [phrase('draft.caution.flame')],
    notions: [],
    flat: flatSkirt({
      band: band.length,
      depth: band.depth,
      hem: width,
      length,
    }),
    sizes: finishedSizes({ skirtLength: length, width }),
    totals: totalsOf(pieces, sewn.seams, hems),
  })
}
