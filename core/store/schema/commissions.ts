import { index, integer, primaryKey, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core'
import type { ChoiceValue, Stage } from '../../draft/types.ts'
import type { Lay } from '../../lay/types.ts'
import type { Body } from '../../measure/body.ts'
import type { Part } from '../../plan/money/types.ts'
import type { Estimate } from '../../price/estimate.types.ts'
import type { Minutes } from '../../sew/types.ts'
import type { Work } from '../../sew/work.ts'
import type { Phrase } from '../../words/phrase.ts'
import { createdAt, id, revision } from './columns.ts'
import { client, measurementSet } from './people.ts'
import { quote, quoteGarment } from './quotes.ts'

/** What a commission can be; called off is `cancelled`. */
export const COMMISSION_STATES = ['open', 'delivered', 'cancelled'] as const

/** Accepted work. */
export const commission = sqliteTable(
  'commission',
  {
    id: id(),
    number: text('number').notNull().unique(),
    quoteId: text('quote_id')
      .notNull()
      .unique()
      .references(() => quote.id, { onDelete: 'restrict' }),
    customerId: text('customer_id')
      .notNull()
      .references(() => client.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    dueDay: text('due_day'),
    state: text('state', { enum: COMMISSION_STATES }).notNull(),
    note: text('note').notNull(),
    revision: revision(),
    createdAt: createdAt(),
    deliveredDay: text('delivered_day'),
    /** The day it is to be worn, if that is another than the day it is due. */
    eventDay: text('event_day'),
    /** What the customer agreed to pay for what she took of the quote. */
    agreedMinor: integer('agreed_minor').notNull().default(0),
    currency: text('currency').notNull().default('GBP'),
    /** The parts in which it is paid; none in commissions of old, whose quote says it. */
    schedule: text('schedule', { mode: 'json' }).$type<Part[]>().notNull().default([]),
    /** The day it was called off. */
    cancelledDay: text('cancelled_day'),
  },
  (table) => [
    index('commission_state').on(table.state, table.id),
    index('commission_customer').on(table.customerId),
  ],
)

/** One garment to be made: one copy of one line. */
export const garment = sqliteTable(
  'garment',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    quoteGarmentId: text('quote_garment_id')
      .notNull()
      .references(() => quoteGarment.id, { onDelete: 'restrict' }),
    copy: integer('copy').notNull(),
    position: integer('position').notNull(),
    /** Which of the line's options the customer took; none, and it is the line as it stands. */
    option: integer('option'),
    /** Left out when the customer changed her mind; what was done and logged stays. */
    droppedAt: text('dropped_at'),
    /** What lists say of it, so that they need not open its quote. */
    title: text('title', { mode: 'json' }).$type<Phrase>().notNull().default({ code: 'store.kind.garment' }),
    wearer: text('wearer').notNull().default(''),
    clothName: text('cloth_name').notNull().default(''),
  },
  (table) => [
    uniqueIndex('garment_copy').on(table.quoteGarmentId, table.copy),
    index('garment_commission').on(table.commissionId),
  ],
)

/** One step of a garment's making, and when it was done. */
export const step = sqliteTable(
  'step',
  {
    id: id(),
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    key: text('key').notNull(),
    stage: text('stage').$type<Stage>().notNull(),
    position: integer('position').notNull(),
    name: text('name', { mode: 'json' }).$type<Phrase>().notNull(),
    minutes: text('minutes', { mode: 'json' }).$type<Minutes>().notNull(),
    doneAt: text('done_at'),
    doneBy: text('done_by'),
    revision: revision(),
    /** Kinds of work in it by the catalogue, for logged time to teach from. */
    work: text('work', { mode: 'json' }).$type<Work>().notNull().default({}),
  },
  (table) => [uniqueIndex('step_key').on(table.garmentId, table.key)],
)

/** What was said or written about a commission, dated. */
export const commissionNote = sqliteTable(
  'commission_note',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    kind: text('kind', { enum: ['note', 'message'] }).notNull(),
    day: text('day').notNull(),
    text: text('text').notNull(),
    removedAt: text('removed_at'),
    revision: revision(),
    createdAt: createdAt(),
  },
  (table) => [index('commission_note_commission').on(table.commissionId)],
)

/** A reference picture. `hash` names its file in the attachments folder, `small` that of its thumbnail. */
export const picture = sqliteTable(
  'picture',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    name: text('name').notNull(),
    kind: text('kind', { enum: ['png', 'jpg', 'webp'] }).notNull(),
    hash: text('hash').notNull(),
    bytes: integer('bytes').notNull(),
    small: text('small'),
    removedAt: text('removed_at'),
    createdAt: createdAt(),
  },
  (table) => [index('picture_commission').on(table.commissionId)],
)

/** A copy of a piece that is cut. */
export const cutPiece = sqliteTable(
  'cut_piece',
  {
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    piece: text('piece').notNull(),
    copy: text('copy').notNull(),
    at: text('at').notNull(),
  },
  (table) => [primaryKey({ columns: [table.garmentId, table.piece, table.copy] })],
)

/** A fitting: when it is, and what came of it. */
export const fitting = sqliteTable(
  'fitting',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    garmentId: text('garment_id').references(() => garment.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    time: text('time').notNull(),
    note: text('note').notNull(),
    found: text('found').notNull(),
    /** Set of measures that it led to. */
    measurementSetId: text('measurement_set_id').references(() => measurementSet.id, {
      onDelete: 'restrict',
    }),
    /** Minutes of work it added, and pieces to cut again. */
    minutesAdded: real('minutes_added').notNull(),
    recut: text('recut', { mode: 'json' }).$type<string[]>().notNull(),
    heldAt: text('held_at'),
    removedAt: text('removed_at'),
    revision: revision(),
    createdAt: createdAt(),
  },
  (table) => [index('fitting_commission').on(table.commissionId), index('fitting_day').on(table.day)],
)

/** A garment drafted again after its quote was accepted, from other measures or choices. The latest counts. */
export const garmentDraft = sqliteTable(
  'garment_draft',
  {
    id: id(),
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    /** From 2: the first draft is the one that was quoted. */
    number: integer('number').notNull(),
    measurementSetId: text('measurement_set_id')
      .notNull()
      .references(() => measurementSet.id, { onDelete: 'restrict' }),
    body: text('body', { mode: 'json' }).$type<Body>().notNull(),
    asked: text('asked', { mode: 'json' }).$type<Record<string, ChoiceValue>>().notNull(),
    estimate: text('estimate', { mode: 'json' }).$type<Estimate>().notNull(),
    /** Fitting that it came of, if it did. */
    fittingId: text('fitting_id').references(() => fitting.id, { onDelete: 'restrict' }),
    createdAt: createdAt(),
    /** Ids of the pieces that are to be cut for it, the others being cut already. */
    recut: text('recut', { mode: 'json' }).$type<string[]>().notNull().default([]),
  },
  (table) => [uniqueIndex('garment_draft_number').on(table.garmentId, table.number)],
)

/** A garment laid again on the cloth as it really is after the wash. The latest counts. */
export const laidAgain = sqliteTable(
  'laid_again',
  {
    id: id(),
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    /** As measured, mm. */
    width: real('width').notNull(),
    length: real('length').notNull(),
    lay: text('lay', { mode: 'json' }).$type<Lay>().notNull(),
    createdAt: createdAt(),
  },
  (table) => [index('laid_again_garment').on(table.garmentId)],
)
