import { desc, eq, inArray } from 'drizzle-orm'
import type { Db } from './open.ts'
import { garmentDraft } from './schema.ts'

/** A draft that came after the quoted one. */
export type GarmentDraftRow = typeof garmentDraft.$inferSelect

/** Enters a draft, which counts from then on; a number that the garment has already is a fault of the program. */
export const insertGarmentDraft = (db: Db, row: typeof garmentDraft.$inferInsert): GarmentDraftRow =>
  db.insert(garmentDraft).values(row).returning().get()

/** The draft that counts of a garment, where it was drafted again. */
export const latestDraftOf = (db: Db, garmentId: string): GarmentDraftRow | undefined =>
  db
    .select()
    .from(garmentDraft)
    .where(eq(garmentDraft.garmentId, garmentId))
    .orderBy(desc(garmentDraft.number))
    .limit(1)
    .get()

/** When each of these garments was drafted again, the first time first. */
export const draftsOf = (db: Db, garmentIds: readonly string[]) =>
  db
    .select({
      ...{ garmentId: garmentDraft.garmentId, number: garmentDraft.number },
      ...{ measurementSetId: garmentDraft.measurementSetId, createdAt: garmentDraft.createdAt },
    })
    .from(garmentDraft)
    .where(inArray(garmentDraft.garmentId, [...garmentIds]))
    .orderBy(garmentDraft.number)
    .all()
