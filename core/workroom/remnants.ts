import { z } from 'zod'
import { marksOf } from '../plan/steps.ts'
import { lineAsTaken } from '../quote/options.ts'
import { sharedBy } from '../quote/shared.ts'
import { getCommission, getGarment, stepsOfGarments } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { getRemnant, insertRemnant, listRemnants, markRemnant, remnantsOfGarment } from '../store/remnants.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'

const byId = z.strictObject({ id: inputs.id })

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
    }),
    run: ({ garmentId, offcuts: wanted }, context) => {
      const { db } = context.store
      const { cloth, offcuts } = leftBy(garmentId, context)
      if (!isCut(garmentId, context)) throw new Refusal(phrase('refusal.remnant.uncut'), 'garmentId')
      const held = new Set(remnantsOfGarment(db, garmentId).map(({ offcut }) => offcut))
      for (const offcut of new Set(wanted ?? offcuts.keys())) {
        const size = offcuts[offcut]
        if (size === undefined)
          throw new Refusal(phrase('refusal.remnant.none', { count: offcuts.length }), 'offcuts')
        if (held.has(offcut)) continue
        const row = insertRemnant(db, {
          ...{ id: context.newId(), garmentId, offcut, createdAt: context.now() },
          ...{ clothId: cloth.id ?? null, clothName: cloth.name, ...size },
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

/** The cloth of a garment and the rectangles its lay leaves, whole millimetres that are surely there. */
function leftBy(garmentId: string, { store: { db } }: Context) {
  const garment = getGarment(db, garmentId, 'garmentId')
  const { quoteGarmentId } = garment
  const { snapshot } = getQuote(db, getCommission(db, garment.commissionId).quoteId)
  const { cloth, estimate } = lineAsTaken(snapshot, garment)
  const shared = sharedBy(snapshot, { id: quoteGarmentId })
  // What is left of a length that several garments share is kept once, with the first of them.
  const mine = shared === undefined || shared.lines[0] === quoteGarmentId
  const offcuts = (mine ? (shared?.lay ?? estimate.lay).offcuts : []).map(({ width, height }) => ({
    width: Math.floor(width),
    length: Math.floor(height),
  }))
  return { cloth, offcuts }
}

/** Whether every step of the cutting is done. */
const isCut = (garmentId: string, { store }: Context): boolean =>
  marksOf(stepsOfGarments(store.db, [garmentId])).cut

function mark(id: string, used: boolean, name: string, context: Context) {
  const { db } = context.store
  const before = getRemnant(db, id)
  if ((before.usedAt !== null) === used) return { remnant: before }
  const remnant = markRemnant(db, before, used ? context.now() : null)
  recorded(context, name, 'remnant', id, { usedAt: before.usedAt }, { usedAt: remnant.usedAt })
  return { remnant }
}
