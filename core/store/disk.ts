import { closeSync, fsyncSync, openSync, renameSync, statfsSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'

/** Puts what was written to a file on the disk itself. */
export function synced(path: string): void {
  const file = openSync(path, 'r+')
  try {
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
}

/** Makes the names in a folder durable, where the system lets a folder be opened. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return
  const handle = openSync(folder, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** Gives a file that is wholly written its name: it is there as it should be, or not at all, whenever the power goes. */
export function named(part: string, path: string): void {
  synced(part)
  renameSync(part, path)
  syncFolder(dirname(path))
}

/** Writes a small file: afterwards it is there with this text, or as it was before. */
export function written(path: string, text: string): void {
  writeFileSync(`${path}.part`, text)
  named(`${path}.part`, path)
}

/** Bytes that stay free whatever is copied, so that the book itself can go on being written. */
const SPARE = 64_000_000

/** Bytes that may be written to the disk of a folder. */
export function roomIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder)
  return Math.max(0, bavail * bsize - SPARE)
}

/** @throws Refusal when there is no room for so many bytes */
export function refuseNoRoom(folder: string, bytes: number): void {
  const free = roomIn(folder)
  const megabytes = (n: number) => Math.ceil(n / 1_000_000)
  if (free < bytes)
    throw new Refusal(
      phrase('refusal.place.noRoom', { folder, needed: megabytes(bytes), free: megabytes(free) }),
      'folder',
    )
}
