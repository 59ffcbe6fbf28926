import { eq } from 'drizzle-orm'
import type { Db } from './open.ts'
import { counter } from './schema.ts'

/** Takes the next number of a series, from 1. Given back if the transaction fails, so no number is lost. */
export function takeNumber(db: Db, name: string): number {
  const next = db.select().from(counter).where(eq(counter.name, name)).get()?.next ?? 1
  db.insert(counter)
    .values({ name, next: next + 1 })
    .onConflictDoUpdate({ target: counter.name, set: { next: next + 1 } })
    .run()
  return next
}
