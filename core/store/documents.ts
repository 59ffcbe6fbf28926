import { and, desc, eq, isNull, like, or } from 'drizzle-orm'
import { found } from './found.ts'
import type { Db } from './open.ts'
import { type DocumentKind, document, picture, sheet } from './schema.ts'

/** A printed paper that belongs to a quote. */
export type DocumentRow = typeof document.$inferSelect

/** Enters a paper, whose file is in the attachments by then. */
export const insertDocument = (db: Db, row: typeof document.$inferInsert): DocumentRow =>
  db.insert(document).values(row).returning().get()

/** @throws Refusal when there is no such paper */
export const getDocument = (db: Db, id: string): DocumentRow =>
  found(db.select().from(document).where(eq(document.id, id)).get(), 'document', id)

/** A printed paper that no quote is behind. */
export type SheetRow = typeof sheet.$inferSelect

/** Enters such a paper, whose file is in the attachments by then. */
export const insertSheet = (db: Db, row: typeof sheet.$inferInsert): SheetRow =>
  db.insert(sheet).values(row).returning().get()

/** Any printed paper by its id: what it is, its name, and the hash of its file. */
export const getPaper = (db: Db, id: string): { kind: string; name: string; hash: string } =>
  db.select().from(sheet).where(eq(sheet.id, id)).get() ?? getDocument(db, id)

/** Whether any paper is the file of this hash. */
export const isNamed = (db: Db, hash: string): boolean =>
  db.select().from(sheet).where(eq(sheet.hash, hash)).get() !== undefined ||
  db.select().from(document).where(eq(document.hash, hash)).get() !== undefined ||
  db
    .select()
    .from(picture)
    .where(or(eq(picture.hash, hash), like(picture.small, `${hash}.%`)))
    .get() !== undefined

/** The latest print of a paper of a quote, or of one garment of it. */
export const latestDocument = (
  db: Db,
  kind: DocumentKind,
  quoteId: string,
  garmentId: string | null,
): DocumentRow | undefined =>
  db
    .select()
    .from(document)
    .where(
      and(
        eq(document.kind, kind),
        eq(document.quoteId, quoteId),
        garmentId === null ? isNull(document.garmentId) : eq(document.garmentId, garmentId),
      ),
    )
    .orderBy(desc(document.id))
    .limit(1)
    .get()
