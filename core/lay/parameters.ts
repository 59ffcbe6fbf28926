import type { BuyingRules } from './types.ts'

/**
 * Habits at the counter and the table to begin with, all common practice: 20 mm kept beyond the last piece,
 * 30 mm to square the cut end to the weft, a strip of 100 mm to find the shrinkage, 2 % more than the need,
 * and 2 mm for the shears round a curve.
 */
export const DEFAULT_BUYING: BuyingRules = {
  endAllowance: 20,
  squaring: 30,
  testStrip: 100,
  margin: 0.02,
  cuttingGap: 2,
}
