import { type Money, partOf, shareOf } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Profit } from './types.ts'

/**
 * Profit on a cost. A markup of k is k × cost; a margin of m is m of the price, so m ÷ (1 − m) × cost: a
 * markup of 50 % is a margin of 33⅓ %.
 *
 * @throws Refusal at a margin of the whole price or more
 */
export function profitOn(cost: Money, { kind, basisPoints }: Profit): Money {
  if (kind === 'markup') return partOf(cost, basisPoints)
  if (basisPoints >= 10_000) throw new Refusal(phrase('refusal.price.margin'), 'profit')
  return shareOf(cost, basisPoints, 10_000 - basisPoints)
}
