import { z } from 'zod'
import { cancel, comeIn, correct, cut, measure, reserve, uncut } from '../plan/stock/acts.ts'
import { clothLength } from '../plan/stock/balance.ts'
import { offerFor } from '../plan/stock/offer.ts'
import type { ClothLength, Move } from '../plan/stock/types.ts'
import { stockValue } from '../plan/stock/value.ts'
import { type ClothRow, getCloth, listCloths } from '../store/cloths.ts'
import { dropRemnants } from '../store/remnants.ts'
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
import type { Money } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { needFor } from './needs.ts'
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
          .filter(({ length }) => used || length.length > 0)
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
      const cloth = getCloth(context.store.db, given.clothId, 'clothId')
      const { unit } = settingsOf(context).letterhead
      const mm = refusingAt('length', () => readLength(given.length, unit))
      const width =
        given.width === undefined ? cloth.width : refusingAt('width', () => readLength(given.width!, unit))
      const { place, note, supplier, orderedDay = null, expectedDay = null, washed, pricePerMetre } = given
      const size = { mm, width, washed }
      const more = { place, note, supplier, orderedDay, expectedDay, pricePerMetre }
      return { length: shown(entered(cloth, size, more, 'stock.add', context).id, context) }
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
    name: 'stock.callOff',
    kind: 'command',
    about:
      'Says that a length which was ordered will not come: what was promised of it is to be bought again.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const row = getLength(context.store.db, id)
      if (row.arrivedDay !== null) throw new Refusal(phrase('refusal.stock.isHere'), 'id')
      const { reservedFor } = lengthAt(id, context)
      releaseFor(
        reservedFor.map(({ garmentId }) => garmentId),
        context,
        [id],
      )
      wrote(row, correct(ledgerOf(id, context), { day: today(context), mm: 0 }), 'stock.callOff', context)
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

/** What happened to a length, in order; nothing where there is no such length. */
export const ledgerOf = (id: string, { store: { db } }: Context): Move[] => movesOf(db, [id]).get(id) ?? []

const shownOf = ({ length, free, reserved, washed, reservedFor, usedBy, used }: ClothLength) => ({
  ...{ length, free, reserved, washed, used },
  reservedFor,
  usedBy: usedBy.map(({ garmentId, mm }) => ({ garmentId, mm })),
})

/** A length as it stands, mm. @throws Refusal when there is none of that id */
export const lengthAt = (id: string, context: Context): ClothLength =>
  clothLength(knownOf(getLength(context.store.db, id)), ledgerOf(id, context))

/** A length as requests answer with it, mm. @throws Refusal when there is none of that id */
export const shown = (id: string, context: Context) => ({
  ...getLength(context.store.db, id),
  ...shownOf(lengthAt(id, context)),
})

type More = Pick<StockRow, 'place' | 'note' | 'supplier' | 'orderedDay' | 'expectedDay'> & {
  pricePerMetre?: Money | undefined
}

/** Enters a length of a cloth, here or on its way; what is not said of supplier and price is as in the book. */
export function entered(
  cloth: ClothRow,
  size: { mm: number; width: number; washed: boolean },
  { supplier, pricePerMetre, ...more }: More,
  name: string,
  context: Context,
): StockRow {
  const price = pricePerMetre ?? { minor: cloth.priceMinor, currency: cloth.currency }
  const row = insertLength(context.store.db, {
    ...{ ...more, id: context.newId(), clothId: cloth.id, width: size.width, createdAt: context.now() },
    ...{ supplier: supplier === '' ? cloth.supplier : supplier },
    ...{ priceMinor: price.minor, currency: price.currency },
    washedAt: size.washed ? context.now() : null,
    arrivedDay: more.orderedDay === null && more.expectedDay === null ? today(context) : null,
  })
  wrote(row, comeIn([], { ...size, day: today(context) }), name, context)
  return row
}

/** Writes a move below a length's ledger. */
export function wrote({ id }: Pick<StockRow, 'id'>, move: Move, name: string, context: Context): void {
  insertMove(context.store.db, { id: context.newId(), stockId: id, at: context.now() }, move)
  recorded(context, name, 'stockLength', id, null, move)
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

/** Lets go of everything that was promised to garments which will not be made, or of what some lengths promised them. */
export function releaseFor(
  garmentIds: readonly string[],
  context: Context,
  lengths: readonly string[] = lengthsWith(context.store.db, garmentIds),
): void {
  for (const id of lengths)
    for (const garmentId of garmentIds) {
      const move = cancel(ledgerOf(id, context), { day: today(context), garmentId })
      if (move !== undefined) wrote({ id }, move, 'stock.release', context)
    }
}

/** A garment is cut: what was promised to it is cut from its lengths. */
export function cutFrom(garmentId: string, context: Context): void {
  for (const id of lengthsWith(context.store.db, [garmentId])) {
    const mine = lengthAt(id, context).reservedFor.find((one) => one.garmentId === garmentId)
    if (mine === undefined) continue
    const act = { day: today(context), garmentId, mm: mine.mm }
    wrote({ id }, cut(ledgerOf(id, context), act), 'stock.cut', context)
  }
}

/**
 * A garment was never cut: its lengths have back what was cut from them, and it is promised to the garment again. What its
 * cutting was said to have left is on no shelf, but for what was used up.
 */
export function uncutFrom(garmentId: string, context: Context): void {
  const { db } = context.store
  for (const id of lengthsWith(db, [garmentId]))
    for (const move of uncut(ledgerOf(id, context), { day: today(context), garmentId }))
      wrote({ id }, move, move.kind === 'uncut' ? 'stock.uncut' : 'stock.reserve', context)
  for (const row of dropRemnants(db, garmentId))
    recorded(context, 'remnants.drop', 'remnant', row.id, row, null)
}
