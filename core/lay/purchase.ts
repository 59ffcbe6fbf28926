import { usableWidth } from './cloth.ts'
import type { BuyingRules, Cloth, Lay, Purchase } from './types.ts'

/** A need this little over a step of the shop is that step: rounding dust, mm. */
const DUST = 1e-6

/**
 * The length to buy, addition by addition: the lay and what goes with it on the table, divided by what
 * washing leaves of the warp, with the maker's margin, rounded up to the shop's step.
 *
 * @throws Refusal when the cloth's figures cannot be
 */
export function purchaseOf({ length }: Pick<Lay, 'length'>, cloth: Cloth, rules: BuyingRules): Purchase {
  usableWidth(cloth)
  if (length === 0) return NOTHING
  const { endAllowance, squaring, testStrip } = rules
  const washed = length + endAllowance + squaring + testStrip
  const shrinkage = washed / (1 - cloth.warpShrinkage) - washed
  const margin = (washed + shrinkage) * rules.margin
  const needed = washed + shrinkage + margin
  const toBuy = Math.ceil((needed - DUST) / cloth.increment) * cloth.increment
  return { layLength: length, endAllowance, squaring, testStrip, shrinkage, margin, needed, toBuy }
}

/**
 * How much shorter the lay would have to be for the shop to cut a step less, mm; nothing where no step could be spared. All that
 * goes with the lay on the table stays as it is, so the need grows with the lay in proportion.
 *
 * @param increment the shop's step, mm
 */
export function shorterForAStep({ needed, toBuy, shrinkage, margin }: Purchase, increment: number): number {
  const washed = needed - shrinkage - margin
  return toBuy <= increment ? 0 : ((needed - (toBuy - increment)) * washed) / needed
}

/** What a purchase adds up from, in the order in which it is told; the last is what the others come to. */
export const PURCHASE_LINES = [
  'layLength',
  'endAllowance',
  'squaring',
  'testStrip',
  'shrinkage',
  'margin',
  'needed',
] as const

/** No cloth is bought where none is cut. */
const NOTHING: Purchase = {
  ...{
    layLength: 0,
    endAllowance: 0,
    squaring: 0,
    testStrip: 0,
    shrinkage: 0,
    margin: 0,
    needed: 0,
    toBuy: 0,
  },
}
