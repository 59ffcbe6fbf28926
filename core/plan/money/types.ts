import type { Day } from '../../words/dates.ts'
import type { Money } from '../../words/money.ts'

/** What a payment waits for, in the order in which it comes. */
export const PAYMENT_EVENTS = ['acceptance', 'cutting', 'fitting', 'delivery'] as const
export type PaymentEvent = (typeof PAYMENT_EVENTS)[number]

/** In what way money changed hands. */
export const PAYMENT_METHODS = ['cash', 'transfer', 'card', 'cheque', 'other'] as const
export type PaymentMethod = (typeof PAYMENT_METHODS)[number]

/** Money that came from the customer, or went back; the amount is more than nothing either way. */
export type Payment = {
  id: string
  day: Day
  kind: 'payment' | 'refund'
  amount: Money
  method: PaymentMethod
  /** What it was said to be for. It stands on the receipt and decides nothing: money pays what is due first. */
  for: PaymentEvent | null
}

/** One of the payments agreed. All of them sum to the total. */
export type Part = { when: PaymentEvent; amount: Money }

/** What a commission costs, and the payments that this is paid in. */
export type Agreed = { total: Money; schedule: readonly Part[] }

/** The events that have come, each with its day. */
export type Reached = Partial<Record<PaymentEvent, Day>>
