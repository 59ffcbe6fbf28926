import { index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

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
  (table) => [index('change_entity').on(table.entityId), index('change_kind').on(table.entity, table.id)],
)

/** Where the words of something stand in the search index, so that they are found again when they change. */
export const searchEntry = sqliteTable('search_entry', {
  entityId: text('entity_id').primaryKey(),
  row: integer('row').notNull(),
})
