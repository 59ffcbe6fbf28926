import { z } from 'zod'
import { type CommissionRow, garmentsOf, getCommission, updateCommission } from '../store/commissions.ts'
import { setQuoteState } from '../store/quotes.ts'
import { runningTimer } from '../store/times.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { commissionFrom, followed } from './commissions.ts'
import { findableCommission } from './finding.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { moneyOf } from './money-of.ts'
import { order, saveQuote } from './quotes.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'
import { releaseFor } from './stock.ts'
import { commissionOfSteps } from './timers.ts'

const seen = z.strictObject({ id: inputs.id, revision: inputs.revision })

/** What becomes of a commission besides its steps: its days, its end, and work that was going on already. */
export const changeRequests = [
  request({
    name: 'commission.change',
    kind: 'command',
    about: 'Sets the day a commission is due, the day it is worn, and its note.',
    input: seen.extend({
      dueDay: inputs.day.nullable().optional(),
      eventDay: inputs.day.nullable().optional(),
      note: inputs.line(2000).optional(),
    }),
    run: ({ id, revision, ...changes }, context) => {
      const { db } = context.store
      const before = getCommission(db, id)
      const given = Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined))
      const after = updateCommission(db, before, revision, given)
      findableCommission(id, context)
      recorded(context, 'commission.change', 'commission', id, before, after)
      return { commission: followed(after, context) }
    },
  }),
  request({
    name: 'commission.cancel',
    kind: 'command',
    about:
      'Calls a commission off: cloth promised to it is free again, and it is told what of the money is kept.',
    input: seen.extend({ day: inputs.day.optional() }),
    run: ({ id, revision, day }, context) => {
      const { db } = context.store
      const before = getCommission(db, id)
      if (before.state !== 'open')
        throw new Refusal(phrase('refusal.plan.closed', { number: before.number }), 'id')
      refuseTimed(before, context)
      const { ifCancelled } = moneyOf(before, context)
      releaseFor(
        garmentsOf(db, [id]).map((one) => one.id),
        context,
      )
      const changes = { state: 'cancelled' as const, cancelledDay: day ?? today(context) }
      const after = updateCommission(db, before, revision, changes)
      recorded(context, 'commission.cancel', 'commission', id, { state: before.state }, changes)
      return { commission: followed(after, context), settled: ifCancelled }
    },
  }),
  request({
    name: 'commission.enter',
    kind: 'command',
    about: 'Enters work that is going on already: what was agreed becomes a commission at once.',
    input: order.omit({ supersedes: true }).extend({
      dueDay: inputs.day.nullable().default(null),
      note: inputs.line(2000).default(''),
    }),
    run: ({ dueDay, note, ...asked }, context) => {
      const quote = saveQuote(asked, context)
      setQuoteState(context.store.db, quote.id, 'accepted', context.now())
      recorded(context, 'commission.enter', 'quote', quote.id, { state: 'sent' }, { state: 'accepted' })
      return { commission: commissionFrom(quote, { dueDay, note, taken: {} }, context) }
    },
  }),
]

/**
 * On what is called off no time can be logged any more: what runs would be lost.
 *
 * @throws Refusal when the timer runs on it
 */
function refuseTimed({ id, number }: CommissionRow, context: Context): void {
  const timer = runningTimer(context.store.db)
  if (timer !== undefined && commissionOfSteps(timer.stepIds, context).id === id)
    throw new Refusal(phrase('refusal.timer.calledOff', { number }), 'id')
}
