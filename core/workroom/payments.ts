import { z } from 'zod'
import { creditNoteFor } from '../plan/money/credit-note.ts'
import { toCsv } from '../plan/money/csv.ts'
import { type Invoice, invoiceOf, lackingOn } from '../plan/money/invoice.ts'
import { balanceOf, enterPayment } from '../plan/money/payments.ts'
import { type Receipt, receiptFor } from '../plan/money/receipt.ts'
import { numberIn } from '../plan/money/series.ts'
import { PAYMENT_EVENTS, PAYMENT_METHODS } from '../plan/money/types.ts'
import { yearRows } from '../plan/money/year.ts'
import { lineAsTaken } from '../quote/options.ts'
import { getClient } from '../store/clients.ts'
import { type CommissionRow, garmentsOf, getCommission } from '../store/commissions.ts'
import { takeNumber } from '../store/counters.ts'
import {
  getInvoice,
  insertInvoice,
  insertPayment,
  invoicesIn,
  invoicesOf,
  notInvoiced,
  type PaymentRow,
  paymentsIn,
  paymentsOf,
} from '../store/money.ts'
import { getQuote } from '../store/quotes.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { say } from '../words/say.ts'
import { atAGlance } from './commissions.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { agreedOn, moneyOf, paymentOf } from './money-of.ts'
import { type Context, request } from './request.ts'
import { readerOf, settingsOf, today } from './settings.ts'

const commissionOnly = z.strictObject({ commissionId: inputs.id })

/** Money: what is agreed, what came in, what is due, and the papers of it. */
export const moneyRequests = [
  request({
    name: 'money.of',
    kind: 'query',
    about: 'What a commission owes and has paid, part by part, with its receipts and invoices.',
    input: commissionOnly,
    run: ({ commissionId }, context) => moneyOf(getCommission(context.store.db, commissionId), context),
  }),
  request({
    name: 'payment.add',
    kind: 'command',
    about: 'Writes down money that came in, or went back; it gets the next receipt number.',
    input: commissionOnly.extend({
      kind: z.enum(['payment', 'refund']).default('payment'),
      amount: inputs.money,
      day: inputs.day.optional(),
      method: z.enum(PAYMENT_METHODS).default('transfer'),
      for: z.enum(PAYMENT_EVENTS).nullable().default(null),
      note: inputs.line(400).default(''),
    }),
    run: ({ commissionId, ...given }, context) => {
      const row = getCommission(context.store.db, commissionId, 'commissionId')
      return { payment: paid(row, given, context), money: moneyOf(row, context) }
    },
  }),
  request({
    name: 'invoice.make',
    kind: 'command',
    about: 'Makes the invoice of a commission, with the next number. It is never altered.',
    input: commissionOnly.extend({ day: inputs.day.optional() }),
    run: ({ commissionId, day }, context) => {
      const row = getCommission(context.store.db, commissionId, 'commissionId')
      // An invoice is of all that was agreed, and that is owed no more.
      if (row.state === 'cancelled')
        throw new Refusal(phrase('refusal.money.calledOff', { number: row.number }), 'commissionId')
      return invoiced(row, day ?? today(context), context)
    },
  }),
  request({
    name: 'invoice.cancel',
    kind: 'command',
    about: 'Cancels an invoice by a credit note with a number of its own.',
    input: z.strictObject({ id: inputs.id, reason: inputs.line(400), day: inputs.day.optional() }),
    run: ({ id, reason, day }, context) => {
      const { db } = context.store
      const { commissionId, snapshot } = getInvoice(db, id)
      const row = getCommission(db, commissionId)
      const on = day ?? today(context)
      const papers = invoicesOf(db, commissionId).map((one) => one.snapshot as Invoice)
      const note = creditNoteFor(papers, (snapshot as Invoice).number, {
        ...{ number: nextNumber('I', on, context), day: on, reason },
      })
      return { invoice: keptInvoice(note, row, id, 'invoice.cancel', context) }
    },
  }),
  request({
    name: 'money.year',
    kind: 'query',
    about: 'A year for the bookkeeper: invoices, credit notes and payments in rows, and as CSV.',
    input: z.strictObject({ year: z.int().min(1900).max(3000) }),
    run: ({ year }, context) => {
      const { db } = context.store
      const invoices = invoicesIn(db, year).map(({ snapshot }) => snapshot as Invoice)
      const payments = paymentsIn(db, year)
      const receipts = payments.map((row) => receiptOf(row, context))
      const rows = yearRows(year, [...invoices, ...receipts])
      return { rows, csv: toCsv(rows, readerOf(context)) }
    },
  }),
  request({
    name: 'money.notInvoiced',
    kind: 'query',
    about: 'What was handed over and has no invoice yet, the first handed over first.',
    input: z.strictObject({ most: z.int().min(1).max(500).default(100) }),
    run: ({ most }, context) => ({
      commissions: atAGlance(notInvoiced(context.store.db, most), context).map(
        ({ id, number, customer, deliveredDay, agreed, garments }) => ({
          ...{ id, number, customer, deliveredDay, agreed },
          garments: garments.map(({ title, wearer }) => ({ title, wearer })),
        }),
      ),
    }),
  }),
]

