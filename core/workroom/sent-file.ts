import { closeSync, existsSync, openSync, statSync, writeSync } from 'node:fs'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'

/** The most that a file may come to which a page sends, bytes. */
export const MOST_SENT = 0xffffffff

/** What a page has sent so far of a file, because it cannot say where the file lies. */
export const sentFile = (store: string): string => `${store}.sent.part`

/**
 * Writes a part where it belongs; answers how many bytes there are now.
 *
 * @throws Refusal when a part is missing before it, or it is too much
 */
export function received(path: string, at: number, bytes: Uint8Array): number {
  const here = existsSync(path) ? statSync(path).size : 0
  if (at !== 0 && at !== here) throw new Refusal(phrase('refusal.archive.order'), 'at')
  if (at + bytes.length > MOST_SENT) throw new Refusal(phrase('refusal.archive.tooLarge'))
  const file = openSync(path, at === 0 ? 'w' : 'a')
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done)
  } finally {
    closeSync(file)
  }
  return at + bytes.length
}
