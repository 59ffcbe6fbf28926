import { index, integer, primaryKey, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Account } from '../../plan/account.ts'
import { createdAt, id, revision } from './columns.ts'
import { commission, garment, step } from './commissions.ts'
import { client } from './people.ts'

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
  (table) => [
    index('time_entry_commission').on(table.commissionId),
    index('time_entry_day').on(table.day, table.id),
  ],
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

/** Quoted against actual of a garment, as it stood when it was last looked at: what lists add up. */
export const garmentAccount = sqliteTable(
  'garment_account',
  {
    garmentId: text('garment_id')
      .primaryKey()
      .references(() => garment.id, { onDelete: 'restrict' }),
    commissionId: text('commission_id')
      .notNull()
      .references(() => commission.id, { onDelete: 'restrict' }),
    customerId: text('customer_id')
      .notNull()
      .references(() => client.id, { onDelete: 'restrict' }),
    construction: text('construction').notNull(),
    deliveredDay: text('delivered_day').notNull(),
    account: text('account', { mode: 'json' }).$type<Account>().notNull(),
    netMinor: integer('net_minor').notNull(),
    quotedMinutes: real('quoted_minutes').notNull(),
    actualMinutes: real('actual_minutes'),
    quotedLeftMinor: integer('quoted_left_minor').notNull(),
    actualLeftMinor: integer('actual_left_minor'),
    quotedCloth: real('quoted_cloth').notNull(),
    actualCloth: real('actual_cloth'),
  },
  (table) => [index('garment_account_commission').on(table.commissionId)],
)

/** The timer that runs, if one does: there is never more than one. */
export const timer = sqliteTable('timer', {
  id: id(),
  stepIds: text('step_ids', { mode: 'json' }).$type<string[]>().notNull(),
  startedAt: text('started_at').notNull(),
})
