import { through } from '../../geometry/path.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { cordsUnsafe } from '../cords.ts'
import { least } from '../fit-trunk.ts'
import { flatPiece } from '../flat.ts'
import { makingOf, work } from '../making.ts'
import { finishedSizes, named, sizeIn } from '../names.ts'
import { assembled } from '../parts/assembly.ts'
import { inLining, liningOf } from '../parts/lining.ts'
import { hemmed, TAKEN_UP, toFives } from '../practice.ts'
import { edgesOn, part, seam, totalsOf, turnedHem } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  coifWidth: { kind: 'length', range: [250, 700] },
  coifDepth: { kind: 'length', range: [120, 400] },
  crownGathers: { kind: 'length', range: [20, 150], default: 70 },
  napeEnd: { kind: 'option', options: ['drawn', 'hemmed'] },
  lined: { kind: 'yesNo', default: false },
  edgeHem: { kind: 'length', range: [2, 12], default: 4 },
} as const satisfies Choices

/** Width round the back of the head and depth from crown to nape ÷ head girth (common practice). */
const TO_HEAD = { width: 0.8, depth: 0.44 }
const LEAST_TO_HEAD = { width: 0.74, depth: 0.38 }
const CASING = 8
/** Tape beyond the nape edge, to tie under the chin or over the crown, mm. */
const TO_TIE = 600

/** A close cap of one piece, sewn along the top, gathered at the crown and drawn in at the nape. */
export const coif: Construction = {
  id: 'coif',
  // From memory.
  sources: ['J. Arnold, J. Tiramani, S. Levey: Patterns of Fashion 4'],
  required: [['headGirth']],
  useful: ['stature'],
  choices: CHOICES,
  often: ['coifWidth', 'coifDepth', 'lined'],
  usualFibre: 'linen',
  finishPlan: 'allByHand',
  draft,
  describe: (made) => [
    phrase('draft.describe.coif', { width: sizeIn(made, 'across'), depth: sizeIn(made, 'depth') }),
    ...(made.choices.lined === true ? [phrase('draft.describe.lined')] : []),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(coif, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const head = lengthOf(body, 'headGirth')!
  const width = chosen.coifWidth ?? toFives(head * TO_HEAD.width)
  const depth = chosen.coifDepth ?? toFives(head * TO_HEAD.depth)
  const drawn = (chosen.napeEnd ?? (cordsUnsafe(body) ? 'hemmed' : 'drawn')) === 'drawn'
  const nape = drawn ? CASING : chosen.edgeHem
  const gathers = Math.min(chosen.crownGathers, width / 2 - 20)
  const face = hemmed(chosen.edgeHem)
  const pieces = [
    rectangle('coif', {
      ...{ width, length: depth },
      added: { bottom: hemmed(nape), right: face, top: { allowance: TAKEN_UP }, left: face },
    }),
  ]
  const edge = edgesOn(pieces)
  // The upper edge runs from right to left; its halves meet from the face back to the middle.
  const [plain, middle] = [width / 2 - gathers, width / 2]
  const top = (from: number, to: number) => part(edge('coif', 'top'), from, to)
  const cap = {
    pieces,
    seams: [
      seam({
        ...{ id: 'crown', kind: 'centre', name: named('seam', 'crown'), finish: 'felled' },
        ...{ a: [top(0, plain)], b: [top(width - plain, width)] },
      }),
      {
        ...seam({
          ...{ id: 'crown-gathers', kind: 'centre', name: named('seam', 'crownGathers'), finish: 'felled' },
          ...{ a: [top(plain, middle)], b: [top(middle, width - plain)] },
        }),
        gathers: 2,
      },
    ],
    hems: [
      turnedHem({
        ...{ id: 'face', kind: 'edge', name: named('hem', 'face'), depth: chosen.edgeHem },
        spans: [edge('coif', 'right'), edge('coif', 'left')],
      }),
      turnedHem({
        ...{ id: 'nape', kind: 'edge', name: named('hem', drawn ? 'casing' : 'nape'), depth: nape },
        spans: [edge('coif', 'bottom')],
      }),
    ],
  }
  const all = assembled([cap, ...(chosen.lined ? [liningOf(cap, ['coif'])] : [])])
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(all.pieces, all.seams, all.hems)
  return assertSewable({
    construction: coif.id,
    choices: settled({
      ...chosen,
      ...{ coifWidth: width, coifDepth: depth, crownGathers: gathers, napeEnd: drawn ? 'drawn' : 'hemmed' },
    }),
    ...all,
    steps: [
      ...before,
      step(
        'crown',
        'sew',
        [work('setGathers', (2 * gathers) / 1000)],
        sewing((one) => !inLining(one)),
      ),
      ...(chosen.lined ? [step('sewLining', 'sew', [], sewing(inLining))] : []),
      pressSeams,
      step(
        'edges',
        'hem',
        drawn ? [work('drawCord', 1)] : [],
        hemming(() => true),
      ),
      ...after,
    ],
    fit: [
      least(body, 'around', width, () => head * LEAST_TO_HEAD.width, 'coifWidth'),
      least(body, 'depth', depth, () => head * LEAST_TO_HEAD.depth, 'coifDepth'),
    ],
    cautions: [phrase('draft.caution.flame')],
    notions: drawn ? [{ notion: 'tape', mm: width + TO_TIE }] : [],
    flat: {
      ...flatPiece(
        through([
          { x: 0, y: 0 },
          { x: width / 2, y: 0 },
          { x: width / 2, y: depth - gathers / 2 },
          { x: width / 2 - gathers / 2, y: depth },
          { x: 0, y: depth },
          { x: 0, y: 0 },
        ]),
      ),
      view: 'side',
    },
    sizes: finishedSizes({ across: width, depth }),
    totals: totalsOf(all.pieces, all.seams, all.hems),
  })
}
