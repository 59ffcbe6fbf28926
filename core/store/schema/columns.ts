import { integer, text } from 'drizzle-orm/sqlite-core'

/** Columns that most tables have. */
export const id = () => text('id').primaryKey()
export const revision = () => integer('revision').notNull().default(1)
export const createdAt = () => text('created_at').notNull()
