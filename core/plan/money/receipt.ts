import type { Day } from '../../words/dates.ts'
import { type Money, subtractMoney } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { Party } from './invoice.ts'
import { balanceOf } from './payments.ts'
import type { Numbered } from './series.ts'
import type { Payment, PaymentEvent, PaymentMethod } from './types.ts'

/** The receipt for money that came, or the note of money that went back. */
export type Receipt = Numbered & {
  kind: 'receipt' | 'refund'
  day: Day
  paymentId: string
  seller: Party
  customer: Party
  amount: Money
  method: PaymentMethod
  for: PaymentEvent | null
  /** What it is paid on: the number of the commission or of the invoice. */
  on: string
  agreed: Money
  /** Paid in all with this payment, and what is left of what is agreed; less than nothing is the customer's. */
  paid: Money
  balance: Money
}

type Given = { number: Numbered; seller: Party; customer: Party; on: string; agreed: Money }

/**
 * The receipt for one payment, with the balance as it was when that was entered.
 * @param payments in the order in which they were entered
 * @throws Refusal when there is no such payment
 */
export function receiptFor(
  paymentId: string,
  payments: readonly Payment[],
  { number, seller, customer, on, agreed }: Given,
): Receipt {
  const at = payments.findIndex(({ id }) => id === paymentId)
  const payment = payments[at]
  if (payment === undefined) throw new Refusal(phrase('refusal.money.noPayment'), 'paymentId')
  const { paid } = balanceOf(agreed, payments.slice(0, at + 1))
  const { day, kind, amount, method } = payment
  return {
    ...number,
    kind: kind === 'payment' ? 'receipt' : 'refund',
    ...{ day, paymentId, seller, customer, amount, method, for: payment.for, on, agreed, paid },
    balance: subtractMoney(agreed, paid),
  }
}
