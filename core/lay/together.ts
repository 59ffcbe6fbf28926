import type { Piece } from '../draft/types.ts'
import { type Phrase, phrase } from '../words/phrase.ts'

/** A garment's pieces, and what it is called where it is laid beside others. */
type Garment = { pieces: readonly Piece[]; title?: Phrase }

/**
 * The pieces of several garments for one lay. Each garment's pieces are known by its number before their own
 * name, `2.front`, so that two tunics' fronts stay two pieces.
 */
export const together = (garments: readonly Garment[]): Piece[] =>
  garments.flatMap(({ pieces, title }, i) =>
    pieces.map((piece) => {
      const named = (name: Phrase) =>
        title === undefined ? name : phrase('lay.ofGarment', { garment: title, piece: name })
      return {
        ...piece,
        ...{ id: `${i + 1}.${piece.id}`, name: named(piece.name) },
        copies: piece.copies.map((copy) => ({ ...copy, name: named(copy.name) })),
      }
    }),
  )
