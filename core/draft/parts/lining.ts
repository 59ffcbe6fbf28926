import { phrase } from '../../words/phrase.ts'
import { makePiece } from '../pieces.ts'
import { edgesOn, hem } from '../seams.ts'
import type { ClothRole, Edge, Hem, Piece, Seam, Span } from '../types.ts'
import type { Assembly } from './assembly.ts'

/** What a lining edge that is turned in against the garment takes, mm (common practice). */
const TURNED_IN = 10
const TACKED = 10

const lined = (id: string): string => `lining-${id}`

/** A piece again on another cloth: the same finished shape, with edges that are not sewn to their like turned in. */
function copyOf(piece: Piece, cloth: ClothRole, prefix: string, allowanceOf: (edge: Edge) => number): Piece {
  const { outline: _, cut: __, openings, slits, edges, ...rest } = piece
  const sides = (on: string) =>
    edges
      .filter((edge) => edge.on === on)
      .map((edge) => ({ id: edge.id, path: edge.path, allowance: allowanceOf(edge) }))
  return makePiece(
    {
      ...rest,
      ...{
        id: `${prefix}${piece.id}`,
        cloth,
        name: phrase(`draft.piece.of.${cloth}`, { piece: piece.name }),
      },
      copies: rest.copies.map((copy) => ({
        ...copy,
        id: copy.id === piece.id ? `${prefix}${piece.id}` : copy.id,
        name: phrase(`draft.piece.of.${cloth}`, { piece: copy.name }),
      })),
    },
    { sides: sides('outline'), openings: openings.map(({ id }) => ({ id, sides: sides(id) })), slits },
  )
}

/**
 * A lining of these pieces: their seams sewn again on other cloth, and wherever the garment is hemmed, or sewn to
 * what is not lined, the lining turned in and felled to it.
 *
 * @param these ids of the pieces to line
 */
export function liningOf(garment: Assembly, these: readonly string[]): Assembly {
  const on = (spans: readonly Span[]) => spans.every(({ piece }) => these.includes(piece))
  const again = (span: Span): Span => ({
    ...span,
    piece: lined(span.piece),
    copy: span.copy === span.piece ? lined(span.copy) : span.copy,
  })
  const both = garment.seams.filter(({ a, b }) => on(a) && on(b))
  const whole = new Set(both.flatMap(({ a, b }) => [...a, ...b]).map(({ piece, edge }) => `${piece}/${edge}`))
  const allowanceOf = (piece: Piece) => (edge: Edge) =>
    edge.allowance === 0 ? 0 : whole.has(`${piece.id}/${edge.id}`) ? edge.allowance : TURNED_IN
  const pieces = garment.pieces
    .filter(({ id }) => these.includes(id))
    .map((piece) => copyOf(piece, 'lining', 'lining-', allowanceOf(piece)))
  const seams: Seam[] = both.map((one) => ({
    ...one,
    ...{ id: lined(one.id), name: phrase('draft.seam.inLining', { seam: one.name }) },
    ...{ a: one.a.map(again), b: one.b.map(again), finish: 'open' },
  }))
  const edge = [
    ...garment.hems.map(({ id, name, spans }) => ({ id, name, spans })),
    ...garment.seams
      .filter((one) => !both.includes(one))
      .flatMap(({ id, name, a, b }) => [{ id, name, spans: [...a, ...b] }]),
  ]
  const hems: Hem[] = edge.flatMap(({ id, name, spans }) => {
    const own = spans.filter(({ piece }) => these.includes(piece))
    if (own.length === 0) return []
    const turned = { depth: TURNED_IN, allowance: TURNED_IN, seen: false, fullness: 0 }
    const words = phrase('draft.hem.lining', { edge: name })
    return [hem({ id: lined(id), kind: 'lining', name: words, spans: own.map(again), ...turned })]
  })
  return { pieces, seams, hems }
}

/** What stiffens these pieces: cut to their shape and tacked down all round before anything is sewn. */
export function interliningOf({ pieces: all }: Pick<Assembly, 'pieces'>, these: readonly string[]): Assembly {
  const pieces = all
    .filter(({ id }) => these.includes(id))
    .map((piece) =>
      copyOf(piece, 'interlining', 'interlining-', ({ allowance }) => Math.min(allowance, TACKED)),
    )
  const edge = edgesOn(pieces)
  return {
    pieces,
    seams: [],
    hems: pieces.flatMap((piece) =>
      piece.copies.map((copy) =>
        hem({
          ...{
            id: `${piece.id}-${copy.id}`,
            kind: 'tacked',
            seen: false,
            fullness: 0,
            depth: 0,
            allowance: TACKED,
          },
          name: phrase('draft.hem.tacked', { piece: copy.name }),
          spans: piece.edges.map(({ id }) => edge(piece.id, id, copy.id)),
        }),
      ),
    ),
  }
}

/** Whether a seam is of the lining. */
export const inLining = ({ id }: Pick<Seam, 'id'>): boolean => id.startsWith('lining-')