type Given = Omit<Parameters<typeof enterPayment>[2], 'id' | 'day'> & {
  day?: string | undefined
  method: PaymentRow['method']
  note: string
}

/** Writes down money of a commission under the next receipt number; today, if no day is said. */
export function paid(row: CommissionRow, { note, day, ...given }: Given, context: Context): PaymentRow {
  const { db } = context.store
  const before = paymentsOf(db, [row.id]).map(paymentOf)
  const on = day ?? today(context)
  const payment = enterPayment(agreedOn(row), before, { id: context.newId(), day: on, ...given })
  const stored = insertPayment(db, {
    ...{ id: payment.id, commissionId: row.id, day: on, kind: payment.kind, method: payment.method, note },
    ...{ amountMinor: payment.amount.minor, currency: payment.amount.currency, due: payment.for },
    ...{ number: nextNumber('R', on, context).number, createdAt: context.now() },
  })
  recorded(context, 'payment.add', 'payment', stored.id, null, stored)
  return stored
}

/** Makes the invoice of a commission under the next number, and says what the law might want and it lacks. */
export function invoiced(row: CommissionRow, day: string, context: Context) {
  const invoice = invoiceOf({ ...invoiceFor(row, context), day, number: nextNumber('I', day, context) })
  return { invoice: keptInvoice(invoice, row, null, 'invoice.make', context), lacks: lackingOn(invoice) }
}

/** The next number of a series of papers, year by year. */
const nextNumber = (letter: 'I' | 'R', day: string, { store }: Context) =>
  numberIn(`${letter}-${day.slice(0, 4)}-`, takeNumber(store.db, `${letter}-${day.slice(0, 4)}`))

const sellerOf = ({ letterhead: { name, address } }: ReturnType<typeof settingsOf>) => ({ name, address })

/** What the invoice of a commission says, as its quote and what was taken of it have it. */
function invoiceFor(row: CommissionRow, context: Context) {
  const { db } = context.store
  const reader = readerOf(context)
  const { snapshot } = getQuote(db, row.quoteId)
  const garments = garmentsOf(db, [row.id])
  const usual = snapshot.tax.basisPoints
  const lines = snapshot.lines.flatMap((line) => {
    const own = garments.filter(({ quoteGarmentId }) => quoteGarmentId === line.id)
    const [first] = own
    if (first === undefined) return []
    const taken = lineAsTaken(snapshot, first)
    return [
      {
        text: `${say(taken.title, reader)}, ${taken.wearer.name}`,
        ...{ quantity: own.length, each: taken.estimate.price.net },
        basisPoints: taken.taxBasisPoints ?? usual,
      },
    ]
  })
  const { shipping } = snapshot
  const { paid } = balanceOf(agreedOn(row), paymentsOf(db, [row.id]).map(paymentOf))
  return {
    ...(row.deliveredDay === null ? {} : { supplied: row.deliveredDay }),
    ...{ seller: sellerOf(settingsOf(context)), paid },
    customer: { name: snapshot.customer.name, address: snapshot.customer.address },
    lines: [
      ...lines,
      ...(shipping === undefined
        ? []
        : [
            {
              text: reader.catalogue['paper.quote.shipping'],
              ...{ quantity: 1, each: shipping.net, basisPoints: usual },
            },
          ]),
    ],
  }
}

function keptInvoice(
  invoice: Invoice,
  row: CommissionRow,
  cancels: string | null,
  name: string,
  context: Context,
) {
  const { number, kind, day } = invoice
  const stored = insertInvoice(context.store.db, {
    ...{ id: context.newId(), number, kind, commissionId: row.id, cancels, day, snapshot: invoice },
    createdAt: context.now(),
  })
  recorded(context, name, 'invoice', stored.id, null, { number, total: invoice.total })
  return { id: stored.id, ...invoice }
}

/** The receipt of a stored payment. */
export function receiptOf(payment: PaymentRow, context: Context): Receipt {
  const { db } = context.store
  const row = getCommission(db, payment.commissionId)
  const { name, address } = getClient(db, row.customerId)
  const all = paymentsOf(db, [row.id]).map(paymentOf)
  const [, year = '', nth = '0'] = /^R-(\d{4})-(\d+)$/.exec(payment.number) ?? []
  return receiptFor(payment.id, all, {
    ...{ number: numberIn(`R-${year}-`, Number(nth)), seller: sellerOf(settingsOf(context)) },
    customer: { name, address },
    ...{ on: row.number, agreed: agreedOn(row) },
  })
}
