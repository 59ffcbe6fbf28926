import { z } from 'zod'
import { cancel, comeIn, correct, cut, measure, release, reserve } from '../plan/stock/acts.ts'
import { clothLength } from '../plan/stock/balance.ts'
import { needOf } from '../plan/stock/need.ts'
import { offerFor } from '../plan/stock/offer.ts'
import type { ClothLength, Move } from '../plan/stock/types.ts'
import { stockValue } from '../plan/stock/value.ts'
import { lineAsTaken } from '../quote/options.ts'
import type { QuoteLine } from '../quote/types.ts'
import { getCloth, listCloths } from '../store/cloths.ts'
import { getCommission, getGarment } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import {
  getLength,
  insertLength,
  insertMove,
  lengthsWith,
  listLengths,
  movesOf,
  type StockRow,
  updateLength,
} from '../store/stock.ts'
import { readLength } from '../words/length.ts'
import { refusingAt } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })
const day = inputs.day.optional().describe('today, if not said')

/** Lengths of cloth in the house and on their way: what is free, what is promised, what was cut. */
export const stockRequests = [
  request({
    name: 'stock.list',
    kind: 'query',
    about: 'Every length of cloth with what is left of it, for whom, and what all of it is worth.',
    input: z.strictObject({ used: z.boolean().default(false).describe('those used up among them') }),
    run: ({ used }, context) => {
      const { currency } = settingsOf(context).rates
      const names = new Map(listCloths(context.store.db).map(({ id, name }) => [id, name]))
      const lengths = lengthsIn(context)
      const here = lengths.filter(({ row }) => row.arrivedDay !== null)
      return {
        lengths: lengths
          .filter(({ length, row }) => used || length.length > 0 || row.arrivedDay === null)
          .map(({ row, length }) => ({ ...row, cloth: names.get(row.clothId) ?? '', ...shownOf(length) })),
        value: stockValue(
          here.map(({ length }) => length),
          currency,
        ).total,
      }
    },
  }),
  request({
    name: 'stock.add',
    kind: 'command',
    about: 'Enters a length of cloth that was bought or ordered, or was there already.',
    input: z.strictObject({
      clothId: inputs.id,
      length: inputs.length,
      width: inputs.length.optional().describe('as the cloth is sold, if not said'),
      washed: z.boolean().default(false),
      place: inputs.line(120).default(''),
      supplier: inputs.line(120).default(''),
      note: inputs.line(400).default(''),
      pricePerMetre: inputs.money.optional().describe('of the book, if not said'),
      orderedDay: inputs.day.optional().describe('when it is on its way'),
      expectedDay: inputs.day.optional(),
    }),
    run: (given, context) => {
      const { db } = context.store
      const cloth = getCloth(db, given.clothId, 'clothId')
      const { unit } = settingsOf(context).letterhead
      const mm = refusingAt('length', () => readLength(given.length, unit))
      const width =
        given.width === undefined ? cloth.width : refusingAt('width', () => readLength(given.width!, unit))
      const { place, note, orderedDay = null, expectedDay = null, washed } = given
      const price = given.pricePerMetre ?? { minor: cloth.priceMinor, currency: cloth.currency }
      const row = insertLength(db, {
        ...{ id: context.newId(), clothId: cloth.id, width, place, note, orderedDay, expectedDay },
        ...{ supplier: given.supplier === '' ? cloth.supplier : given.supplier },
        ...{ priceMinor: price.minor, currency: price.currency, createdAt: context.now() },
        washedAt: washed ? context.now() : null,
        arrivedDay: orderedDay === null && expectedDay === null ? today(context) : null,
      })
      wrote(row, comeIn([], { day: today(context), mm, width, washed }), 'stock.add', context)
      return { length: shown(row.id, context) }
    },
  }),
  request({
    name: 'stock.change',
    kind: 'command',
    about: 'Puts a length in another place, or says when it comes or has come.',
    input: seen.extend({
      place: inputs.line(120).optional(),
      supplier: inputs.line(120).optional(),
      note: inputs.line(400).optional(),
      orderedDay: inputs.day.nullable().optional(),
      expectedDay: inputs.day.nullable().optional(),
      arrivedDay: inputs.day.nullable().optional(),
    }),
    run: ({ id, revision, ...changes }, context) => {
      const before = getLength(context.store.db, id)
      const given = Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined))
      const after = updateLength(context.store.db, before, revision, given)
      recorded(context, 'stock.change', 'stockLength', id, before, after)
      return { length: shown(id, context) }
    },
  }),
  request({
    name: 'stock.measure',
    kind: 'command',
    about: 'Writes down how long and wide a length is now, after washing above all.',
    input: z.strictObject({
      id: inputs.id,
      length: inputs.length,
      width: inputs.length,
      washed: z.boolean().default(true),
      day,
    }),
    run: ({ id, washed, ...given }, context) => {
      const { unit } = settingsOf(context).letterhead
      const row = getLength(context.store.db, id)
      const mm = refusingAt('length', () => readLength(given.length, unit))
      const width = refusingAt('width', () => readLength(given.width, unit))
      const on = given.day ?? today(context)
      const move = measure(ledgerOf(id, context), { day: on, mm, width, washed })
      wrote(row, move, 'stock.measure', context)
      updateLength(context.store.db, row, row.revision, {
        width,
        washedAt: washed ? context.now() : row.washedAt,
      })
      return { length: shown(id, context) }
    },
  }),
  request({
    name: 'stock.count',
    kind: 'command',
    about: 'Says how much of a length is really there, be it nothing.',
    input: z.strictObject({ id: inputs.id, length: inputs.length.or(z.literal(0)), day }),
    run: ({ id, length, day: on }, context) => {
      const { unit } = settingsOf(context).letterhead
      const mm = length === 0 ? 0 : refusingAt('length', () => readLength(length, unit))
      const move = correct(ledgerOf(id, context), { day: on ?? today(context), mm })
      wrote(getLength(context.store.db, id), move, 'stock.count', context)
      return { length: shown(id, context) }
    },
  }),
  request({
    name: 'stock.offer',
    kind: 'query',
    about: 'Which lengths in stock would serve a garment, the shortest first; what to buy if none does.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const need = needFor(garmentId, context)
      if (need === undefined) return { offered: { offers: [], others: [] } }
      return { offered: offerFor(need.need, here(context), need.increment) }
    },
  }),
  request({
    name: 'stock.reserve',
    kind: 'command',
    about: 'Promises part of a length to a garment: what it needs of it, if no length is said.',
    input: z.strictObject({ id: inputs.id, garmentId: inputs.id, length: inputs.length.optional() }),
    run: ({ id, garmentId, length }, context) => {
      const { unit } = settingsOf(context).letterhead
      const row = getLength(context.store.db, id)
      const ledger = ledgerOf(id, context)
      const asked =
        length === undefined
          ? takesOf(garmentId, row, context)
          : refusingAt('length', () => readLength(length, unit))
      const act = { day: today(context), garmentId, mm: asked }
      wrote(
        row,
        refusingAt('length', () => reserve(ledger, act)),
        'stock.reserve',
        context,
      )
      return { length: shown(id, context) }
    },
  }),
  request({
    name: 'stock.release',
    kind: 'command',
    about: 'Lets go of what a length has promised to a garment.',
    input: z.strictObject({ id: inputs.id, garmentId: inputs.id }),
    run: ({ id, garmentId }, context) => {
      const row = getLength(context.store.db, id)
      const ledger = ledgerOf(id, context)
      const held = cancel(ledger, { day: today(context), garmentId })
      const act = { day: today(context), garmentId, mm: held?.mm ?? 0 }
      wrote(row, held ?? release(ledger, act), 'stock.release', context)
      return { length: shown(id, context) }
    },
  }),
]

