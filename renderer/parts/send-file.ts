import type { Workroom } from '../bridge/ask.ts'
import { base64Of } from './base64.ts'

/** Bytes that are sent at once: a million letters of base64, which any shell takes. */
const AT_ONCE = 786_432

/**
 * Sends a file that the maker chose to the workroom, part by part.
 *
 * @param hear told the part that is sent, from 0 to 1
 */
export async function sendFile(workroom: Workroom, file: File, hear: (done: number) => void): Promise<void> {
  for (let at = 0; at < file.size; at += AT_ONCE) {
    hear(at / file.size)
    await workroom.ask('file.send', { at, data: await base64Of(file.slice(at, at + AT_ONCE)) })
  }
}
