import { pieced } from '../draft/piecing.ts'
import type { ClothRole, Draft, Piece } from '../draft/types.ts'
import { usableWidth } from './cloth.ts'
import type { Cloth } from './types.ts'

/** The roles that may have a cloth of their own; without one their pieces are cut from the garment's. */
export type OtherRole = Exclude<ClothRole, 'main'>
export type OtherCloths<C extends Cloth = Cloth> = Partial<Record<OtherRole, C>>

/** The role of the cloth that a piece is cut from, when these have one of their own. */
export const cutFrom = ({ cloth }: Pick<Piece, 'cloth'>, others: OtherCloths): ClothRole =>
  cloth !== 'main' && others[cloth] !== undefined ? cloth : 'main'

/** The pieces that are cut from one cloth. */
export const piecesFrom = (pieces: readonly Piece[], role: ClothRole, others: OtherCloths): Piece[] =>
  pieces.filter((piece) => cutFrom(piece, others) === role)

/**
 * A draft as it is cut from these cloths: pieces that are wider than theirs are joined from narrower ones.
 *
 * @throws Refusal when a cloth's figures cannot be
 */
export function asCut(draft: Draft, cloth: Cloth, others: OtherCloths = {}): Draft {
  const main = usableWidth(cloth)
  return pieced(draft, (piece) => {
    const own = others[piece.cloth as OtherRole]
    return piece.cloth === 'main' || own === undefined ? main : usableWidth(own)
  })
}
