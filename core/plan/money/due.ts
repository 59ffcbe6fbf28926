import { addDays, type Day } from '../../words/dates.ts'
import { type Money, subtractMoney, sumMoney } from '../../words/money.ts'
import { inOrder, paidOn, refuseUnequal } from './parts.ts'
import { balanceOf } from './payments.ts'
import {
  type Agreed,
  PAYMENT_EVENTS,
  type Part,
  type Payment,
  type PaymentEvent,
  type Reached,
} from './types.ts'

/** One of the payments agreed, what is paid of it, and since when the rest is due, if it is. */
export type PartDue = Part & { paid: Money; left: Money; since: Day | null }

/** What is due of a commission, part by part in the order in which they are paid. */
export type Due = {
  /** All that is due now. */
  due: Money
  /** The event that the oldest of it waits on, and the day it fell due. */
  since: { when: PaymentEvent; day: Day } | null
  parts: PartDue[]
}

/**
 * What is due now of the payments agreed. A part is due once its event has come, or a later one: what is delivered
 * needs no fitting any more. Money pays the earlier parts first, whatever it was said to be for.
 *
 * @throws Refusal when the parts do not sum to the total
 */
export function dueNow({ total, schedule }: Agreed, payments: readonly Payment[], reached: Reached): Due {
  refuseUnequal(total, schedule)
  const parts = inOrder(schedule)
  const paid = paidOn(parts, balanceOf(total, payments).paid)
  const all = parts.map((part, i): PartDue => {
    const left = subtractMoney(part.amount, paid[i]!)
    return { ...part, paid: paid[i]!, left, since: left.minor > 0 ? cameOn(part.when, reached) : null }
  })
  const open = all.filter(({ since }) => since !== null)
  const [oldest] = open
  return {
    due: sumMoney(
      open.map(({ left }) => left),
      total.currency,
    ),
    since: oldest === undefined ? null : { when: oldest.when, day: oldest.since! },
    parts: all,
  }
}

/** The day on which to remind of what is due, so many days after it fell due; none where nothing is. */
export const remindOn = ({ since }: Pick<Due, 'since'>, days: number): Day | null =>
  since === null ? null : addDays(since.day, days)

/** The first day on which an event, or one that comes after it, had come. */
function cameOn(when: PaymentEvent, reached: Reached): Day | null {
  const days = PAYMENT_EVENTS.slice(PAYMENT_EVENTS.indexOf(when)).flatMap((event) => reached[event] ?? [])
  return days.sort()[0] ?? null
}
