import type { Piece } from '../draft/types.ts'
import { bottomLeft } from './bottom-left.ts'
import { layOf } from './lay-of.ts'
import { DENTS, layableOf } from './layable.ts'
import { NoFits } from './nofit.ts'
import { movable, type Places, placesOf, type Strip } from './strip.ts'
import { tornPlaces } from './torn.ts'
import { type BuyingRules, type Cloth, type Lay, type LayOrder, type Manner, PLAIN_ORDER } from './types.ts'

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
  order: LayOrder = PLAIN_ORDER,
): Lay {
  const layable = layableOf(pieces, cloth, rules, order, DENTS.quick)
  return layOf(pieces, layable, firstPlaces(layable.strip, layable.manner))
}

/** A lay must be shorter by this part of the width to take the place of an earlier one. */
const SHORTER = 1e-5

/** The parts laid in the best of several orders. */
export function firstPlaces(strip: Strip, manner: Manner, fits = new NoFits()): Places {
  let best: Places | undefined
  for (const order of ordersOf(strip)) {
    const limit = best === undefined ? Infinity : best.length - SHORTER * strip.width
    const found = manner === 'torn' ? tornPlaces(order, strip, fits) : laidFrom(order, strip, fits, limit)
    if (found !== undefined && found.length < limit) best = found
  }
  if (best === undefined) throw new Error('no order gave a lay')
  return best
}

function laidFrom(order: readonly number[], strip: Strip, fits: NoFits, limit: number): Places | undefined {
  const laid = bottomLeft(order, strip, fits, limit)
  return laid === undefined ? undefined : placesOf(strip, laid.puts, laid.length)
}

/** Orders to try: biggest first by length along the cloth, by area, by width, and by their product. */
function ordersOf(strip: Strip): number[][] {
  const { parts, outlines } = strip
  const of = (part: number) => outlines[parts[part]!.ways[0]!]!
  const tall = (part: number) => of(part).high - of(part).low
  const wide = (part: number) => of(part).right - of(part).left
  const sizes: ((part: number) => number)[] = [
    tall,
    (part) => of(part).area,
    (part) => tall(part) * wide(part),
    wide,
    (part) => tall(part) + wide(part),
  ]
  const seen = new Set<string>()
  return sizes.flatMap((size) => {
    const order = movable(strip).sort((a, b) => size(b) - size(a))
    const print = order.map((part) => parts[part]!.ways[0]).join()
    if (seen.has(print)) return []
    seen.add(print)
    return [order]
  })
}
