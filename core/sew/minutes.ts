import { upperTail } from '../measure/gaussian.ts'
import type { Minutes } from './types.ts'

/** The 80 % point of the standard normal distribution. */
export const Z80 = 0.8416212335729143

/** No time at all, and no doubt of it. */
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
 * The odds that a time stays under so many minutes: what the log-normal distribution of its moments says. Upper tail of
 * the normal by Abramowitz & Stegun 26.2.17.
 */
export function oddsUnder({ mean, sd, p50 }: Minutes, minutes: number): number {
  if (minutes <= 0) return 0
  if (mean === 0 || sd === 0) return minutes >= mean ? 1 : 0
  const z = Math.log(minutes / p50) / Math.sqrt(Math.log(1 + (sd / mean) ** 2))
  return z >= 0 ? 1 - upperTail(z) : upperTail(-z)
}
