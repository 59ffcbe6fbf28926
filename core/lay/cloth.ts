import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { Cloth } from './types.ts'

/** Shrinkage beyond which the number is a slip: felting wool loses less than half its length. */
const MOST_SHRINKAGE = 0.5
/** Widest cloth woven for garments, and the widest step a shop cuts by, mm. */
const WIDEST = 6000

/**
 * Width left to lay pieces on once the cloth is washed and its selvedges are off, mm:
 * (width − 2 × selvedge) × (1 − weft shrinkage).
 *
 * @throws Refusal at the figure of the cloth that cannot be
 */
export function usableWidth(cloth: Cloth): number {
  const { width, selvedge, warpShrinkage, weftShrinkage, increment, thickness } = cloth
  const refuse = (field: keyof Cloth) => new Refusal(phrase(`refusal.lay.${field as 'width'}`), field)
  if (!(width > 0 && width <= WIDEST)) throw refuse('width')
  if (!(selvedge >= 0 && 2 * selvedge < width)) throw refuse('selvedge')
  if (!(warpShrinkage >= 0 && warpShrinkage < MOST_SHRINKAGE)) throw refuse('warpShrinkage')
  if (!(weftShrinkage >= 0 && weftShrinkage < MOST_SHRINKAGE)) throw refuse('weftShrinkage')
  if (!(increment > 0 && increment <= WIDEST)) throw refuse('increment')
  if (!(thickness > 0 && thickness <= 20)) throw refuse('thickness')
  return (width - 2 * selvedge) * (1 - weftShrinkage)
}
