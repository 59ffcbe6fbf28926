import type { Piece } from '../draft/types.ts'

/**
 * The pieces of several garments for one lay. Each garment's pieces are known by its number before their own
 * name, `2.front`, so that two tunics' fronts stay two pieces.
 */
export const together = (garments: readonly (readonly Piece[])[]): Piece[] =>
  garments.flatMap((pieces, i) => pieces.map((piece) => ({ ...piece, id: `${i + 1}.${piece.id}` })))
