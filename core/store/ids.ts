import { madeAt, uuidV7 } from '../words/id.ts'
import type { Db } from './open.ts'

/**
 * Makes ids that sort after every id of the store, in the order they were made: also within a millisecond, and after the
 * clock was put back, for lists and ledgers are read in the order of their ids.
 *
 * @param clock Unix milliseconds
 * @param random as many random bytes as it is asked for
 */
export function idMaker(db: Db, clock: () => number, random: (bytes: number) => Uint8Array): () => string {
  let last: number | undefined
  return () => {
    last = Math.max(clock(), (last ?? newest(db)) + 1)
    return uuidV7(last, random(10))
  }
}

/** When the newest id of all tables was made, Unix milliseconds; 0 where there is none. */
function newest({ $client }: Db): number {
  const tables = $client
    .prepare(
      `SELECT name FROM sqlite_schema WHERE type = 'table' AND EXISTS
        (SELECT 1 FROM pragma_table_info(sqlite_schema.name) AS info WHERE info.name = 'id' AND info.type = 'TEXT')`,
    )
    .pluck()
    .all() as string[]
  const ids = tables.map((table) =>
    $client.prepare(`SELECT max(id) FROM "${table}" WHERE id GLOB ?`).pluck().get(UUID),
  )
  return Math.max(0, ...ids.filter((id) => typeof id === 'string').map(madeAt))
}

/** An id of version 7, as far as a pattern of SQLite tells. */
const UUID = '[0-9a-f]*-[0-9a-f]*-7[0-9a-f]*-[0-9a-f]*-[0-9a-f]*'
