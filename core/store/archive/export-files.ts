import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import type { Database } from 'better-sqlite3'

/** Whether a file of the attachments is still the one that was put there. */
export async function isWhole(path: string, name: string): Promise<boolean> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer)
  return name.startsWith(`${hash.digest('hex')}.`)
}

/** Anything in the words of a row that looks like the hash of a file. */
const HASH = /(?<![0-9a-f])[0-9a-f]{64}(?![0-9a-f])/g

/** Hands rows on and notes every hash that is said in them, so that no paper is left behind whatever names it. */
export function* noting(chunks: Iterable<Buffer>, hashes: Set<string>): Generator<Buffer> {
  for (const chunk of chunks) {
    for (const [hash] of chunk.toString('latin1').matchAll(HASH)) hashes.add(hash)
    yield chunk
  }
}

/** The files that rows of papers and pictures cannot do without. */
export const namedFiles = (db: Database): string[] =>
  db
    .prepare(
      `SELECT hash || CASE kind WHEN 'patternDrawing' THEN '.svg' ELSE '.pdf' END AS name FROM document
      UNION SELECT hash || '.pdf' FROM sheet
      UNION SELECT hash || '.' || kind FROM picture
      UNION SELECT small FROM picture WHERE small IS NOT NULL ORDER BY name`,
    )
    .pluck()
    .all() as string[]
