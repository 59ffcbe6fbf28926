import { asc, desc, eq, inArray, isNull, max } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { change, step, timeEntry, timeEntryStep } from './schema.ts'

export type TimeEntry = typeof timeEntry.$inferSelect & { stepIds: string[] }

/** Writes down a time spent on steps. */
export function insertTime(
  db: Db,
  row: typeof timeEntry.$inferInsert,
  stepIds: readonly string[],
): TimeEntry {
  db.insert(timeEntry).values(row).run()
  for (const stepId of stepIds) db.insert(timeEntryStep).values({ timeEntryId: row.id, stepId }).run()
  return getTime(db, row.id)
}

export function getTime(db: Db, id: string, field?: string): TimeEntry {
  const row = found(db.select().from(timeEntry).where(eq(timeEntry.id, id)).get(), 'timeEntry', id, field)
  return withSteps(db, [row])[0]!
}

/** The times of a commission, oldest first, those removed among them. */
export const timesOfCommission = (db: Db, commissionId: string): TimeEntry[] =>
  withSteps(
    db,
    db
      .select()
      .from(timeEntry)
      .where(eq(timeEntry.commissionId, commissionId))
      .orderBy(asc(timeEntry.day), asc(timeEntry.id))
      .all(),
  )

/** The latest times that count, the oldest of them first. */
export const latestTimes = (db: Db, most: number): TimeEntry[] =>
  withSteps(
    db,
    db
      .select()
      .from(timeEntry)
      .where(isNull(timeEntry.removedAt))
      .orderBy(desc(timeEntry.day), desc(timeEntry.id))
      .limit(most)
      .all()
      .reverse(),
  )

/** @throws Refusal when the revision is not the stored one */
export function updateTime(
  db: Db,
  row: TimeEntry,
  revision: number,
  changes: Partial<Pick<TimeEntry, 'day' | 'minutes' | 'note' | 'asideAt' | 'removedAt'>>,
): TimeEntry {
  refuseStale(row, revision)
  db.update(timeEntry)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(timeEntry.id, row.id))
    .run()
  return getTime(db, row.id)
}

/** What the steps of times are, by id. */
export const stepsById = (db: Db, ids: readonly string[]) =>
  new Map(
    db
      .select()
      .from(step)
      .where(inArray(step.id, [...ids]))
      .all()
      .map((row) => [row.id, row]),
  )

/** Number of the last thing that happened: as long as it stays, so does everything that can be worked out. */
export const lastChange = (db: Db): number =>
  db
    .select({ id: max(change.id) })
    .from(change)
    .get()?.id ?? 0

function withSteps(db: Db, rows: readonly (typeof timeEntry.$inferSelect)[]): TimeEntry[] {
  const of = new Map<string, string[]>()
  const ids = rows.map(({ id }) => id)
  for (const { timeEntryId, stepId } of db
    .select()
    .from(timeEntryStep)
    .where(inArray(timeEntryStep.timeEntryId, ids))
    .all())
    of.set(timeEntryId, [...(of.get(timeEntryId) ?? []), stepId])
  return rows.map((row) => ({ ...row, stepIds: of.get(row.id) ?? [] }))
}
