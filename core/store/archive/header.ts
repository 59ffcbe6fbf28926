import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { Migration } from '../migrations.ts'

/** Names of the two files that are not tables, and the version of the format: an archive of a higher one is refused. */
export const HEADER = 'ellwand.json'
export const README = 'README.txt'
export const VERSION = 1

/** Where the rows of a table lie in an archive. */
export const tableFile = (table: string): string => `tables/${table}.json`

/** Every name that a file of an archive may have; the system sees none of them but those of the files by their content. */
const TABLE_FILE = /^tables\/([a-z_]{1,64})\.json$/
const ATTACHMENT = /^attachments\/([0-9a-f]{64})\.([a-z]{1,8}(?:\.[a-z]{1,8})?)$/
/** Attachments as they are named in their folder. */
export const ATTACHMENT_NAME = /^([0-9a-f]{64})\.([a-z]{1,8}(?:\.[a-z]{1,8})?)$/

/** What a name in an archive means; `hash` is the SHA-256 of the file in hex, `ending` is without its first dot. */
export type Named =
  | { is: 'header' | 'readme' }
  | { is: 'table'; table: string }
  | { is: 'attachment'; hash: string; ending: string }

/** @throws Refusal for a name that no archive has: one that leads elsewhere, or one of something else */
export function namedIn(name: string): Named {
  if (name === HEADER) return { is: 'header' }
  if (name === README) return { is: 'readme' }
  const [, table] = TABLE_FILE.exec(name) ?? []
  if (table !== undefined) return { is: 'table', table }
  const [, hash, ending] = ATTACHMENT.exec(name) ?? []
  if (hash !== undefined && ending !== undefined) return { is: 'attachment', hash, ending }
  throw new Refusal(phrase('refusal.archive.name', { name: name.slice(0, 80) }))
}

/**
 * What an archive says of itself: when it was made, by which state of the store, and every other file with its length,
 * SHA-256 and, of a table, its rows. `missing` names files that were gone from the store when it was made.
 */
export type Header = {
  format: 'ellwand'
  version: typeof VERSION
  /** Instant, UTC. */
  madeAt: string
  /** SHA-256 of the migrations that made its tables, in order. */
  migrations: string[]
  /** The highest number that each table has given out by itself. */
  sequences: Record<string, number>
  files: { name: string; bytes: number; sha256: string; rows?: number }[]
  missing: string[]
}

/** Keys stand in the order of the letters, whatever was put in first. */
export const headerJson = (header: Header): string => `${JSON.stringify(inOrder(header), null, 2)}\n`

const inOrder = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(inOrder)
  if (!isObject(value)) return value
  const keys = Object.keys(value).sort()
  return Object.fromEntries(keys.map((key) => [key, inOrder(value[key])]))
}

/**
 * @param shipped the migrations that this planner knows
 * @throws Refusal when it is the header of nothing we know, or of a newer planner's archive
 */
export function readHeader(text: string, shipped: readonly Migration[]): Header {
  const found = parsed(text)
  if (!isObject(found) || found.format !== 'ellwand' || !isCount(found.version) || found.version < 1)
    throw new Refusal(phrase('refusal.archive.other'))
  if (found.version > VERSION) throw new Refusal(phrase('refusal.archive.newer'))
  if (!isHeader(found)) throw new Refusal(phrase('refusal.archive.damaged'))
  const { migrations } = found
  if (migrations.length > shipped.length || migrations.some((hash, i) => hash !== shipped[i]!.hash))
    throw new Refusal(phrase('refusal.archive.newer'))
  return found
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

type Found = Record<string, unknown>
const isObject = (value: unknown): value is Found =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isText = (value: unknown): value is string => typeof value === 'string'
const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) >= 0
const isHash = (value: unknown): boolean => isText(value) && /^[0-9a-f]{64}$/.test(value)
const areAll = (value: unknown, is: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(is)

const KEYS = ['files', 'format', 'madeAt', 'migrations', 'missing', 'sequences', 'version']

/** Whether there is everything that a header has, and nothing else. */
const isHeader = (found: Found): found is Header =>
  Object.keys(found).sort().join() === KEYS.join() &&
  isText(found.madeAt) &&
  areAll(found.migrations, isHash) &&
  areAll(found.missing, isText) &&
  areAll(found.files, isFile) &&
  isObject(found.sequences) &&
  Object.entries(found.sequences).every(([table, last]) => /^[a-z_]{1,64}$/.test(table) && isCount(last))

const isFile = (value: unknown): boolean =>
  isObject(value) &&
  isText(value.name) &&
  isCount(value.bytes) &&
  isHash(value.sha256) &&
  (!Object.hasOwn(value, 'rows') || isCount(value.rows)) &&
  Object.keys(value).length === (Object.hasOwn(value, 'rows') ? 4 : 3)
