import Database from 'better-sqlite3'
import { is } from 'drizzle-orm'
import { getTableConfig, SQLiteTable } from 'drizzle-orm/sqlite-core'
import { migrate } from '../migrate.ts'
import type { Migration } from '../migrations.ts'
import * as schema from '../schema.ts'
import { type Contents, checked, damaged } from './contents.ts'
import { listed, quotedName, rowsIn, setSequences, tablesOf } from './tables.ts'

/**
 * Builds a book by itself from the tables of an archive: with the tables that the planner had which wrote it, and only
 * then brought up to date, as a store of that age would be.
 *
 * @param step hears of so many more bytes read
 * @throws Refusal when the tables are not what the header says, or refer to what is not there
 */
export async function rebuild(
  { path, header, files }: Contents,
  target: string,
  shipped: readonly Migration[],
  step: (bytes: number) => void,
): Promise<void> {
  const db = new Database(target)
  try {
    db.pragma('journal_mode = MEMORY')
    migrate(db, shipped.slice(0, header.migrations.length), () => {})
    db.pragma('foreign_keys = OFF')
    const tables = tablesOf(db)
    const given = files.filter(({ is }) => is.is === 'table')
    if (given.length !== tables.length) throw damaged()
    db.exec('BEGIN')
    for (const { name, columns } of tables) {
      const file = given.find(({ is }) => is.is === 'table' && is.table === name)
      if (file === undefined) throw damaged()
      const insert = db.prepare(
        `INSERT INTO ${quotedName(name)} (${listed(columns)}) VALUES (${columns.map(() => '?').join(', ')})`,
      )
      let rows = 0
      for await (const row of rowsIn(stepped(checked(path, file), step), columns)) {
        if (row === undefined) throw damaged()
        insert.run(row)
        rows++
      }
      if (rows !== file.told.rows) throw damaged()
    }
    setSequences(db, header.sequences)
    if ((db.pragma('foreign_key_check') as unknown[]).length > 0) throw damaged()
    db.exec('COMMIT')
    migrate(db, shipped, () => {})
    if (!holdsJson(db)) throw damaged()
  } catch (error) {
    // What the tables do not take, such as a text for a number or a row twice, no planner put there.
    throw isConstraint(error) ? damaged() : error
  } finally {
    db.close()
  }
}

/** Whether every column that is to hold JSON does, for the planner reads it unasked. */
const holdsJson = (db: Database.Database): boolean =>
  Object.values(schema)
    .filter((one) => is(one, SQLiteTable))
    .map((table) => getTableConfig(table))
    .every(({ name, columns }) =>
      columns
        .filter(({ columnType }) => columnType === 'SQLiteTextJson')
        .every((column) => {
          const wrong = `SELECT 1 FROM ${quotedName(name)} WHERE NOT json_valid(${quotedName(column.name)}) LIMIT 1`
          return db.prepare(wrong).get() === undefined
        }),
    )

const isConstraint = (error: unknown): boolean =>
  error instanceof Database.SqliteError && error.code.startsWith('SQLITE_CONSTRAINT')

async function* stepped(
  chunks: AsyncIterable<Buffer>,
  step: (bytes: number) => void,
): AsyncGenerator<Buffer> {
  for await (const chunk of chunks) {
    step(chunk.length)
    yield chunk
  }
}
