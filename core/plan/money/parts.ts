import { addMoney, type Money, noMoney, splitMoney, subtractMoney, sumMoney } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { PAYMENT_EVENTS, type Part } from './types.ts'

/** The parts in the order in which they fall due. */
export const inOrder = (schedule: readonly Part[]): Part[] =>
  [...schedule].sort((a, b) => PAYMENT_EVENTS.indexOf(a.when) - PAYMENT_EVENTS.indexOf(b.when))

/** What is paid of each part when money goes to the first until that is met, then to the next. */
export function paidOn(parts: readonly Part[], paid: Money): Money[] {
  let left = Math.max(0, paid.minor)
  return parts.map(({ amount: { minor, currency } }) => {
    const here = Math.min(minor, left)
    left -= here
    return { minor: here, currency }
  })
}

/** @throws Refusal when the parts do not sum to the total, or one is less than nothing */
export function refuseUnequal(total: Money, schedule: readonly Part[]): void {
  const sum = sumMoney(
    schedule.map(({ amount }) => amount),
    total.currency,
  )
  if (sum.minor !== total.minor || schedule.some(({ amount }) => amount.minor < 0))
    throw new Refusal(phrase('refusal.money.schedule', { sum, total }), 'schedule')
}

type Change = {
  /** As agreed before, and what was paid of it, refunds taken off. */
  schedule: readonly Part[]
  paid: Money
  /** The new total. */
  total: Money
}

/**
 * The payments after what was agreed has changed, by another option or by a supplementary quote. What was paid stays
 * with the parts it paid; the rest of the new total is spread over what is still open as before, and the parts sum to
 * it. Where nothing is open any more, what is new is paid on delivery. Of a total that is less than was paid, the later
 * parts fall away: the balance then says what goes back.
 *
 * @throws Refusal when the new total is less than nothing
 */
export function scheduleAfter({ schedule, paid, total }: Change): Part[] {
  if (total.minor < 0) throw new Refusal(phrase('refusal.money.total'), 'total')
  const before = withDelivery(inOrder(schedule), total.currency)
  const settled = paidOn(before, paid)
  const rest = subtractMoney(total, sumMoney(settled, total.currency))
  const after = rest.minor < 0 ? paidOn(asParts(before, settled), total) : spread(before, settled, rest)
  return asParts(before, after).filter(({ amount }) => amount.minor > 0)
}

function spread(before: readonly Part[], settled: readonly Money[], rest: Money): Money[] {
  const open = before.map(({ amount }, i) => amount.minor - settled[i]!.minor)
  const weights = open.some((minor) => minor > 0)
    ? open
    : before.map((_, i) => (i === before.length - 1 ? 1 : 0))
  return splitMoney(rest, weights).map((more, i) => addMoney(settled[i]!, more))
}

const asParts = (before: readonly Part[], amounts: readonly Money[]): Part[] =>
  before.map(({ when }, i) => ({ when, amount: amounts[i]! }))

const withDelivery = (parts: Part[], currency: string): Part[] =>
  parts.at(-1)?.when === 'delivery' ? parts : [...parts, { when: 'delivery', amount: noMoney(currency) }]
