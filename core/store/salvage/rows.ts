import Database from 'better-sqlite3'

/** A row as SQLite has it; whole numbers are bigint, so that none is rounded. */
export type Row = Record<string, unknown>
/** Rows that are lost: how many, null when nothing is left that would tell, and their ids as far as an index still has them. */
export type Lost = { count: number | null; ids: string[] }
type Numbered = [row: bigint, ...values: unknown[]]

/** So many places of a gap are tried one by one where no index says which of them were taken. */
const MOST_TRIED = 200_000n

/**
 * Reads a table of a damaged file row by row: from its beginning up to the damage, from its end back to it, and between
 * the two whatever rows an index still names, or every number there is.
 *
 * @param take is handed every row that can be read, once
 */
export function readRows(db: Database.Database, table: string, take: (row: Row) => void): Lost {
  const columns = unlessDamaged(() => columnsOf(db, table)) ?? []
  if (columns.length === 0) return { count: null, ids: [] }
  const taken = new Set<bigint>()
  const list = columns.map((name) => `"${name}"`).join(', ')
  const hand = ([rowid, ...values]: Numbered) => {
    take(Object.fromEntries(columns.map((name, i) => [name, values[i]])))
    taken.add(rowid)
  }
  const rows = (rest: string, ...given: bigint[]) =>
    db
      .prepare(`SELECT rowid, ${list} FROM "${table}" NOT INDEXED ${rest}`)
      .safeIntegers()
      .raw()
      .iterate(...given)
  let [first, last]: [bigint | undefined, bigint | undefined] = [undefined, undefined]
  const whole = untilDamage(
    () => rows('ORDER BY rowid') as Iterable<Numbered>,
    (row) => {
      hand(row)
      first = row[0]
    },
  )
  if (!whole) {
    const after = first === undefined ? '' : 'WHERE rowid > ?'
    untilDamage(
      () =>
        rows(`${after} ORDER BY rowid DESC`, ...(first === undefined ? [] : [first])) as Iterable<Numbered>,
      (row) => {
        hand(row)
        last = row[0]
      },
    )
  }
  const named = namedRows(db, table)
  if (!whole) {
    // A page of which one cell is broken is refused as a whole while cells are looked over: row by row its others are read.
    db.pragma('cell_size_check = OFF')
    for (const id of between(first, last, named.ids))
      untilDamage(() => rows('WHERE rowid = ?', id) as Iterable<Numbered>, hand)
    db.pragma('cell_size_check = ON')
  }
  const lost = [...named.ids].filter(([rowid]) => !taken.has(rowid))
  const ids = lost.flatMap(([, id]) => (id === undefined ? [] : [id]))
  if (named.whole) return { count: lost.length, ids }
  return { count: whole && !named.damaged ? 0 : null, ids }
}

/** Columns of a table in their order; none where there is no such table. */
export const columnsOf = (db: Database.Database, table: string): string[] =>
  db.prepare('SELECT name FROM pragma_table_info(?) ORDER BY cid').pluck().all(table) as string[]

/** Hands out what can be read; answers whether that was all of it. What `take` throws is thrown on. */
function untilDamage<T>(begin: () => Iterable<T>, take: (one: T) => void): boolean {
  const rows = unlessDamaged(() => begin()[Symbol.iterator]())
  if (rows === undefined) return false
  try {
    for (;;) {
      const next = unlessDamaged(() => rows.next())
      if (next === undefined) return false
      if (next.done === true) return true
      take(next.value)
    }
  } finally {
    rows.return?.()
  }
}

function unlessDamaged<T>(read: () => T): T | undefined {
  try {
    return read()
  } catch (error) {
    if (error instanceof Database.SqliteError) return undefined
    throw error
  }
}

type Named = { ids: Map<bigint, string | undefined>; whole: boolean; damaged: boolean }

/** The rows that the indexes of a table name, with their ids; whole, when at least one index could be read to its end. */
function namedRows(db: Database.Database, table: string): Named {
  const named: Named = { ids: new Map(), whole: false, damaged: false }
  const indexes = db.prepare(
    `SELECT list.name, info.name AS key FROM pragma_index_list(?) AS list, pragma_index_info(list.name) AS info
      WHERE list.partial = 0 AND info.seqno = 0`,
  )
  for (const { name, key } of (unlessDamaged(() => indexes.all(table)) ?? []) as {
    name: string
    key: string
  }[]) {
    const sql = `SELECT rowid, "${key}" FROM "${table}" INDEXED BY "${name}" ORDER BY "${key}"`
    const read = (order: string) =>
      untilDamage(
        () =>
          db
            .prepare(sql + order)
            .safeIntegers()
            .raw()
            .iterate() as Iterable<[bigint, unknown]>,
        ([rowid, value]) => {
          const id = key === 'id' && typeof value === 'string' ? value : named.ids.get(rowid)
          named.ids.set(rowid, id)
        },
      )
    if (read('')) named.whole = true
    else {
      named.damaged = true
      read(' DESC')
    }
  }
  return named
}

/** The rows that may lie in a gap. */
function between(from: bigint | undefined, to: bigint | undefined, named: Named['ids']): bigint[] {
  const within = [...named.keys()].filter(
    (id) => (from === undefined || id > from) && (to === undefined || id < to),
  )
  if (from === undefined && to === undefined && within.length === 0) return []
  const [low, high] = [from ?? 0n, to ?? (within.toSorted(ascending).at(-1) ?? from ?? 0n) + 1n]
  if (high - low > MOST_TRIED) return within.toSorted(ascending)
  const all: bigint[] = []
  for (let id = low + 1n; id < high; id++) all.push(id)
  return all
}

const ascending = (a: bigint, b: bigint): number => (a < b ? -1 : a > b ? 1 : 0)
