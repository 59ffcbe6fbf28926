import { named, one } from '../names.ts'
import { chainLength, hem, part, seam, type TakenUp, takenUpSeam, wholeEdge } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import type { Copy, Hem, Piece, Seam, Span } from '../types.ts'

/** A band that is folded along its middle, with ties in one with it at both ends. Finished, mm. */
export type Band = { length: number; depth: number; tie: number }

/** Turned in along every edge of a band (common practice), mm. */
const TURNED_IN = 10

/** The band and its ties, one strip along the selvedge; one for each copy. */
export function bandPiece({ length, depth, tie }: Band, id: string, copies: Copy[] = one(id)): Piece {
  const size = { width: 2 * depth, length: length + 2 * tie }
  return rectangle(id, { ...size, added: { allowance: TURNED_IN } }, { copies })
}

/** Which band: the piece, the copy of it, and where that is worn, if there is more than one. */
type Which = { piece: string; copy?: string; place?: string }

/**
 * How a band is sewn on: an edge that is longer, or as long, to its one long edge; the other felled down inside; the
 * ties closed along their length and at their ends.
 *
 * @param into the edges that go into it, in order
 * @param by how what is too long is taken up
 */
export function bandSewn(
  { length, depth, tie }: Band,
  into: Span[],
  by: TakenUp,
  { piece, copy = piece, place }: Which,
): { seams: Seam[]; hems: Hem[] } {
  const prefix = copy === piece ? piece : `${piece}-${copy}`
  const on = (edge: string, from: number, to: number): Span => ({ piece, copy, edge, from, to })
  const whole = length + 2 * tie
  const shared = { kind: 'band', finish: 'faced' } as const
  const end = (edge: 'bottom' | 'top'): Seam =>
    seam({
      ...{
        id: `${prefix}-end-${edge}`,
        ...shared,
        name: named('seam', tie > 0 ? 'tieEnd' : 'bandEnd', place),
      },
      a: [on(edge, 0, depth)],
      b: [on(edge, depth, 2 * depth)],
    })
  const set = { id: `${prefix}-set`, ...shared, a: into, b: [on('right', tie, tie + length)] }
  const full = Math.abs(chainLength(into) - length) > 1e-6
  return {
    seams: [
      full
        ? takenUpSeam({ ...set, name: named('seam', 'band', place) }, by)
        : seam({ ...set, name: named('seam', 'plainBand', place) }),
      ...(tie > 0 ? [0, 1] : []).map((side) =>
        seam({
          ...{ id: `${prefix}-tie-${side}`, ...shared, name: named('seam', 'tie', place) },
          // The long edges run opposite ways: what begins one ends the other.
          a: [on('right', side === 0 ? 0 : tie + length, side === 0 ? tie : whole)],
          b: [on('left', side === 0 ? tie + length : 0, side === 0 ? whole : tie)],
        }),
      ),
      end('bottom'),
      end('top'),
    ],
    hems: [
      hem({
        ...{ id: `${prefix}-inside`, kind: 'band', name: named('hem', 'band', place) },
        spans: [on('left', tie, tie + length)],
        ...{ depth: TURNED_IN, allowance: TURNED_IN, seen: false, fullness: 0 },
      }),
    ],
  }
}

/** A strip folded along its middle and closed: a strap, a tie, a loop. Both its ends go under something. */
export function strapSewn(pieces: readonly Piece[], piece: string, copy: string, place?: string): Seam {
  const edge = (id: string) => wholeEdge(pieces, piece, copy, id)
  return seam({
    ...{ id: `${piece}-${copy}-long`, kind: 'strap', name: named('seam', 'strap', place), finish: 'faced' },
    a: [edge('right')],
    b: [edge('left')],
  })
}

/** Half of an end of a folded strip. */
export const halfEnd = (whole: Span, half: 0 | 1): Span =>
  part(whole, half === 0 ? 0 : whole.to / 2, half === 0 ? whole.to / 2 : whole.to)
