import { inArray } from 'drizzle-orm'
import { changesSince } from './changes.ts'
import type { Db } from './open.ts'
import { commissionNote, fitting, picture, timeEntry } from './schema.ts'

const removedOf = (db: Db, entity: string, since: string): string[] => [
  ...new Set(
    changesSince(db, entity, since).flatMap(({ request, entityId }) =>
      request.endsWith('.remove') ? [entityId] : [],
    ),
  ),
]

type Off<Row> = Row & { removedAt: string }
const stillOff = <Row extends { removedAt: string | null }>(rows: readonly Row[]): Off<Row>[] =>
  rows.flatMap((row) => (row.removedAt === null ? [] : [{ ...row, removedAt: row.removedAt }]))

/**
 * Things taken off since an instant and not put back: notes, pictures, fittings, logged times. They are looked up from
 * the history, so that the tables themselves are not gone through.
 */
export function binSince(db: Db, since: string) {
  const note = removedOf(db, 'note', since)
  const image = removedOf(db, 'picture', since)
  const fitted = removedOf(db, 'fitting', since)
  const time = removedOf(db, 'timeEntry', since)
  return {
    notes: stillOff(db.select().from(commissionNote).where(inArray(commissionNote.id, note)).all()),
    pictures: stillOff(db.select().from(picture).where(inArray(picture.id, image)).all()),
    fittings: stillOff(db.select().from(fitting).where(inArray(fitting.id, fitted)).all()),
    times: stillOff(db.select().from(timeEntry).where(inArray(timeEntry.id, time)).all()),
  }
}
