import { asc, eq, inArray, isNull } from 'drizzle-orm'
import { balanceOf } from '../plan/stock/balance.ts'
import type { Move } from '../plan/stock/types.ts'
import { found, refuseStale } from './found.ts'
import type { Db } from './open.ts'
import { stockLength, stockMove, supplyMove } from './schema.ts'

/** A length of cloth in the house or on its way, without its ledger. */
export type StockRow = typeof stockLength.$inferSelect

/** Every length there ever was in the order of entry, those used up or called off among them. */
export const listLengths = (db: Db): StockRow[] =>
  db.select().from(stockLength).orderBy(asc(stockLength.id)).all()

/** Lengths that are on their way; one that was called off has nothing left and does not come. */
export function awaitedLengths(db: Db): StockRow[] {
  const rows = db
    .select()
    .from(stockLength)
    .where(isNull(stockLength.arrivedDay))
    .orderBy(asc(stockLength.expectedDay))
    .all()
  const ledgers = movesOf(
    db,
    rows.map(({ id }) => id),
  )
  return rows.filter(({ id }) => balanceOf(ledgers.get(id) ?? []).length > 0)
}

/** @throws Refusal at `field` when there is no such length */
export const getLength = (db: Db, id: string, field?: string): StockRow =>
  found(db.select().from(stockLength).where(eq(stockLength.id, id)).get(), 'stockLength', id, field)

/** Enters a length, which holds nothing until a move says how much came. */
export const insertLength = (db: Db, row: typeof stockLength.$inferInsert): StockRow =>
  db.insert(stockLength).values(row).returning().get()

/** @throws Refusal when the revision is not the stored one */
export function updateLength(
  db: Db,
  row: StockRow,
  revision: number,
  changes: Partial<
    Pick<
      StockRow,
      'place' | 'supplier' | 'note' | 'orderedDay' | 'expectedDay' | 'arrivedDay' | 'washedAt' | 'width'
    >
  >,
): StockRow {
  refuseStale(row, revision)
  return db
    .update(stockLength)
    .set({ ...changes, revision: revision + 1 })
    .where(eq(stockLength.id, row.id))
    .returning()
    .get()
}

/** The ledgers of lengths, each in the order it was written. */
export function movesOf(db: Db, stockIds: readonly string[]): Map<string, Move[]> {
  const rows = db
    .select()
    .from(stockMove)
    .where(inArray(stockMove.stockId, [...stockIds]))
    .orderBy(asc(stockMove.id))
    .all()
  const ledgers = new Map<string, Move[]>(stockIds.map((id) => [id, []]))
  for (const { stockId, act } of rows) ledgers.get(stockId)?.push(act as Move)
  return ledgers
}

/** Adds to the ledger of a length; that it can be so the acts on a ledger (`plan/stock`) have made sure of. */
export function insertMove(db: Db, row: { id: string; stockId: string; at: string }, act: Move): void {
  db.insert(stockMove)
    .values({ ...row, act, garmentId: 'garmentId' in act ? act.garmentId : null })
    .run()
}

/** Lengths that had anything to do with a garment. */
export const lengthsWith = (db: Db, garmentIds: readonly string[]): string[] => [
  ...new Set(
    db
      .select({ id: stockMove.stockId })
      .from(stockMove)
      .where(inArray(stockMove.garmentId, [...garmentIds]))
      .all()
      .map(({ id }) => id),
  ),
]

/** The ledger of every small thing that has one. */
export function supplyLedgers(db: Db): Map<string, unknown[]> {
  const ledgers = new Map<string, unknown[]>()
  for (const { supply, act } of db.select().from(supplyMove).orderBy(asc(supplyMove.id)).all())
    ledgers.set(supply, [...(ledgers.get(supply) ?? []), act])
  return ledgers
}

/** Adds to the ledger of a thread or notion, likewise. */
export function insertSupplyMove(db: Db, row: typeof supplyMove.$inferInsert): void {
  db.insert(supplyMove).values(row).run()
}
