import { perHour } from '../price/earning.ts'
import type { Money } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import type { Overrun, Totals } from './account.ts'

/** A difference smaller than this is chance and not worth a word, in parts of one. */
const WORTH_SAYING = 0.08
/** And nothing is said on less than so many garments. */
const ENOUGH = 2

/** What delivered work says should be changed in the rates, a sentence each; none where all is well or little is known. */
export function adviceFrom(totals: Totals, target: Money, worst?: WorstStep): Phrase[] {
  const { clothKnown, quotedCloth, actualCloth, known, quotedMinutes, actualMinutes } = totals
  return [
    ...(clothKnown < ENOUGH
      ? []
      : compared(actualCloth / quotedCloth - 1, 'plan.advice.moreCloth', 'plan.advice.lessCloth')),
    ...(known < ENOUGH
      ? []
      : [
          ...compared(actualMinutes / quotedMinutes - 1, 'plan.advice.moreHours', 'plan.advice.lessHours'),
          ...payAdvice(totals, target),
        ]),
    ...(worst === undefined || worst.actual - worst.quoted < LONG ? [] : [stepAdvice(worst)]),
  ]
}

/** A step that ran over by less than this is not worth a word, minutes. */
const LONG = 15

/** The step that ran over most, and of which commission. */
export type WorstStep = Overrun & { number: string }

const stepAdvice = ({ step, number, quoted, actual }: WorstStep): Phrase =>
  phrase('plan.advice.step', { step, number, quoted: { minutes: quoted }, actual: { minutes: actual } })

type Said = `plan.advice.${'more' | 'less'}${'Cloth' | 'Hours'}`

const compared = (over: number, more: Said, less: Said): Phrase[] =>
  Math.abs(over) < WORTH_SAYING ? [] : [phrase(over > 0 ? more : less, { percent: percentOf(over) })]

/** By how much every price would have had to be higher for the hours worked to earn the target. */
function payAdvice({ actualLeft, actualMinutes, knownNet }: Totals, target: Money): Phrase[] {
  const earned = perHour({ minor: actualLeft, currency: target.currency }, actualMinutes)
  if (earned.minor >= target.minor) return []
  const missing = ((target.minor - earned.minor) * actualMinutes) / 60 / knownNet
  return [phrase('plan.advice.raise', { earned, target, percent: percentOf(missing) })]
}

const percentOf = (part: number): number => Math.max(1, Math.round(Math.abs(part) * 100))
