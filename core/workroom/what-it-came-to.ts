import { overrunOf, type Totals, together } from '../plan/account.ts'
import { adviceFrom } from '../plan/advice.ts'
import { askedTogether } from '../plan/asked.ts'
import { ranOver, whyBadlyPaid } from '../plan/badly-paid.ts'
import {
  accountsByClient,
  accountsByCommission,
  accountsByConstruction,
  accountsByMonth,
  allAccounts,
  paidUnder,
  type Within,
  worstOverrun,
} from '../store/accounts.ts'
import { clientNames } from '../store/clients.ts'
import { garmentsOf, getCommission, unsettledCommissions } from '../store/commissions.ts'
import { loggedOnOpen } from '../store/times.ts'
import { type Money, noMoney, subtractMoney, sumMoney } from '../words/money.ts'
import { accountFor } from './account-for.ts'
import { duesOf } from './money-of.ts'
import type { Context } from './request.ts'
import { settingsOf } from './settings.ts'

/** So many badly paid commissions are told of one by one; the tables mark the others. */
const MOST_BADLY_PAID = 3

/** What was delivered within some days, added up in every way, and what it says should be changed. */
export function whatItCameTo(days: Within, most: number, context: Context) {
  const { db } = context.store
  const { currency, targetPerHour } = settingsOf(context).rates
  const summed = <T extends Totals>(row: T) => together(row, currency)
  const all = allAccounts(db, days)
  const commissions = accountsByCommission(db, days, most)
  const under = paidUnder(db, days, targetPerHour.minor)
  const made = Map.groupBy(
    garmentsOf(
      db,
      commissions.map(({ id }) => id),
    ),
    ({ commissionId }) => commissionId,
  )
  const onTheTable = loggedOnOpen(db, days)
  return {
    commissions: commissions.map((row) => ({
      ...{ id: row.id, number: row.number, customer: row.customer, deliveredDay: row.deliveredDay },
      garments: (made.get(row.id) ?? []).map(({ title, wearer }) => ({ title, wearer })),
      together: summed(row),
    })),
    months: accountsByMonth(db, days, most).map((row) => ({ month: row.month, together: summed(row) })),
    constructions: accountsByConstruction(db, days).map((row) => ({
      ...{ id: row.id, title: row.title, together: summed(row) },
    })),
    clients: accountsByClient(db, days, most).map((row) => ({
      ...{ id: row.id, name: row.name, together: summed(row) },
    })),
    together: summed(all),
    targetPerHour,
    badlyPaid: {
      all: under.length,
      worst: under.slice(0, MOST_BADLY_PAID).map((id) => badlyPaid(id, targetPerHour, context)),
    },
    advice: adviceFrom(all, targetPerHour, worstOverrun(db, days)),
    /** What of these days' work is not paid: a part of the prices, and so of what is left. */
    owed: owedOf(days, context),
    /** Work of these days that nothing is earned with yet. */
    onTheTable: {
      minutes: onTheTable.reduce((sum, { minutes }) => sum + minutes, 0),
      commissions: onTheTable,
    },
  }
}

/** Handed over within some days and not paid in full: so many of the newest are added up and named. */
const OWED = 500

function owedOf({ from = '', to = '9999' }: Within, context: Context) {
  const { db } = context.store
  const rows = unsettledCommissions(db, 'delivered', from, OWED).filter(
    ({ deliveredDay }) => deliveredDay !== null && deliveredDay <= to,
  )
  const dues = duesOf(rows, context)
  const names = clientNames(
    db,
    rows.map(({ customerId }) => customerId),
  )
  return rows
    .map(({ id, number, customerId }) => ({
      ...{ id, number, customer: names.get(customerId) ?? '', amount: dues.get(id)!.due },
    }))
    .filter(({ amount }) => amount.minor > 0)
}

/** A commission that earned less an hour than was meant, and where it was lost; only of garments whose hours are known. */
function badlyPaid(id: string, target: Money, context: Context) {
  const row = getCommission(context.store.db, id)
  const { customer, garments, together: sums } = accountFor(row, context)
  const known = garments.filter(({ account }) => account.minutes.actual !== null)
  const asked = askedTogether(
    known.map((one) => one.asked),
    row.currency,
  )
  const moreMaterials = sumMoney(
    known.map(({ account: { materials } }) =>
      materials.actual === null ? noMoney(row.currency) : subtractMoney(materials.actual, materials.quoted),
    ),
    row.currency,
  )
  const overrun = overrunOf(known.flatMap(({ steps }) => steps))
  const { minutes, perHour } = sums
  return {
    ...{ id, number: row.number, quoteId: row.quoteId, customer, asked, minutes },
    garments: known.map(({ title, wearer }) => ({ title, wearer })),
    earned: perHour.actual,
    overrun: ranOver(overrun) ? overrun : null,
    why: whyBadlyPaid({ asked, minutes, moreMaterials, target }),
  }
}
