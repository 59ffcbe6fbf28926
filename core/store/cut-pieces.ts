import { and, eq } from 'drizzle-orm'
import type { Db } from './open.ts'
import { cutPiece } from './schema.ts'

export type CutPiece = typeof cutPiece.$inferSelect

export const cutPiecesOf = (db: Db, garmentId: string): CutPiece[] =>
  db.select().from(cutPiece).where(eq(cutPiece.garmentId, garmentId)).all()

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
