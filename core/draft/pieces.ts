import { cutLine } from '../geometry/offset.ts'
import { pathLength, reversePath } from '../geometry/path.ts'
import { distance } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { named, one } from './names.ts'
import type { Copy, Edge, Piece, Slit } from './types.ts'

/** One named side of an outline or opening, in the order of travel. */
export type Side = { id: string; path: Path; allowance: number; turned?: boolean }

/** What a shape is: its sides, openings and slits. Everything else of a piece follows from them. */
export type Shape = {
  sides: readonly Side[]
  openings?: readonly { id: string; sides: readonly Side[] }[]
  slits?: readonly Slit[]
}

type Rest = Omit<Piece, 'outline' | 'cut' | 'openings' | 'slits' | 'edges'>

const pathOf = (sides: readonly Side[]): Path => sides.flatMap(({ path }) => path)

const cutOf = (sides: readonly Side[]): Path =>
  cutLine(sides.map(({ path, allowance, turned = false }) => ({ path, allowance, turned })))

const edgesOf = (on: string, sides: readonly Side[]): Edge[] =>
  sides.map(({ id, path, allowance, turned = false }) => ({
    id,
    on,
    path,
    length: pathLength(path),
    allowance,
    turned,
  }))

/** The two sides of a slit: `<id>Right` up from its open end, `<id>Left` back down again. */
function slitEdges({ id, apex, open }: Slit): Edge[] {
  const length = distance(apex, open)
  const up: Path = [line(open, apex)]
  return [
    { id: `${id}Right`, on: id, path: up, length, allowance: 0, turned: false },
    { id: `${id}Left`, on: id, path: reversePath(up), length, allowance: 0, turned: false },
  ]
}

/**
 * A piece from its shape: the finished outline, the line to cut and every edge.
 * @throws Refusal when an allowance is wider than the shape
 */
export function makePiece(rest: Rest, { sides, openings = [], slits = [] }: Shape): Piece {
  return {
    ...rest,
    outline: pathOf(sides),
    cut: cutOf(sides),
    openings: openings.map((o) => ({ id: o.id, finished: pathOf(o.sides), cut: cutOf(o.sides) })),
    slits: [...slits],
    edges: [
      ...edgesOf('outline', sides),
      ...openings.flatMap((o) => edgesOf(o.id, o.sides)),
      ...slits.flatMap(slitEdges),
    ],
  }
}

/** The piece with slits cut in it besides. */
export const withSlits = (piece: Piece, slits: readonly Slit[]): Piece =>
  slits.length === 0
    ? piece
    : {
        ...piece,
        slits: [...piece.slits, ...slits],
        edges: [...piece.edges, ...slits.flatMap(slitEdges)],
      }

/** Straight sides through points in order, one id and allowance each; closed back to the first point. */
export function straightSides(corners: readonly Point[], sides: readonly Omit<Side, 'path'>[]): Side[] {
  return sides.map((side, i) => ({ ...side, path: [line(corners[i]!, corners[(i + 1) % corners.length]!)] }))
}

type Manners = Partial<
  Pick<Piece, 'turn' | 'cloth' | 'grain' | 'hangsBothWays' | 'joinsFreely' | 'keptWhole'>
> & {
  /** Its word in the catalogue, if that is not its id. */
  code?: string
  copies?: Copy[]
  /** By the catalogue's words for them: `width`, `length`. */
  sizes: Partial<Record<SizeId, number>>
}
type SizeId = 'width' | 'length' | 'head' | 'wrist' | 'square' | 'longEdge' | 'hemArc' | 'radius'

/** A piece with the manners of most: one of it, on the straight grain, of the garment's own cloth. */
export function cutPiece(id: string, shape: Shape, { code = id, copies, sizes, ...manners }: Manners): Piece {
  return makePiece(
    {
      ...{ id, name: named('piece', code), copies: copies ?? one(id, code) },
      ...{ grain: 'straight', turn: [0, 180], cloth: 'main', ...manners },
      sizes: Object.entries(sizes).map(([size, mm]) => ({
        name: phrase(`draft.size.${size as SizeId}`),
        mm,
      })),
    },
    shape,
  )
}
