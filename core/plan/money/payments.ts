import { readDay } from '../../words/dates.ts'
import { addMoney, type Money, money, noMoney, subtractMoney, sumMoney } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'
import type { Payment } from './types.ts'

/** How what is agreed and what is paid stand to each other: `paid + owed − over = agreed`. */
export type MoneyBalance = {
  agreed: Money
  received: Money
  refunded: Money
  /** Received, less what went back. */
  paid: Money
  owed: Money
  /** Paid beyond what is agreed: the customer's, to be given back. */
  over: Money
}

/** How payments stand to what is agreed. @throws Refusal when one is in another currency */
export function balanceOf(agreed: Money, payments: readonly Payment[]): MoneyBalance {
  const none = noMoney(agreed.currency)
  const of = (wanted: Payment['kind']) =>
    sumMoney(
      payments.flatMap(({ kind, amount }) => (kind === wanted ? [amount] : [])),
      agreed.currency,
    )
  const [received, refunded] = [of('payment'), of('refund')]
  const paid = subtractMoney(received, refunded)
  const left = subtractMoney(agreed, paid)
  return {
    ...{ agreed, received, refunded, paid },
    owed: left.minor > 0 ? left : none,
    over: left.minor < 0 ? subtractMoney(none, left) : none,
  }
}

/**
 * A payment or refund as it is to be written below those before. More than is owed may be paid; no more goes back
 * than came.
 *
 * @throws Refusal when it cannot be
 */
export function enterPayment(agreed: Money, payments: readonly Payment[], entry: Payment): Payment {
  const { id, day, kind, amount } = entry
  refusingAt('day', () => readDay(day))
  refusingAt('amount', () => addMoney(money(amount.minor, amount.currency), noMoney(agreed.currency)))
  if (amount.minor <= 0) throw new Refusal(phrase('refusal.money.nothing'), 'amount')
  if (payments.some((one) => one.id === id)) throw new Refusal(phrase('refusal.money.twice'), 'id')
  const { paid } = balanceOf(agreed, payments)
  if (kind === 'refund' && amount.minor > paid.minor)
    throw new Refusal(phrase('refusal.money.refund', { asked: amount, paid }), 'amount')
  return entry
}
