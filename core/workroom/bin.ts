import { z } from 'zod'
import { binSince } from '../store/bin.ts'
import { clientNames } from '../store/clients.ts'
import { commissionsById } from '../store/commissions.ts'
import { getFitting, updateFitting } from '../store/fittings.ts'
import { getNote, getPicture, markPicture, updateNote } from '../store/notes.ts'
import { getTime, updateTime } from '../store/times.ts'
import { addDays, dayAt } from '../words/dates.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { accountsAnew } from './deliveries.ts'
import { findableNote } from './finding.ts'
import { stepsFromFitting } from './fitting-steps.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

/** Days for which what was taken off can be put back on its list. */
const KEPT_DAYS = 30
const KINDS = ['note', 'picture', 'fitting', 'timeEntry'] as const

/** What was taken off, as long as it can be put back. */
export const binRequests = [
  request({
    name: 'bin.list',
    kind: 'query',
    about:
      'What was taken off in the last thirty days, the latest first, and until which day it stands here to be put back.',
    input: z.strictObject({}),
    run: (_, context) => ({ taken: takenOff(context), days: KEPT_DAYS }),
  }),
  request({
    name: 'bin.putBack',
    kind: 'command',
    about: 'Puts back a note, picture, fitting or logged time that was taken off.',
    input: z.strictObject({ kind: z.enum(KINDS), id: inputs.id }),
    run: ({ kind, id }, context) => {
      refuseThere(kind, id, context)
      const before = PUT_BACK[kind](id, context)
      recorded(context, 'bin.putBack', kind, id, before, { removedAt: null })
      const { db } = context.store
      return { kind, id, revision: kind === 'picture' ? null : GET[kind](db, id).revision }
    },
  }),
]

/** The beginning of a note, by which she knows it again. */
const short = (text: string) => (text.length > 120 ? `${text.slice(0, 119)}…` : text)

/** What was taken off and is not back, with the commission it belongs to. */
function takenOff(context: Context) {
  const { db } = context.store
  const { timeZone } = settingsOf(context)
  // A day more than asked for, so that none is missed whatever its hour; what is too old is left out by its day.
  const since = new Date(Date.parse(context.now()) - (KEPT_DAYS + 1) * 86_400_000).toISOString()
  const now = today(context)
  const { notes, pictures, fittings, times } = binSince(db, since)
  const all = [
    ...notes.map((row) => ({
      kind: 'note' as const,
      row,
      what: phrase('bin.note', { text: short(row.text) }),
    })),
    ...pictures.map((row) => ({
      kind: 'picture' as const,
      row,
      what: phrase('bin.picture', { name: row.name }),
    })),
    ...fittings.map((row) => ({
      ...{ kind: 'fitting' as const, row },
      what: phrase('bin.fitting', { day: { date: row.day } }),
    })),
    ...times.map((row) => ({
      ...{ kind: 'timeEntry' as const, row },
      what: phrase('bin.time', { time: { minutes: row.minutes }, day: { date: row.day } }),
    })),
  ]
  const commissions = commissionsById(
    db,
    all.map(({ row }) => row.commissionId),
  )
  const names = clientNames(
    db,
    [...commissions.values()].map(({ customerId }) => customerId),
  )
  return all
    .map(({ kind, row: { id, commissionId, removedAt }, what }) => {
      const { number, customerId } = commissions.get(commissionId)!
      const day = dayAt(removedAt, timeZone)
      return {
        ...{ kind, id, what, commissionId, number, customer: names.get(customerId) ?? '' },
        ...{ removedAt, day, until: addDays(day, KEPT_DAYS) },
      }
    })
    .filter(({ until }) => until >= now)
    .sort((a, b) => (a.removedAt < b.removedAt ? 1 : -1))
}

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
  fitting: (id, context) => {
    const before = getFitting(context.store.db, id)
    // The work that it led to comes back with it.
    stepsFromFitting(updateFitting(context.store.db, before, before.revision, BACK), context)
    return before
  },
  timeEntry: (id, context) => {
    const before = getTime(context.store.db, id)
    updateTime(context.store.db, before, before.revision, BACK)
    accountsAnew(before.commissionId, context)
    return before
  },
}

const GET = { note: getNote, picture: getPicture, fitting: getFitting, timeEntry: getTime }

/** @throws Refusal when it was never taken off, or is back already */
function refuseThere(kind: (typeof KINDS)[number], id: string, { store: { db } }: Context): void {
  if (GET[kind](db, id).removedAt === null) throw new Refusal(phrase('refusal.bin.there'), 'id')
}
