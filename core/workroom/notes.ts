import { z } from 'zod'
import { putAttachment, readAttachment } from '../store/attachments.ts'
import { getCommission } from '../store/commissions.ts'
import {
  getNote,
  getPicture,
  insertNote,
  insertPicture,
  markPicture,
  notesOf,
  picturesOf,
  updateNote,
} from '../store/notes.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { findableNote } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { today } from './settings.ts'

/** Largest picture that is kept, bytes: a photograph of a telephone is half of it. */
const MOST_BYTES = 12_000_000
/** And of its thumbnail, which a screen makes. */
const MOST_SMALL = 400_000

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })
const kind = z.enum(['note', 'message'])
const base64 = z.string().max(20_000_000)

/** Notes, messages and pictures of a commission. */
export const noteRequests = [
  request({
    name: 'notes.list',
    kind: 'query',
    about: 'The notes of a commission, and what was written to the client, oldest first; its pictures.',
    input: z.strictObject({ commissionId: inputs.id }),
    run: ({ commissionId }, { store }) => ({
      notes: notesOf(store.db, commissionId),
      pictures: picturesOf(store.db, commissionId),
    }),
  }),
  request({
    name: 'note.add',
    kind: 'command',
    about: 'Writes down a note on a commission, or what was said or written to the client.',
    input: z.strictObject({
      commissionId: inputs.id,
      kind: kind.default('note'),
      day: inputs.day.optional(),
      text: z.string().trim().min(1).max(4000),
    }),
    run: ({ commissionId, kind: of, day, text }, context) => {
      getCommission(context.store.db, commissionId, 'commissionId')
      const note = insertNote(context.store.db, {
        ...{ id: context.newId(), commissionId, kind: of, text, createdAt: context.now() },
        day: day ?? today(context),
      })
      findableNote(note, context)
      recorded(context, 'note.add', 'note', note.id, null, note)
      return { note }
    },
  }),
  request({
    name: 'note.change',
    kind: 'command',
    about: 'Puts a note right.',
    input: seen.extend({ text: z.string().trim().min(1).max(4000), day: inputs.day.optional() }),
    run: ({ id, revision, text, day }, context) => {
      const before = getNote(context.store.db, id)
      const note = updateNote(context.store.db, before, revision, {
        text,
        ...(day === undefined ? {} : { day }),
      })
      findableNote(note, context)
      recorded(context, 'note.change', 'note', id, before, note)
      return { note }
    },
  }),
  request({
    name: 'note.remove',
    kind: 'command',
    about: 'Takes a note off. It can be put back.',
    input: seen,
    run: ({ id, revision }, context) => {
      const before = getNote(context.store.db, id)
      const note = updateNote(context.store.db, before, revision, { removedAt: context.now() })
      findableNote(note, context)
      recorded(context, 'note.remove', 'note', id, before, note)
      return { note }
    },
  }),
  request({
    name: 'picture.add',
    kind: 'command',
    about: 'Keeps a reference picture of a commission, with a small one for lists.',
    input: z.strictObject({
      commissionId: inputs.id,
      name: inputs.named,
      data: base64.describe('the file, base64'),
      small: base64.optional().describe('a thumbnail of it, base64'),
    }),
    run: ({ commissionId, name, data, small }, context) => {
      const { db } = context.store
      getCommission(db, commissionId, 'commissionId')
      const file = readPicture(name, data, MOST_BYTES)
      const thumb = small === undefined ? undefined : readPicture(name, small, MOST_SMALL)
      const keep = (one: Picture) => putAttachment(context.store.attachments, one.bytes, one.kind).hash
      const picture = insertPicture(db, {
        ...{ id: context.newId(), commissionId, name, createdAt: context.now() },
        ...{ kind: file.kind, hash: keep(file), bytes: file.bytes.length },
        small: thumb === undefined ? null : `${keep(thumb)}.${thumb.kind}`,
      })
      recorded(context, 'picture.add', 'picture', picture.id, null, picture)
      return { picture }
    },
  }),
  request({
    name: 'picture.get',
    kind: 'query',
    about: 'A picture, or its thumbnail where there is one, as a data address.',
    input: z.strictObject({ id: inputs.id, small: z.boolean().default(false) }),
    run: ({ id, small }, { store }) => {
      const row = getPicture(store.db, id)
      const [hash, kind_] = small && row.small !== null ? row.small.split('.') : [row.hash, row.kind]
      const bytes = readAttachment(store.attachments, hash!, kind_!)
      return {
        name: row.name,
        address: `data:${MIME[kind_ as Kind]};base64,${Buffer.from(bytes).toString('base64')}`,
      }
    },
  }),
  request({
    name: 'picture.remove',
    kind: 'command',
    about: 'Takes a picture off. It can be put back.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const before = getPicture(context.store.db, id)
      const picture = markPicture(context.store.db, id, context.now())
      recorded(context, 'picture.remove', 'picture', id, before, picture)
      return { picture }
    },
  }),
]

type Kind = 'png' | 'jpg' | 'webp'
const MIME: Record<Kind, string> = { png: 'image/png', jpg: 'image/jpeg', webp: 'image/webp' }
type Picture = { bytes: Uint8Array; kind: Kind }

/**
 * What a file is by its first bytes, whatever it is called: PNG (ISO/IEC 15948), JPEG (ISO/IEC 10918), WebP (RFC 9649).
 * @throws Refusal at `data` when it is none of them, or too large
 */
function readPicture(name: string, base64Text: string, most: number): Picture {
  const bytes = Buffer.from(base64Text, 'base64')
  if (bytes.length > most) {
    const said = (size: number) => (size / 1e6).toFixed(1)
    throw new Refusal(
      phrase('refusal.picture.size', { name, size: said(bytes.length), most: said(most) }),
      'data',
    )
  }
  const starts = (at: number, ...codes: number[]) => codes.every((code, i) => bytes[at + i] === code)
  const found: Kind | undefined = starts(0, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)
    ? 'png'
    : starts(0, 0xff, 0xd8, 0xff)
      ? 'jpg'
      : starts(0, 0x52, 0x49, 0x46, 0x46) && starts(8, 0x57, 0x45, 0x42, 0x50)
        ? 'webp'
        : undefined
  if (found === undefined) throw new Refusal(phrase('refusal.picture.kind', { name }), 'data')
  return { bytes, kind: found }
}
