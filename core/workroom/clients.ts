import { z } from 'zod'
import { removeAttachment } from '../store/attachments.ts'
import { changesOf } from '../store/changes.ts'
import { getClient, insertClient, listClients, updateClient } from '../store/clients.ts'
import { commissionOfQuote, deliveredTo, openCommissions } from '../store/commissions.ts'
import { isNamed } from '../store/documents.ts'
import { forgetClient, quotesWith } from '../store/forget.ts'
import { lastMeasured, measurementSetsOf, retiredSetsOf } from '../store/measurement-sets.ts'
import type { Db } from '../store/open.ts'
import { getQuote, quotesFor } from '../store/quotes.ts'
import { byName } from '../words/by-name.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { findableClient } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { settingsOf } from './settings.ts'

/** A client's sets, oldest first, each with whether it was put aside. */
function setsOf(db: Db, id: string) {
  const retired = retiredSetsOf(db, id)
  return measurementSetsOf(db, id).map((set) => ({ ...set, retired: retired.has(set.id) }))
}

const text = inputs.line(2000).default('')
const fields = z.strictObject({
  name: inputs.named,
  address: z.array(inputs.line(200)).max(8).default([]),
  email: inputs.line(200).default(''),
  phone: inputs.line(60).default(''),
  note: text,
  birthDay: inputs.day.nullable().default(null).describe('for children: decides on cords and fit'),
})

/** The book of clients. */
export const clientRequests = [
  request({
    name: 'client.add',
    kind: 'command',
    about: 'Enters a person or house in the book: customer, wearer or both.',
    input: fields,
    run: (given, context) => {
      const client = insertClient(context.store.db, {
        ...given,
        id: context.newId(),
        createdAt: context.now(),
      })
      findableClient(client, context)
      recorded(context, 'client.add', 'client', client.id, null, client)
      return { client }
    },
  }),
  request({
    name: 'client.change',
    kind: 'command',
    about: 'Changes what the book says of a client. Quotes already made keep it as it was.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision, client: fields }),
    run: ({ id, revision, client: given }, context) => {
      const before = getClient(context.store.db, id)
      const client = updateClient(context.store.db, id, revision, given)
      findableClient(client, context)
      recorded(context, 'client.change', 'client', id, before, client)
      return { client }
    },
  }),
  request({
    name: 'client.get',
    kind: 'query',
    about: 'One client, with her measurement sets, oldest first.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store }) => ({
      client: getClient(store.db, id),
      measurementSets: setsOf(store.db, id),
    }),
  }),
  request({
    name: 'client.export',
    kind: 'query',
    about: 'All that the store has of a client, as data she can be given.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store: { db } }) => {
      const sets = setsOf(db, id)
      return {
        client: getClient(db, id),
        measurementSets: sets,
        quotes: quotesWith(db, id).map((one) => getQuote(db, one.id)),
        history: [id, ...sets.map((set) => set.id)].flatMap((one) => changesOf(db, one)),
      }
    },
  }),
  request({
    name: 'client.forget',
    kind: 'command',
    about:
      'Takes a client out of the book for good, with her measures and their history. Quotes stay, as books must be kept, but not the body behind them.',
    input: z.strictObject({ id: inputs.id, name: z.string().describe('her name, typed again to be sure') }),
    run: ({ id, name }, context) => {
      const { store, now } = context
      const { name: known } = getClient(store.db, id)
      if (name.trim() !== known)
        throw new Refusal(phrase('refusal.client.otherName', { name: known }), 'name')
      const { files, kept } = forgetClient(store.db, id, now())
      for (const { hash, kind } of files)
        if (!isNamed(store.db, hash)) removeAttachment(store.attachments, hash, kind)
      // That someone was forgotten is noted, not who.
      recorded(context, 'client.forget', 'forgotten', id, null, { quotesKept: kept })
      return { files: files.length, quotesKept: kept }
    },
  }),
  request({
    name: 'clients.list',
    kind: 'query',
    about:
      'Everyone in the book, by name, with the day she was measured last, how much of her work is open, and what she had made.',
    input: z.strictObject({}),
    run: (_, context) => {
      const { db } = context.store
      const measured = lastMeasured(db)
      const open = Map.groupBy(openCommissions(db), ({ customerId }) => customerId)
      const had = deliveredTo(db)
      return {
        clients: byName(listClients(db), settingsOf(context).letterhead.locale).map((row) => ({
          ...row,
          measured: measured.get(row.id) ?? null,
          open: open.get(row.id)?.length ?? 0,
          had: had.get(row.id) ?? null,
        })),
      }
    },
  }),
  request({
    name: 'client.made',
    kind: 'query',
    about:
      'The quotes that a client pays for or is sewn for in, and what was made of them, the newest first.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, { store: { db } }) => ({
      quotes: quotesFor(db, id).map(({ short, ...row }) => {
        const { id: commissionId, number, state, deliveredDay } = commissionOfQuote(db, row.id) ?? {}
        return {
          ...row,
          ...{ total: short.total, garments: short.garments, customer: short.customer },
          commission:
            commissionId === undefined
              ? null
              : { id: commissionId, number: number!, state: state!, deliveredDay: deliveredDay ?? null },
        }
      }),
    }),
  }),
]
