import { createHash } from 'node:crypto'
import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { crc32, createDeflateRaw } from 'node:zlib'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import {
  CENTRAL,
  DEFLATED,
  END,
  FIRST_DAY,
  LOCAL,
  MOST_BYTES,
  MOST_FILES,
  NO_TIME,
  UTF8,
  type ZipEntry,
} from './zip-format.ts'

/** The bytes of one file, a part at a time. */
export type Chunks = Iterable<Uint8Array> | AsyncIterable<Uint8Array>

/** An archive that is being written. */
export type ZipWriter = {
  /** Adds a file; answers with its length and the SHA-256 of its bytes, in hex. */
  add(name: string, chunks: Chunks): Promise<{ bytes: number; sha256: string }>
  /** Writes the list of files and waits until the disk has all of it. */
  end(): void
  /** Lets go of the file, ended or not. */
  close(): void
}

/**
 * Begins an archive. Files are deflated as they come, so that none need be held whole.
 * @throws Refusal, from `add` and `end`, when it is more than the format holds
 */
export function writeZip(path: string): ZipWriter {
  const file = openSync(path, 'w')
  const entries: ZipEntry[] = []
  let at = 0
  const write = (bytes: Uint8Array) => {
    if (at + bytes.length > MOST_BYTES) throw new Refusal(phrase('refusal.archive.tooLarge'))
    for (let done = 0; done < bytes.length; )
      done += writeSync(file, bytes, done, bytes.length - done, at + done)
    at += bytes.length
  }
  return {
    add: async (name, chunks) => {
      if (entries.length === MOST_FILES) throw new Refusal(phrase('refusal.archive.tooLarge'))
      const entry: ZipEntry = { name, method: DEFLATED, crc: 0, bytes: 0, packed: 0, at }
      const hash = createHash('sha256')
      async function* counted() {
        for await (const chunk of chunks) {
          entry.bytes += chunk.length
          if (entry.bytes > MOST_BYTES) throw new Refusal(phrase('refusal.archive.tooLarge'))
          entry.crc = crc32(chunk, entry.crc)
          hash.update(chunk)
          yield chunk
        }
      }
      write(localHead(entry))
      const from = at
      await pipeline(Readable.from(counted()), createDeflateRaw(), async (packed: AsyncIterable<Buffer>) => {
        for await (const chunk of packed) write(chunk)
      })
      entry.packed = at - from
      // The head stands before the file, and only now it is known what it says.
      writeSync(file, localHead(entry), 0, LOCAL.bytes, entry.at)
      entries.push(entry)
      return { bytes: entry.bytes, sha256: hash.digest('hex') }
    },
    end: () => {
      const from = at
      for (const entry of entries) write(centralHead(entry))
      write(endOf(entries.length, from, at - from))
      fsyncSync(file)
    },
    close: () => closeSync(file),
  }
}

/** What both heads of a file have in common: from the version needed to the lengths of the name and of what comes after. */
function shared({ name, method, crc, bytes, packed }: ZipEntry): Buffer {
  const head = Buffer.alloc(26)
  head.writeUInt16LE(20, 0)
  head.writeUInt16LE(UTF8, 2)
  head.writeUInt16LE(method, 4)
  head.writeUInt16LE(NO_TIME, 6)
  head.writeUInt16LE(FIRST_DAY, 8)
  head.writeUInt32LE(crc, 10)
  head.writeUInt32LE(packed, 14)
  head.writeUInt32LE(bytes, 18)
  head.writeUInt16LE(Buffer.byteLength(name), 22)
  return head
}

const number32 = (value: number): Buffer => {
  const bytes = Buffer.alloc(4)
  bytes.writeUInt32LE(value)
  return bytes
}

const localHead = (entry: ZipEntry): Buffer =>
  Buffer.concat([number32(LOCAL.signature), shared(entry), Buffer.from(entry.name)])

function centralHead(entry: ZipEntry): Buffer {
  const madeBy = Buffer.from([20, 0])
  const rest = Buffer.alloc(CENTRAL.bytes - 32)
  rest.writeUInt32LE(entry.at, rest.length - 4)
  return Buffer.concat([number32(CENTRAL.signature), madeBy, shared(entry), rest, Buffer.from(entry.name)])
}

function endOf(files: number, at: number, bytes: number): Buffer {
  const end = Buffer.alloc(END.bytes)
  end.writeUInt32LE(END.signature, 0)
  end.writeUInt16LE(files, 8)
  end.writeUInt16LE(files, 10)
  end.writeUInt32LE(bytes, 12)
  end.writeUInt32LE(at, 16)
  return end
}
