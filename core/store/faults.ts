import Database from 'better-sqlite3'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'

/** What the disk or the system may refuse, by SQLite's result codes (sqlite.org/rescode.html), the first that begins so. */
const BY_SQLITE: readonly (readonly [begins: string, sentence: PhraseCode])[] = [
  ['SQLITE_FULL', 'refusal.disk.full'],
  ['SQLITE_READONLY', 'refusal.disk.readOnly'],
  ['SQLITE_PERM', 'refusal.disk.readOnly'],
  ['SQLITE_CANTOPEN', 'refusal.disk.readOnly'],
  ['SQLITE_CORRUPT', 'refusal.disk.damaged'],
  ['SQLITE_NOTADB', 'refusal.disk.damaged'],
  ['SQLITE_IOERR', 'refusal.disk.failed'],
]
/** The same of files beside the store, by the system's own codes. */
const BY_SYSTEM: Record<string, PhraseCode> = {
  ENOSPC: 'refusal.disk.full',
  EDQUOT: 'refusal.disk.full',
  EROFS: 'refusal.disk.readOnly',
  EACCES: 'refusal.disk.readOnly',
  EPERM: 'refusal.disk.readOnly',
  EIO: 'refusal.disk.failed',
}

/** What lies under an error: the query builder wraps those of SQLite. */
const causeOf = (error: unknown): unknown =>
  error instanceof Error && !('code' in error) && error.cause instanceof Error ? error.cause : error

/**
 * What a fault of the disk says to the maker: it is nobody's mistake, but she can do something about it.
 *
 * @returns undefined when the fault is the program's own
 */
export function refusalOfFault(thrown: unknown): Refusal | undefined {
  const error = causeOf(thrown)
  if (!(error instanceof Error) || !('code' in error)) return undefined
  const code = String(error.code)
  const sentence =
    error instanceof Database.SqliteError
      ? BY_SQLITE.find(([begins]) => code.startsWith(begins))?.[1]
      : BY_SYSTEM[code]
  return sentence === undefined ? undefined : new Refusal(phrase(sentence))
}

/** Whether a file is so damaged, or so much something else, that SQLite does not read it as a store. */
export function isDamage(thrown: unknown): boolean {
  const error = causeOf(thrown)
  if (!(error instanceof Database.SqliteError)) return false
  return error.code === 'SQLITE_NOTADB' || error.code.startsWith('SQLITE_CORRUPT')
}
