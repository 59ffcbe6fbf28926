import { turnedBy } from './outline.ts'
import type { Way } from './outlines.ts'
import { boxPrint } from './outlines.ts'
import type { Placement } from './types.ts'

/** One copy wanted of a piece. */
export type CopyWanted = { piece: string; copy: string; mirrored: boolean }

/**
 * What is cut at once: one copy; two through both layers of doubled cloth; or one whose middle lies on the
 * fold. `symmetric` when the piece is the same turned over, and then `middle` is the line it is turned
 * about, across the piece's own origin.
 */
export type Folded = { copy: CopyWanted } & (
  | { kind: 'one' }
  | { kind: 'fold' }
  | { kind: 'pair'; other: CopyWanted; middle?: number }
)

/**
 * How copies of one piece are cut from cloth folded along its length, right sides together: two of opposite
 * hands at a time, or any two where hands do not matter; an odd one on the fold if the piece is symmetric,
 * and else from one layer, the cloth under it left over.
 *
 * @param points the piece's polygon, not turned over
 */
export function foldedCopies(
  copies: readonly CopyWanted[],
  points: Float64Array,
  rightSide: boolean,
): Folded[] {
  const middle = middleOf(points)
  const plain = copies.filter(({ mirrored }) => !mirrored)
  const mirrored = copies.filter((copy) => copy.mirrored)
  const out: Folded[] = []
  const pair = (copy: CopyWanted, other: CopyWanted) =>
    out.push({ kind: 'pair', copy, other, ...(middle === undefined ? {} : { middle }) })
  while (plain.length > 0 && mirrored.length > 0) pair(plain.shift()!, mirrored.shift()!)
  const rest = [...plain, ...mirrored]
  if (!rightSide || middle !== undefined) while (rest.length > 1) pair(rest.shift()!, rest.shift()!)
  for (const copy of rest) out.push({ kind: middle === undefined ? 'one' : 'fold', copy })
  return out
}

/** The upright line about which a polygon is its own mirror image, if there is one. */
function middleOf(points: Float64Array): number | undefined {
  const mirrored = points.map((value, i) => (i % 2 === 0 ? -value : value))
  if (boxPrint(points) !== boxPrint(mirrored)) return undefined
  const xs = points.filter((_, i) => i % 2 === 0)
  return (Math.min(...xs) + Math.max(...xs)) / 2
}

/** The near half of a symmetric polygon turned by whole quarters, its middle line the far border. */
export function halfOf(points: Float64Array, turn: number): Float64Array {
  const turned = turnedBy(points, turn / 90)
  const xs = turned.filter((_, i) => i % 2 === 0)
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2
  const out: number[] = []
  for (let i = 0; i < turned.length; i += 2) {
    const j = (i + 2) % turned.length
    const [px, py, qx, qy] = [turned[i]!, turned[i + 1]!, turned[j]!, turned[j + 1]!]
    if (px <= middle) out.push(px, py)
    if ((px - middle) * (qx - middle) < 0) out.push(middle, py + ((middle - px) * (qy - py)) / (qx - px))
  }
  return Float64Array.from(out)
}

/**
 * The places of what is cut at once, on the cloth unfolded.
 * @param width of the cloth unfolded, mm
 */
export function unfolded(cut: Folded, way: Way, x: number, y: number, width: number): Placement[] {
  const { piece, copy } = cut.copy
  const lower: Placement = { piece, copy, x, y, ...way }
  if (cut.kind !== 'pair') return [lower]
  const { other, middle } = cut
  const upper: Placement = {
    ...{ piece: other.piece, copy: other.copy, x: width - x, y },
    ...{ angle: ((360 - way.angle) % 360) as Placement['angle'], flipped: !way.flipped },
  }
  return [lower, middle === undefined ? upper : ofHand(upper, other.mirrored, middle)]
}

/** A symmetric piece as the hand wanted: turned over about its middle it covers the same ground. */
function ofHand(placement: Placement, flipped: boolean, middle: number): Placement {
  if (placement.flipped === flipped) return placement
  const shift = flipped ? 2 * middle : -2 * middle
  const turn = (placement.angle * Math.PI) / 180
  const [cos, sin] = [Math.round(Math.cos(turn)), Math.round(Math.sin(turn))]
  return { ...placement, flipped, x: placement.x + cos * shift, y: placement.y + sin * shift }
}
