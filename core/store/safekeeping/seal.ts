import { createCipheriv, createDecipheriv, randomBytes, scryptSync } from 'node:crypto'
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'

/*
 * A sealed copy, for taking off-site. All numbers are big-endian.
 *
 *   8   ELLWAND1
 *   16  salt
 *   8   random beginning of every nonce
 *   then parts: 4 bytes length of the sealed part, the part (AES-256-GCM), 16 bytes tag
 *
 * The key is scrypt(passphrase in NFKC, salt), N = 2^17, r = 8, p = 1 (RFC 7914; OWASP's advice of 2023, from memory). The
 * nonce of a part is the random beginning and its number; what is vouched for beside it says whether it is the last, so
 * that a file whose end is missing, or whose parts have changed places, is found out. What is sealed is a row of files:
 * 2 bytes length of the name, the name, 8 bytes length, the bytes.
 */
const MAGIC = Buffer.from('ELLWAND1')
const SCRYPT = { N: 2 ** 17, r: 8, p: 1, maxmem: 256 * 1024 * 1024 }
const PART = 1 << 20
const TAG = 16
/** Shorter passphrases are guessed (NIST SP 800-63B asks for eight, more where it is the only lock; common practice). */
const SHORTEST = 12

const keyOf = (passphrase: string, salt: Uint8Array): Buffer =>
  scryptSync(passphrase.normalize('NFKC'), salt, 32, SCRYPT)

const nonceOf = (begin: Uint8Array, part: number): Buffer => {
  const nonce = Buffer.alloc(12)
  nonce.set(begin)
  nonce.writeUInt32BE(part, 8)
  return nonce
}
const lastMark = (last: boolean): Buffer => Buffer.from([last ? 1 : 0])

/** A file to be sealed: where it lies, and the name it has inside. */
export type SealedFile = { name: string; path: string }

/** The files of a copy: the book under its own name, and everything in the folder of papers and pictures. */
export function filesToSeal(copy: string, attachments: string): SealedFile[] {
  const beside = existsSync(attachments) ? readdirSync(attachments).sort() : []
  return [
    { name: 'book.ellwand', path: copy },
    ...beside
      .filter((name) => !name.endsWith('.part'))
      .map((name) => ({ name: `attachments/${name}`, path: join(attachments, name) })),
  ]
}

/**
 * Writes files into one sealed file.
 * @param report the part that is done, from 0 to 1
 * @throws Refusal when the passphrase is too short
 */
export async function seal(
  files: readonly SealedFile[],
  target: string,
  passphrase: string,
  report: (done: number) => void = () => {},
): Promise<void> {
  if (passphrase.length < SHORTEST)
    throw new Refusal(phrase('refusal.seal.short', { shortest: SHORTEST }), 'passphrase')
  const [salt, begin] = [randomBytes(16), randomBytes(8)]
  const key = keyOf(passphrase, salt)
  const all = files.reduce((sum, { path }) => sum + statSync(path).size, 0)
  const out = openSync(`${target}.part`, 'w')
  let [part, done] = [0, 0]
  const write = (plain: Uint8Array, last: boolean) => {
    const cipher = createCipheriv('aes-256-gcm', key, nonceOf(begin, part++))
    cipher.setAAD(lastMark(last))
    const sealed = Buffer.concat([cipher.update(plain), cipher.final()])
    const length = Buffer.alloc(4)
    length.writeUInt32BE(sealed.length)
    writeSync(out, Buffer.concat([length, sealed, cipher.getAuthTag()]))
  }
  try {
    writeSync(out, Buffer.concat([MAGIC, salt, begin]))
    for (const { name, path } of files) {
      const size = statSync(path).size
      write(headOf(name, size), false)
      const file = openSync(path, 'r')
      try {
        const buffer = Buffer.alloc(PART)
        for (let at = 0; at < size; ) {
          const read = readSync(file, buffer, 0, PART, at)
          if (read === 0) throw new Error(`${path} has become shorter while it was sealed`)
          write(buffer.subarray(0, read), false)
          at += read
          done += read
          report(all === 0 ? 1 : done / all)
          // Requests get their turn between the parts.
          await setImmediate()
        }
      } finally {
        closeSync(file)
      }
    }
    write(Buffer.alloc(0), true)
    fsyncSync(out)
    closeSync(out)
    renameSync(`${target}.part`, target)
  } catch (error) {
    rmSync(`${target}.part`, { force: true })
    throw error
  }
}

