import { and, asc, eq, gt, gte, inArray, lt, notExists } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { CommissionRow } from './commissions.ts'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { commission, invoice, payment } from './schema.ts'

/** A payment or refund, its amount always positive, minor units; and an invoice or credit note. */
export type PaymentRow = typeof payment.$inferSelect
export type InvoiceRow = typeof invoice.$inferSelect

/** Money that came in or went back on commissions, in the order it was entered. */
export const paymentsOf = (db: Db, commissionIds: readonly string[]): PaymentRow[] =>
  db
    .select()
    .from(payment)
    .where(inArray(payment.commissionId, [...commissionIds]))
    .orderBy(asc(payment.id))
    .all()

/** @throws Refusal when there is no such payment */
export const getPayment = (db: Db, id: string): PaymentRow =>
  found(db.select().from(payment).where(eq(payment.id, id)).get(), 'payment', id)

/** Enters a payment, after which nothing of it can be altered. */
export const insertPayment = (db: Db, row: typeof payment.$inferInsert): PaymentRow =>
  db.insert(payment).values(row).returning().get()

/** The invoices and credit notes of one commission, oldest first. */
export const invoicesOf = (db: Db, commissionId: string): InvoiceRow[] =>
  db.select().from(invoice).where(eq(invoice.commissionId, commissionId)).orderBy(asc(invoice.id)).all()

/** @throws Refusal at `field` when there is no such invoice */
export const getInvoice = (db: Db, id: string, field?: string): InvoiceRow =>
  found(db.select().from(invoice).where(eq(invoice.id, id)).get(), 'invoice', id, field)

/** Enters an invoice or credit note, after which nothing of it can be altered. */
export const insertInvoice = (db: Db, row: typeof invoice.$inferInsert): InvoiceRow =>
  db.insert(invoice).values(row).returning().get()

const within = (year: number) => [`${year}-01-01`, `${year + 1}-01-01`] as const

/** The invoices and credit notes of a year. */
export function invoicesIn(db: Db, year: number): InvoiceRow[] {
  const [from, to] = within(year)
  return db
    .select()
    .from(invoice)
    .where(and(gte(invoice.day, from), lt(invoice.day, to)))
    .orderBy(asc(invoice.id))
    .all()
}

/** What was handed over and has no invoice that holds, the first handed over first, at most so many. */
export function notInvoiced(db: Db, most: number): CommissionRow[] {
  const credit = alias(invoice, 'credit')
  const cancelled = db.select({ id: credit.id }).from(credit).where(eq(credit.cancels, invoice.id))
  const holds = db
    .select({ id: invoice.id })
    .from(invoice)
    .where(and(eq(invoice.commissionId, commission.id), eq(invoice.kind, 'invoice'), notExists(cancelled)))
  return db
    .select()
    .from(commission)
    .where(and(eq(commission.state, 'delivered'), gt(commission.agreedMinor, 0), notExists(holds)))
    .orderBy(asc(commission.deliveredDay), asc(commission.id))
    .limit(most)
    .all()
}

/** The payments of a year. */
export function paymentsIn(db: Db, year: number): PaymentRow[] {
  const [from, to] = within(year)
  return db
    .select()
    .from(payment)
    .where(and(gte(payment.day, from), lt(payment.day, to)))
    .orderBy(asc(payment.id))
    .all()
}
