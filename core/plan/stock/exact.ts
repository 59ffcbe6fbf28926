import { readLength } from '../../words/length.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'

/** A need this little over a step is that step: rounding dust, mm. */
const DUST = 1e-6

/** A ledger is added up in whole hundredths of a millimetre, so that no dust gathers however long it grows. */
export const hundredths = (mm: number): number => Math.round(mm * 100)
export const fromHundredths = (count: number): number => count / 100

/** As much as is needed and not a hundredth less, mm. */
export const upToHundredth = (mm: number): number => fromHundredths(Math.ceil((mm - DUST) * 100))

/** So many whole steps of what a shop sells by. */
export const stepsFor = (amount: number, step: number): number =>
  amount <= DUST ? 0 : Math.ceil((amount - DUST) / step)

/**
 * A length that goes into a ledger, mm, to the hundredth.
 * @throws Refusal when it is no length, or less than a hundredth of a millimetre
 */
export function ledgerLength(mm: number, field = 'mm'): number {
  const read = fromHundredths(hundredths(refusingAt(field, () => readLength(mm, 'mm'))))
  if (read === 0) throw new Refusal(phrase('refusal.length.zero'), field)
  return read
}

/** As `ledgerLength`, but nothing at all may have been found. */
export const ledgerCount = (mm: number): number => (mm === 0 ? 0 : ledgerLength(mm))
