import { through } from '../../geometry/path.ts'
import { line } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { least, shouldersOf } from '../fit-trunk.ts'
import { flatSize } from '../flat.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { finishedSizes, named, pair, sizeIn } from '../names.ts'
import { type Assembly, assembled } from '../parts/assembly.ts'
import { halfEnd, strapSewn } from '../parts/band.ts'
import { inLining, liningOf } from '../parts/lining.ts'
import { cutPiece, type Side } from '../pieces.ts'
import { HANDS } from '../places.ts'
import { allowancesFor, hemmed, MOST_FULLNESS, toFives } from '../practice.ts'
import { edgesOn, seam, totalsOf, turnedHem } from '../seams.ts'
import { symmetricalGore } from '../shapes/gore.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Draft, Flat, SeamFinish } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hoodWidth: { kind: 'length', range: [180, 450] },
  faceOpening: { kind: 'length', range: [180, 480] },
  capeLength: { kind: 'length', range: [150, 800] },
  capeSpread: { kind: 'length', range: [60, 1200] },
  frontOpening: { kind: 'option', options: ['closed', 'buttoned'], default: 'closed' },
  buttonSpacing: { kind: 'length', range: [12, 60], default: 25 },
  tail: { kind: 'yesNo', default: false },
  tailLength: { kind: 'length', range: [150, 2500], default: 600 },
  tailWidth: { kind: 'length', range: [25, 150], default: 60 },
  lined: { kind: 'yesNo', default: false },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  bottomHem: { kind: 'length', range: [2, 30] },
  faceHem: { kind: 'length', range: [3, 30], default: 8 },
} as const satisfies Choices

/** The closed tube round the neck lets the head through with so much to spare, mm. */
const HEAD_ROOM = 40
const USUAL_ROOM = 60
/** Round the shoulders in the cape: at least, and by default. */
const LEAST_ROOM = 40
const SHOULDER_ROOM = 80
/** Length of the face's edge from the chin up over one side ÷ head girth (common practice). */
const FACE_TO_HEAD = 0.56
/** A cape is at least so long; below its gore's point so much is left whole. */
const USUAL_CAPE = 250
const ABOVE_GORE = 50
/** Widest angle of a shoulder gore, radians: half of it lies on each side of the grain. */
const WIDEST = 1.5

/**
 * Two sides joined over the crown and down the back, with a gore over each shoulder; closed in front or buttoned,
 * with or without a long tail: the hood of the thirteenth to fifteenth century.
 */
export const hood: Construction = {
  id: 'hood',
  // From memory.
  sources: [
    'E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450',
    'E. Østergård: Woven into the Earth',
  ],
  required: [['headGirth'], ['bustGirth', 'chestGirth']],
  useful: ['stature'],
  choices: CHOICES,
  often: ['capeLength', 'frontOpening', 'tail', 'tailLength', 'lined'],
  usualFibre: 'wool',
  finishPlan: 'allByHand',
  draft,
  describe: (made) => [
    phrase('draft.describe.hood', { cape: sizeIn(made, 'capeLength'), sweep: sizeIn(made, 'capeSweep') }),
    phrase(`draft.describe.hoodFront.${made.choices.frontOpening as 'closed' | 'buttoned'}`),
    ...(made.choices.tail === true
      ? [phrase('draft.describe.tail', { tail: sizeIn(made, 'tailLength') })]
      : []),
    ...(made.choices.lined === true ? [phrase('draft.describe.lined')] : []),
  ],
}

