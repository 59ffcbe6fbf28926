import type { Piece } from '../draft/types.ts'
import { flattenOutward } from '../geometry/flatten.ts'
import { convexHull } from '../geometry/hull.ts'
import type { Point } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Cloth, Placement } from './types.ts'

/** One way a copy may lie: the convex hull of its cut outline about the piece's own origin, mm. */
export type Shape = {
  /** Shapes with the same key are the same outline, whatever piece and turn they come from. */
  key: number
  angle: Placement['angle']
  flipped: boolean
  /** Anticlockwise, x and y alternating. */
  hull: Float64Array
  left: number
  right: number
  low: number
  high: number
}

/** A copy to be laid and the ways it may lie. */
export type Laid = { piece: string; copy: string; area: number; shapes: Shape[] }

/**
 * Every copy of the pieces, `quantity` times over, with the distinct ways it may lie on the cloth: turned as
 * the piece and the nap allow; turned over only where the cloth has no right side, or where the copy is a
 * mirrored one. Curves keep `gap` mm for the shears; straight sides may share a cut.
 *
 * @throws Refusal at a piece that is wider than the cloth in every way it may lie, or would hang against its nap
 */
export function layables(
  pieces: readonly Piece[],
  cloth: Cloth,
  usable: number,
  gap: number,
  quantity: number,
): Laid[] {
  const keys = new Map<string, number>()
  return pieces.flatMap((piece) => {
    if (cloth.nap && piece.hangsBothWays === true) {
      throw new Refusal(phrase('refusal.lay.napOverShoulder', { piece: piece.name }), 'nap')
    }
    const outline = flattenOutward(piece.cut, undefined, gap)
    return piece.copies.flatMap(({ id, mirrored }) => {
      const shapes = waysToLie(piece, outline, mirrored, cloth, keys).filter(
        (s) => s.right - s.left <= usable + 1e-9,
      )
      if (shapes.length === 0) throw tooWide(piece, outline, usable)
      const area = hullArea(shapes[0]!.hull)
      return Array.from({ length: quantity }, (_, k) => ({
        piece: piece.id,
        copy: k === 0 ? id : `${id}@${k + 1}`,
        area,
        shapes,
      }))
    })
  })
}

function waysToLie(
  piece: Piece,
  outline: readonly Point[],
  mirrored: boolean,
  cloth: Cloth,
  keys: Map<string, number>,
): Shape[] {
  const found = new Map<number, Shape>()
  for (const flipped of cloth.rightSide ? [mirrored] : [mirrored, !mirrored]) {
    for (const angle of cloth.nap ? ([0] as const) : piece.turn) {
      const shape = shapeOf(outline, angle, flipped, keys)
      if (!found.has(shape.key)) found.set(shape.key, shape)
    }
  }
  return [...found.values()]
}

function shapeOf(
  outline: readonly Point[],
  angle: Placement['angle'],
  flipped: boolean,
  keys: Map<string, number>,
): Shape {
  const hull = convexHull(outline.map((p) => turned(flipped ? { x: -p.x, y: p.y } : p, angle)))
  const [xs, ys] = [hull.map(({ x }) => x), hull.map(({ y }) => y)]
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const print = hull.map(({ x, y }) => `${(x - left).toFixed(3)},${(y - low).toFixed(3)}`).join(' ')
  const key = keys.get(print) ?? keys.size
  keys.set(print, key)
  return {
    key,
    angle,
    flipped,
    hull: Float64Array.from(hull.flatMap(({ x, y }) => [x, y])),
    left,
    right,
    low,
    high,
  }
}

/** Quarter turns anticlockwise, exact. */
function turned({ x, y }: Point, angle: Placement['angle']): Point {
  if (angle === 0) return { x, y }
  if (angle === 90) return { x: -y, y: x }
  return angle === 180 ? { x: -x, y: -y } : { x: y, y: -x }
}

function hullArea(hull: Float64Array): number {
  let twice = 0
  for (let i = 0; i < hull.length; i += 2) {
    const j = (i + 2) % hull.length
    twice += hull[i]! * hull[j + 1]! - hull[j]! * hull[i + 1]!
  }
  return twice / 2
}

function tooWide(piece: Piece, outline: readonly Point[], usable: number): Refusal {
  const xs = outline.map(({ x }) => x)
  const width = Math.ceil(Math.max(...xs) - Math.min(...xs))
  const params = { piece: piece.name, width: { mm: width }, usable: { mm: Math.floor(usable) } }
  return new Refusal(phrase('refusal.lay.tooNarrow', params), 'width')
}
