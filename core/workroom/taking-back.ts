import { z } from 'zod'
import { getPerson, updatePerson } from '../store/bench-people.ts'
import { firstCut, garmentsOf, getCommission, updateCommission } from '../store/commissions.ts'
import { getQuote, setQuoteState } from '../store/quotes.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { followed } from './commissions.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { request } from './request.ts'
import { reserveFor } from './stock.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })

/** Answers and endings that were given by mistake, taken back. */
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
