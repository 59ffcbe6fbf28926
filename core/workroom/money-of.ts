import { dueWhenCancelled, type Settled, settledOnCancel } from '../plan/money/cancelled.ts'
import { type Due, dueNow, remindOn } from '../plan/money/due.ts'
import type { Invoice } from '../plan/money/invoice.ts'
import { balanceOf } from '../plan/money/payments.ts'
import type { Part, Payment, Reached } from '../plan/money/types.ts'
import { scheduleFor } from '../quote/schedule.ts'
import { type CommissionRow, firstCuts } from '../store/commissions.ts'
import { firstPiecesCut } from '../store/cut-pieces.ts'
import { firstHeld } from '../store/fittings.ts'
import { invoicesOf, type PaymentRow, paymentsOf } from '../store/money.ts'
import { getQuote } from '../store/quotes.ts'
import { dayAt } from '../words/dates.ts'
import { noMoney } from '../words/money.ts'
import type { Context } from './request.ts'
import { settingsOf } from './settings.ts'

/** Days after which what is due is asked for again (common practice). */
const REMIND_AFTER = 14

/** A stored payment as reckoning takes it. */
export const paymentOf = ({ id, day, kind, amountMinor, currency, method, due }: PaymentRow): Payment => ({
  ...{ id, day, kind, method: method as Payment['method'], for: due },
  amount: { minor: amountMinor, currency },
})

/** What the customer agreed to pay for a commission, tax and all. */
export const agreedOn = ({ agreedMinor, currency }: CommissionRow) => ({ minor: agreedMinor, currency })

/** The parts in which a commission is paid: those of its quote, spread anew where the customer took an option. */
function scheduleOf(row: CommissionRow, { store: { db } }: Context): Part[] {
  return row.schedule.length > 0
    ? row.schedule
    : scheduleFor(getQuote(db, row.quoteId).snapshot, agreedOn(row))
}

/** What was paid on a commission, and which events have come, each with its day. */
type Known = { payments: Payment[]; reached: Reached }

/** The same for many commissions, read together. */
function knownOf(rows: readonly CommissionRow[], context: Context): Map<string, Known> {
  const { db } = context.store
  const { timeZone } = settingsOf(context)
  const ids = rows.map(({ id }) => id)
  const payments = Map.groupBy(paymentsOf(db, ids), ({ commissionId }) => commissionId)
  const [cut, held] = [firstCuts(db, ids), firstHeld(db, ids)]
  // Whoever ticks piece by piece has cut from the first piece on, though the step is still open.
  for (const { commissionId, at } of firstPiecesCut(db, ids))
    if (at < (cut.get(commissionId) ?? '9999')) cut.set(commissionId, at)
  return new Map(
    rows.map(({ id, day, deliveredDay }) => {
      const [cutAt, heldAt] = [cut.get(id), held.get(id)]
      const reached: Reached = {
        acceptance: day,
        ...(cutAt === undefined ? {} : { cutting: dayAt(cutAt, timeZone) }),
        ...(heldAt === undefined ? {} : { fitting: dayAt(heldAt, timeZone) }),
        ...(deliveredDay === null ? {} : { delivery: deliveredDay }),
      }
      return [id, { reached, payments: (payments.get(id) ?? []).map(paymentOf) }]
    }),
  )
}

/** What is due of commissions now, by their ids; of one that is cancelled, by the terms of that alone. */
export function duesOf(rows: readonly CommissionRow[], context: Context): Map<string, Due> {
  const known = knownOf(rows, context)
  return new Map(rows.map((row) => [row.id, dueOf(row, known.get(row.id)!, context)]))
}

function dueOf(row: CommissionRow, known: Known, context: Context): Due {
  if (row.state === 'cancelled') return dueWhenCancelled(settledOf(row, known, context), row.day)
  const agreed = { total: agreedOn(row), schedule: scheduleOf(row, context) }
  return dueNow(agreed, known.payments, known.reached)
}

/** How it is settled, or would be, when the commission is cancelled: by the terms of its quote. */
function settledOf(row: CommissionRow, { payments, reached }: Known, context: Context): Settled {
  const { snapshot } = getQuote(context.store.db, row.quoteId)
  const deposit = scheduleOf(row, context).find(({ when }) => when === 'acceptance')?.amount
  return settledOnCancel({
    deposit: deposit ?? noMoney(row.currency),
    paid: balanceOf(agreedOn(row), payments).paid,
    cutYet: reached.cutting !== undefined,
    // Quotes of old were made when there was no choice in it.
    keepDepositOnceCut: snapshot.keepDepositOnceCut ?? true,
  })
}

/** How the money of a commission stands. Of one that is cancelled only the terms of that are owed, or go back. */
export function moneyOf(row: CommissionRow, context: Context) {
  const { db } = context.store
  const known = knownOf([row], context).get(row.id)!
  const balance = balanceOf(agreedOn(row), known.payments)
  const due = dueOf(row, known, context)
  const ifCancelled = settledOf(row, known, context)
  return {
    ...balance,
    ...(row.state === 'cancelled' ? { owed: ifCancelled.owed, over: ifCancelled.refund } : {}),
    ...{ due: due.due, parts: due.parts, since: due.since, remind: remindOf(due) },
    payments: paymentsOf(db, [row.id]),
    invoices: invoicesOf(db, row.id).map(({ id, number, kind, day, cancels, snapshot }) => ({
      ...{ id, number, kind, day, cancels, total: (snapshot as Invoice).total },
    })),
    ifCancelled,
  }
}

/** The day on which to ask again for what is due. */
export const remindOf = (due: Due) => remindOn(due, REMIND_AFTER)
