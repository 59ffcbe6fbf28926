import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { named } from './disk.ts'

/**
 * Files of the store: each lies under the hash of its bytes and is never altered. A file is safely on disk
 * before the row that names it is written; one that the disk has spoilt since is written anew.
 */
export function putAttachment(
  folder: string,
  bytes: Uint8Array,
  extension: string,
): { hash: string; path: string } {
  const hash = hashOf(bytes)
  const path = attachmentPath(folder, hash, extension)
  if (existsSync(path) && hashOf(readFileSync(path)) === hash) return { hash, path }
  mkdirSync(folder, { recursive: true })
  writeFileSync(`${path}.part`, bytes)
  named(`${path}.part`, path)
  return { hash, path }
}

const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

/** Where a file of this content lies, whether it is there or not. @param hash SHA-256 in hex */
export const attachmentPath = (folder: string, hash: string, extension: string): string =>
  join(folder, `${hash}.${extension}`)

/** @throws Refusal when the file is missing or not the one that was put there */
export function readAttachment(folder: string, hash: string, extension: string): Uint8Array {
  const path = attachmentPath(folder, hash, extension)
  if (!existsSync(path)) throw new Refusal(phrase('refusal.store.attachmentMissing', { path }))
  const bytes = readFileSync(path)
  if (hashOf(bytes) !== hash) {
    throw new Refusal(phrase('refusal.store.attachmentAltered', { path }))
  }
  return bytes
}

/** Takes a file away for good. */
export const removeAttachment = (folder: string, hash: string, extension: string): void =>
  rmSync(attachmentPath(folder, hash, extension), { force: true })
