import {
  type AnySQLiteColumn,
  index,
  integer,
  primaryKey,
  real,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core'
import type { OwnConstruction } from '../draft/own/definition.ts'
import type { Stage } from '../draft/types.ts'
import type { Body, MeasureNotes, Remarks } from '../measure/body.ts'
import { PROPORTIONS_OF } from '../measure/survey.ts'
import type { StoredSettings } from '../quote/settings.ts'
import type { QuoteSnapshot } from '../quote/types.ts'
import type { Minutes } from '../sew/types.ts'
import type { Work } from '../sew/work.ts'
import type { Phrase } from '../words/phrase.ts'
import type { WorkroomUnit } from '../words/units.ts'

/**
 * The one store of a workroom. Ids are UUIDs of version 7, days `YYYY-MM-DD`, instants UTC ISO 8601, lengths
 * mm, money whole minor units. Rows that change carry a `revision`; what a sent quote rests on never does:
 * triggers of the first migration refuse it.
 */

const id = () => text('id').primaryKey()
const revision = () => integer('revision').notNull().default(1)
const createdAt = () => text('created_at').notNull()

/** The workroom itself: one row. A sample workroom stays one for good. */
export const workroom = sqliteTable('workroom', {
  id: id(),
  kind: text('kind', { enum: ['own', 'sample'] }).notNull(),
  settings: text('settings', { mode: 'json' }).$type<StoredSettings>().notNull(),
  revision: revision(),
  createdAt: createdAt(),
})

/** A person or house in the book: customer, wearer or both. */
export const client = sqliteTable('client', {
  id: id(),
  name: text('name').notNull(),
  address: text('address', { mode: 'json' }).$type<string[]>().notNull(),
  email: text('email').notNull(),
  phone: text('phone').notNull(),
  note: text('note').notNull(),
  birthDay: text('birth_day'),
  retiredAt: text('retired_at'),
  revision: revision(),
  createdAt: createdAt(),
})

/** One dated taking of a client's measures; frozen once a quote has used it. */
export const measurementSet = sqliteTable(
  'measurement_set',
  {
    id: id(),
    clientId: text('client_id')
      .notNull()
      .references(() => client.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    takenBy: text('taken_by').notNull(),
    /** What was worn under the tape. */
    over: text('over').notNull(),
    note: text('note').notNull(),
    unit: text('unit').$type<WorkroomUnit>().notNull(),
    measures: text('measures', { mode: 'json' }).$type<Body['measures']>().notNull(),
    supersedes: text('supersedes').references((): AnySQLiteColumn => measurementSet.id, {
      onDelete: 'restrict',
    }),
    usedAt: text('used_at'),
    revision: revision(),
    createdAt: createdAt(),
    /** Whose proportions it is held against, if that was said. */
    proportionsOf: text('proportions_of', { enum: PROPORTIONS_OF }),
    /** What is to be said of single measures: why an unlikely one is right. */
    notes: text('notes', { mode: 'json' }).$type<MeasureNotes>().notNull().default({}),
    /** What the tape does not say. */
    remarks: text('remarks', { mode: 'json' }).$type<Remarks>().notNull().default({}),
  },
  (table) => [index('measurement_set_client').on(table.clientId)],
)

/** A set that is no longer to be drafted from. It stays, for quotes may rest on it. */
export const retiredSet = sqliteTable('retired_set', {
  measurementSetId: text('measurement_set_id')
    .primaryKey()
    .references(() => measurementSet.id, { onDelete: 'cascade' }),
  at: text('at').notNull(),
})

/** An article one can buy. Shrinkages in parts of one. */
export const cloth = sqliteTable('cloth', {
  id: id(),
  name: text('name').notNull(),
  fibre: text('fibre').notNull(),
  width: real('width').notNull(),
  selvedge: real('selvedge').notNull(),
  warpShrinkage: real('warp_shrinkage').notNull(),
  weftShrinkage: real('weft_shrinkage').notNull(),
  rightSide: integer('right_side', { mode: 'boolean' }).notNull(),
  nap: integer('nap', { mode: 'boolean' }).notNull(),
  thickness: real('thickness').notNull(),
  increment: real('increment').notNull(),
  priceMinor: integer('price_minor').notNull(),
  currency: text('currency').notNull(),
  note: text('note').notNull(),
  retiredAt: text('retired_at'),
  revision: revision(),
  createdAt: createdAt(),
  /** Whether a garment pays for what is bought for it, or for what it uses of a length in stock. */
  charged: text('charged', { enum: ['bought', 'used'] })
    .notNull()
    .default('bought'),
})

/** A quote as it was made, complete in its snapshot. Never altered. */
export const quote = sqliteTable('quote', {
  id: id(),
  number: text('number').notNull().unique(),
  customerId: text('customer_id')
    .notNull()
    .references(() => client.id, { onDelete: 'restrict' }),
  day: text('day').notNull(),
  snapshot: text('snapshot', { mode: 'json' }).$type<QuoteSnapshot>().notNull(),
  snapshotVersion: integer('snapshot_version').notNull(),
  supersedes: text('supersedes').references((): AnySQLiteColumn => quote.id, { onDelete: 'restrict' }),
  createdAt: createdAt(),
})

export const QUOTE_STATES = ['sent', 'accepted', 'superseded', 'declined'] as const
export type QuoteState = (typeof QUOTE_STATES)[number]

/** What has become of a quote: the part of it that changes. */
export const quoteState = sqliteTable('quote_state', {
  quoteId: text('quote_id')
    .primaryKey()
    .references(() => quote.id, { onDelete: 'restrict' }),
  state: text('state', { enum: QUOTE_STATES }).notNull(),
  at: text('at').notNull(),
  revision: revision(),
})

/** What each line of a quote rests on, so that nothing it used can be taken away. Its id is the line's. */
export const quoteGarment = sqliteTable(
  'quote_garment',
  {
    id: id(),
    quoteId: text('quote_id')
      .notNull()
      .references(() => quote.id, { onDelete: 'restrict' }),
    position: integer('position').notNull(),
    wearerId: text('wearer_id')
      .notNull()
      .references(() => client.id, { onDelete: 'restrict' }),
    measurementSetId: text('measurement_set_id')
      .notNull()
      .references(() => measurementSet.id, { onDelete: 'restrict' }),
    clothId: text('cloth_id').references(() => cloth.id, { onDelete: 'restrict' }),
    construction: text('construction').notNull(),
    quantity: integer('quantity').notNull(),
  },
  (table) => [uniqueIndex('quote_garment_position').on(table.quoteId, table.position)],
)

export const COMMISSION_STATES = ['open', 'delivered', 'cancelled'] as const

/** Accepted work. */
export const commission = sqliteTable('commission', {
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
})

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
  },
  (table) => [uniqueIndex('garment_copy').on(table.quoteGarmentId, table.copy)],
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

/** Time spent on steps of a commission, as it was written down. */
export const timeEntry = sqliteTable(
  'time_entry',
  {
    id: id(),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    day: text('day').notNull(),
    minutes: real('minutes').notNull(),
    note: text('note').notNull(),
    /** Set when it counts as hours but is not to teach: a timer left running. */
    asideAt: text('aside_at'),
    /** Set when it was entered by mistake, and counts for nothing. */
    removedAt: text('removed_at'),
    revision: revision(),
    createdAt: createdAt(),
  },
  (table) => [index('time_entry_commission').on(table.commissionId)],
)

/** The steps that a time was spent on. */
export const timeEntryStep = sqliteTable(
  'time_entry_step',
  {
    timeEntryId: text('time_entry_id')
      .notNull()
      .references(() => timeEntry.id, { onDelete: 'cascade' }),
    stepId: text('step_id')
      .notNull()
      .references(() => step.id, { onDelete: 'restrict' }),
  },
  (table) => [
    primaryKey({ columns: [table.timeEntryId, table.stepId] }),
    index('time_entry_step_step').on(table.stepId),
  ],
)

/** What a garment really took, as far as the maker wrote it down. Lengths mm, thread m. */
export const garmentActual = sqliteTable('garment_actual', {
  garmentId: text('garment_id')
    .primaryKey()
    .references(() => garment.id, { onDelete: 'restrict' }),
  cloth: real('cloth'),
  handThread: real('hand_thread'),
  machineThread: real('machine_thread'),
  revision: revision(),
})

/** What was left of a cloth when a garment was cut from it, and kept. Sizes as it lies, washed, mm. */
export const remnant = sqliteTable(
  'remnant',
  {
    id: id(),
    clothId: text('cloth_id').references(() => cloth.id, { onDelete: 'restrict' }),
    clothName: text('cloth_name').notNull(),
    garmentId: text('garment_id')
      .notNull()
      .references(() => garment.id, { onDelete: 'restrict' }),
    /** Which of the lay's offcuts it is. */
    offcut: integer('offcut').notNull(),
    /** Across the cloth, and along the selvedge. */
    width: real('width').notNull(),
    length: real('length').notNull(),
    usedAt: text('used_at'),
    revision: revision(),
    createdAt: createdAt(),
  },
  (table) => [uniqueIndex('remnant_offcut').on(table.garmentId, table.offcut)],
)

export const DOCUMENT_KINDS = ['quote', 'workOrder', 'cuttingSheet'] as const
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
  kind: text('kind', { enum: ['measuringSheet'] }).notNull(),
  clientId: text('client_id').references(() => client.id, { onDelete: 'restrict' }),
  name: text('name').notNull(),
  hash: text('hash').notNull(),
  bytes: integer('bytes').notNull(),
  pages: integer('pages').notNull(),
  createdAt: createdAt(),
})

