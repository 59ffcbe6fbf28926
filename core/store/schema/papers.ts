import { type AnySQLiteColumn, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { createdAt, id } from './columns.ts'
import { commission, garment } from './commissions.ts'
import { client } from './people.ts'
import { quote } from './quotes.ts'

/** Money that came in or went back. Corrected by another one, never altered. */
export const payment = sqliteTable(
  'payment',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    kind: text('kind', { enum: ['payment', 'refund'] }).notNull(),
    amountMinor: integer('amount_minor').notNull(),
    currency: text('currency').notNull(),
    method: text('method').notNull(),
    due: text('due', { enum: ['acceptance', 'cutting', 'fitting', 'delivery'] }),
    note: text('note').notNull(),
    /** Number of its receipt. */
    number: text('number').notNull().unique(),
    createdAt: createdAt(),
  },
  (table) => [index('payment_commission').on(table.commissionId), index('payment_day').on(table.day)],
)

/** An invoice or credit note as it was made, complete in itself. Never altered. */
export const invoice = sqliteTable(
  'invoice',
  {
    id: id(),
    number: text('number').notNull().unique(),
    kind: text('kind', { enum: ['invoice', 'creditNote'] }).notNull(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    cancels: text('cancels').references((): AnySQLiteColumn => invoice.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    snapshot: text('snapshot', { mode: 'json' }).$type<unknown>().notNull(),
    createdAt: createdAt(),
  },
  (table) => [index('invoice_commission').on(table.commissionId), index('invoice_day').on(table.day)],
)

/** Papers that are printed for a quote or what was made of it. */
export const DOCUMENT_KINDS = [
  ...(['quote', 'workOrder', 'cuttingSheet', 'pattern', 'patternDrawing', 'careSheet', 'labels'] as const),
  ...(['invoice', 'receipt', 'reminder'] as const),
] as const
export type DocumentKind = (typeof DOCUMENT_KINDS)[number]

/** A printed paper, kept as it was printed. `hash` names its file in the attachments folder. */
export const document = sqliteTable('document', {
  id: id(),
  kind: text('kind', { enum: DOCUMENT_KINDS }).notNull(),
  quoteId: text('quote_id')
    .notNull()
    .references(() => quote.id, { onDelete: 'restrict' }),
  garmentId: text('garment_id').references(() => garment.id, { onDelete: 'restrict' }),
  name: text('name').notNull(),
  hash: text('hash').notNull(),
  bytes: integer('bytes').notNull(),
  pages: integer('pages').notNull(),
  createdAt: createdAt(),
})

/** A printed paper that no quote is behind: a measuring sheet, for a client or for anyone. */
export const sheet = sqliteTable('sheet', {
  id: id(),
  kind: text('kind', { enum: ['measuringSheet', 'startGuide'] }).notNull(),
  clientId: text('client_id').references(() => client.id, { onDelete: 'restrict' }),
  name: text('name').notNull(),
  hash: text('hash').notNull(),
  bytes: integer('bytes').notNull(),
  pages: integer('pages').notNull(),
  createdAt: createdAt(),
})

/** The next number of each series of papers. */
export const counter = sqliteTable('counter', {
  name: text('name').primaryKey(),
  next: integer('next').notNull(),
})
