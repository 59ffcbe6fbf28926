import type { Piece } from '../draft/types.ts'
import { bestPlaces } from './best-lay.ts'
import { bottomLeft } from './bottom-left.ts'
import { layOf } from './lay-of.ts'
import { layableOf } from './layable.ts'
import { NoFits } from './nofit.ts'
import { ROUGH } from './outlines.ts'
import { paired } from './pairs.ts'
import { randomFrom } from './search/random.ts'
import { fixedReach, movable, type Places, placesOf, type Strip } from './strip.ts'
import { tornPlaces } from './torn.ts'
import { type BuyingRules, type Cloth, type Lay, type LayOrder, type Manner, PLAIN_ORDER } from './types.ts'

/**
 * A lay good enough to price with while the maker is still choosing: the pieces laid in several orders and
 * ways, the shortest kept. The same input gives the same lay.
 *
 * @throws Refusal when a piece is wider than the cloth, or the cloth's figures cannot be
 */
export function firstLay(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Pick<BuyingRules, 'cuttingGap'>,
  order: LayOrder = PLAIN_ORDER,
): Lay {
  const layable = layableOf(pieces, cloth, rules, order, ROUGH)
  return layOf(pieces, layable, firstPlaces(layable.strip, layable.manner))
}

/** A lay must be shorter by this part of the width to take the place of an earlier one. */
const SHORTER = 1e-5

/** Orders drawn by lot, and sweeps of a search after them, times the parts squared: a first lay is there at once. */
const LOTS = 2400
const SWEEPS = 14_400

/**
 * The parts laid in the best of several orders, in bands and, unless it must be torn, from the bottom left;
 * slanted ones singly and in pairs; then a short search. Bands keep large pieces in line, which the bottom left
 * alone does not.
 */
export function firstPlaces(strip: Strip, manner: Manner, fits = new NoFits()): Places {
  let best: Places | undefined
  const offer = (found: Places) => {
    if (best === undefined || found.length < best.length - SHORTER * strip.width) best = found
  }
  const plain = { strip, apart: (places: Places) => places }
  const pairs = paired(strip, fits)
  const ways = pairs === undefined ? [plain] : [plain, pairs]
  for (const { strip: laid, apart } of ways) {
    const last = laid === ways.at(-1)!.strip
    const orders = ordersOf(laid)
    // Bands would leave a piece that is held in its place lying across a tear.
    if (last && (manner === 'torn' || fixedReach(strip) === 0)) {
      for (const order of orders) offer(apart(tornPlaces(order, laid, fits)))
    }
    if (manner === 'torn') continue
    for (const order of last ? [...orders, ...lots(laid)] : orders) {
      const places = laidFrom(order, laid, fits, best?.length ?? Infinity)
      if (places !== undefined) offer(apart(places))
    }
  }
  if (best === undefined) throw new Error('no order gave a lay')
  if (manner === 'torn') return best
  const sweeps = Math.floor(SWEEPS / strip.parts.length ** 2)
  const spent = (gone: number) => (sweeps === 0 ? 1 : gone / sweeps)
  return bestPlaces(strip, manner, { ...best, tears: undefined }, { spent }, 1, { found: () => {} }).places
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
  return different(
    strip,
    sizes.map((size) => movable(strip).sort((a, b) => size(b) - size(a))),
  )
}

/** Parts smaller than this share of all are laid last, where the large ones have left room. */
const SMALL = 0.03

/** Orders drawn by lot: the large parts shuffled, the small ones after them. */
function lots(strip: Strip): number[][] {
  const random = randomFrom(1)
  const area = (part: number) => strip.outlines[strip.parts[part]!.ways[0]!]!.area
  const parts = movable(strip).sort((a, b) => area(b) - area(a))
  const all = parts.reduce((sum, part) => sum + area(part), 0)
  const large = Int32Array.from(parts.filter((part) => area(part) >= SMALL * all))
  const small = parts.filter((part) => area(part) < SMALL * all)
  const count = Math.floor(LOTS / parts.length ** 2)
  return different(
    strip,
    Array.from({ length: count }, () => {
      random.shuffle(large, large.length)
      return [...large, ...small]
    }),
  )
}

/** Orders that differ when parts with the same ways are taken as one. */
function different(strip: Strip, orders: number[][]): number[][] {
  const seen = new Set<string>()
  return orders.filter((order) => {
    const print = order.map((part) => strip.parts[part]!.ways[0]).join()
    if (seen.has(print)) return false
    seen.add(print)
    return true
  })
}
