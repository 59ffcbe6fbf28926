import { eq, inArray, or } from 'drizzle-orm'
import type { Estimate } from '../price/estimate.types.ts'
import type { QuoteSnapshot } from '../quote/types.ts'
import { type Client, getClient } from './clients.ts'
import { measurementSetsOf } from './measurement-sets.ts'
import type { Db } from './open.ts'
import {
  change,
  client,
  commission,
  commissionNote,
  document,
  fitting,
  forgotten,
  garment,
  garmentDraft,
  measurementSet,
  picture,
  quote,
  quoteGarment,
  sheet,
  timeEntry,
} from './schema.ts'
import { unindexed } from './search.ts'

type Kept = { id: string; number: string; snapshot: QuoteSnapshot }

/** The quotes that a client ordered or is to wear something of. */
export const quotesWith = (db: Db, clientId: string): Kept[] => {
  const ids = db
    .select({ id: quote.id })
    .from(quote)
    .leftJoin(quoteGarment, eq(quoteGarment.quoteId, quote.id))
    .where(or(eq(quote.customerId, clientId), eq(quoteGarment.wearerId, clientId)))
    .all()
    .map(({ id }) => id)
  return db
    .select({ id: quote.id, number: quote.number, snapshot: quote.snapshot })
    .from(quote)
    .where(inArray(quote.id, [...new Set(ids)]))
    .all()
}

/** What is left of a client in the book when quotes must be kept, and of a set that one rests on. */
const NOBODY: Pick<Client, 'name' | 'address' | 'email' | 'phone' | 'note' | 'birthDay'> = {
  ...{ name: '—', address: [], email: '', phone: '', note: '', birthDay: null },
}
const NO_BODY = { measures: {}, notes: {}, remarks: {}, takenBy: '', over: '', note: '', proportionsOf: null }

/** The fit report says what the body needs. */
const withoutFit = (estimate: Estimate): Estimate => ({ ...estimate, draft: { ...estimate.draft, fit: [] } })

/** A quote as books must keep it: who ordered what at which price, but not her body. */
const withoutBody = (snapshot: QuoteSnapshot, clientId: string): QuoteSnapshot => ({
  ...snapshot,
  lines: snapshot.lines.map((line) =>
    line.wearer.id !== clientId
      ? line
      : {
          ...line,
          body: { measures: {} },
          measurementSet: { id: line.measurementSet.id, day: line.measurementSet.day },
          estimate: withoutFit(line.estimate),
          ...(line.options === undefined
            ? {}
            : {
                options: line.options.map((one) => ({ ...one, estimate: withoutFit(one.estimate) })),
              }),
        },
  ),
})

/** What was written, found and pictured of the work of these quotes; the work itself stays, as books must keep it. */
function forgetWork(db: Db, quoteIds: readonly string[], at: string): { hash: string; kind: string }[] {
  const ids = db
    .select({ id: commission.id })
    .from(commission)
    .where(inArray(commission.quoteId, [...quoteIds]))
    .all()
    .map((one) => one.id)
  const notes = db.select().from(commissionNote).where(inArray(commissionNote.commissionId, ids)).all()
  const pictures = db.select().from(picture).where(inArray(picture.commissionId, ids)).all()
  const fittings = db.select().from(fitting).where(inArray(fitting.commissionId, ids)).all()
  const gone = [...notes, ...pictures, ...fittings].map((one) => one.id)
  for (const entityId of [...ids, ...gone])
    db.insert(forgotten).values({ entityId, at }).onConflictDoNothing().run()
  db.delete(change)
    .where(inArray(change.entityId, [...ids, ...gone]))
    .run()
  db.delete(forgotten).where(inArray(forgotten.entityId, ids)).run()
  db.delete(commissionNote).where(inArray(commissionNote.commissionId, ids)).run()
  db.delete(picture).where(inArray(picture.commissionId, ids)).run()
  const drafts = db
    .select({ id: garmentDraft.id })
    .from(garmentDraft)
    .innerJoin(garment, eq(garment.id, garmentDraft.garmentId))
    .where(inArray(garment.commissionId, ids))
    .all()
  for (const { id } of drafts) alteredDraft(db, id, { fittingId: null }, at)
  db.delete(fitting).where(inArray(fitting.commissionId, ids)).run()
  db.update(timeEntry).set({ note: '' }).where(inArray(timeEntry.commissionId, ids)).run()
  db.update(commission).set({ note: '' }).where(inArray(commission.id, ids)).run()
  for (const entityId of [...ids, ...gone]) unindexed(db, entityId)
  return pictures.flatMap(({ hash, kind, small }) => {
    const [smallHash, smallKind] = (small ?? '').split('.')
    return [{ hash, kind }, ...(smallKind === undefined ? [] : [{ hash: smallHash!, kind: smallKind }])]
  })
}

