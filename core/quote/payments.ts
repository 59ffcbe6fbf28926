import type { Rates } from '../price/types.ts'
import { type Money, splitMoney } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { PaymentTime } from './types.ts'

/**
 * What is paid when: the deposit on acceptance, the instalments, and the rest on delivery; split so that the parts sum to the
 * total. Parts of nothing are left out.
 *
 * @throws Refusal when deposit and instalments are more than the whole
 */
export function paymentsOf(
  total: Money,
  { depositBasisPoints, instalments }: Pick<Rates, 'depositBasisPoints' | 'instalments'>,
): { when: PaymentTime; amount: Money }[] {
  const parts: { when: PaymentTime; basisPoints: number }[] = [
    { when: 'acceptance', basisPoints: depositBasisPoints },
    ...instalments,
  ]
  const rest = 10_000 - parts.reduce((sum, { basisPoints }) => sum + basisPoints, 0)
  if (rest < 0) throw new Refusal(phrase('refusal.price.instalments'), 'instalments')
  const all = [...parts, { when: 'delivery' as const, basisPoints: rest }]
  const amounts = splitMoney(
    total,
    all.map(({ basisPoints }) => basisPoints),
  )
  return all.flatMap(({ when, basisPoints }, i) => (basisPoints === 0 ? [] : [{ when, amount: amounts[i]! }]))
}
