import { SHARED_PACE } from './parameters.ts'
import type { Minutes } from './types.ts'

/** The 80 % point of the standard normal distribution. */
const Z80 = 0.8416212335729143

export const NO_MINUTES: Minutes = { mean: 0, sd: 0, p50: 0, p80: 0 }

/**
 * A time of this mean and standard deviation (minutes). Times of work are taken as log-normal: never below
 * nothing, with a long tail of days when everything goes wrong. Median and 80 % point follow from matching
 * the two moments: σ² = ln(1 + (sd ÷ mean)²), median = mean ÷ √(1 + (sd ÷ mean)²).
 */
export function minutesOf(mean: number, sd: number): Minutes {
  if (mean === 0) return NO_MINUTES
  const spread = 1 + (sd / mean) ** 2
  const p50 = mean / Math.sqrt(spread)
  return { mean, sd, p50, p80: p50 * Math.exp(Z80 * Math.sqrt(Math.log(spread))) }
}

/**
 * Times one after the other. Part of their spread is shared (`SHARED_PACE`) and adds up as it is; the rest
 * is each one's own and adds up as a sum of squares. The sum is again taken as log-normal.
 */
export function sumMinutes(times: readonly Minutes[]): Minutes {
  const mean = times.reduce((sum, time) => sum + time.mean, 0)
  const together = times.reduce((sum, time) => sum + time.sd, 0) ** 2
  const apart = times.reduce((sum, time) => sum + time.sd ** 2, 0)
  return minutesOf(mean, Math.sqrt(SHARED_PACE * together + (1 - SHARED_PACE) * apart))
}
