import { halfTurned } from '../../../geometry/path.ts'
import { line } from '../../../geometry/segment.ts'
import type { Path, Point } from '../../../geometry/types.ts'
import { phrase } from '../../../words/phrase.ts'
import { makePiece, type Side } from '../../pieces.ts'
import type { Part } from '../../places.ts'
import { FACING } from '../../practice.ts'
import { neckEdge } from '../../shapes/neckline.ts'
import type { Piece, Slit } from '../../types.ts'
import type { Figures } from './figures.ts'

/**
 * Straight-sided facings of the tunic's own cloth behind the neck opening and its slit, as wide as the
 * shoulder allows up to the usual width. The middle of the shoulder line lies at (0, 0).
 */
export function facings(f: Figures): Piece[] {
  if (f.chosen.neckFinish === 'rolled') return []
  return f.chosen.shoulder === 'seam' ? [facing(f, 'front'), facing(f, 'back')] : [facingInOne(f)]
}

/** Corner of a facing on the shoulder line, and how far it reaches below it. */
function reach(f: Figures, part: Part): { out: Point; below: number } {
  const { width, slope, neck } = f
  const shoulder = Math.hypot((width - neck.width) / 2, slope)
  const along = Math.min(FACING.width, shoulder) / shoulder
  const out = { x: neck.width / 2 + (along * (width - neck.width)) / 2, y: -along * slope }
  return { out, below: neck[part].depth + (part === 'front' ? neck.slit : 0) + FACING.width }
}

function facing(f: Figures, part: Part): Piece {
  const { neck } = f
  const { out, below } = reach(f, part)
  const [right, left] = [
    { x: neck.width / 2, y: 0 },
    { x: -neck.width / 2, y: 0 },
  ]
  const outLeft = { x: -out.x, y: out.y }
  const [lowLeft, lowRight] = [
    { x: -out.x, y: -below },
    { x: out.x, y: -below },
  ]
  const sides: Side[] = [
    { id: 'outer', path: [line(outLeft, lowLeft), line(lowLeft, lowRight), line(lowRight, out)], ...OUTER },
    { id: 'shoulderRight', path: [line(out, right)], allowance: FACING.seam },
    { id: 'neck', path: neckEdge(neck.width, neck[part]), allowance: FACING.seam },
    { id: 'shoulderLeft', path: [line(left, outLeft)], allowance: FACING.seam },
  ]
  return facingPiece(part === 'front' ? 'facingFront' : 'facingBack', 2 * out.x, below, {
    sides,
    slits: slit(f, part),
  })
}

function facingInOne(f: Figures): Piece {
  const { neck } = f
  const [front, back] = [reach(f, 'front'), reach(f, 'back')]
  const x = front.out.x
  const corners = [
    { x: -x, y: -front.below },
    { x, y: -front.below },
    { x, y: back.below },
    { x: -x, y: back.below },
  ]
  const outer: Path = corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!))
  const opening: Side[] = [
    { id: 'neck', path: neckEdge(neck.width, neck.front), allowance: FACING.seam },
    { id: 'neckBack', path: halfTurned(neckEdge(neck.width, neck.back), 0), allowance: FACING.seam },
  ]
  return facingPiece('facing', 2 * x, front.below + back.below, {
    sides: [{ id: 'outer', path: outer, ...OUTER }],
    openings: [{ id: 'opening', sides: opening }],
    slits: slit(f, 'front'),
  })
}

const OUTER = { allowance: FACING.turning, turned: true }

function slit({ neck }: Figures, part: Part): Slit[] {
  if (part === 'back' || neck.slit === 0) return []
  const open = { x: 0, y: -neck.front.depth }
  return [{ id: 'neckSlit', open, apex: { x: 0, y: open.y - neck.slit }, allowance: FACING.seam }]
}

function facingPiece(
  id: 'facing' | 'facingFront' | 'facingBack',
  width: number,
  length: number,
  shape: Parameters<typeof makePiece>[1],
): Piece {
  const name = phrase(`draft.piece.${id}`)
  return makePiece(
    {
      id,
      name,
      copies: [{ id, name, mirrored: false }],
      grain: 'straight',
      turn: [0, 180],
      cloth: 'facing',
      sizes: [
        { name: phrase('draft.size.width'), mm: width },
        { name: phrase('draft.size.length'), mm: length },
      ],
    },
    shape,
  )
}
