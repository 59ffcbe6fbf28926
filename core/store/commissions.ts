import { and, asc, count, desc, eq, gt, gte, inArray, isNull, lt, sql } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import {
  commission,
  garment,
  garmentActual,
  payment,
  quoteGarment,
  step,
  timeEntryStep,
  timer,
} from './schema.ts'

/**
 * Commissions, their garments, the steps of those, and what each really took (lengths mm, thread m; null is not known).
 */
export type CommissionRow = typeof commission.$inferSelect
export type GarmentRow = typeof garment.$inferSelect
export type StepRow = typeof step.$inferSelect
export type GarmentActual = typeof garmentActual.$inferSelect

/** Enters accepted work: the commission with all its garments and all their steps. */
export function insertCommission(
  db: Db,
  row: typeof commission.$inferInsert,
  garments: readonly (typeof garment.$inferInsert)[],
  steps: readonly (typeof step.$inferInsert)[],
): void {
  db.insert(commission).values(row).run()
  addGarments(db, garments, steps)
}

/** @throws Refusal at `field` when there is no such commission */
export const getCommission = (db: Db, id: string, field?: string): CommissionRow =>
  found(db.select().from(commission).where(eq(commission.id, id)).get(), 'commission', id, field)

/** Commissions by their ids. */
export const commissionsById = (db: Db, ids: readonly string[]): Map<string, CommissionRow> =>
  new Map(
    db
      .select()
      .from(commission)
      .where(inArray(commission.id, [...new Set(ids)]))
      .all()
      .map((row) => [row.id, row]),
  )

/** The newest commissions, of one state if it is said, the oldest of them first. */
export const listCommissions = (
  db: Db,
  {
    state,
    most,
    before,
  }: { state?: CommissionRow['state'] | undefined; most: number; before?: string | undefined },
): CommissionRow[] =>
  db
    .select()
    .from(commission)
    .where(
      and(
        state === undefined ? undefined : eq(commission.state, state),
        before === undefined ? undefined : lt(commission.id, before),
      ),
    )
    .orderBy(desc(commission.id))
    .limit(most)
    .all()
    .reverse()

/** The commission that a quote became. */
export const commissionOfQuote = (db: Db, quoteId: string): CommissionRow | undefined =>
  db.select().from(commission).where(eq(commission.quoteId, quoteId)).get()

/** Adds garments with their steps to a commission. */
export function addGarments(
  db: Db,
  garments: readonly (typeof garment.$inferInsert)[],
  steps: readonly (typeof step.$inferInsert)[],
): void {
  for (const one of garments) db.insert(garment).values(one).run()
  for (const one of steps) db.insert(step).values(one).run()
}

/** Puts a garment under the line of another quote, or leaves it out. */
export function moveGarment(
  db: Db,
  id: string,
  changes: Partial<Pick<GarmentRow, 'quoteGarmentId' | 'option' | 'droppedAt' | 'position'>>,
): void {
  db.update(garment).set(changes).where(eq(garment.id, id)).run()
}

/** How many there are in any state. */
export const countCommissions = (db: Db): number => db.select({ rows: count() }).from(commission).get()!.rows

/** Everything that is going on: few enough at any time to be looked at together. */
export const openCommissions = (db: Db): CommissionRow[] =>
  db.select().from(commission).where(eq(commission.state, 'open')).orderBy(asc(commission.id)).all()

/** Work handed over, or called off, since a day of which not all that was agreed is paid, the newest first. */
export const unsettledCommissions = (
  db: Db,
  state: 'delivered' | 'cancelled',
  since: string,
  most: number,
): CommissionRow[] =>
  db
    .select()
    .from(commission)
    .where(
      and(
        eq(commission.state, state),
        gte(state === 'delivered' ? commission.deliveredDay : commission.cancelledDay, since),
        gt(
          commission.agreedMinor,
          sql`(SELECT coalesce(sum(CASE ${payment.kind} WHEN 'refund' THEN -${payment.amountMinor} ELSE ${payment.amountMinor} END), 0) FROM ${payment} WHERE ${payment.commissionId} = ${commission.id})`,
        ),
      ),
    )
    .orderBy(desc(commission.id))
    .limit(most)
    .all()

