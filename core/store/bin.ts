import { and, desc, gt, isNotNull } from 'drizzle-orm'
import type { Db } from './open.ts'
import { commissionNote, fitting, picture, timeEntry } from './schema.ts'

/** Things taken off since an instant, the latest first: notes, pictures, fittings, logged times. */
export function binSince(db: Db, since: string) {
  const notes = db
    .select()
    .from(commissionNote)
    .where(and(isNotNull(commissionNote.removedAt), gt(commissionNote.removedAt, since)))
    .orderBy(desc(commissionNote.removedAt))
    .all()
  const pictures = db
    .select()
    .from(picture)
    .where(and(isNotNull(picture.removedAt), gt(picture.removedAt, since)))
    .all()
  const fittings = db
    .select()
    .from(fitting)
    .where(and(isNotNull(fitting.removedAt), gt(fitting.removedAt, since)))
    .all()
  const times = db
    .select()
    .from(timeEntry)
    .where(and(isNotNull(timeEntry.removedAt), gt(timeEntry.removedAt, since)))
    .all()
  return [
    ...notes.map(({ id, commissionId, text, removedAt }) => ({
      kind: 'note' as const,
      id,
      commissionId,
      words: text,
      removedAt: removedAt!,
    })),
    ...pictures.map(({ id, commissionId, name, removedAt }) => ({
      kind: 'picture' as const,
      id,
      commissionId,
      words: name,
      removedAt: removedAt!,
    })),
    ...fittings.map(({ id, commissionId, day, removedAt }) => ({
      kind: 'fitting' as const,
      id,
      commissionId,
      words: day,
      removedAt: removedAt!,
    })),
    ...times.map(({ id, commissionId, minutes, removedAt }) => ({
      kind: 'timeEntry' as const,
      id,
      commissionId,
      words: String(Math.round(minutes)),
      removedAt: removedAt!,
    })),
  ].sort((a, b) => (a.removedAt < b.removedAt ? 1 : -1))
}
