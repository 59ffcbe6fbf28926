import type { Database } from 'better-sqlite3'

/** A table as it lies in an archive: its columns by name, and those that order its rows. */
export type ArchiveTable = { name: string; columns: string[]; key: string[] }
export type Value = string | number | null

/** What is not taken along: the search index, which is made anew, and the list of migrations, which the header has. */
const LEFT_OUT = ['search_entry', 'migration']

/** The tables of a store by name, without SQLite's own. */
export function tablesOf(db: Database): ArchiveTable[] {
  const all = db.pragma('main.table_list') as { name: string; type: string }[]
  return all
    .filter(({ name, type }) => type === 'table' && !name.startsWith('sqlite_') && !LEFT_OUT.includes(name))
    .map(({ name }) => {
      const columns = db.pragma(`main.table_info(${quotedName(name)})`) as { name: string; pk: number }[]
      const key = columns.filter(({ pk }) => pk > 0).sort((a, b) => a.pk - b.pk)
      return { name, columns: columns.map((one) => one.name).sort(), key: key.map((one) => one.name) }
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
}

/** A name of a table or column as SQL takes it, whatever letters are in it. */
export const quotedName = (name: string): string => `"${name.replaceAll('"', '""')}"`

/** Names in a row, for SQL. */
export const listed = (names: readonly string[]): string => names.map(quotedName).join(', ')

/** How many rows there are in the table itself, whatever its indexes say. */
export const rowsOf = (db: Database, { name }: Pick<ArchiveTable, 'name'>): number =>
  db
    .prepare(`SELECT count(*) FROM ${quotedName(name)} NOT INDEXED`)
    .pluck()
    .get() as number

/** Whether nothing has been put into any table. */
export const holdsNothing = (db: Database): boolean =>
  tablesOf(db).every(
    ({ name }) => db.prepare(`SELECT 1 FROM main.${quotedName(name)} LIMIT 1`).get() === undefined,
  )

/** The highest number that a table has ever given out by itself, also to rows that are gone: it is never given twice. */
export const sequencesOf = (db: Database, book: 'main' | 'brought' = 'main'): Record<string, number> =>
  Object.fromEntries(
    (
      db.prepare(`SELECT name, seq FROM ${book}.sqlite_sequence ORDER BY name`).all() as {
        name: string
        seq: number
      }[]
    )
      .filter(({ name }) => !LEFT_OUT.includes(name))
      .map(({ name, seq }) => [name, seq]),
  )

/** Puts what `sequencesOf` told in the place of what the store would give out next. */
export function setSequences(db: Database, sequences: Record<string, number>): void {
  for (const [name, seq] of Object.entries(sequences)) {
    db.prepare('DELETE FROM main.sqlite_sequence WHERE name = ?').run(name)
    db.prepare('INSERT INTO main.sqlite_sequence (name, seq) VALUES (?, ?)').run(name, seq)
  }
}

/** Rows written before they are handed on, bytes. */
const AT_ONCE = 1 << 16

/**
 * A table as JSON: an array with a row a line, ordered by its key, the columns of each by name. What a column holds is
 * told as it is, JSON within it as a text.
 *
 * @param told hears of each row
 */
export function* tableJson(
  db: Database,
  { name, columns, key }: ArchiveTable,
  told: () => void,
): Generator<Buffer> {
  const rows = db
    .prepare(`SELECT ${listed(columns)} FROM ${quotedName(name)} ORDER BY ${listed(key)}`)
    .iterate() as IterableIterator<Record<string, Value>>
  let text = '['
  let first = true
  for (const row of rows) {
    text += `${first ? '' : ','}\n${JSON.stringify(row)}`
    first = false
    told()
    if (text.length < AT_ONCE) continue
    yield Buffer.from(text)
    text = ''
  }
  yield Buffer.from(`${text}\n]\n`)
}

/** A row longer than this is none that any planner wrote, bytes. */
const LONGEST_ROW = 1 << 28

/** The lines of a file, without their ends. Undefined stands for one that is too long. */
async function* linesOf(chunks: AsyncIterable<Buffer>): AsyncGenerator<string | undefined> {
  let [parts, length]: [Buffer[], number] = [[], 0]
  for await (const chunk of chunks) {
    let from = 0
    for (let end = chunk.indexOf(10); end >= 0; end = chunk.indexOf(10, from)) {
      yield Buffer.concat([...parts, chunk.subarray(from, end)]).toString('utf8')
      ;[parts, length] = [[], 0]
      from = end + 1
    }
    parts.push(chunk.subarray(from))
    length += chunk.length - from
    if (length > LONGEST_ROW) yield undefined
  }
  if (length > 0) yield Buffer.concat(parts).toString('utf8')
}

/**
 * The rows of such a file, each with the values of the columns in their order; undefined for whatever is no row of this
 * table.
 */
export async function* rowsIn(
  chunks: AsyncIterable<Buffer>,
  columns: readonly string[],
): AsyncGenerator<Value[] | undefined> {
  let [begun, ended] = [false, false]
  for await (const line of linesOf(chunks)) {
    if (line === undefined || ended) yield undefined
    else if (!begun) {
      if (line !== '[') yield undefined
      begun = true
    } else if (line === ']') ended = true
    else yield rowOf(line.endsWith(',') ? line.slice(0, -1) : line, columns)
  }
  if (!ended) yield undefined
}

function rowOf(line: string, columns: readonly string[]): Value[] | undefined {
  let row: unknown
  try {
    row = JSON.parse(line)
  } catch {
    return undefined
  }
  if (typeof row !== 'object' || row === null) return undefined
  const values = new Map(Object.entries(row))
  if (values.size !== columns.length || !columns.every((column) => values.has(column))) return undefined
  const inOrder = columns.map((column): unknown => values.get(column))
  return inOrder.every(isValue) ? inOrder : undefined
}

const isValue = (value: unknown): value is Value =>
  value === null || typeof value === 'string' || typeof value === 'number'
