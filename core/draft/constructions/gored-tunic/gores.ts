import { phrase } from '../../../words/phrase.ts'
import { makePiece } from '../../pieces.ts'
import { atRight, type Hand, type Part, QUARTERS, type Quarter } from '../../places.ts'
import { type Gore, straightEdgeGore, symmetricalGore } from '../../shapes/gore.ts'
import type { Copy, Piece } from '../../types.ts'
import type { Figures } from './figures.ts'

/** Gores lie with the hem below and the point above; those with a straight edge have it at the left. */
export function gores(f: Figures): Piece[] {
  const { gores: count, radius, angle } = f.skirt
  if (count === 2) {
    const copies = (['left', 'right'] as const).map((hand) => copy('gore', hand, false))
    return [gorePiece(f, 'gore', symmetricalGore(radius, angle), copies)]
  }
  const straight = f.chosen.goreCut === 'straightEdge'
  const shape = straight ? straightEdgeGore(radius, angle) : symmetricalGore(radius, angle)
  const sides = gorePiece(
    f,
    'gore',
    shape,
    QUARTERS.map(({ id }) => copy('gore', id, straight && atRight(id))),
  )
  if (count === 4) return [sides]
  const centre =
    count === 6
      ? gorePiece(f, 'centreGore', symmetricalGore(radius, angle), [
          copy('centreGore', 'front', false),
          copy('centreGore', 'back', false),
        ])
      : gorePiece(
          f,
          'centreGore',
          straightEdgeGore(radius, angle),
          QUARTERS.map(({ id }) => copy('centreGore', id, !atRight(id))),
        )
  return [sides, centre]
}

const copy = (piece: 'gore' | 'centreGore', id: Quarter | Hand | Part, mirrored: boolean): Copy => ({
  id,
  name: phrase('draft.piece.placed', {
    piece: phrase(`draft.piece.${piece}`),
    place: phrase(`draft.place.${id}`),
  }),
  mirrored,
})

function gorePiece(f: Figures, id: 'gore' | 'centreGore', shape: Gore, copies: Copy[]): Piece {
  const { skirt, allowances, hems } = f
  return makePiece(
    {
      id,
      name: phrase(`draft.piece.${id}`),
      copies,
      grain: 'straight',
      turn: [0, 180],
      cloth: 'main',
      sizes: [
        { name: phrase('draft.size.longEdge'), mm: skirt.radius },
        { name: phrase('draft.size.hemArc'), mm: skirt.radius * skirt.angle },
      ],
    },
    {
      sides: [
        { id: 'hem', path: shape.hem, allowance: hems.bottom.allowance, turned: true },
        { id: 'right', path: shape.right, allowance: allowances.wide },
        { id: 'left', path: shape.left, allowance: allowances.wide },
      ],
    },
  )
}

/** The long edges of a side gore: one to the body, on the bias where it has a straight one; one outward. */
export function sideGoreEdges(
  f: Figures,
  quarter: Quarter,
): { body: 'right' | 'left'; outer: 'right' | 'left' } {
  const left = f.chosen.goreCut === 'symmetrical' && atRight(quarter)
  return left ? { body: 'left', outer: 'right' } : { body: 'right', outer: 'left' }
}
