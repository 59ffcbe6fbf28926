import type Database from 'better-sqlite3'
import type { Copy } from './copy.ts'
import type { Row } from './rows.ts'

/** Why a row that could be read is not in the saved book as it was. */
export type Apart = { table: string; why: 'unfit' | 'alone' | 'reference'; row: Row }

/** People and measures that other rows need and that were lost: books go on without them, as they do without whoever was forgotten. */
const STAND_INS: Record<string, string> = {
  client: `INSERT OR IGNORE INTO client (id, name, address, email, phone, note, created_at)
    SELECT @id, coalesce((SELECT json_extract(snapshot, '$.customer.name') FROM quote WHERE customer_id = @id), '—'),
      '[]', '', '', '', @now`,
  measurement_set: `INSERT OR IGNORE INTO measurement_set (id, client_id, day, taken_by, over, note, unit, measures, used_at, created_at)
    SELECT @id, wearer_id, substr(@now, 1, 10), '', '', '', 'cm', '{}', @now, @now
    FROM quote_garment WHERE measurement_set_id = @id LIMIT 1`,
}

/** What rows are put right with: an instant for what is made up, a backup, and where to set apart what will not fit. */
export type Means = { now: string; copy: Copy; apart: (one: Apart) => void }
type Broken = { table: string; rowid: number; parent: string; fkid: number }
type Reference = { id: number; from: string }
type Column = { name: string; notnull: number }

/**
 * Puts rows right whose counterpart was lost, until every reference has one: the counterpart as a backup has it, or a
 * stand-in where there can be one, else nothing in its place, else the row is set apart.
 *
 * @returns how many stand-ins there are
 */
export function mendReferences(db: Database.Database, { now, copy, apart }: Means): number {
  let standIns = 0
  withoutTriggers(db, () => {
    for (;;) {
      const broken = db.prepare('SELECT * FROM pragma_foreign_key_check').all() as Broken[]
      if (broken.length === 0) return
      for (const one of broken) standIns += mended(db, one, { now, copy, apart })
    }
  })
  return standIns
}

/** @returns 1 when a stand-in was put in, else 0 */
function mended(
  db: Database.Database,
  { table, rowid, parent, fkid }: Broken,
  { now, copy, apart }: Means,
): number {
  const references = db.prepare('SELECT id, "from" FROM pragma_foreign_key_list(?)').all(table) as Reference[]
  const { from } = references.find(({ id }) => id === fkid)!
  const row = db.prepare(`SELECT * FROM "${table}" WHERE rowid = ?`).get(rowid) as Row | undefined
  // Set apart already, for another of its references.
  if (row === undefined || row[from] === null) return 0
  const known = db.prepare(`SELECT 1 FROM "${parent}" WHERE id = ?`)
  if (known.get(row[from]) !== undefined || copy.take(parent, row[from])) return 0
  const standIn = STAND_INS[parent]
  if (standIn !== undefined) {
    db.prepare(standIn).run({ id: row[from], now })
    if (known.get(row[from]) !== undefined) return 1
  }
  const columns = db.prepare('SELECT name, "notnull" FROM pragma_table_info(?)').all(table) as Column[]
  const may = columns.find(({ name }) => name === from)?.notnull === 0
  apart({ table, why: may ? 'reference' : 'alone', row })
  db.prepare(
    may ? `UPDATE "${table}" SET "${from}" = NULL WHERE rowid = ?` : `DELETE FROM "${table}" WHERE rowid = ?`,
  ).run(rowid)
  return 0
}

/** What is frozen may be put right while nobody works on it; afterwards it is frozen again. */
function withoutTriggers(db: Database.Database, work: () => void): void {
  const triggers = db.prepare("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").all() as {
    name: string
    sql: string
  }[]
  for (const { name } of triggers) db.exec(`DROP TRIGGER "${name}"`)
  work()
  for (const { sql } of triggers) db.exec(sql)
}

/** Papers that bear a number, and the counter that each number of them is from. */
const NUMBERED = `
  SELECT number, day, 'quote' AS series FROM quote
  UNION ALL SELECT number, day, 'commission' FROM commission
  UNION ALL SELECT number, day, 'I' FROM invoice
  UNION ALL SELECT number, day, 'R' FROM payment`

/** No number of a paper that was saved is given a second time, even where its counter was lost. */
export function mendCounters(db: Database.Database): void {
  const highest = new Map<string, number>()
  for (const { number, day, series } of db.prepare(NUMBERED).all() as Record<string, string>[]) {
    const nth = Number(/(\d{1,9})$/.exec(number!)?.[1] ?? 0)
    const year = day!.slice(0, 4)
    const name = number!.includes(`-${year}-`) ? `${series}-${year}` : series!
    highest.set(name, Math.max(highest.get(name) ?? 0, nth))
  }
  const raise = db.prepare(
    'INSERT INTO counter (name, next) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET next = max(next, excluded.next)',
  )
  for (const [name, nth] of highest) raise.run(name, nth + 1)
}
