import { z } from 'zod'
import { marksOf } from '../plan/steps.ts'
import { comeIn } from '../plan/stock/acts.ts'
import { giveBack, offcutOf } from '../plan/stock/offcut.ts'
import { sharedBy } from '../quote/shared.ts'
import { getCloth } from '../store/cloths.ts'
import { getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import {
  changeRemnant,
  getRemnant,
  insertRemnant,
  listRemnants,
  type RemnantRow,
  remnantsOfGarment,
} from '../store/remnants.ts'
import { getLength, insertLength, lengthsWith } from '../store/stock.ts'
import { shareOf } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { lineAsCut, lineAsMade } from './as-made.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'
import { ledgerOf, lengthAt, shown, wrote } from './stock.ts'

const byId = z.strictObject({ id: inputs.id })

/** What is left of cloth, kept or used up. */
export const remnantRequests = [
  request({
    name: 'remnants.offered',
    kind: 'query',
    about: 'What the lay of a garment leaves, and whether it can be kept: that is so once the cloth is cut.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const kept = new Set(remnantsOfGarment(context.store.db, garmentId).map(({ offcut }) => offcut))
      return {
        cut: isCut(garmentId, context),
        offcuts: leftBy(garmentId, context).offcuts.map((size, i) => ({
          ...{ offcut: i, kept: kept.has(i) },
          ...size,
        })),
      }
    },
  }),
  request({
    name: 'remnants.keep',
    kind: 'command',
    about: 'Takes what the cutting of a garment has left into stock: all of it, or the offcuts named.',
    input: z.strictObject({
      garmentId: inputs.id,
      offcuts: z.array(z.int().min(0)).max(100).optional().describe('numbers as offered, from 0'),
      place: inputs.line(120).default(''),
    }),
    run: ({ garmentId, offcuts: wanted, place }, context) => {
      const { db } = context.store
      const { cloth, offcuts } = leftBy(garmentId, context)
      if (!isCut(garmentId, context)) throw new Refusal(phrase('refusal.remnant.uncut'), 'garmentId')
      const washed = isCutWashed(garmentId, context)
      const held = new Set(remnantsOfGarment(db, garmentId).map(({ offcut }) => offcut))
      for (const offcut of new Set(wanted ?? offcuts.keys())) {
        const size = offcuts[offcut]
        if (size === undefined)
          throw new Refusal(phrase('refusal.remnant.none', { count: offcuts.length }), 'offcuts')
        if (held.has(offcut)) continue
        const row = insertRemnant(db, {
          ...{ id: context.newId(), garmentId, offcut, createdAt: context.now() },
          ...{ clothId: cloth.id ?? null, clothName: cloth.name, ...size, place, washed },
        })
        recorded(context, 'remnants.keep', 'remnant', row.id, null, row)
      }
      return { remnants: remnantsOfGarment(db, garmentId) }
    },
  }),
  request({
    name: 'remnants.list',
    kind: 'query',
    about: 'Every remnant kept, in the order they came in; those used up carry the instant.',
    input: z.strictObject({}),
    run: (_, { store }) => ({ remnants: listRemnants(store.db) }),
  }),
  request({
    name: 'remnant.place',
    kind: 'command',
    about: 'Says where a remnant lies.',
    input: byId.extend({ place: inputs.line(120) }),
    run: ({ id, place }, context) => {
      const before = getRemnant(context.store.db, id)
      if (before.place === place) return { remnant: before }
      const remnant = changeRemnant(context.store.db, before, { place })
      recorded(context, 'remnant.place', 'remnant', id, { place: before.place }, { place })
      return { remnant }
    },
  }),
  request({
    name: 'remnant.toStock',
    kind: 'command',
    about: 'Puts a remnant with the lengths of its cloth, where it is offered for garments like any of them.',
    input: byId,
    run: ({ id }, context) => {
      const before = getRemnant(context.store.db, id)
      const stockId = intoStock(before, context)
      const remnant = changeRemnant(context.store.db, before, { stockId, usedAt: context.now() })
      recorded(context, 'remnant.toStock', 'remnant', id, before, remnant)
      return { remnant, length: shown(stockId, context) }
    },
  }),
  request({
    name: 'remnant.use',
    kind: 'command',
    about: 'Notes that a remnant is used up.',
    input: byId,
    run: ({ id }, context) => mark(id, true, 'remnant.use', context),
  }),
  request({
    name: 'remnant.putBack',
    kind: 'command',
    about: 'Notes that a remnant is still there after all.',
    input: byId,
    run: ({ id }, context) => mark(id, false, 'remnant.putBack', context),
  }),
]