/** Garments that were drafted again for a wearer keep their pieces, but not her body. */
function forgetDrafts(db: Db, wearerId: string, at: string): void {
  const rows = db
    .select({ draft: garmentDraft })
    .from(garmentDraft)
    .innerJoin(garment, eq(garment.id, garmentDraft.garmentId))
    .innerJoin(quoteGarment, eq(quoteGarment.id, garment.quoteGarmentId))
    .where(eq(quoteGarment.wearerId, wearerId))
    .all()
  for (const { draft } of rows)
    alteredDraft(db, draft.id, { body: { measures: {} }, estimate: withoutFit(draft.estimate) }, at)
}

/** A draft is frozen but for this. */
function alteredDraft(db: Db, id: string, to: Partial<typeof garmentDraft.$inferInsert>, at: string): void {
  db.insert(forgotten).values({ entityId: id, at }).run()
  db.update(garmentDraft).set(to).where(eq(garmentDraft.id, id)).run()
  db.delete(forgotten).where(eq(forgotten.entityId, id)).run()
}

/**
 * Takes a client out of the book with her measures, her papers and the history of all of them. Quotes stay, with
 * her name and their prices but without her body; then the client stays too, as nobody in particular.
 *
 * @returns the hashes of files of rows that are gone, and the numbers of the quotes kept
 */
export function forgetClient(
  db: Db,
  id: string,
  at: string,
): { files: { hash: string; kind: string }[]; kept: string[] } {
  getClient(db, id)
  const sets = measurementSetsOf(db, id)
  const sheets = db.select().from(sheet).where(eq(sheet.clientId, id)).all()
  const quotes = quotesWith(db, id)
  const quoteIds = quotes.map((one) => one.id)
  // Work orders and cutting sheets show what was drafted for her; the client’s own paper is the quote.
  const papers = db
    .select({ id: document.id, hash: document.hash })
    .from(document)
    .innerJoin(garment, eq(garment.id, document.garmentId))
    .innerJoin(quoteGarment, eq(quoteGarment.id, garment.quoteGarmentId))
    .where(eq(quoteGarment.wearerId, id))
    .all()
  const gone = [id, ...[...sets, ...sheets, ...papers].map((one) => one.id)]
  for (const entityId of [...gone, ...quoteIds])
    db.insert(forgotten).values({ entityId, at }).onConflictDoNothing().run()
  db.delete(change).where(inArray(change.entityId, gone)).run()
  db.delete(sheet).where(eq(sheet.clientId, id)).run()
  for (const paper of papers) db.delete(document).where(eq(document.id, paper.id)).run()
  for (const { id: quoteId, snapshot } of quotes)
    db.update(quote)
      .set({ snapshot: withoutBody(snapshot, id) })
      .where(eq(quote.id, quoteId))
      .run()
  db.update(measurementSet).set({ supersedes: null }).where(eq(measurementSet.clientId, id)).run()
  for (const set of sets) {
    if (set.usedAt === null) db.delete(measurementSet).where(eq(measurementSet.id, set.id)).run()
    else db.update(measurementSet).set(NO_BODY).where(eq(measurementSet.id, set.id)).run()
  }
  forgetDrafts(db, id, at)
  const pictures = forgetWork(db, quoteIds, at)
  for (const entityId of [id, ...quoteIds]) unindexed(db, entityId)
  // What is kept is frozen again.
  const frozen = [...quoteIds, ...sets.filter(({ usedAt }) => usedAt !== null).map((set) => set.id)]
  db.delete(forgotten).where(inArray(forgotten.entityId, frozen)).run()
  if (quotes.length === 0) db.delete(client).where(eq(client.id, id)).run()
  else db.update(client).set(NOBODY).where(eq(client.id, id)).run()
  return {
    files: [...[...sheets, ...papers].map(({ hash }) => ({ hash, kind: 'pdf' })), ...pictures],
    kept: quotes.map(({ number }) => number),
  }
}
