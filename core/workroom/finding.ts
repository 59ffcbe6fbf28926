import { z } from 'zod'
import type { Client } from '../store/clients.ts'
import type { ClothRow } from '../store/cloths.ts'
import { garmentsOf, getCommission } from '../store/commissions.ts'
import type { NoteRow } from '../store/notes.ts'
import type { Db } from '../store/open.ts'
import { getQuote, quotedGarments } from '../store/quotes.ts'
import { indexed, search, unindexed } from '../store/search.ts'
import { say } from '../words/say.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { readerOf } from './settings.ts'

/** Looking for anything by its words. */
export const findingRequests = [
  request({
    name: 'search.find',
    kind: 'query',
    about:
      'Clients, cloths, quotes, commissions and notes that have all these words, or words that begin so.',
    input: z.strictObject({ text: inputs.line(200), most: z.int().min(1).max(100).default(20) }),
    run: ({ text, most }, { store: { db } }) => {
      const hits = search(db, text, most).map(({ kind, id, title, excerpt }) => ({
        kind,
        id,
        title,
        excerpt,
      }))
      return { hits: withGarments(hits, db) }
    },
  }),
]

/** Quotes and commissions with their garments and who wears them, for whoever pays need not be whom one thinks of. */
export function withGarments<Found extends { kind: string; id: string }>(found: readonly Found[], db: Db) {
  const idsOf = (kind: string) => found.flatMap((one) => (one.kind === kind ? [one.id] : []))
  const quoted = quotedGarments(db, idsOf('quote'))
  const made = Map.groupBy(garmentsOf(db, idsOf('commission')), ({ commissionId }) => commissionId)
  return found.map((one) => ({
    ...one,
    garments: (quoted.get(one.id) ?? made.get(one.id) ?? []).map(({ title, wearer }) => ({ title, wearer })),
  }))
}

/** Makes a client findable: name, where she lives, how she is reached, and what is noted of her. */
export function findableClient({ id, name, address, email, phone, note }: Client, { store }: Context): void {
  const words = [name, ...address, email, phone, note].join(' ')
  indexed(store.db, { kind: 'client', id, title: name, words })
}

/** Makes a cloth findable by its name, fibre and note. */
export function findableCloth({ id, name, fibre, note }: ClothRow, { store }: Context): void {
  indexed(store.db, { kind: 'cloth', id, title: name, words: [name, fibre, note].join(' ') })
}

/** Makes a quote findable by its number, whom it is for and what is on it. */
export function findableQuote(id: string, context: Context): void {
  const { number, snapshot } = getQuote(context.store.db, id)
  indexed(context.store.db, {
    ...{ kind: 'quote', id, title: `${number} ${snapshot.customer.name}` },
    words: wordsOf(number, snapshot, context),
  })
}

/** Makes a commission findable likewise, and by its note. */
export function findableCommission(id: string, context: Context): void {
  const row = getCommission(context.store.db, id)
  const { snapshot } = getQuote(context.store.db, row.quoteId)
  indexed(context.store.db, {
    ...{ kind: 'commission', id, title: `${row.number} ${snapshot.customer.name}` },
    words: `${wordsOf(row.number, snapshot, context)} ${row.note}`,
  })
}

/** A note is found by its words, and leads to its commission. */
export function findableNote({ id, commissionId, text, removedAt }: NoteRow, { store }: Context): void {
  if (removedAt !== null) unindexed(store.db, id)
  else {
    const { number } = getCommission(store.db, commissionId)
    indexed(store.db, { kind: 'note', id, title: `${number} ${commissionId}`, words: text })
  }
}

type Snapshot = ReturnType<typeof getQuote>['snapshot']
const wordsOf = (number: string, { customer, lines }: Snapshot, context: Context): string =>
  [
    number,
    customer.name,
    ...lines.flatMap(({ title, wearer, cloth }) => [say(title, readerOf(context)), wearer.name, cloth.name]),
  ].join(' ')