/**
 * What makes a remnant a length of stock: written back to the length it was cut from, if that is known, so that the two add
 * up. One that goes across the whole cloth is as wide as that was.
 *
 * @throws Refusal when it is of no cloth of the book, is used up, or is more than was cut
 */
function intoStock(row: RemnantRow, context: Context): string {
  const { db } = context.store
  const { garmentId, clothId, place } = row
  if (clothId === null) throw new Refusal(phrase('refusal.remnant.noCloth'), 'id')
  if (row.usedAt !== null) throw new Refusal(phrase('refusal.remnant.used'), 'id')
  const cloth = getCloth(db, clothId)
  const across = row.width >= Math.floor(leftBy(garmentId, context).usableWidth)
  const lengthId = context.newId()
  const placed = { id: lengthId, clothId, place, note: '', arrivedDay: today(context) }
  const bought = { createdAt: context.now(), orderedDay: null, expectedDay: null }
  const source = lengthsWith(db, [garmentId])
    .map((id) => ({ id, length: lengthAt(id, context) }))
    .find(
      ({ length }) => length.clothId === clothId && length.usedBy.some((use) => use.garmentId === garmentId),
    )
  if (source === undefined) {
    const lying = cloth.width * (row.washed ? 1 - cloth.weftShrinkage : 1)
    const width = across ? lying : row.width
    const came = comeIn([], { day: today(context), mm: row.length, width, washed: row.washed })
    const price = shareOf({ minor: cloth.priceMinor, currency: cloth.currency }, width, lying)
    const length = insertLength(db, {
      ...{ ...placed, ...bought, width, supplier: cloth.supplier },
      ...{ priceMinor: price.minor, currency: price.currency },
      washedAt: row.washed ? context.now() : null,
    })
    wrote(length, came, 'remnant.toStock', context)
    return lengthId
  }
  const parent = getLength(db, source.id)
  const use = source.length.usedBy.find((one) => one.garmentId === garmentId)!
  const ledger = ledgerOf(source.id, context)
  const size = { mm: row.length, width: across ? use.width : row.width }
  const back = giveBack(ledger, { day: today(context), garmentId, ...size, lengthId })
  const { known, came } = offcutOf(source.length, [...ledger, back], back)
  const length = insertLength(db, {
    ...{ ...placed, ...bought, width: came.width, supplier: parent.supplier, parentId: parent.id },
    priceMinor: known.pricePerMetre?.minor ?? parent.priceMinor,
    currency: known.pricePerMetre?.currency ?? parent.currency,
    washedAt: came.washed ? context.now() : null,
  })
  wrote(parent, back, 'remnant.toStock', context)
  wrote(length, came, 'remnant.toStock', context)
  return lengthId
}

/** Whether the cloth of a garment was washed before it was cut; so it was where nothing was to be washed. */
function isCutWashed(garmentId: string, { store }: Context): boolean {
  const steps = stepsOfGarments(store.db, [garmentId])
  const wash = steps.find(({ key }) => key === 'wash')
  const cuts = steps.flatMap(({ stage, doneAt }) => (stage === 'cut' && doneAt !== null ? [doneAt] : []))
  if (wash === undefined) return true
  return wash.doneAt !== null && cuts.every((doneAt) => wash.doneAt! <= doneAt)
}

/** The cloth of a garment and the rectangles its lay leaves, whole millimetres that are surely there. */
function leftBy(garmentId: string, context: Context) {
  const { db } = context.store
  const garment = getGarment(db, garmentId, 'garmentId')
  const { quoteGarmentId } = garment
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  const { cloth, estimate } = lineAsCut(lineAsMade(snapshot, garment, context), garmentId, context)
  const shared = sharedBy(snapshot, { id: quoteGarmentId })
  // What is left of a length that several garments share is kept once, with the first of them.
  const mine = shared === undefined || shared.lines[0] === quoteGarmentId
  const lay = shared?.lay ?? estimate.lay
  const offcuts = (mine ? lay.offcuts : []).map(({ width, height }) => ({
    width: Math.floor(width),
    length: Math.floor(height),
  }))
  return { cloth, offcuts, usableWidth: lay.usableWidth }
}

/** Whether every step of the cutting is done. */
const isCut = (garmentId: string, { store }: Context): boolean =>
  marksOf(stepsOfGarments(store.db, [garmentId])).cut

function mark(id: string, used: boolean, name: string, context: Context) {
  const { db } = context.store
  const before = getRemnant(db, id)
  if ((before.usedAt !== null) === used) return { remnant: before }
  if (before.stockId !== null) throw new Refusal(phrase('refusal.remnant.inStock'), 'id')
  const remnant = changeRemnant(db, before, { usedAt: used ? context.now() : null })
  recorded(context, name, 'remnant', id, { usedAt: before.usedAt }, { usedAt: remnant.usedAt })
  return { remnant }
}