function headOf(name: string, size: number): Buffer {
  const bytes = Buffer.from(name)
  const head = Buffer.alloc(10 + bytes.length)
  head.writeUInt16BE(bytes.length)
  bytes.copy(head, 2)
  head.writeBigUInt64BE(BigInt(size), 2 + bytes.length)
  return head
}

/** Names that a sealed file may hold: the book, and files named by their content. */
const ALLOWED = /^(?:book\.ellwand|attachments\/[0-9a-f]{64}(?:\.[a-z]+){1,2})$/

/**
 * Opens a sealed file into a folder that is empty or not there.
 * @throws Refusal when it is no such file, the passphrase is another, it is damaged or cut short, or the folder is in use
 */
export function unseal(sealed: string, folder: string, passphrase: string): string[] {
  if (existsSync(folder) && readdirSync(folder).length > 0)
    throw new Refusal(phrase('refusal.seal.folder', { folder }), 'folder')
  const inside = openSync(sealed, 'r')
  const draft = join(dirname(folder), `${basename(folder)}.part`)
  rmSync(draft, { recursive: true, force: true })
  mkdirSync(join(draft, 'attachments'), { recursive: true })
  try {
    const names = taken(inside, draft, passphrase)
    rmSync(folder, { recursive: true, force: true })
    renameSync(draft, folder)
    return names
  } catch (error) {
    rmSync(draft, { recursive: true, force: true })
    throw error
  } finally {
    closeSync(inside)
  }
}

function taken(inside: number, draft: string, passphrase: string): string[] {
  const read = (length: number): Buffer => {
    const bytes = Buffer.alloc(length)
    if (readSync(inside, bytes, 0, length, null) < length) throw new Refusal(phrase('refusal.seal.damaged'))
    return bytes
  }
  if (!read(MAGIC.length).equals(MAGIC)) throw new Refusal(phrase('refusal.seal.other'))
  const [salt, begin] = [read(16), read(8)]
  const key = keyOf(passphrase, salt)
  let part = 0
  const next = (): { plain: Buffer; last: boolean } => {
    const length = read(4).readUInt32BE()
    if (length > PART) throw new Refusal(phrase('refusal.seal.damaged'))
    const [body, tag] = [read(length), read(TAG)]
    const number = part++
    for (const last of [false, true]) {
      const cipher = createDecipheriv('aes-256-gcm', key, nonceOf(begin, number))
      cipher.setAAD(lastMark(last))
      cipher.setAuthTag(tag)
      try {
        return { plain: Buffer.concat([cipher.update(body), cipher.final()]), last }
      } catch {
        // Neither, and the passphrase is wrong or the part is not what was sealed.
      }
    }
    throw new Refusal(
      phrase(number === 0 ? 'refusal.seal.passphrase' : 'refusal.seal.damaged'),
      number === 0 ? 'passphrase' : undefined,
    )
  }
  const names: string[] = []
  for (let head = next(); !head.last; head = next()) {
    const length = head.plain.readUInt16BE()
    const name = head.plain.subarray(2, 2 + length).toString()
    if (!ALLOWED.test(name) || names.includes(name)) throw new Refusal(phrase('refusal.seal.damaged'))
    const size = Number(head.plain.readBigUInt64BE(2 + length))
    const file = openSync(join(draft, name), 'wx')
    try {
      for (let at = 0; at < size; ) {
        const { plain, last } = next()
        if (last || plain.length === 0 || at + plain.length > size)
          throw new Refusal(phrase('refusal.seal.damaged'))
        writeSync(file, plain)
        at += plain.length
      }
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    names.push(name)
  }
  if (readFileSync(inside).length > 0) throw new Refusal(phrase('refusal.seal.damaged'))
  return names
}
