import { closeSync, openSync, readSync } from 'node:fs'

/** A file of an archive: how long it is, and whether it lies beside the archive as a file of its own. */
export type Archived = { path: string; size: number; unpacked: boolean; bytes: () => Buffer }

type Entry = { files?: Record<string, Entry>; size?: number; offset?: string; unpacked?: boolean }

/**
 * The files of an asar archive: a header of JSON after four lengths, and the files one after the other.
 * Its own reader, so that what is looked for is not found by the code that packed it.
 */
export function filesOfArchive(archive: string): Archived[] {
  const read = (from: number, length: number): Buffer => {
    const file = openSync(archive, 'r')
    try {
      const bytes = Buffer.alloc(length)
      if (readSync(file, bytes, 0, length, from) !== length) throw new Error(`${archive} ends too early`)
      return bytes
    } finally {
      closeSync(file)
    }
  }
  const lengths = read(0, 16)
  const files = 8 + lengths.readUInt32LE(4)
  const header = JSON.parse(read(16, lengths.readUInt32LE(12)).toString('utf8')) as Entry
  const found: Archived[] = []
  const walk = (entry: Entry, path: string): void => {
    for (const [name, inner] of Object.entries(entry.files ?? {})) walk(inner, `${path}/${name}`)
    if (entry.files !== undefined) return
    const size = entry.size ?? 0
    found.push({
      path: path.slice(1),
      size,
      unpacked: entry.unpacked === true,
      bytes: () => read(files + Number(entry.offset), size),
    })
  }
  walk(header, '')
  return found
}
