import { perHour } from '../price/earning.ts'
import type { Money } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import type { Overrun, Totals } from './account.ts'
import { ranOver } from './badly-paid.ts'

/** A difference smaller than this is chance and not worth a word, in parts of one. */
const WORTH_SAYING = 0.08

/** What should be changed: a sentence, on how many garments it rests, and the commission it speaks of if it is of one. */
export type Advice = Phrase & { restsOn: number; commissionId?: string }

/** The step that ran over most, and of which commission. */
export type WorstStep = Overrun & { number: string; commissionId: string }

/** What delivered work says should be changed, a sentence each; none where all is well or nothing is known. */
export function adviceFrom(totals: Totals, target: Money, worst?: WorstStep): Advice[] {
  const { clothKnown, quotedCloth, actualCloth, known, quotedMinutes, actualMinutes } = totals
  return [
    ...(clothKnown === 0 ? [] : compared('Cloth', actualCloth / quotedCloth - 1, clothKnown)),
    ...(known === 0
      ? []
      : [...compared('Hours', actualMinutes / quotedMinutes - 1, known), ...payAdvice(totals, target)]),
    ...(ranOver(worst) ? [stepAdvice(worst)] : []),
  ]
}

const stepAdvice = ({ step, number, quoted, actual, commissionId }: WorstStep): Advice => ({
  ...phrase('plan.advice.step', { step, number, quoted: { minutes: quoted }, actual: { minutes: actual } }),
  ...{ restsOn: 1, commissionId },
})

const compared = (what: 'Cloth' | 'Hours', over: number, restsOn: number): Advice[] =>
  Math.abs(over) < WORTH_SAYING
    ? []
    : [
        {
          ...phrase(`plan.advice.${over > 0 ? 'more' : 'less'}${what}`, { percent: percentOf(over) }),
          restsOn,
        },
      ]

/** By how much every price would have had to be higher for the hours worked to earn the target. */
function payAdvice({ actualLeft, actualMinutes, knownNet, known }: Totals, target: Money): Advice[] {
  const earned = perHour({ minor: actualLeft, currency: target.currency }, actualMinutes)
  if (earned.minor >= target.minor) return []
  const missing = ((target.minor - earned.minor) * actualMinutes) / 60 / knownNet
  return [{ ...phrase('plan.advice.raise', { earned, target, percent: percentOf(missing) }), restsOn: known }]
}

const percentOf = (part: number): number => Math.max(1, Math.round(Math.abs(part) * 100))
