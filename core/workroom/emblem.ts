import { z } from 'zod'
import type { Emblem } from '../quote/types.ts'
import { putAttachment, readAttachment } from '../store/attachments.ts'
import { findWorkroom, updateSettings } from '../store/workrooms.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { recorded } from './history.ts'
import { MARK_FILE } from './printing.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'

/** Largest file of a mark, bytes: a screen makes it smaller before it sends it. */
const MOST_BYTES = 1_500_000

/** The workroom's mark at the head of what goes to clients. */
export const emblemRequests = [
  request({
    name: 'mark.get',
    kind: 'query',
    about: 'The workroom’s mark as a data address, if it has one.',
    input: z.strictObject({}),
    run: (_, context) => {
      const { mark } = settingsOf(context).letterhead
      if (mark === undefined) return { address: null }
      const bytes = readAttachment(context.store.attachments, mark.hash, MARK_FILE)
      return { address: `data:image/png;base64,${Buffer.from(bytes).toString('base64')}` }
    },
  }),
  request({
    name: 'mark.set',
    kind: 'command',
    about: 'Sets the workroom’s mark, a PNG, or takes it off. Quotes already made keep theirs.',
    input: z.strictObject({
      revision: z.int().min(0).describe('of the settings'),
      data: z.string().max(3_000_000).nullable().describe('base64 of a PNG; null takes it off'),
    }),
    run: ({ revision, data }, context) => {
      const row = findWorkroom(context.store.db)
      if (row === undefined) throw new Refusal(phrase('refusal.store.stale'), 'revision')
      const settings = settingsOf(context)
      const { mark: _, ...letterhead } = settings.letterhead
      const mark = data === null ? {} : { mark: keptMark(readMark(data), context) }
      const saved = updateSettings(context.store.db, row, revision, {
        ...settings,
        letterhead: { ...letterhead, ...mark },
      })
      recorded(context, 'mark.set', 'workroom', saved.id, row.settings, saved.settings)
      return { revision: saved.revision }
    },
  }),
]

type Picture = { bytes: Uint8Array; width: number; height: number }

/** The file goes on disk before the settings name it. */
const keptMark = ({ bytes, ...size }: Picture, { store }: Pick<Context, 'store'>): Emblem => ({
  hash: putAttachment(store.attachments, bytes, MARK_FILE).hash,
  ...size,
})

/**
 * A PNG by its first bytes, and its size in pixels from its header (ISO/IEC 15948, 11.2.2).
 * @throws Refusal at `data` when it is none, or too large
 */
function readMark(data: string): Picture {
  const bytes = Buffer.from(data, 'base64')
  const isPng = bytes.length > 24 && bytes.readBigUInt64BE(0) === 0x89504e470d0a1a0an
  const [width, height] = isPng ? [bytes.readUInt32BE(16), bytes.readUInt32BE(20)] : [0, 0]
  if (width === 0 || height === 0 || bytes.length > MOST_BYTES)
    throw new Refusal(phrase('refusal.mark.png', { most: (MOST_BYTES / 1e6).toFixed(1) }), 'data')
  return { bytes, width, height }
}
