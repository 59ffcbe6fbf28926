import { oddsUnder } from '../sew/minutes.ts'
import type { Minutes } from '../sew/types.ts'
import { addMoney, type Money, payAtLeast, payFor, shareOf, subtractMoney } from '../words/money.ts'
import type { Earning, Rates } from './types.ts'

type Terms = Pick<Rates, 'overheadPerHour' | 'targetPerHour'>

/** What is left of a net price once materials and the workroom's costs of so many minutes are paid. */
export const leftOf = (net: Money, materials: Money, minutes: number, overheadPerHour: Money): Money =>
  subtractMoney(subtractMoney(net, materials), payFor(overheadPerHour, minutes))

/** An amount over a time, for one hour of it. Nothing for no time. */
export const perHour = (amount: Money, minutes: number): Money =>
  minutes === 0 ? { ...amount, minor: 0 } : shareOf(amount, 6000, Math.max(1, Math.round(minutes * 100)))

/**
 * The floor, and how likely a net price is to earn less than the target. With materials M, and h hours that cost o each
 * to run, an hour earns (net − M) ÷ h − o: less than the target t just when h is more than
 * (net − M) ÷ (t + o). The floor pays t + o for the hours that four times in five are enough.
 */
export function earningOf(
  net: Money,
  materials: Money,
  hours: Minutes,
  { targetPerHour, overheadPerHour }: Terms,
): Earning {
  const wanted = addMoney(targetPerHour, overheadPerHour)
  const floor = addMoney(materials, payAtLeast(wanted, Math.ceil(hours.p80)))
  const left = net.minor - materials.minor
  // Minutes the price pays for; only a comparison, so that no amount is made of it.
  const paid = wanted.minor === 0 ? Number.POSITIVE_INFINITY : (60 * left) / wanted.minor
  const under = paid === Number.POSITIVE_INFINITY ? (left < 0 ? 1 : 0) : 1 - oddsUnder(hours, paid)
  return { hours, floor, under, targetPerHour, overheadPerHour }
}
