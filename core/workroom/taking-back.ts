import { z } from 'zod'
import { getPerson, updatePerson } from '../store/bench-people.ts'
import { getCloth, isUsed, updateCloth } from '../store/cloths.ts'
import { firstCut, garmentsOf, getCommission, updateCommission } from '../store/commissions.ts'
import { getQuote, setQuoteState } from '../store/quotes.ts'
import { unindexed } from '../store/search.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { followed } from './commissions.ts'
import { findableCloth } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { reserveFor } from './stock.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })

/** Answers and endings that were given by mistake, and cloths entered by mistake, taken back. */
export const takingBackRequests = [
  request({
    name: 'quote.waitAgain',
    kind: 'command',
    about: 'Takes back that a quote was declined: it waits for an answer again.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => {
      const { db } = context.store
      const { number, state } = getQuote(db, id)
      if (state !== 'declined') throw new Refusal(phrase('refusal.quote.notDeclined', { number }), 'id')
      setQuoteState(db, id, 'sent', context.now())
      recorded(context, 'quote.waitAgain', 'quote', id, { state }, { state: 'sent' })
      return { id }
    },
  }),
  request({
    name: 'commission.takeUp',
    kind: 'command',
    about:
      'Takes a cancelled commission up again: cloth that is free is promised to it as when it was accepted.',
    input: seen,
    run: ({ id, revision }, context) => {
      const { db } = context.store
      const before = getCommission(db, id)
      const { number, state } = before
      if (state !== 'cancelled') throw new Refusal(phrase('refusal.plan.notCancelled', { number }), 'id')
      const changes = { state: 'open' as const, cancelledDay: null }
      const after = updateCommission(db, before, revision, changes)
      // What is cut already needs no cloth again.
      for (const garment of garmentsOf(db, [id]))
        if (firstCut(db, [garment.id]) === null) reserveFor(garment.id, context)
      recorded(context, 'commission.takeUp', 'commission', id, { state }, changes)
      return { commission: followed(after, context) }
    },
  }),
  request({
    name: 'cloth.takeBack',
    kind: 'command',
    about: 'Takes a cloth out of the book again, as long as no quote, no length and no remnant is of it.',
    input: seen,
    run: ({ id, revision }, context) => {
      const { db } = context.store
      const before = getCloth(db, id)
      if (isUsed(db, id)) throw new Refusal(phrase('refusal.cloth.used', { cloth: before.name }), 'id')
      const cloth = updateCloth(db, id, revision, { retiredAt: context.now() })
      unindexed(db, id)
      recorded(context, 'cloth.takeBack', 'cloth', id, before, cloth)
      return { cloth }
    },
  }),
  request({
    name: 'cloth.putBack',
    kind: 'command',
    about: 'Puts a cloth that was taken out of the book back into it.',
    input: seen,
    run: ({ id, revision }, context) => {
      const { db } = context.store
      const before = getCloth(db, id)
      const cloth = updateCloth(db, id, revision, { retiredAt: null })
      findableCloth(cloth, context)
      recorded(context, 'cloth.putBack', 'cloth', id, before, cloth)
      return { cloth }
    },
  }),
  request({
    name: 'person.putBack',
    kind: 'command',
    about: 'Puts somebody who was taken off back among those who work here.',
    input: seen,
    run: ({ id, revision }, context) => {
      const { db } = context.store
      const before = getPerson(db, id)
      const person = updatePerson(db, before, revision, { retiredAt: null })
      recorded(context, 'person.putBack', 'person', id, before, person)
      return { person }
    },
  }),
]
