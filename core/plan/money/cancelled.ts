import type { Day } from '../../words/dates.ts'
import { addMoney, type Money, noMoney, subtractMoney } from '../../words/money.ts'
import type { Due } from './due.ts'

type Cancelled = {
  /** The deposit that was agreed. */
  deposit: Money
  /** What was paid in all, refunds taken off. */
  paid: Money
  cutYet: boolean
  /** Whether the terms say that the deposit is kept once the cloth is cut. */
  keepDepositOnceCut: boolean
}

/** What becomes of the money: `keep + refund = paid`; `owed` is what is missing of a deposit that is kept. */
export type Settled = { keep: Money; refund: Money; owed: Money }

/** How a commission is settled that is cancelled: anything beyond a deposit that is kept goes back. */
export function settledOnCancel({ deposit, paid, cutYet, keepDepositOnceCut }: Cancelled): Settled {
  const none = noMoney(paid.currency)
  const due = cutYet && keepDepositOnceCut ? deposit : none
  const missing = subtractMoney(due, paid)
  const keep = missing.minor > 0 ? paid : due
  return { keep, refund: subtractMoney(paid, keep), owed: missing.minor > 0 ? missing : none }
}

/**
 * What is due of a commission that is cancelled: nothing but what is missing of a deposit that is kept, and that since
 * the day it was agreed.
 */
export function dueWhenCancelled({ keep, owed }: Settled, accepted: Day): Due {
  const kept = addMoney(keep, owed)
  const since = owed.minor > 0 ? accepted : null
  return {
    due: owed,
    since: since === null ? null : { when: 'acceptance', day: since },
    parts: kept.minor > 0 ? [{ when: 'acceptance', amount: kept, paid: keep, left: owed, since }] : [],
  }
}