type Placed = { row: StockRow; length: ClothLength }

/** Every length as it stands. */
export function lengthsIn({ store: { db } }: Pick<Context, 'store'>): Placed[] {
  const rows = listLengths(db)
  const ledgers = movesOf(
    db,
    rows.map(({ id }) => id),
  )
  return rows.map((row) => ({ row, length: clothLength(knownOf(row), ledgers.get(row.id) ?? []) }))
}

/** Lengths that are in the house. */
export const here = (context: Context): ClothLength[] =>
  lengthsIn(context).flatMap(({ row, length }) => (row.arrivedDay === null ? [] : [length]))

const knownOf = ({ id, clothId, parentId, priceMinor, currency }: StockRow) => ({
  ...{ id, clothId, pricePerMetre: { minor: priceMinor, currency } },
  ...(parentId === null ? {} : { parent: parentId }),
})

const ledgerOf = (id: string, { store: { db } }: Context): Move[] => movesOf(db, [id]).get(id) ?? []

const shownOf = ({ length, free, reserved, washed, reservedFor, usedBy, used }: ClothLength) => ({
  ...{ length, free, reserved, washed, used },
  reservedFor,
  usedBy: usedBy.map(({ garmentId, mm }) => ({ garmentId, mm })),
})

function shown(id: string, context: Context) {
  const row = getLength(context.store.db, id)
  return { ...row, ...shownOf(clothLength(knownOf(row), ledgerOf(id, context))) }
}

