import { z } from 'zod'
import { cancel, release, reserve } from '../plan/stock/acts.ts'
import { offerFor } from '../plan/stock/offer.ts'
import { getLength } from '../store/stock.ts'
import { readLength } from '../words/length.ts'
import { refusingAt } from '../words/refusal.ts'
import * as inputs from './inputs.ts'
import { needFor } from './needs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { here, ledgerOf, lengthAt, lengthsIn, shown, wrote } from './stock.ts'

/** What a length is promised to, and which would serve. */
export const promiseRequests = [
  request({
    name: 'stock.offer',
    kind: 'query',
    about:
      'Which lengths would serve a garment, the shortest first, those on their way where none in the house does; what to buy if none does.',
    input: z.strictObject({ garmentId: inputs.id }),
    run: ({ garmentId }, context) => {
      const need = needFor(garmentId, context)
      if (need === undefined) return { offered: { offers: [], others: [] } }
      const offered = offerFor(need.need, here(context), need.increment)
      if (offered.offers.length > 0) return { offered }
      // What is on its way and free serves as well, before anything is bought.
      const all = lengthsIn(context).map(({ length }) => length)
      const { offers } = offerFor(need.need, all, need.increment)
      return { offered: offers.length === 0 ? offered : { offers, others: offered.others } }
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
          ? takesOf(garmentId, id, context)
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

/** What a garment takes of a length, as that lies there. */
function takesOf(garmentId: string, id: string, context: Context): number {
  const need = needFor(garmentId, context)
  const length = lengthAt(id, context)
  const offer = need === undefined ? undefined : offerFor(need.need, [length], need.increment).offers[0]
  return offer?.takes ?? length.free
}
