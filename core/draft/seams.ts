import { signedArea } from '../geometry/path.ts'
import type { Draft, Hem, Piece, Seam, Span } from './types.ts'

/** A whole edge of one copy. */
export function wholeEdge(pieces: readonly Piece[], piece: string, copy: string, edge: string): Span {
  const found = pieces.find(({ id }) => id === piece)?.edges.find(({ id }) => id === edge)
  if (found === undefined) throw new Error(`no edge ${edge} on piece ${piece}`)
  return { piece, copy, edge, from: 0, to: found.length }
}

export const spanLength = ({ from, to }: Span): number => to - from

export const chainLength = (spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + spanLength(span), 0)

/** A plain seam of two chains of the same length. */
export function seam(parts: Pick<Seam, 'id' | 'kind' | 'name' | 'a' | 'b' | 'finish'>): Seam {
  return { ...parts, ratio: 1, length: chainLength(parts.b) }
}

export function hem(parts: Omit<Hem, 'length'>): Hem {
  return { ...parts, length: chainLength(parts.spans) }
}

/** Sums by class of seam and hem, and the finished area of every copy less its openings. */
export function totalsOf(
  pieces: readonly Piece[],
  seams: readonly Seam[],
  hems: readonly Hem[],
): Draft['totals'] {
  const area = pieces.reduce((sum, piece) => {
    const openings = piece.openings.reduce((lost, o) => lost + signedArea(o.finished), 0)
    return sum + piece.copies.length * (signedArea(piece.outline) + openings)
  }, 0)
  return { seams: byKind(seams), hems: byKind(hems), area }
}

function byKind<K extends string>(sewn: readonly { kind: K; length: number }[]): Partial<Record<K, number>> {
  const totals: Partial<Record<K, number>> = {}
  for (const { kind, length } of sewn) totals[kind] = (totals[kind] ?? 0) + length
  return totals
}