type Figures = {
  width: number
  face: number
  cape: number
  gore: number
  angle: number
  /** Side of the corner cut off for the tail, and the tail. */
  corner: number
  tail: { length: number; width: number } | undefined
  finish: SeamFinish
  buttoned: boolean
  hems: { bottom: number; face: number }
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(hood, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const head = lengthOf(body, 'headGirth')!
  const shoulders = shouldersOf(body)
  const width = chosen.hoodWidth ?? toFives((head + USUAL_ROOM) / 2)
  const lacking = Math.max(60, (shoulders + SHOULDER_ROOM - 2 * width) / 2 + 20)
  const cape = chosen.capeLength ?? toFives(Math.max(USUAL_CAPE, lacking / WIDEST + ABOVE_GORE))
  const gore = cape - ABOVE_GORE
  const spread = chosen.capeSpread ?? Math.min(WIDEST * gore, toFives(lacking))
  if (spread / gore > WIDEST + 1e-9)
    throw new Refusal(
      phrase('refusal.draft.capeTooWide', {
        spread: { mm: spread },
        most: { mm: Math.floor(WIDEST * gore) },
      }),
      'capeSpread',
    )
  const gentle = Math.max(3, Math.floor((gore * MOST_FULLNESS) / 2))
  const f: Figures = {
    ...{ width, cape, gore, angle: spread / gore },
    face: chosen.faceOpening ?? toFives(head * FACE_TO_HEAD),
    corner: chosen.tail ? Math.min(chosen.tailWidth, width / 2) : 0,
    tail: chosen.tail
      ? { length: chosen.tailLength, width: Math.min(chosen.tailWidth, width / 2) }
      : undefined,
    finish: chosen.seamFinish,
    buttoned: chosen.frontOpening === 'buttoned',
    hems: { bottom: chosen.bottomHem ?? gentle, face: chosen.faceHem },
  }
  const outer = sewn(f)
  const all = assembled([outer, ...(chosen.lined ? [liningOf(outer, ['hoodSide', 'capeGore'])] : [])])
  const buttons = f.buttoned ? Math.max(2, Math.round(cape / chosen.buttonSpacing)) : 0
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(all.pieces, all.seams, all.hems)
  const sweep = 2 * width + 2 * spread - 4 * allowancesFor(f.finish).narrow
  const own = (id: string) => sewing((one) => !inLining(one) && one.id.startsWith(id))
  return assertSewable({
    construction: hood.id,
    choices: settled({
      ...{ ...chosen, hoodWidth: width, faceOpening: f.face, capeLength: cape, capeSpread: spread },
      ...{ bottomHem: f.hems.bottom },
    }),
    ...all,
    steps: worthDoing([
      ...before,
      step('shoulderGores', 'sew', [work('reinforceSlit', 2)], own('cape-gore')),
      step('tail', 'sew', [], own('tail')),
      step('hoodSeams', 'sew', [], {
        ...sewing((one) => !inLining(one) && (one.id === 'crown' || one.id === 'back' || one.id === 'front')),
      }),
      step('setTail', 'sew', [], own('set-tail')),
      ...(chosen.lined ? [step('sewLining', 'sew', [], sewing(inLining))] : []),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'edges',
        'hem',
        [],
        hemming(() => true),
      ),
      step(
        'buttons',
        'finish',
        buttons > 0 ? [work('sewButton', buttons), work('workButtonhole', buttons)] : [],
      ),
      ...after,
    ]),
    fit: [
      least(body, 'head', 2 * width + (f.buttoned ? 2 * cape : 0), () => head + HEAD_ROOM, 'hoodWidth'),
      least(body, 'shoulders', sweep, () => shoulders + LEAST_ROOM, 'capeSpread'),
      least(body, 'face', 2 * f.face, () => head * 0.9, 'faceOpening'),
    ],
    cautions: [...(chosen.tail ? [phrase('draft.caution.catches')] : []), ...hangingCautions(outer.hems)],
    notions: buttons > 0 ? [{ notion: 'button', count: buttons }] : [],
    flat: flatHood(f),
    sizes: finishedSizes({
      ...{ around: 2 * width, faceOpening: f.face, capeLength: cape, capeSweep: sweep },
      ...(f.tail === undefined ? {} : { tailLength: f.tail.length }),
    }),
    totals: totalsOf(all.pieces, all.seams, all.hems),
  })
}

const at = (x: number, y: number): Point => ({ x, y })

/** A side as it is cut: the face at the left, the back at the right, the cape's hem below. */
function sideEdges({ width, face, cape, corner }: Figures): Record<string, Path> {
  const height = face + cape
  const cut = corner / Math.SQRT2
  return {
    hem: through([at(0, 0), at(width, 0)]),
    back: through([at(width, 0), at(width, height - cut)]),
    ...(corner > 0 ? { corner: through([at(width, height - cut), at(width - cut, height)]) } : {}),
    crown: through([at(width - cut, height), at(0, height)]),
    face: through([at(0, height), at(0, cape)]),
    front: through([at(0, cape), at(0, 0)]),
  }
}

