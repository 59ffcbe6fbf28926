import { writeSync } from 'node:fs'
import { resolve } from 'node:path'
import Database from 'better-sqlite3'
import { migrate } from '../../core/store/migrate.ts'
import { readMigrations } from '../../core/store/migrations.ts'

// An update of a store that stops for good before one of its statements, and waits there to be killed.

const [path, stopsAt] = [process.argv[2]!, Number(process.argv[3])]
const sqlite = new Database(path)
sqlite.pragma('journal_mode = wal')
// Pages go to the journal before anything is committed, as they do when an update is larger than the memory given to it.
sqlite.pragma('cache_size = 5')
let passed = 0

class Halting extends Array<string> {
  override *[Symbol.iterator](): ArrayIterator<string> {
    for (let i = 0; i < this.length; i++) {
      if (passed++ === stopsAt) {
        writeSync(1, 'there\n')
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0)
      }
      yield this[i]!
    }
  }
}

const shipped = readMigrations(resolve(import.meta.dirname, '../../migrations')).map((one) => ({
  ...one,
  statements: Halting.from(one.statements) as string[],
}))
migrate(sqlite, shipped, () => {})
writeSync(1, 'through\n')
