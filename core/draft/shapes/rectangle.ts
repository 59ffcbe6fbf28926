import { polygon } from '../../geometry/path.ts'
import type { Path } from '../../geometry/types.ts'
import { cutPiece, type Side } from '../pieces.ts'
import type { Piece } from '../types.ts'

const EDGES = ['bottom', 'right', 'top', 'left'] as const
type BoxEdge = (typeof EDGES)[number]

/** The four sides of a rectangle, its lower left corner at (0, 0): `bottom`, `right`, `top` and `left`. */
export function box(width: number, length: number): { id: BoxEdge; path: Path }[] {
  const around = polygon([
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
    { x: 0, y: length },
  ])
  return EDGES.map((id, i) => ({ id, path: [around[i]!] }))
}

/** What is added to a side of a rectangle, and whether it is turned for a hem. */
type Added = Pick<Side, 'allowance'> & { turned?: boolean }

/** Across the cloth and along it, finished, mm, and what is added to each side, or to all of them. */
type Rectangle = { width: number; length: number; added: Added | Record<BoxEdge, Added> }

/** A straight-grain rectangle with its edges `bottom`, `right`, `top` and `left`. */
export function rectangle(
  id: string,
  { width, length, added }: Rectangle,
  manners: Partial<Parameters<typeof cutPiece>[2]> = {},
): Piece {
  const addedTo = (edge: BoxEdge): Added => ('allowance' in added ? added : added[edge])
  const sides = box(width, length).map((side) => ({ ...side, ...addedTo(side.id) }))
  return cutPiece(id, { sides }, { sizes: { width, length }, ...manners })
}
