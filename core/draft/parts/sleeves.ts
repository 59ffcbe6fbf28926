import { named, pair } from '../names.ts'
import { cutPiece, straightSides } from '../pieces.ts'
import { HANDS, type Hand, PARTS } from '../places.ts'
import { hemmed, TAKEN_UP } from '../practice.ts'
import { edgesOn, part, partFromEnd, seam, takenUpSeam, turnedHem } from '../seams.ts'
import { box } from '../shapes/rectangle.ts'
import type { Hem, Seam, SeamFinish, Span } from '../types.ts'
import type { Assembly } from './assembly.ts'
import { type Band, bandPiece, bandSewn } from './band.ts'
import type { SewnBody } from './body.ts'

/** A pair of sleeves with square gussets under the arms, hemmed at the wrist or set into a band. mm. */
export type SleevesFigures = {
  /** Across the head; more than twice the armhole is gathered into it. */
  head: number
  wrist: number
  length: number
  gusset: number
  /** Depth of the armhole on each panel. */
  armhole: number
  /** Left open at the wrist end of the sleeve seam. */
  opening: number
  wristHem: number
  band?: Band
  finish: SeamFinish
  allowances: { narrow: number; wide: number }
}

/** Rows of gathering thread in linen sleeves (common practice). */
const ROWS = 2

/** The sleeves, sewn to the straight part of a body's sides, sleeve middle to shoulder. */
export function sleevesOf(f: SleevesFigures, body: Pick<SewnBody, 'arm'>): Assembly {
  const pieces = [
    sleevePiece(f),
    ...(f.gusset > 0 ? [gussetPiece(f)] : []),
    ...(f.band === undefined ? [] : [bandPiece(f.band, 'wristband', pair('wristband', false))]),
  ]
  const edge = edgesOn(pieces)
  const seams: Seam[] = []
  const hems: Hem[] = []
  for (const hand of HANDS) {
    seams.push(...seamsOf(f, body, edge, hand))
    const end = edge('sleeve', 'wrist', hand)
    if (f.band === undefined) {
      const name = named('hem', 'wrist', hand)
      hems.push(turnedHem({ id: `wrist-${hand}`, kind: 'wrist', name, spans: [end], depth: f.wristHem }))
    } else {
      const sewn = bandSewn(f.band, [end], { gathers: ROWS }, { piece: 'wristband', copy: hand, place: hand })
      seams.push(...sewn.seams)
      hems.push(...sewn.hems)
    }
    if (f.opening > 0) {
      const spans = (['front', 'back'] as const).map((side) => below(f, edge, hand, side, 'opening'))
      const name = named('hem', 'wristOpening', hand)
      const allowance = f.allowances.narrow
      hems.push(
        turnedHem({
          id: `wrist-opening-${hand}`,
          kind: 'slit',
          name,
          spans,
          depth: allowance / 2,
          allowance,
        }),
      )
    }
  }
  return { pieces, seams, hems }
}

function sleevePiece({ head, wrist, length, allowances, wristHem, band }: SleevesFigures) {
  const [w, h] = [wrist / 2, head / 2]
  const corners = [
    { x: -w, y: 0 },
    { x: w, y: 0 },
    { x: h, y: length },
    { x: -h, y: length },
  ]
  const sides = straightSides(corners, [
    { id: 'wrist', ...(band === undefined ? hemmed(wristHem) : { allowance: TAKEN_UP }) },
    { id: 'front', allowance: allowances.wide },
    { id: 'head', allowance: allowances.wide },
    { id: 'back', allowance: allowances.narrow },
  ])
  return cutPiece('sleeve', { sides }, { copies: pair('sleeve', true), sizes: { head, wrist, length } })
}

function gussetPiece({ gusset, allowances }: SleevesFigures) {
  const sides = box(gusset, gusset).map(({ path }, i) => ({
    ...{ id: ['sleeveFront', 'sleeveBack', 'bodyBack', 'bodyFront'][i]!, path },
    allowance: allowances.wide,
  }))
  const copies = pair('gusset', false)
  return cutPiece('gusset', { sides }, { copies, turn: [0, 90, 180, 270], sizes: { square: gusset } })
}

type Stretch = 'gusset' | 'seam' | 'opening'

/** A stretch of a sleeve's slanting edge: the front one is drawn up from the wrist, the back one down to it. */
function below(
  f: SleevesFigures,
  edge: ReturnType<typeof edgesOn>,
  hand: Hand,
  side: 'front' | 'back',
  what: Stretch,
): Span {
  const whole = edge('sleeve', side, hand)
  const marks = {
    gusset: [0, f.gusset],
    seam: [f.gusset, whole.to - f.opening],
    opening: [whole.to - f.opening, whole.to],
  }
  const [from, to] = marks[what] as [number, number]
  return side === 'front' ? partFromEnd(whole, from, to) : part(whole, from, to)
}

function seamsOf(
  f: SleevesFigures,
  body: Pick<SewnBody, 'arm'>,
  edge: ReturnType<typeof edgesOn>,
  hand: Hand,
): Seam[] {
  const { finish, armhole, gusset } = f
  const square = (id: string) => [edge('gusset', id, hand)]
  const quarter = (of: 'front' | 'back') => `${of}${hand === 'left' ? 'Left' : 'Right'}`
  const sides = gusset > 0 ? PARTS : []
  const armholeSeam = {
    ...({ id: `armhole-${hand}`, kind: 'armhole', name: named('seam', 'armhole', hand), finish } as const),
    a: [edge('sleeve', 'head', hand)],
    b: PARTS.map((of) => body.arm(of, hand, 0, armhole)),
  }
  return [
    ...sides.map((of) =>
      seam({
        ...{ id: `gusset-sleeve-${of}-${hand}`, kind: 'gusset', finish },
        name: named('seam', 'gussetSleeve', of === 'front' ? hand : `${hand}Again`),
        a: square(of === 'front' ? 'sleeveFront' : 'sleeveBack'),
        b: [below(f, edge, hand, of, 'gusset')],
      }),
    ),
    seam({
      ...{ id: `underarm-${hand}`, kind: 'underarm', name: named('seam', 'underarm', hand), finish },
      a: [below(f, edge, hand, 'front', 'seam')],
      b: [below(f, edge, hand, 'back', 'seam')],
    }),
    Math.abs(f.head - 2 * armhole) < 1e-6 ? seam(armholeSeam) : takenUpSeam(armholeSeam, { gathers: ROWS }),
    ...sides.map((of) =>
      seam({
        ...{ id: `gusset-body-${of}-${hand}`, kind: 'gusset', finish },
        name: named('seam', 'gussetBody', quarter(of)),
        a: square(of === 'front' ? 'bodyFront' : 'bodyBack'),
        b: [body.arm(of, hand, armhole, armhole + gusset)],
      }),
    ),
  ]
}
