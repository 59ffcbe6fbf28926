import { halfTurned } from '../../../geometry/path.ts'
import { line } from '../../../geometry/segment.ts'
import type { Path, Point } from '../../../geometry/types.ts'
import { phrase } from '../../../words/phrase.ts'
import { makePiece, type Side } from '../../pieces.ts'
import type { Hand, Part } from '../../places.ts'
import { neckEdge } from '../../shapes/neckline.ts'
import type { Piece, Slit, Span } from '../../types.ts'
import type { Figures } from './figures.ts'

/** What the side edge of a panel is sewn to, from the shoulder down. */
export type SidePart = 'armhole' | 'gusset' | 'side' | 'gore'

/** Ids of the pieces that are front and back, and of the one that is both where the shoulder is cut in one. */
export const PANEL = { front: 'front', back: 'back', both: 'body' } as const

/**
 * Front and back, lying face up with the hem below: what is drawn at the right is worn at the left in
 * front, and at the right behind.
 */
export function panels(f: Figures): Piece[] {
  return f.chosen.shoulder === 'seam' ? [panel(f, 'front'), panel(f, 'back')] : [body(f)]
}

function panel(f: Figures, part: Part): Piece {
  const { width, length, slope, neck, allowances } = f
  const shoulder = (x: number): Point => ({ x, y: length - slope })
  const [hemLeft, hemRight] = [point(-width / 2, 0), point(width / 2, 0)]
  const [outRight, outLeft] = [shoulder(width / 2), shoulder(-width / 2)]
  const [neckRight, neckLeft] = [point(neck.width / 2, length), point(-neck.width / 2, length)]
  const edge = sideAllowance(f, part)
  const sides: Side[] = [
    { id: 'hem', path: [line(hemLeft, hemRight)], ...bottomHem(f) },
    { id: 'right', path: [line(hemRight, outRight)], allowance: edge },
    { id: 'shoulderRight', path: [line(outRight, neckRight)], allowance: shoulderAllowance(f, part) },
    {
      id: 'neck',
      path: neckEdge(neck.width, neck[part], length),
      allowance: allowances.neck,
    },
    { id: 'shoulderLeft', path: [line(neckLeft, outLeft)], allowance: shoulderAllowance(f, part) },
    { id: 'left', path: [line(outLeft, hemLeft)], allowance: edge },
  ]
  return makePiece(
    {
      id: PANEL[part],
      name: phrase(`draft.piece.${part}`),
      copies: [{ id: PANEL[part], name: phrase(`draft.piece.${part}`), mirrored: false }],
      grain: 'straight',
      turn: [0, 180],
      cloth: 'main',
      sizes: panelSizes(width, length),
    },
    { sides, slits: [...neckSlit(f, part, length), ...goreSlits(f, 0, 1)] },
  )
}

/** Front and back in one length, the shoulder line across its middle, the front's hem below. */
function body(f: Figures): Piece {
  const { width, length, neck, allowances } = f
  const corners = [
    point(-width / 2, 0),
    point(width / 2, 0),
    point(width / 2, 2 * length),
    point(-width / 2, 2 * length),
  ]
  const side = Math.max(sideAllowance(f, 'front'), sideAllowance(f, 'back'))
  const to = (i: number): Path => [line(corners[i]!, corners[(i + 1) % 4]!)]
  const sides: Side[] = [
    { id: 'hem', path: to(0), ...bottomHem(f) },
    { id: 'right', path: to(1), allowance: side },
    { id: 'hemBack', path: to(2), ...bottomHem(f) },
    { id: 'left', path: to(3), allowance: side },
  ]
  const hole = { allowance: allowances.neck }
  const opening: Side[] = [
    { id: 'neck', path: neckEdge(neck.width, neck.front, length), ...hole },
    { id: 'neckBack', path: halfTurned(neckEdge(neck.width, neck.back, length), length), ...hole },
  ]
  return makePiece(
    {
      id: PANEL.both,
      name: phrase('draft.piece.body'),
      copies: [{ id: PANEL.both, name: phrase('draft.piece.body'), mirrored: false }],
      grain: 'straight',
      turn: [0, 180],
      cloth: 'main',
      hangsBothWays: true,
      sizes: panelSizes(width, 2 * length),
    },
    {
      sides,
      openings: [{ id: 'opening', sides: opening }],
      slits: [
        ...neckSlit(f, 'front', length),
        ...goreSlits(f, 0, 1),
        ...goreSlits(f, 2 * length, -1, 'Back'),
      ],
    },
  )
}

