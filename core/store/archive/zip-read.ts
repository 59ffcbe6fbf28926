import { closeSync, createReadStream, fstatSync, openSync, readSync } from 'node:fs'
import { pipeline } from 'node:stream'
import { crc32, createInflateRaw } from 'node:zlib'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { CENTRAL, DEFLATED, ENCRYPTED, END, LOCAL, STORED, type ZipEntry } from './zip-format.ts'

/** A file of an archive, and from where to where its bytes lie. */
export type Readable = ZipEntry & { from: number; to: number }

/** Deflate makes at most so many bytes of one (zlib, technical details). */
const MOST_INFLATED = 1032

const damaged = () => new Refusal(phrase('refusal.archive.damaged'))

/**
 * The files of an archive in the order in which it lists them. Nothing is unpacked yet, but it is made sure that no two
 * lie in the same bytes, that none has the name of another, and that none says it is more than its bytes can hold.
 *
 * @throws Refusal when it is no archive, or a damaged one
 */
export function zipEntries(path: string): Readable[] {
  const file = openSync(path, 'r')
  try {
    const { size } = fstatSync(file)
    const read = (at: number, bytes: number): Buffer => {
      if (at < 0 || at + bytes > size) throw damaged()
      const buffer = Buffer.alloc(bytes)
      if (readSync(file, buffer, 0, bytes, at) < bytes) throw damaged()
      return buffer
    }
    const end = endIn(
      read(
        Math.max(0, size - END.bytes - END.longestComment),
        Math.min(size, END.bytes + END.longestComment),
      ),
    )
    const entries = centralEntries(read(end.at, end.bytes), end.files)
    const placed = entries.map((entry) => placedAt(entry, read))
    refuseOverlaps(placed, end.at)
    if (new Set(placed.map(({ name }) => name.toLowerCase())).size < placed.length) throw damaged()
    return placed
  } finally {
    closeSync(file)
  }
}

/** The end of an archive, which says where its list is. */
function endIn(tail: Buffer): { files: number; bytes: number; at: number } {
  for (let i = tail.length - END.bytes; i >= 0; i--) {
    if (tail.readUInt32LE(i) !== END.signature) continue
    if (tail.readUInt16LE(i + 20) !== tail.length - i - END.bytes) continue
    const [disks, files] = [tail.readUInt32LE(i + 4), tail.readUInt16LE(i + 10)]
    if (disks !== 0 || files !== tail.readUInt16LE(i + 8) || files === 0xffff) throw damaged()
    return { files, bytes: tail.readUInt32LE(i + 12), at: tail.readUInt32LE(i + 16) }
  }
  throw new Refusal(phrase('refusal.archive.other'))
}

function centralEntries(list: Buffer, files: number): ZipEntry[] {
  const entries: ZipEntry[] = []
  let i = 0
  while (i < list.length) {
    if (i + CENTRAL.bytes > list.length || list.readUInt32LE(i) !== CENTRAL.signature) throw damaged()
    const flags = list.readUInt16LE(i + 8)
    const method = list.readUInt16LE(i + 10)
    const [length, extra, comment] = [28, 30, 32].map((at) => list.readUInt16LE(i + at)) as [
      number,
      number,
      number,
    ]
    if ((flags & ENCRYPTED) !== 0 || (method !== STORED && method !== DEFLATED)) throw damaged()
    const name = list.subarray(i + CENTRAL.bytes, i + CENTRAL.bytes + length).toString('utf8')
    const [crc, packed, bytes] = [16, 20, 24].map((at) => list.readUInt32LE(i + at)) as [
      number,
      number,
      number,
    ]
    if (method === STORED ? bytes !== packed : bytes > packed * MOST_INFLATED) throw damaged()
    entries.push({ name, method, crc, packed, bytes, at: list.readUInt32LE(i + 42) })
    i += CENTRAL.bytes + length + extra + comment
  }
  if (entries.length !== files || i !== list.length) throw damaged()
  return entries
}

/** An entry with the place of its bytes, behind its own head, which must name the same file. */
function placedAt(entry: ZipEntry, read: (at: number, bytes: number) => Buffer): Readable {
  const head = read(entry.at, LOCAL.bytes)
  const length = head.readUInt16LE(26)
  if (head.readUInt32LE(0) !== LOCAL.signature) throw damaged()
  if (read(entry.at + LOCAL.bytes, length).toString('utf8') !== entry.name) throw damaged()
  const from = entry.at + LOCAL.bytes + length + head.readUInt16LE(28)
  return { ...entry, from, to: from + entry.packed }
}

/** Files that share their bytes are how a small archive becomes a huge one. */
function refuseOverlaps(entries: readonly Readable[], list: number): void {
  const inOrder = entries.toSorted((a, b) => a.at - b.at)
  for (const [i, { to }] of inOrder.entries()) if (to > (inOrder[i + 1]?.at ?? list)) throw damaged()
}

/**
 * The bytes of one file, as they come.
 * @throws Refusal as soon as there are more than it said, or when they are not what was put in
 */
export async function* bytesOf(
  path: string,
  { method, from, to, bytes, crc }: Readable,
): AsyncGenerator<Buffer> {
  let [count, found] = [0, 0]
  if (to > from) {
    const packed = createReadStream(path, { start: from, end: to - 1 })
    // Errors of either come out of the loop below.
    const plain = method === STORED ? packed : pipeline(packed, createInflateRaw(), () => {})
    try {
      for await (const chunk of plain as AsyncIterable<Buffer>) {
        count += chunk.length
        if (count > bytes) throw damaged()
        found = crc32(chunk, found)
        yield chunk
      }
    } catch (error) {
      throw isOfZlib(error) ? damaged() : error
    }
  }
  if (count !== bytes || found !== crc) throw damaged()
}

/** What zlib says of bytes that it cannot read. */
const isOfZlib = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && /^Z_/.test(String(error.code))
