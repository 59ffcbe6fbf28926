import { scheduleAfter } from '../plan/money/parts.ts'
import type { Part } from '../plan/money/types.ts'
import { type Money, noMoney } from '../words/money.ts'
import type { QuoteSnapshot } from './types.ts'

/** The parts of a quote, spread anew where what is agreed is another total. */
export function scheduleFor(snapshot: QuoteSnapshot, total: Money): Part[] {
  const quoted = snapshot.payments ?? [{ when: 'delivery' as const, amount: snapshot.total }]
  return total.minor === snapshot.total.minor
    ? quoted
    : scheduleAfter({ schedule: quoted, paid: noMoney(total.currency), total })
}
