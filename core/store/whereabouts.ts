import { existsSync, readFileSync, rmSync } from 'node:fs'
import { basename, dirname, isAbsolute, join } from 'node:path'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { written } from './disk.ts'

/** Beside the place where a store is looked for: in which folder it lies since it was put somewhere else. */
const pointerOf = (home: string): string => `${home}.moved-to`

/**
 * The file of a store that may have been put somewhere else. A disk that is not plugged in or a share that is away must
 * not look like a new, empty workroom.
 *
 * @param home where the store is looked for
 * @throws Refusal when it was put where it is not now
 */
export function whereNow(home: string): string {
  const folder = folderOf(home)
  if (folder === dirname(home)) return home
  const path = join(folder, basename(home))
  if (!existsSync(path)) throw new Refusal(phrase('refusal.place.gone', { folder, pointer: pointerOf(home) }))
  return path
}

/**
 * The folder in which a store lies that is looked for at `home`.
 *
 * @throws Refusal when what is written of it cannot be read
 */
export function folderOf(home: string): string {
  const pointer = pointerOf(home)
  if (!existsSync(pointer)) return dirname(home)
  const folder = readFileSync(pointer, 'utf8').trim()
  if (!isAbsolute(folder)) throw new Refusal(phrase('refusal.place.unreadable', { pointer }))
  return folder
}

/** Remembers, durably, that a store which is looked for at `home` lies in a folder from now on. */
export function pointTo(home: string, folder: string): void {
  if (folder === dirname(home)) rmSync(pointerOf(home), { force: true })
  else written(pointerOf(home), `${folder}\n`)
}
