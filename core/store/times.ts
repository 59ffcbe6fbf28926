import { and, asc, desc, eq, gte, inArray, isNull, lte, max, sql } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { change, commission, step, timeEntry, timeEntryStep, timer } from './schema.ts'

/** A logged time, minutes, with the steps it was spent on. */
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

/** @throws Refusal at `field` when there is no such time; one that was taken off is still found */
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

/** What was logged within some days, the first and the last included, on each commission that is open; minutes. */
export const loggedOnOpen = (db: Db, { from, to }: { from?: string | undefined; to?: string | undefined }) =>
  db
    .select({
      ...{ id: commission.id, number: commission.number },
      minutes: sql<number>`total(${timeEntry.minutes})`,
    })
    .from(timeEntry)
    .innerJoin(commission, eq(commission.id, timeEntry.commissionId))
    .where(
      and(
        ...[eq(commission.state, 'open'), isNull(timeEntry.removedAt)],
        from === undefined ? undefined : gte(timeEntry.day, from),
        to === undefined ? undefined : lte(timeEntry.day, to),
      ),
    )
    .groupBy(commission.id)
    .orderBy(asc(commission.number))
    .all()

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

/** The commissions that times were spent on, by the ids of the times. */
export const commissionsOfTimes = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: timeEntry.id, commissionId: timeEntry.commissionId })
      .from(timeEntry)
      .where(inArray(timeEntry.id, [...ids]))
      .all()
      .map(({ id, commissionId }) => [id, commissionId]),
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

/** What a workroom's pace is worked out from: as long as nothing happened to these, it stays. */
const TEACHES = ['timeEntry', 'step', 'workroom']

/** Number of the last thing that happened to what teaches. */
export const lastLesson = (db: Db): number =>
  Math.max(
    0,
    ...TEACHES.map(
      (entity) =>
        db
          .select({ id: max(change.id) })
          .from(change)
          .where(eq(change.entity, entity))
          .get()?.id ?? 0,
    ),
  )

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

/** The running timer and the instant it was started. */
export type TimerRow = typeof timer.$inferSelect

/** The timer that runs, if one does. */
export const runningTimer = (db: Db): TimerRow | undefined => db.select().from(timer).get()

/** Starts the timer; that none runs, whoever asks has made sure of. */
export const startTimer = (db: Db, row: typeof timer.$inferInsert): TimerRow =>
  db.insert(timer).values(row).returning().get()

/** Takes the timer away, where one runs; the time it ran is not written down by this. */
export function stopTimer(db: Db): void {
  db.delete(timer).run()
}
