import type { Phrase } from '../../words/phrase.ts'
import { phrase } from '../../words/phrase.ts'
import { makePiece, type Side, straightSides } from '../pieces.ts'
import type { Copy, Piece } from '../types.ts'

/** What is added to each side of a rectangle, and whether it is turned for a hem. */
type Added = Pick<Side, 'allowance'> & { turned?: boolean }

type Rectangle = {
  id: string
  name: Phrase
  copies: Copy[]
  /** Across the cloth and along it, finished, mm. */
  width: number
  length: number
  sides: { bottom: Added; right: Added; top: Added; left: Added }
}

/** A straight-grain rectangle with its edges `bottom`, `right`, `top` and `left`. */
export function rectangle({ id, name, copies, width, length, sides }: Rectangle): Piece {
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
    { x: 0, y: length },
  ]
  const edges = (['bottom', 'right', 'top', 'left'] as const).map((edge) => ({ id: edge, ...sides[edge] }))
  return makePiece(
    {
      ...{ id, name, copies, grain: 'straight', turn: [0, 180], cloth: 'main' },
      sizes: [
        { name: phrase('draft.size.width'), mm: width },
        { name: phrase('draft.size.length'), mm: length },
      ],
    },
    { sides: straightSides(corners, edges) },
  )
}

/** The only copy of a piece. */
export const alone = (id: string, name: Phrase): Copy[] => [{ id, name, mirrored: false }]
