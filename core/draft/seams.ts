import { signedArea } from '../geometry/path.ts'
import { TURNING } from './practice.ts'
import type { Draft, Hem, Piece, Pleats, Seam, Span } from './types.ts'

/** A whole edge of one copy. */
export function wholeEdge(pieces: readonly Piece[], piece: string, copy: string, edge: string): Span {
  const found = pieces.find(({ id }) => id === piece)?.edges.find(({ id }) => id === edge)
  if (found === undefined) throw new Error(`no edge ${edge} on piece ${piece}`)
  return { piece, copy, edge, from: 0, to: found.length }
}

/** Edges of these pieces by name; the copy of a piece with only one need not be named. */
export const edgesOn =
  (pieces: readonly Piece[]) =>
  (piece: string, edge: string, copy = piece): Span =>
    wholeEdge(pieces, piece, copy, edge)

/** The part of a whole edge between two marks, mm from its start. */
export const part = (whole: Span, from: number, to: number): Span => ({ ...whole, from, to })

/** The same, mm from its end. */
export const partFromEnd = (whole: Span, from: number, to: number): Span => ({
  ...whole,
  ...{ from: whole.to - to, to: whole.to - from },
})

/** Finished length of what a hem or one side of a seam runs along, mm. */
export const spanLength = ({ from, to }: Span): number => to - from

/** The same of several spans end to end, mm. */
export const chainLength = (spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + spanLength(span), 0)

/** A plain seam of two chains of the same length. */
export function seam(parts: Pick<Seam, 'id' | 'kind' | 'name' | 'a' | 'b' | 'finish'>): Seam {
  return { ...parts, ratio: 1, length: chainLength(parts.b) }
}

/** How the longer side of a seam is taken up: drawn on so many threads, or folded. */
export type TakenUp = { gathers: number } | { pleats: Pleats; gathers?: number }

/** A seam whose side a is longer than its side b on purpose. */
export function takenUpSeam(parts: Parameters<typeof seam>[0], by: TakenUp): Seam {
  return { ...seam(parts), ratio: chainLength(parts.a) / chainLength(parts.b), ...by }
}

/** A hem of this finished depth, its first turning beyond it. */
export const turnedHem = (
  parts: Pick<Hem, 'id' | 'kind' | 'name' | 'spans'> & { depth: number } & Partial<
      Pick<Hem, 'seen' | 'fullness' | 'allowance'>
    >,
): Hem => hem({ seen: true, fullness: 0, allowance: parts.depth + TURNING, ...parts })

/** A hem as it is given, with its finished length, mm. */
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
