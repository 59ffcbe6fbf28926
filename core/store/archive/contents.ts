import { createHash } from 'node:crypto'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { Migration } from '../migrations.ts'
import { HEADER, type Header, type Named, namedIn, readHeader } from './header.ts'
import { bytesOf, type Readable, zipEntries } from './zip-read.ts'

/** A file of an archive that was looked over: what it is, and what the header says of it. */
export type ArchiveFile = { is: Named; entry: Readable; told: Header['files'][number] }
export type Contents = { path: string; header: Header; files: ArchiveFile[] }

/** What is thrown for an archive that is not what its header says it is. */
export const damaged = () => new Refusal(phrase('refusal.archive.damaged'))

/** A header longer than this is none that any planner wrote, bytes. */
const LONGEST_HEADER = 1 << 26

/**
 * Looks an archive over before anything of it is taken: its names, and that it holds the very files that its header lists.
 * @throws Refusal when it is no archive, damaged, or a newer planner's, or has a file that no archive has
 */
export async function contentsOf(path: string, shipped: readonly Migration[]): Promise<Contents> {
  const entries = zipEntries(path)
  const named = new Map(entries.map((entry) => [entry.name, { entry, is: namedIn(entry.name) }]))
  const head = named.get(HEADER)?.entry
  if (head === undefined) throw new Refusal(phrase('refusal.archive.other'))
  if (head.bytes > LONGEST_HEADER) throw damaged()
  const header = readHeader((await wholeOf(path, head)).toString('utf8'), shipped)
  const files = header.files.map((told): ArchiveFile => {
    const found = named.get(told.name)
    if (found === undefined || found.is.is === 'header' || found.entry.bytes !== told.bytes) throw damaged()
    return { ...found, told }
  })
  if (files.length !== entries.length - 1 || new Set(files.map(({ told }) => told.name)).size < files.length)
    throw damaged()
  return { path, header, files }
}

/** A file as it comes, which must turn out to be the one that the header tells of. */
export async function* checked(path: string, { entry, told }: ArchiveFile): AsyncGenerator<Buffer> {
  const hash = createHash('sha256')
  for await (const chunk of bytesOf(path, entry)) {
    hash.update(chunk)
    yield chunk
  }
  if (hash.digest('hex') !== told.sha256) throw damaged()
}

async function wholeOf(path: string, entry: Readable): Promise<Buffer> {
  const chunks: Buffer[] = []
  for await (const chunk of bytesOf(path, entry)) chunks.push(chunk)
  return Buffer.concat(chunks)
}