function sewn(f: Figures): Assembly {
  const { wide, narrow } = allowancesFor(f.finish)
  const added: Record<string, Pick<Side, 'allowance'> & { turned?: boolean }> = {
    ...{ hem: hemmed(f.hems.bottom), face: hemmed(f.hems.face) },
    front: f.buttoned ? hemmed(f.hems.face) : { allowance: wide },
  }
  const sides = Object.entries(sideEdges(f)).map(([id, path]) => ({
    id,
    path,
    ...(added[id] ?? { allowance: wide }),
  }))
  const slit = { id: 'gore', open: at(f.width / 2, 0), apex: at(f.width / 2, f.gore), allowance: narrow }
  const gore = symmetricalGore(f.gore, f.angle)
  const pieces = [
    cutPiece(
      'hoodSide',
      { sides, slits: [slit] },
      { copies: pair('hoodSide', true), sizes: { width: f.width, length: f.face + f.cape } },
    ),
    cutPiece(
      'capeGore',
      {
        sides: [
          { id: 'hem', path: gore.hem, ...hemmed(f.hems.bottom) },
          { id: 'right', path: gore.right, allowance: wide },
          { id: 'left', path: gore.left, allowance: wide },
        ],
      },
      { copies: pair('capeGore', false), sizes: { longEdge: f.gore, hemArc: f.gore * f.angle } },
    ),
    ...(f.tail === undefined
      ? []
      : [rectangle('tail', { width: 2 * f.tail.width, length: f.tail.length, added: { allowance: wide } })]),
  ]
  const edge = edgesOn(pieces)
  const both = (id: string) => ({ a: [edge('hoodSide', id, 'left')], b: [edge('hoodSide', id, 'right')] })
  const joined = (id: string) =>
    seam({ ...{ id, kind: 'centre', name: named('seam', `hood.${id}`), finish: f.finish }, ...both(id) })
  const tail =
    f.tail === undefined
      ? []
      : [
          { ...strapSewn(pieces, 'tail', 'tail'), id: 'tail-long', name: named('seam', 'tail') },
          seam({
            ...{ id: 'tail-end', kind: 'strap', name: named('seam', 'tailEnd'), finish: 'faced' },
            a: [halfEnd(edge('tail', 'bottom'), 0)],
            b: [halfEnd(edge('tail', 'bottom'), 1)],
          }),
          ...HANDS.map((hand, half) =>
            seam({
              ...{
                id: `set-tail-${hand}`,
                kind: 'strap',
                name: named('seam', 'setTail', hand),
                finish: f.finish,
              },
              a: [halfEnd(edge('tail', 'top'), half as 0 | 1)],
              b: [edge('hoodSide', 'corner', hand)],
            }),
          ),
        ]
  const hem = (id: string, code: string, spans: ReturnType<typeof edge>[], depth: number, fullness = 0) =>
    turnedHem({ id, kind: 'edge', name: named('hem', code), spans, depth, fullness })
  const of = (id: string) => HANDS.map((hand) => edge('hoodSide', id, hand))
  return {
    pieces,
    seams: [
      ...HANDS.flatMap((hand) =>
        (['right', 'left'] as const).map((side) =>
          seam({
            ...{
              id: `cape-gore-${side}-${hand}`,
              kind: 'gore',
              name: named('seam', 'capeGore', hand),
              finish: f.finish,
            },
            a: [edge('capeGore', side, hand)],
            b: [edge('hoodSide', side === 'right' ? 'goreRight' : 'goreLeft', hand)],
          }),
        ),
      ),
      ...tail,
      ...[joined('crown'), joined('back')],
      ...(f.buttoned ? [] : [joined('front')]),
    ],
    hems: [
      hem('face', 'face', [...of('face'), ...(f.buttoned ? of('front') : [])], f.hems.face),
      hem(
        'cape',
        'cape',
        [...of('hem'), ...HANDS.map((hand) => edge('capeGore', 'hem', hand))],
        f.hems.bottom,
        (2 * f.hems.bottom) / f.gore,
      ),
    ],
  }
}

/** From the side: below the gore’s point front and back lean apart by what it spreads; the tail hangs. */
function flatHood(f: Figures): Flat {
  const { width, face, cape, gore, angle, corner, tail } = f
  const height = face + cape
  const cut = corner / Math.SQRT2
  const lean = (gore * angle) / 2
  const outline = through([
    ...[at(-lean, 0), at(width + lean, 0), at(width, gore), at(width, height - cut)],
    ...[at(width - cut, height), at(0, height), at(0, gore), at(-lean, 0)],
  ])
  const point = at(width / 2, gore)
  const seams = [-1, 1].map((way): Path => [line(point, at(width / 2 + way * lean, 0))])
  const hanging: Path[] =
    tail === undefined
      ? []
      : [
          through([
            at(width, height - tail.width),
            at(width + tail.width, height - tail.width),
            at(width + tail.width, height - tail.width - tail.length),
            at(width, height - tail.width - tail.length),
            at(width, height - tail.width),
          ]),
        ]
  const low = Math.min(0, tail === undefined ? 0 : height - tail.width - tail.length)
  return {
    ...{ view: 'side', edges: [outline, ...hanging], seams, behind: [] },
    sizes: [
      flatSize(at(0, height), at(0, cape)),
      { from: at(-lean, cape), to: at(-lean, 0), mm: cape },
      { from: at(-lean, low), to: at(width + lean, low), mm: width + 2 * lean },
    ],
  }
}
