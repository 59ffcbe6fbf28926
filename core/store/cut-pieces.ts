import { and, eq, inArray, isNull, min } from 'drizzle-orm'
import type { Db } from './open.ts'
import { cutPiece, garment } from './schema.ts'

/** A copy of a piece by the ids the draft gives them, and the instant at which it was cut. */
export type CutPiece = typeof cutPiece.$inferSelect

/** What is cut of a garment, in no order. */
export const cutPiecesOf = (db: Db, garmentId: string): CutPiece[] =>
  db.select().from(cutPiece).where(eq(cutPiece.garmentId, garmentId)).all()

/** By garment of commissions, the instant at which the first of its pieces was cut by itself; only of those that have one. */
export const firstPiecesCut = (
  db: Db,
  commissionIds: readonly string[],
): { garmentId: string; commissionId: string; at: string }[] =>
  db
    .select({ garmentId: garment.id, commissionId: garment.commissionId, at: min(cutPiece.at) })
    .from(garment)
    .innerJoin(cutPiece, eq(cutPiece.garmentId, garment.id))
    .where(and(inArray(garment.commissionId, [...commissionIds]), isNull(garment.droppedAt)))
    .groupBy(garment.id)
    .all()
    .flatMap(({ at, ...one }) => (at === null ? [] : [{ ...one, at }]))

/** Marks a copy of a piece cut at an instant, or not. */
export function markPieceCut(db: Db, one: Omit<CutPiece, 'at'>, at: string | null): void {
  const { garmentId, piece, copy } = one
  db.delete(cutPiece)
    .where(and(eq(cutPiece.garmentId, garmentId), eq(cutPiece.piece, piece), eq(cutPiece.copy, copy)))
    .run()
  if (at !== null)
    db.insert(cutPiece)
      .values({ ...one, at })
      .run()
}
