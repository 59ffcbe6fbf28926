import type { Due } from '../plan/money/due.ts'
import { getClient } from '../store/clients.ts'
import { type CommissionRow, firstCuts, garmentsOf, unsettledCommissions } from '../store/commissions.ts'
import { firstPiecesCut } from '../store/cut-pieces.ts'
import { listQuotes } from '../store/quotes.ts'
import { addDays, type Day } from '../words/dates.ts'
import { duesOf, remindOf } from './money-of.ts'
import type { Context } from './request.ts'

/** Money for work that is closed is asked for so many days, and of so many commissions of each kind at a time. */
const ASKED_FOR = 365
const CLOSED = 20
/** Quotes are looked through so far back, and asked about when they stand no longer than so many days. */
const QUOTES = 200
const STANDS = 7

/**
 * Whom to ring, and about what: a deposit at once, other money once it has been due for long enough
 * to ask, and quotes without an answer that will soon stand no longer.
 *
 * @param open work that is neither delivered nor called off
 */
export function whomToRing(open: readonly CommissionRow[], day: Day, context: Context) {
  const { db } = context.store
  return [...moneyDue(open, day, context), ...silent(day, context)].map(({ customerId, ...line }) => {
    const { name, phone, email } = getClient(db, customerId)
    return { ...line, customerId, customer: name, phone, email }
  })
}

function moneyDue(open: readonly CommissionRow[], day: Day, context: Context) {
  const { db } = context.store
  // Each for itself: of what was called off hardly anything is owed, and it must not crowd out what was handed over.
  const closed = (['delivered', 'cancelled'] as const).flatMap((state) =>
    unsettledCommissions(db, state, addDays(day, -ASKED_FOR), CLOSED),
  )
  const rows = [...open, ...closed]
  const dues = duesOf(rows, context)
  const begun = begunOf(open, context)
  const asked = rows.flatMap((row) => {
    const due = dues.get(row.id)!
    const why = whyAsked(row, due, begun.has(row.id), day)
    return why === null ? [] : [{ row, due, why }]
  })
  const garments = Map.groupBy(
    garmentsOf(
      db,
      asked.map(({ row }) => row.id),
    ),
    ({ commissionId }) => commissionId,
  )
  return asked.map(({ row: { id, number, customerId }, due, why }) => ({
    ...{ why, customerId, number, commissionId: id, quoteId: null, amount: due.due },
    /** Since when it is due; of a quote, until when it stands. */
    day: due.since!.day,
    garments: (garments.get(id) ?? []).map(({ title, wearer }) => ({ title, wearer })),
  }))
}

/** Why a customer is asked for money today; null where she is not. A deposit is asked for at once, begun or not. */
function whyAsked(
  row: CommissionRow,
  due: Due,
  begun: boolean,
  day: Day,
): 'deposit' | 'depositBegun' | 'due' | null {
  if (due.due.minor <= 0) return null
  if (row.state === 'open' && due.since?.when === 'acceptance') return begun ? 'depositBegun' : 'deposit'
  const remind = remindOf(due)
  return remind !== null && remind <= day ? 'due' : null
}

/** The commissions of which something is cut. */
function begunOf(open: readonly CommissionRow[], { store: { db } }: Context): Set<string> {
  const ids = open.map(({ id }) => id)
  return new Set([
    ...firstCuts(db, ids).keys(),
    ...firstPiecesCut(db, ids).map(({ commissionId }) => commissionId),
  ])
}

/** Quotes that have stood without an answer and will soon stand no longer. */
const silent = (day: Day, { store: { db } }: Context) =>
  listQuotes(db, QUOTES).flatMap(({ id, number, customerId, state, short }) =>
    state === 'sent' && short.validUntil >= day && short.validUntil <= addDays(day, STANDS)
      ? [
          {
            ...{ why: 'silent' as const, customerId, number, commissionId: null, quoteId: id },
            ...{ amount: short.total, day: short.validUntil },
            garments: short.garments.map(({ title, wearer }) => ({ title, wearer })),
          },
        ]
      : [],
  )
