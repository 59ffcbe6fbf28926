import { inArray } from 'drizzle-orm'
import type { Db } from './open.ts'
import { commissionNote, fitting, garment, invoice, payment, picture } from './schema.ts'

/** What belongs to a commission and says so itself. */
const TABLES = { note: commissionNote, picture, fitting, payment, invoice, garment }

/** The commissions that things of one kind belong to, by the ids of the things; those that are not there are left out. */
export function commissionsOf(
  db: Db,
  kind: keyof typeof TABLES,
  ids: readonly string[],
): Map<string, string> {
  if (ids.length === 0) return new Map()
  const table = TABLES[kind]
  const rows = db
    .select({ id: table.id, commissionId: table.commissionId })
    .from(table)
    .where(inArray(table.id, [...ids]))
    .all()
  return new Map(rows.map(({ id, commissionId }) => [id, commissionId]))
}
