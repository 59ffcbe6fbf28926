import type { Piece } from '../draft/types.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { assertCuttable, type Fault, faultsOfLay } from './check.ts'
import { usableWidth } from './cloth.ts'
import { firstLay, firstPlaces } from './first-lay.ts'
import { layOf } from './lay-of.ts'
import { carriedOver, type Layable, layableOf, placesLaid } from './layable.ts'
import { ROUGH } from './outlines.ts'
import { fixedReach, type Places, placesOf } from './strip.ts'
import {
  type BuyingRules,
  type Cloth,
  type Lay,
  type LayOrder,
  PLAIN_ORDER,
  type Placement,
} from './types.ts'

/** How a lay is wanted, and the places themselves where they are settled: found by a search, or by hand. */
export type LayWish = LayOrder & {
  placements?: readonly Placement[] | undefined
  tears?: readonly number[] | undefined
}

type Rules = Pick<BuyingRules, 'cuttingGap'>

/**
 * The lay that is wished for, passed by the independent check: a first one, or the places given.
 *
 * @throws Refusal at `lay` when places given are not those of a lay that can be cut; as `firstLay`
 */
export function wishedLay(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Rules,
  wish: LayWish = PLAIN_ORDER,
): Lay {
  const { placements } = wish
  // Work on a garment that is there already may need no cloth at all.
  if (pieces.length === 0) return empty(usableWidth(cloth), [])
  if (placements === undefined)
    return assertCuttable(firstLay(pieces, cloth, rules, wish), pieces, cloth, wish)
  const { lay, faults } = judgedLay(pieces, cloth, rules, { ...wish, placements })
  if (lay === undefined || faults.length > 0) throw new Refusal(phrase('refusal.lay.stale'), 'lay')
  return lay
}

/**
 * A lay by its places alone, and what is wrong with it.
 *
 * @returns no lay when the copies are not those of the pieces
 * @throws Refusal at a copy turned in a way it may not lie, or beyond the cloth
 */
export function judgedLay(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Rules,
  wish: LayWish & { placements: readonly Placement[] },
): { lay?: Lay; faults: Fault[] } {
  const { manner, tears, placements } = wish
  const layable = layableOf(pieces, cloth, rules, { ...wish, manner: 'single', locked: placements })
  const { strip, copies } = layable
  if (strip.parts.some(({ fixed }) => fixed === undefined) || copies.length !== placements.length) {
    return { faults: faultsOfLay(empty(strip.width, placements), pieces, cloth, wish) }
  }
  const laid = layOf(pieces, layable, placesOf(strip, [], fixedReach(strip)))
  const lay: Lay = {
    ...laid,
    ...(manner === 'single' ? {} : { manner }),
    ...(tears === undefined ? {} : { tears: [...tears] }),
  }
  return { lay, faults: faultsOfLay(lay, pieces, cloth, wish) }
}

const empty = (usableWidth: number, placements: readonly Placement[]): Lay => ({
  ...{ usableWidth, length: 0, used: 0, offcuts: [], placements: [...placements] },
})

/** Places settled before, if the search may begin with them: in one layer, and such as can be cut. */
function handLaid(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Rules,
  layable: Layable,
  { placements = [], ...wish }: LayWish,
): Places | undefined {
  if (wish.manner !== 'single') return undefined
  const { faults } = judgedLay(pieces, cloth, rules, { ...wish, placements })
  return faults.length > 0 ? undefined : placesLaid(layable, placements)
}

/**
 * What a search for a shorter lay begins with, in fine outlines: the places given, or else the first lay.
 *
 * @throws Refusal as `wishedLay`
 */
export function searchStart(
  pieces: readonly Piece[],
  cloth: Cloth,
  rules: Rules,
  wish: LayWish,
): { layable: Layable; start: Places } {
  const layable = layableOf(pieces, cloth, rules, wish)
  const laid = wish.placements === undefined ? undefined : handLaid(pieces, cloth, rules, layable, wish)
  if (laid !== undefined) return { layable, start: laid }
  const quick = layableOf(pieces, cloth, rules, wish, ROUGH)
  return { layable, start: carriedOver(quick, layable, firstPlaces(quick.strip, quick.manner)) }
}
