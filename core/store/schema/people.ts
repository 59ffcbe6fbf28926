import { type AnySQLiteColumn, index, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Body, MeasureNotes, Remarks } from '../../measure/body.ts'
import { PROPORTIONS_OF } from '../../measure/survey.ts'
import type { StoredSettings } from '../../quote/settings.ts'
import type { Skill } from '../../sew/types.ts'
import type { WorkroomUnit } from '../../words/units.ts'
import { createdAt, id, revision } from './columns.ts'

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

/** Who works here: hours of each weekday in minutes, Monday first, and how long a hand may sew in a day. */
export const person = sqliteTable('person', {
  id: id(),
  name: text('name').notNull(),
  skills: text('skills', { mode: 'json' }).$type<Skill[]>().notNull(),
  week: text('week', { mode: 'json' }).$type<number[]>().notNull(),
  handCap: real('hand_cap'),
  retiredAt: text('retired_at'),
  revision: revision(),
  createdAt: createdAt(),
})

/** Days on which somebody, or nobody at all, works. */
export const absence = sqliteTable('absence', {
  id: id(),
  personId: text('person_id').references(() => person.id, { onDelete: 'restrict' }),
  from: text('from_day').notNull(),
  to: text('to_day').notNull(),
  note: text('note').notNull(),
  removedAt: text('removed_at'),
  createdAt: createdAt(),
})

/** Whom the workroom has been asked to forget, by the id in the book. Their history may go. */
export const forgotten = sqliteTable('forgotten', {
  entityId: text('entity_id').primaryKey(),
  at: text('at').notNull(),
})
