import { z } from 'zod'
import { invoiceSheet } from '../paper/money/invoice-sheet.ts'
import { receiptSheet } from '../paper/money/receipt-sheet.ts'
import { reminderSheet } from '../paper/money/reminder-sheet.ts'
import type { Invoice } from '../plan/money/invoice.ts'
import { getClient } from '../store/clients.ts'
import { getCommission } from '../store/commissions.ts'
import { getInvoice, getPayment } from '../store/money.ts'
import * as inputs from './inputs.ts'
import { duesOf } from './money-of.ts'
import { receiptOf } from './payments.ts'
import { kept } from './printing.ts'
import { request } from './request.ts'
import { settingsOf, today } from './settings.ts'

/** Papers about money. An invoice is printed as it was issued, whatever the letterhead says today. */
export const moneyPaperRequests = [
  request({
    name: 'invoice.print',
    kind: 'job',
    about: 'An invoice or credit note as PDF, as it was issued.',
    input: z.strictObject({ id: inputs.id }),
    run: async ({ id }, context) => {
      const { db } = context.store
      const { commissionId, snapshot, createdAt } = getInvoice(db, id)
      const { number: commissionNumber, quoteId } = getCommission(db, commissionId)
      const { letterhead } = settingsOf(context)
      const invoice = snapshot as Invoice
      const paper = { kind: 'invoice' as const, quoteId, garmentId: null, name: invoice.number }
      const sheet = invoiceSheet({ letterhead, invoice, commissionNumber })
      return { document: await kept(paper, sheet, createdAt, context) }
    },
  }),
  request({
    name: 'receipt.print',
    kind: 'job',
    about: 'The receipt of a payment, or the note of a refund, as PDF.',
    input: z.strictObject({ id: inputs.id.describe('id of the payment') }),
    run: async ({ id }, context) => {
      const { db } = context.store
      const payment = getPayment(db, id)
      const { quoteId } = getCommission(db, payment.commissionId)
      const receipt = receiptOf(payment, context)
      const paper = { kind: 'receipt' as const, quoteId, garmentId: null, name: receipt.number }
      const sheet = receiptSheet(settingsOf(context).letterhead, receipt)
      return { document: await kept(paper, sheet, payment.createdAt, context) }
    },
  }),
  request({
    name: 'reminder.print',
    kind: 'job',
    about: 'A friendly letter about what is due of a commission, as PDF.',
    input: z.strictObject({ commissionId: inputs.id }),
    run: async ({ commissionId }, context) => {
      const { db } = context.store
      const row = getCommission(db, commissionId, 'commissionId')
      const { name, address } = getClient(db, row.customerId)
      const sheet = reminderSheet({
        ...{ letterhead: settingsOf(context).letterhead, customer: { name, address } },
        ...{ commissionNumber: row.number, day: today(context), due: duesOf([row], context).get(row.id)! },
      })
      const paper = {
        ...{ kind: 'reminder' as const, quoteId: row.quoteId, garmentId: null },
        name: `${row.number}-reminder-${today(context)}`,
      }
      return { document: await kept(paper, sheet, context.now(), context) }
    },
  }),
]