/** One version of a construction that the maker wrote herself; versions are only ever added. */
export const ownConstruction = sqliteTable(
  'own_construction',
  {
    id: text('id').primaryKey(),
    /** All versions of one construction share it. */
    family: text('family').notNull(),
    version: integer('version').notNull(),
    name: text('name').notNull(),
    definition: text('definition', { mode: 'json' }).$type<OwnConstruction>().notNull(),
    createdAt: createdAt(),
  },
  (table) => [uniqueIndex('own_construction_version').on(table.family, table.version)],
)

/** Whom the workroom has been asked to forget, by the id in the book. Their history may go. */
export const forgotten = sqliteTable('forgotten', {
  entityId: text('entity_id').primaryKey(),
  at: text('at').notNull(),
})

/** The next number of each series of papers. */
export const counter = sqliteTable('counter', {
  name: text('name').primaryKey(),
  next: integer('next').notNull(),
})

/** What happened, in order: written in the transaction that did it, never altered. */
export const change = sqliteTable(
  'change',
  {
    id: integer('id').primaryKey({ autoIncrement: true }),
    at: text('at').notNull(),
    actor: text('actor').notNull(),
    request: text('request').notNull(),
    entity: text('entity').notNull(),
    entityId: text('entity_id').notNull(),
    before: text('before', { mode: 'json' }),
    after: text('after', { mode: 'json' }),
  },
  (table) => [index('change_entity').on(table.entityId)],
)
