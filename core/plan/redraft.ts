import type { Draft, Piece } from '../draft/types.ts'
import { pathBox, pointAt } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import type { Phrase } from '../words/phrase.ts'

/** A piece that two drafts have in different sizes, as cut, mm. */
export type PieceChange = {
  id: string
  name: Phrase
  copies: number
  before: { width: number; height: number }
  after: { width: number; height: number }
  /** Whether the new one can be cut from the old one. */
  fitsWithin: boolean
}

/**
 * In what a new draft differs: pieces of other sizes, pieces that only it has, and pieces that only the old one had.
 */
export type Redrafted = {
  changed: PieceChange[]
  added: Pick<PieceChange, 'id' | 'name' | 'copies'>[]
  gone: Pick<PieceChange, 'id' | 'name' | 'copies'>[]
}

/** Corners that lie nearer than this are where they were, mm. */
const STILL = 0.5

/** So little a seam allowance can do without at a corner or along an edge, mm (common practice). */
const SPARED = 3

/** In which pieces a garment that is drafted again differs from what it was. */
export function differenceOfDrafts(before: Pick<Draft, 'pieces'>, after: Pick<Draft, 'pieces'>): Redrafted {
  const old = new Map(before.pieces.map((piece) => [piece.id, piece]))
  const now = new Set(after.pieces.map(({ id }) => id))
  const short = ({ id, name, copies }: Piece) => ({ id, name, copies: copies.length })
  return {
    changed: after.pieces.flatMap((piece) => {
      const one = old.get(piece.id)
      if (one === undefined || isSame(one, piece)) return []
      return [
        {
          ...short(piece),
          before: sizeOf(one),
          after: sizeOf(piece),
          fitsWithin: fitsWithin(piece.cut, one.cut),
        },
      ]
    }),
    added: after.pieces.filter(({ id }) => !old.has(id)).map(short),
    gone: before.pieces.filter(({ id }) => !now.has(id)).map(short),
  }
}

function sizeOf({ cut }: Piece) {
  const { width, height } = pathBox(cut)
  return { width, height }
}

function isSame(one: Piece, other: Piece): boolean {
  if (one.copies.length !== other.copies.length || one.openings.length !== other.openings.length) return false
  const paths = (piece: Piece) => [piece.cut, ...piece.openings.map(({ cut }) => cut)]
  return paths(one).every((path, i) => {
    const beside = paths(other)[i]!
    if (path.length !== beside.length) return false
    return path.every((s, j) =>
      [0, 0.5].every((t) => {
        const [a, b] = [pointAt(s, t), pointAt(beside[j]!, t)]
        return Math.hypot(a.x - b.x, a.y - b.y) <= STILL
      }),
    )
  })
}

/** Parts of a segment at which it is held against the other shape. */
const TRIED = [0, 0.25, 0.5, 0.75]

/** Whether one shape, its grain as it was, can be cut from another: laid to a corner, an edge or the middle of it. */
export function fitsWithin(inner: Path, outer: Path): boolean {
  const [a, b] = [pathBox(inner), pathBox(outer)]
  if (a.width > b.width + SPARED || a.height > b.height + SPARED) return false
  const shape = pointsOf(outer)
  const points = pointsOf(inner)
  return [0, 0.5, 1].some((u) =>
    [0, 0.5, 1].some((v) => {
      const by = { x: b.x - a.x + u * (b.width - a.width), y: b.y - a.y + v * (b.height - a.height) }
      return points.every(({ x, y }) => isInside({ x: x + by.x, y: y + by.y }, shape))
    }),
  )
}

const pointsOf = (path: Path): Point[] =>
  path.flatMap((s) => (s.kind === 'line' ? [0] : TRIED).map((t) => pointAt(s, t)))

/** Inside a polygon, or hardly outside. */
function isInside(p: Point, shape: readonly Point[]): boolean {
  let odd = false
  for (const [i, a] of shape.entries()) {
    const b = shape[(i + 1) % shape.length]!
    if (distanceTo(p, a, b) <= SPARED) return true
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) odd = !odd
  }
  return odd
}

function distanceTo(p: Point, a: Point, b: Point): number {
  const [x, y] = [b.x - a.x, b.y - a.y]
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * x + (p.y - a.y) * y) / (x * x + y * y || 1)))
  return Math.hypot(p.x - a.x - t * x, p.y - a.y - t * y)
}
