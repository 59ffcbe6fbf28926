import { and, asc, eq, isNull } from 'drizzle-orm'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { commissionNote, picture } from './schema.ts'

/** A note or message, and a reference picture; `removedAt` is null unless it was taken off. */
export type NoteRow = typeof commissionNote.$inferSelect
export type PictureRow = typeof picture.$inferSelect

/** Notes and messages of a commission, oldest first. */
export const notesOf = (db: Db, commissionId: string): NoteRow[] =>
  db
    .select()
    .from(commissionNote)
    .where(and(eq(commissionNote.commissionId, commissionId), isNull(commissionNote.removedAt)))
    .orderBy(asc(commissionNote.day), asc(commissionNote.id))
    .all()

/** @throws Refusal when there is no such note; one that was taken off is still found */
export const getNote = (db: Db, id: string): NoteRow =>
  found(db.select().from(commissionNote).where(eq(commissionNote.id, id)).get(), 'note', id)

/** Enters a note, and answers with the row as it is stored. */
export const insertNote = (db: Db, row: typeof commissionNote.$inferInsert): NoteRow =>
  db.insert(commissionNote).values(row).returning().get()

/** @throws Refusal when the revision is not the stored one */
export function updateNote(
  db: Db,
  row: NoteRow,
  revision: number,
  changes: Partial<Pick<NoteRow, 'day' | 'text' | 'kind' | 'removedAt'>>,
): NoteRow {
  refuseStale(row, revision)
  return db
    .update(commissionNote)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(commissionNote.id, row.id))
    .returning()
    .get()
}

/** Reference pictures of a commission, in the order they came in. */
export const picturesOf = (db: Db, commissionId: string): PictureRow[] =>
  db
    .select()
    .from(picture)
    .where(and(eq(picture.commissionId, commissionId), isNull(picture.removedAt)))
    .orderBy(asc(picture.id))
    .all()

/** @throws Refusal when there is no such picture; one that was taken off is still found */
export const getPicture = (db: Db, id: string): PictureRow =>
  found(db.select().from(picture).where(eq(picture.id, id)).get(), 'picture', id)

/** Enters a picture, whose file is in the attachments by then. */
export const insertPicture = (db: Db, row: typeof picture.$inferInsert): PictureRow =>
  db.insert(picture).values(row).returning().get()

/** Takes a picture off at an instant, or puts it back with null; its file stays. */
export const markPicture = (db: Db, id: string, removedAt: string | null): PictureRow =>
  db.update(picture).set({ removedAt }).where(eq(picture.id, id)).returning().get()