/** The garments of commissions, in order, but for those that were left out. */
export const garmentsOf = (db: Db, commissionIds: readonly string[]): GarmentRow[] =>
  db
    .select()
    .from(garment)
    .where(and(inArray(garment.commissionId, [...commissionIds]), isNull(garment.droppedAt)))
    .orderBy(asc(garment.commissionId), asc(garment.position))
    .all()

/** How many steps garments have at each stage, and how many of them are done. */
export const stageCounts = (db: Db, garmentIds: readonly string[]) =>
  db
    .select({
      ...{ garmentId: step.garmentId, stage: step.stage, steps: count() },
      done: sql<number>`count(${step.doneAt})`,
    })
    .from(step)
    .where(inArray(step.garmentId, [...garmentIds]))
    .groupBy(step.garmentId, step.stage)
    .all()

/** The instant at which the first of these garments was cut, or null. */
export const firstCut = (db: Db, garmentIds: readonly string[]): string | null =>
  db
    .select({ at: sql<string | null>`min(${step.doneAt})` })
    .from(step)
    .where(and(inArray(step.garmentId, [...garmentIds]), eq(step.stage, 'cut')))
    .get()?.at ?? null

/** By commission, the instant at which the first of its garments was cut, if one is. */
export const firstCuts = (db: Db, commissionIds: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: garment.commissionId, at: sql<string | null>`min(${step.doneAt})` })
      .from(garment)
      .innerJoin(step, eq(step.garmentId, garment.id))
      .where(
        and(
          inArray(garment.commissionId, [...commissionIds]),
          isNull(garment.droppedAt),
          eq(step.stage, 'cut'),
        ),
      )
      .groupBy(garment.commissionId)
      .all()
      .flatMap(({ id, at }) => (at === null ? [] : [[id, at] as const])),
  )

/** By wearer, how many garments were handed over, and on which day the last was. */
export const deliveredTo = (db: Db): Map<string, { garments: number; last: string }> =>
  new Map(
    db
      .select({
        ...{ wearerId: quoteGarment.wearerId, garments: count() },
        last: sql<string>`max(${commission.deliveredDay})`,
      })
      .from(garment)
      .innerJoin(quoteGarment, eq(quoteGarment.id, garment.quoteGarmentId))
      .innerJoin(commission, eq(commission.id, garment.commissionId))
      .where(and(eq(commission.state, 'delivered'), isNull(garment.droppedAt)))
      .groupBy(quoteGarment.wearerId)
      .all()
      .map(({ wearerId, ...had }) => [wearerId, had]),
  )

/** Steps that are still to be done, in order. */
export const openStepsOf = (db: Db, garmentIds: readonly string[]): StepRow[] =>
  db
    .select()
    .from(step)
    .where(and(inArray(step.garmentId, [...garmentIds]), isNull(step.doneAt)))
    .orderBy(asc(step.garmentId), asc(step.position), asc(step.id))
    .all()

/** The garments of one commission in its order, those left out since among them. */
export const garmentsOfCommission = (db: Db, commissionId: string): GarmentRow[] =>
  garmentsOf(db, [commissionId])

/** @throws Refusal at `field` when there is no such garment; one that was left out since is still found */
export const getGarment = (db: Db, id: string, field?: string): GarmentRow =>
  found(db.select().from(garment).where(eq(garment.id, id)).get(), 'garment', id, field)

/** The steps of some garments, garment by garment, each in the order of the work. */
export const stepsOfGarments = (db: Db, garmentIds: readonly string[]): StepRow[] =>
  db
    .select()
    .from(step)
    .where(inArray(step.garmentId, [...garmentIds]))
    .orderBy(asc(step.garmentId), asc(step.position), asc(step.id))
    .all()

