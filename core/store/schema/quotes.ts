import { type AnySQLiteColumn, integer, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core'
import type { OwnConstruction } from '../../draft/own/definition.ts'
import type { QuoteSnapshot } from '../../quote/types.ts'
import type { Phrase } from '../../words/phrase.ts'
import { cloth } from './cloths.ts'
import { createdAt, id, revision } from './columns.ts'
import { client, measurementSet } from './people.ts'

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

/** What can have become of a quote; one is `superseded` when another was sent in its place. */
export const QUOTE_STATES = ['sent', 'accepted', 'superseded', 'declined'] as const
export type QuoteState = (typeof QUOTE_STATES)[number]

/** What lists say of a quote; `total` in minor units, `supersedes` the number of the quote it replaced. */
export type QuoteInShort = Pick<QuoteSnapshot, 'validUntil' | 'total'> & {
  customer: string
  supersedes: string | null
  garments: { title: Phrase; wearer: string; quantity: number }[]
}
const NOTHING_SHORT: QuoteInShort = {
  ...{ customer: '', supersedes: null, garments: [], validUntil: '', total: { minor: 0, currency: 'GBP' } },
}

/** What has become of a quote: the part of it that changes. */
export const quoteState = sqliteTable('quote_state', {
  quoteId: text('quote_id')
    .primaryKey()
    .references(() => quote.id, { onDelete: 'restrict' }),
  state: text('state', { enum: QUOTE_STATES }).notNull(),
  at: text('at').notNull(),
  revision: revision(),
  /** What lists say of the quote, so that they need not open it. */
  short: text('short', { mode: 'json' }).$type<QuoteInShort>().notNull().default(NOTHING_SHORT),
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
