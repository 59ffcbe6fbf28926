import { asc, eq, isNull } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { absence, person } from './schema.ts'

/** Who works here; and days off, both ends among them, of everybody where `personId` is null. */
export type PersonRow = typeof person.$inferSelect
export type AbsenceRow = typeof absence.$inferSelect

/** Who works here now. */
export const listPeople = (db: Db): PersonRow[] =>
  db.select().from(person).where(isNull(person.retiredAt)).orderBy(asc(person.id)).all()

/** @throws Refusal at `field` when nobody of that id works here or has worked here */
export const getPerson = (db: Db, id: string, field?: string): PersonRow =>
  found(db.select().from(person).where(eq(person.id, id)).get(), 'person', id, field)

/** Enters somebody who works here, and answers with the row as it is stored. */
export const insertPerson = (db: Db, row: typeof person.$inferInsert): PersonRow =>
  db.insert(person).values(row).returning().get()

/** @throws Refusal when the revision is not the stored one */
export function updatePerson(
  db: Db,
  row: PersonRow,
  revision: number,
  changes: Partial<Omit<PersonRow, 'id' | 'revision' | 'createdAt'>>,
): PersonRow {
  refuseStale(row, revision)
  return db
    .update(person)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(person.id, row.id))
    .returning()
    .get()
}

/** Days off that count, by their first day. */
export const listAbsences = (db: Db): AbsenceRow[] =>
  db.select().from(absence).where(isNull(absence.removedAt)).orderBy(asc(absence.from)).all()

/** @throws Refusal when there is no such absence; one that was taken off is still found */
export const getAbsence = (db: Db, id: string): AbsenceRow =>
  found(db.select().from(absence).where(eq(absence.id, id)).get(), 'absence', id)

/** Enters days off; that they do not end before they begin is seen to by whoever asks. */
export const insertAbsence = (db: Db, row: typeof absence.$inferInsert): AbsenceRow =>
  db.insert(absence).values(row).returning().get()

/** Takes days off out of the calendar at an instant, or puts them back with null. */
export function markAbsence(db: Db, id: string, removedAt: string | null): AbsenceRow {
  return db.update(absence).set({ removedAt }).where(eq(absence.id, id)).returning().get()
}