/** The commissions that steps belong to, by the ids of the steps. */
export const commissionsOfSteps = (db: Db, ids: readonly string[]): Map<string, string> =>
  new Map(
    db
      .select({ id: step.id, commissionId: garment.commissionId })
      .from(step)
      .innerJoin(garment, eq(garment.id, step.garmentId))
      .where(inArray(step.id, [...ids]))
      .all()
      .map(({ id, commissionId }) => [id, commissionId]),
  )

/** @throws Refusal at `field` when there is no such step */
export const getStep = (db: Db, id: string, field?: string): StepRow =>
  found(db.select().from(step).where(eq(step.id, id)).get(), 'step', id, field)

/** @throws Refusal when the revision is not the stored one */
export function updateCommission(
  db: Db,
  row: CommissionRow,
  revision: number,
  changes: Partial<
    Pick<
      CommissionRow,
      'state' | 'deliveredDay' | 'cancelledDay' | 'dueDay' | 'eventDay' | 'note' | 'quoteId' | 'agreedMinor'
    >
  >,
): CommissionRow {
  refuseStale(row, revision)
  return db
    .update(commission)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(commission.id, row.id))
    .returning()
    .get()
}

/** What garments really took. */
export const actualsOf = (db: Db, garmentIds: readonly string[]): GarmentActual[] =>
  db
    .select()
    .from(garmentActual)
    .where(inArray(garmentActual.garmentId, [...garmentIds]))
    .all()

/** Writes down what a garment really took, in the place of what was written before; lengths mm, thread m. */
export function setActual(db: Db, row: Omit<GarmentActual, 'revision'>): void {
  const { garmentId, ...figures } = row
  db.insert(garmentActual)
    .values(row)
    .onConflictDoUpdate({
      target: garmentActual.garmentId,
      set: { ...figures, revision: sql`${garmentActual.revision} + 1` },
    })
    .run()
}

/** Marks a step done at an instant by someone, or open again. */
export function markStep(db: Db, row: StepRow, done: { at: string; by: string } | null): StepRow {
  return db
    .update(step)
    .set({ doneAt: done?.at ?? null, doneBy: done?.by ?? null, revision: row.revision + 1 })
    .where(eq(step.id, row.id))
    .returning()
    .get()
}

/** Steps of a garment with whether any time was spent on them, or is just being spent. */
export function standingSteps(db: Db, garmentId: string): (StepRow & { timed: boolean })[] {
  const rows = stepsOfGarments(db, [garmentId])
  const ids = rows.map(({ id }) => id)
  const spent = db.select().from(timeEntryStep).where(inArray(timeEntryStep.stepId, ids)).all()
  const timed = new Set([
    ...spent.map(({ stepId }) => stepId),
    ...(db.select().from(timer).get()?.stepIds ?? []),
  ])
  return rows.map((row) => ({ ...row, timed: timed.has(row.id) }))
}

/** Adds steps to garments that are there; a key that the garment has already is a fault of the program. */
export const insertSteps = (db: Db, rows: readonly (typeof step.$inferInsert)[]): void => {
  for (const row of rows) db.insert(step).values(row).run()
}

/** What a step is and takes, written anew; its mark stays. */
export function replanStep(
  db: Db,
  id: string,
  to: Pick<StepRow, 'stage' | 'position' | 'name' | 'minutes' | 'work'>,
): void {
  const { stage, position, name, minutes, work } = to
  db.update(step)
    .set({ stage, position, name, minutes, work, revision: sql`${step.revision} + 1` })
    .where(eq(step.id, id))
    .run()
}

/** Takes out a step on which no time was spent; one with logged time is held by the database. */
export const deleteStep = (db: Db, id: string): void => {
  db.delete(step).where(eq(step.id, id)).run()
}
