import { z } from 'zod'
import { latestChanges } from '../store/changes.ts'
import { clientNames } from '../store/clients.ts'
import { commissionsById, commissionsOfSteps } from '../store/commissions.ts'
import { clientsOfSets } from '../store/measurement-sets.ts'
import { commissionsOf } from '../store/of-commissions.ts'
import type { Db } from '../store/open.ts'
import { quotesInShort } from '../store/quotes.ts'
import { commissionsOfTimes } from '../store/times.ts'
import { withGarments } from './finding.ts'
import { request } from './request.ts'

/** So many entries of the history are looked at for each kind: one evening ticks many steps of one garment. */
const LOOKED_AT = 60

/** What was worked on last. */
export const recentRequests = [
  request({
    name: 'recent.list',
    kind: 'query',
    about: 'The clients, quotes and commissions in which something was changed last, the latest first.',
    input: z.strictObject({ most: z.int().min(1).max(30).default(8) }),
    run: ({ most }, { store: { db } }) => ({
      recent: withGarments(named(touched(db).slice(0, most), db), db),
    }),
  }),
]

type Kind = 'client' | 'quote' | 'commission'
type Place = { kind: Kind; id: string }

/** By what the history calls a thing: where the maker goes to see it. */
const PLACES: Record<string, { kind: Kind; of: (db: Db, ids: string[]) => Map<string, string> }> = {
  client: { kind: 'client', of: itself },
  measurementSet: { kind: 'client', of: clientsOfSets },
  quote: { kind: 'quote', of: itself },
  commission: { kind: 'commission', of: itself },
  step: { kind: 'commission', of: commissionsOfSteps },
  timeEntry: { kind: 'commission', of: commissionsOfTimes },
  note: inCommission('note'),
  picture: inCommission('picture'),
  fitting: inCommission('fitting'),
  payment: inCommission('payment'),
  invoice: inCommission('invoice'),
  garment: inCommission('garment'),
}

function inCommission(kind: Parameters<typeof commissionsOf>[1]) {
  return { kind: 'commission' as const, of: (db: Db, ids: string[]) => commissionsOf(db, kind, ids) }
}

function itself(_: Db, ids: string[]): Map<string, string> {
  return new Map(ids.map((id) => [id, id]))
}

/** Places by what was last done in them; each stands once. */
function touched(db: Db): Place[] {
  const all = Object.entries(PLACES).flatMap(([entity, { kind, of }]) => {
    const changes = latestChanges(db, entity, LOOKED_AT)
    const places = of(db, [...new Set(changes.map(({ entityId }) => entityId))])
    return changes.flatMap(({ id: at, entityId }) => {
      const id = places.get(entityId)
      return id === undefined ? [] : [{ at, kind, id }]
    })
  })
  const places = new Map<string, Place>()
  for (const { kind, id } of all.sort((a, b) => b.at - a.at))
    if (!places.has(id)) places.set(id, { kind, id })
  return [...places.values()]
}

/** The same with what they are called; what is not in the book any more is left out. */
function named(places: readonly Place[], db: Db) {
  const idsOf = (kind: Kind) => places.flatMap((one) => (one.kind === kind ? [one.id] : []))
  const commissions = commissionsById(db, idsOf('commission'))
  const quotes = quotesInShort(db, idsOf('quote'))
  const clients = clientNames(db, [
    ...idsOf('client'),
    ...[...commissions.values()].map(({ customerId }) => customerId),
  ])
  return places.flatMap(({ kind, id }) => {
    const commission = commissions.get(id)
    const title =
      kind === 'client'
        ? clients.get(id)
        : kind === 'quote'
          ? quotes.get(id)
          : commission && `${commission.number} ${clients.get(commission.customerId) ?? ''}`
    return title === undefined ? [] : [{ kind, id, title }]
  })
}
