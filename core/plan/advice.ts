import type { Money } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { type Account, accountsTogether } from './account.ts'

/** A difference smaller than this is chance and not worth a word, in parts of one. */
const WORTH_SAYING = 0.08
/** And nothing is said on less than so many garments. */
const ENOUGH = 2

/** What delivered work says should be changed in the rates, a sentence each; none where all is well or little is known. */
export function adviceFrom(accounts: readonly Account[], targetPerHour: Money): Phrase[] {
  const { known, perHour, minutes } = accountsTogether(accounts, targetPerHour.currency)
  return [
    ...clothAdvice(accounts),
    ...(known < ENOUGH
      ? []
      : [...hoursAdvice(minutes), ...payAdvice(accounts, perHour.actual, targetPerHour)]),
  ]
}

function clothAdvice(accounts: readonly Account[]): Phrase[] {
  const measured = accounts.filter(({ cloth }) => cloth.actual !== null && cloth.quoted > 0)
  if (measured.length < ENOUGH) return []
  const quoted = measured.reduce((sum, { cloth }) => sum + cloth.quoted, 0)
  const over = measured.reduce((sum, { cloth }) => sum + cloth.actual!, 0) / quoted - 1
  if (Math.abs(over) < WORTH_SAYING) return []
  return [phrase(over > 0 ? 'plan.advice.moreCloth' : 'plan.advice.lessCloth', { percent: percentOf(over) })]
}

function hoursAdvice({ quoted, actual }: { quoted: number; actual: number }): Phrase[] {
  const over = actual / quoted - 1
  if (Math.abs(over) < WORTH_SAYING) return []
  return [phrase(over > 0 ? 'plan.advice.moreHours' : 'plan.advice.lessHours', { percent: percentOf(over) })]
}

/** By how much every price would have had to be higher for the hours worked to earn the target. */
function payAdvice(accounts: readonly Account[], earned: Money, target: Money): Phrase[] {
  if (earned.minor >= target.minor) return []
  const known = accounts.filter(({ minutes }) => minutes.actual !== null)
  const hours = known.reduce((sum, { minutes }) => sum + minutes.actual! / 60, 0)
  const net = known.reduce((sum, account) => sum + account.net.minor, 0)
  const missing = ((target.minor - earned.minor) * hours) / net
  return [phrase('plan.advice.raise', { earned, target, percent: percentOf(missing) })]
}

const percentOf = (part: number): number => Math.max(1, Math.round(Math.abs(part) * 100))
