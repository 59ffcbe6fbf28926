import { z } from 'zod'
import { binSince } from '../store/bin.ts'
import { getFitting, updateFitting } from '../store/fittings.ts'
import { getNote, getPicture, markPicture, updateNote } from '../store/notes.ts'
import { getTime, updateTime } from '../store/times.ts'
import { accountsAnew } from './deliveries.ts'
import { findableNote } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'

/** Days for which what was taken off can be put back on its list. */
const KEPT_DAYS = 30
const KINDS = ['note', 'picture', 'fitting', 'timeEntry'] as const

export const binRequests = [
  request({
    name: 'bin.list',
    kind: 'query',
    about: 'What was taken off in the last thirty days, the latest first: it can be put back.',
    input: z.strictObject({}),
    run: (_, { store, now }) => {
      const since = new Date(Date.parse(now()) - KEPT_DAYS * 86_400_000).toISOString()
      return { taken: binSince(store.db, since) }
    },
  }),
  request({
    name: 'bin.putBack',
    kind: 'command',
    about: 'Puts back a note, picture, fitting or logged time that was taken off.',
    input: z.strictObject({ kind: z.enum(KINDS), id: inputs.id }),
    run: ({ kind, id }, context) => {
      const before = PUT_BACK[kind](id, context)
      recorded(context, 'bin.putBack', kind, id, before, { removedAt: null })
      return { kind, id }
    },
  }),
]

const BACK = { removedAt: null }
const PUT_BACK: Record<(typeof KINDS)[number], (id: string, context: Context) => unknown> = {
  note: (id, context) => {
    const before = getNote(context.store.db, id)
    findableNote(updateNote(context.store.db, before, before.revision, BACK), context)
    return before
  },
  picture: (id, { store }) => {
    const before = getPicture(store.db, id)
    markPicture(store.db, id, null)
    return before
  },
  fitting: (id, { store }) => {
    const before = getFitting(store.db, id)
    updateFitting(store.db, before, before.revision, BACK)
    return before
  },
  timeEntry: (id, context) => {
    const before = getTime(context.store.db, id)
    updateTime(context.store.db, before, before.revision, BACK)
    accountsAnew(before.commissionId, context)
    return before
  },
}
