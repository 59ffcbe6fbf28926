import { pathLength } from '../../geometry/path.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import type { MeasureId } from '../../measure/vocabulary.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { OwnConstruction, OwnLength, OwnPiece } from './definition.ts'
import { markedSides, SHAPES } from './shapes.ts'

/** Shortest and longest that a side of a piece may be, mm. */
const LEAST = 5
const MOST = 6000

/** A piece of hers at the size it has on a body, mm: its dimensions by name, and its sides as marks part them. */
export type SizedPiece = {
  piece: OwnPiece
  sides: ReturnType<typeof markedSides>
  dimensions: Record<string, number>
}

/**
 * The pieces at the sizes they have on a body; a dimension taken from another piece's edge is found when that is.
 *
 * @throws Refusal, each naming a piece: a measure that is missing, an edge that is not there, pieces that wait for
 * each other, a size that cannot be cut
 */
export function sizedPieces({ pieces }: OwnConstruction, body: Body): SizedPiece[] {
  const known = new Map<string, SizedPiece>()
  const under = new Set<string>()
  const sized = (piece: OwnPiece): SizedPiece => {
    const found = known.get(piece.id)
    if (found !== undefined) return found
    if (under.has(piece.id)) throw new Refusal(phrase('refusal.own.circle', { piece: piece.name }))
    under.add(piece.id)
    const length = (of: OwnLength, what: string) => checked(mmOf(of, piece, body, edgeLength), piece, what)
    const { dimensions: wanted, sides } = SHAPES[piece.shape]
    const dimensions = Object.fromEntries(
      wanted.map((id) => {
        const given = piece.dimensions[id]
        if (given === undefined) throw new Refusal(phrase('refusal.own.dimension', { piece: piece.name }))
        return [id, length(given, id)]
      }),
    )
    if (piece.shape === 'sector' && dimensions.outerRadius! <= dimensions.innerRadius! + LEAST)
      throw new Refusal(phrase('refusal.own.sector', { piece: piece.name }))
    if (piece.shape === 'gore' && dimensions.spread! > dimensions.longEdge! * WIDEST)
      throw new Refusal(phrase('refusal.own.gore', { piece: piece.name }))
    const marks = piece.marks.map(({ edge, at }) => ({ edge, at: length(at, 'mark') }))
    const made = { piece, dimensions, sides: markedSides(sides(dimensions), marks) }
    under.delete(piece.id)
    known.set(piece.id, made)
    return made
  }
  const edgeLength = (pieceId: string, edge: string, asking: OwnPiece): number => {
    const piece = pieces.find(({ id }) => id === pieceId)
    const side = piece === undefined ? undefined : sized(piece).sides.find(({ id }) => id === edge)
    if (side === undefined) throw new Refusal(phrase('refusal.own.noEdge', { piece: asking.name, edge }))
    return pathLength(side.path)
  }
  return pieces.map(sized)
}

/** Widest angle of a gore cut by its middle, radians. */
const WIDEST = 1.8

function mmOf(
  length: OwnLength,
  piece: OwnPiece,
  body: Body,
  edgeLength: (piece: string, edge: string, asking: OwnPiece) => number,
): number {
  if ('fixed' in length) return length.fixed
  if ('edge' in length) return edgeLength(length.of, length.edge, piece) * length.factor
  const mm = measured(body, length.measure)
  if (mm === undefined)
    throw new Refusal(
      phrase('refusal.draft.missing', { measure: phrase(`measure.name.${length.measure}`) }),
      length.measure,
    )
  return mm * length.factor + length.ease
}

/** A measure that does duty for another that was not taken: the fullest girth has one name on women, another on men. */
export const standsFor = (measure: MeasureId): MeasureId[] =>
  measure === 'bustGirth'
    ? [measure, 'chestGirth']
    : measure === 'chestGirth'
      ? [measure, 'bustGirth']
      : [measure]

/** The measure, or what stands for it, mm. */
export const measured = (body: Body, measure: MeasureId): number | undefined =>
  standsFor(measure)
    .map((id) => lengthOf(body, id))
    .find((mm) => mm !== undefined)

function checked(mm: number, { name }: OwnPiece, what: string): number {
  if (Number.isFinite(mm) && mm >= (what === 'innerRadius' ? 1 : LEAST) && mm <= MOST) return mm
  const params = {
    piece: name,
    size: { mm: Number.isFinite(mm) ? mm : 0 },
    least: { mm: LEAST },
    most: { mm: MOST },
  }
  throw new Refusal(phrase('refusal.own.size', params))
}