/** Writes a move below a length's ledger. */
function wrote({ id }: Pick<StockRow, 'id'>, move: Move, name: string, context: Context): void {
  insertMove(context.store.db, { id: context.newId(), stockId: id, at: context.now() }, move)
  recorded(context, name, 'stockLength', id, null, move)
}

/** What a garment needs of its own cloth; nothing where that is not of the book, is the customer's, or none is cut. */
export function needFor(garmentId: string, { store: { db } }: Pick<Context, 'store'>) {
  const garment = getGarment(db, garmentId, 'garmentId')
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  return needOn(garmentId, lineAsTaken(snapshot, garment))
}

/** The same, where its line is at hand. */
export function needOn(garmentId: string, { cloth, estimate }: QuoteLine) {
  if (cloth.id === undefined || estimate.brought !== undefined || estimate.purchase.toBuy === 0)
    return undefined
  return {
    need: needOf({ garmentId, clothId: cloth.id }, estimate.purchase, cloth),
    increment: cloth.increment,
  }
}

/** What a garment takes of a length, as that lies there. */
function takesOf(garmentId: string, row: StockRow, context: Context): number {
  const need = needFor(garmentId, context)
  const length = clothLength(knownOf(row), ledgerOf(row.id, context))
  const offer = need === undefined ? undefined : offerFor(need.need, [length], need.increment).offers[0]
  return offer?.takes ?? length.free
}

/** Promises a garment of accepted work the shortest free length that is enough for it, if there is one. */
export function reserveFor(garmentId: string, context: Context): void {
  const need = needFor(garmentId, context)
  if (need === undefined) return
  const [offer] = offerFor(need.need, here(context), need.increment).offers
  if (offer === undefined) return
  const act = { day: today(context), garmentId, mm: offer.takes }
  const row = getLength(context.store.db, offer.lengthId)
  wrote(row, reserve(ledgerOf(row.id, context), act), 'stock.reserve', context)
}

/** Lets go of everything that was promised to garments which will not be made. */
export function releaseFor(garmentIds: readonly string[], context: Context): void {
  for (const id of lengthsWith(context.store.db, garmentIds))
    for (const garmentId of garmentIds) {
      const move = cancel(ledgerOf(id, context), { day: today(context), garmentId })
      if (move !== undefined) wrote({ id }, move, 'stock.release', context)
    }
}

/** A garment is cut: what was promised to it is cut from its lengths. */
export function cutFrom(garmentId: string, context: Context): void {
  for (const id of lengthsWith(context.store.db, [garmentId])) {
    const ledger = ledgerOf(id, context)
    const held = clothLength(knownOf(getLength(context.store.db, id)), ledger).reservedFor
    const mine = held.find((one) => one.garmentId === garmentId)
    if (mine === undefined) continue
    wrote({ id }, cut(ledger, { day: today(context), garmentId, mm: mine.mm }), 'stock.cut', context)
  }
}
