import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { filesToSeal, seal, unseal } from '../../core/store/safekeeping/seal.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { chance } from '../support/chance.ts'
import { scratch } from '../support/store.ts'

const PASSPHRASE = 'madder, woad and weld'
const HASH = 'a'.repeat(64)

/** A book of two and a half parts, with two files beside it. */
async function sealed(passphrase = PASSPHRASE) {
  const folder = scratch()
  const draw = chance(5)
  const bytes = Buffer.from(Uint8Array.from({ length: 2_600_000 }, () => Math.floor(draw.uniform() * 256)))
  const book = join(folder, 'copy.ellwand')
  writeFileSync(book, bytes)
  const attachments = join(folder, 'attachments')
  mkdirSync(attachments)
  writeFileSync(join(attachments, `${HASH}.pdf`), 'a quote')
  writeFileSync(join(attachments, `${HASH}.mark.png`), '')
  const file = join(folder, 'off-site.sealed')
  const told: number[] = []
  await seal(filesToSeal(book, attachments), file, passphrase, (done) => told.push(done))
  return { folder, bytes, file, told, into: join(folder, 'opened') }
}

const codeOf = (work: () => unknown): string => {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal) return error.phrase.code
    throw error
  }
  return 'granted'
}

describe('a sealed copy', async () => {
  test('opens again byte by byte, and tells how far it is', async () => {
    const { bytes, file, told, into } = await sealed()
    expect(unseal(file, into, PASSPHRASE)).toEqual([
      'book.ellwand',
      `attachments/${HASH}.mark.png`,
      `attachments/${HASH}.pdf`,
    ])
    expect(readFileSync(join(into, 'book.ellwand')).equals(bytes)).toBe(true)
    expect(readFileSync(join(into, 'attachments', `${HASH}.pdf`), 'utf8')).toBe('a quote')
    expect(told.at(-1)).toBe(1)
  })

  test('shows nothing of what is in it, and is another file each time', async () => {
    const [one, other] = [await sealed(), await sealed()]
    expect(readFileSync(one.file).includes('a quote')).toBe(false)
    expect(readFileSync(one.file).equals(readFileSync(other.file))).toBe(false)
  })

  test('is not opened by another passphrase, nor made with a short one', async () => {
    const { file, into } = await sealed()
    expect(codeOf(() => unseal(file, into, `${PASSPHRASE} `))).toBe('refusal.seal.passphrase')
    await expect(sealed('too short')).rejects.toMatchObject({ phrase: { code: 'refusal.seal.short' } })
    // However its accents are typed.
    const typed = await sealed('Łucja’s crème brûlée')
    unseal(typed.file, typed.into, 'Łucja’s crème brûlée'.normalize('NFD'))
  })

  test('is found out when a byte is changed, its end is missing, parts change places, or something follows', async () => {
    const { folder, file } = await sealed()
    const whole = readFileSync(file)
    const parts: Buffer[] = []
    for (let at = 32; at < whole.length; ) {
      const length = 4 + whole.readUInt32BE(at) + 16
      parts.push(whole.subarray(at, at + length))
      at += length
    }
    expect(parts.length).toBeGreaterThan(6)
    const flipped = (at: number) => {
      const copy = Buffer.from(whole)
      copy[at] = copy[at]! ^ 1
      return copy
    }
    const head = whole.subarray(0, 32)
    const swapped = [...parts]
    ;[swapped[1], swapped[2]] = [parts[2]!, parts[1]!]
    const damaged = [
      ...[40, 1_000_000, whole.length - 5].map(flipped),
      ...[1, 2].map((missing) => Buffer.concat([head, ...parts.slice(0, -missing)])),
      whole.subarray(0, whole.length - 7),
      Buffer.concat([head, ...swapped]),
      Buffer.concat([whole, Buffer.from('more')]),
    ]
    for (const [i, bytes] of damaged.entries()) {
      const path = join(folder, `damaged-${i}`)
      writeFileSync(path, bytes)
      const code = codeOf(() => unseal(path, join(folder, `opened-${i}`), PASSPHRASE))
      expect(['refusal.seal.damaged', 'refusal.seal.passphrase'], `damage ${i}: ${code}`).toContain(code)
    }
    // Nothing half opened is left.
    expect(readdirSync(folder).filter((name) => name.startsWith('opened'))).toEqual([])
  })

  test('never overwrites a folder that holds something, and is told from other files', async () => {
    const { folder, file } = await sealed()
    expect(codeOf(() => unseal(file, folder, PASSPHRASE))).toBe('refusal.seal.folder')
    const other = join(folder, 'other')
    writeFileSync(other, 'a letter and nothing else, but longer than the head of a sealed copy')
    expect(codeOf(() => unseal(other, join(folder, 'new'), PASSPHRASE))).toBe('refusal.seal.other')
  })
})