const point = (x: number, y: number): Point => ({ x, y })

const panelSizes = (width: number, length: number) => [
  { name: phrase('draft.size.width'), mm: width },
  { name: phrase('draft.size.length'), mm: length },
]

/** Whether the neck is rolled, and so needs no facing. */
export const isRolled = (f: Figures): boolean => f.chosen.neckFinish === 'rolled'

const bottomHem = (f: Figures) => ({ allowance: f.hems.bottom.allowance, turned: true })

/** The back is wide where it is felled over the front at the side seam; elsewhere the panels are narrow. */
const sideAllowance = ({ allowances, side }: Figures, part: Part): number =>
  part === 'back' && side > 0 ? allowances.wide : allowances.narrow

const shoulderAllowance = ({ allowances }: Figures, part: Part): number =>
  part === 'back' ? allowances.wide : allowances.narrow

function neckSlit({ neck, allowances }: Figures, part: Part, shoulderLine: number): Slit[] {
  if (part === 'back' || neck.slit === 0) return []
  const open = point(0, shoulderLine - neck.front.depth)
  return [{ id: 'neckSlit', open, apex: point(0, open.y - neck.slit), allowance: allowances.neck }]
}

function goreSlits({ skirt, allowances }: Figures, hemAt: number, up: 1 | -1, end = ''): Slit[] {
  if (skirt.gores < 6) return []
  const slit = {
    open: point(0, hemAt),
    apex: point(0, hemAt + up * skirt.radius),
    allowance: allowances.slit,
  }
  return [{ id: `goreSlit${end}`, ...slit }]
}

/** Where one part of a panel's side edge lies, worn at the wearer's `hand`. */
export function sideSpan(f: Figures, part: Part, hand: Hand, what: SidePart): Span {
  const { length, slope, armhole, gusset, side, skirt } = f
  const marks = [
    0,
    armhole,
    armhole + gusset,
    armhole + gusset + side,
    armhole + gusset + side + skirt.radius,
  ]
  const i = (['armhole', 'gusset', 'side', 'gore'] as const).indexOf(what)
  const [top, bottom] = [marks[i]!, marks[i + 1]!]
  const drawn = (part === 'front') === (hand === 'left') ? 'right' : 'left'
  if (f.chosen.shoulder === 'seam') {
    // The right edge is drawn upwards and the left one downwards.
    const whole = length - slope
    const [from, to] = drawn === 'right' ? [whole - bottom, whole - top] : [top, bottom]
    return { piece: PANEL[part], copy: PANEL[part], edge: drawn, from, to }
  }
  // Over the shoulder the back lies upside down above the front, so each hand keeps to one edge.
  const edge = hand === 'left' ? 'right' : 'left'
  const frontFirst = edge === 'right'
  const [from, to] =
    (part === 'front') === frontFirst ? [length - bottom, length - top] : [length + top, length + bottom]
  return { piece: PANEL.both, copy: PANEL.both, edge, from, to }
}

/** A named edge of the front or back, whichever way the body is cut. */
export function panelEdge(
  f: Figures,
  part: Part,
  edge: 'hem' | 'neck' | 'goreSlitRight' | 'goreSlitLeft',
): { piece: string; edge: string } {
  if (f.chosen.shoulder === 'seam') return { piece: PANEL[part], edge }
  const end = part === 'back' ? 'Back' : ''
  const slit = edge.startsWith('goreSlit')
    ? `goreSlit${end}${edge.slice('goreSlit'.length)}`
    : `${edge}${end}`
  return { piece: PANEL.both, edge: slit }
}
