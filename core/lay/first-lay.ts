import type { Piece } from '../draft/types.ts'
import { signedArea } from '../geometry/path.ts'
import { bottomLeft, type Put } from './bottom-left.ts'
import { usableWidth } from './cloth.ts'
import { NoFits } from './nofit.ts'
import { offcuts } from './offcuts.ts'
import { type Laid, layables } from './shapes.ts'
import type { BuyingRules, Cloth, Lay } from './types.ts'

/**
 * A lay good enough to price with while the maker is still choosing: the pieces from the bottom left in
 * several orders, the shortest kept. The same input gives the same lay.
 *
 * @throws Refusal when a piece is wider than the cloth, or the cloth's figures cannot be
 */
export function firstLay(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Pick<BuyingRules, 'cuttingGap'>,
  quantity = 1,
): Lay {
  const usable = usableWidth(cloth)
  const laid = layables(pieces, cloth, usable, rules.cuttingGap, quantity)
  const fits = new NoFits()
  let best: { puts: Put[]; length: number } | undefined
  for (const order of ordersOf(laid)) {
    best = bottomLeft(order, usable, fits, best === undefined ? Infinity : best.length - SHORTER) ?? best
  }
  if (best === undefined) throw new Error('no order gave a lay')
  const covered = quantity * pieces.reduce((sum, { cut, copies }) => sum + copies.length * signedArea(cut), 0)
  const { puts, length } = best
  return {
    usableWidth: usable,
    length,
    placements: puts.map(({ laid: { piece, copy }, shape, x, y }) => ({
      ...{ piece, copy, angle: shape.angle, flipped: shape.flipped },
      x: x - shape.left,
      y: y - shape.low,
    })),
    used: length === 0 ? 0 : covered / (usable * length),
    offcuts: offcuts(
      puts.map((put) => onCloth(put)),
      usable,
      length,
    ),
  }
}

/** A lay must be shorter by this much to take the place of an earlier one, mm. */
const SHORTER = 0.01

const tall = ({ shapes: [shape] }: Laid): number => shape!.high - shape!.low
const wide = ({ shapes: [shape] }: Laid): number => shape!.right - shape!.left

/** Orders to try: biggest first by length along the cloth, by area, by width, and by their product. */
function ordersOf(laid: readonly Laid[]): Laid[][] {
  const sizes: ((of: Laid) => number)[] = [
    tall,
    ({ area }) => area,
    (of) => tall(of) * wide(of),
    wide,
    (of) => tall(of) + wide(of),
  ]
  const seen = new Set<string>()
  return sizes.flatMap((size) => {
    const order = [...laid].sort((a, b) => size(b) - size(a))
    const print = order.map(({ shapes: [shape] }) => shape!.key).join()
    if (seen.has(print)) return []
    seen.add(print)
    return [order]
  })
}

const onCloth = ({ shape, x, y }: Put): Float64Array =>
  shape.hull.map((value, i) => value + (i % 2 === 0 ? x - shape.left : y - shape.low))
