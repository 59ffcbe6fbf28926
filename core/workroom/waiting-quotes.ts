import { z } from 'zod'
import { getQuote, listQuotes } from '../store/quotes.ts'
import { ifAdded } from './calendar.ts'
import { closedOn } from './days-off.ts'
import { datedBase, newJobs } from './ready-by.ts'
import { type Context, request } from './request.ts'

/** Of so many of the newest quotes those are told that wait. */
const NEWEST = 200

/** Quotes that wait for an answer, set against the weeks. */
export const waitingQuoteRequests = [
  request({
    name: 'plan.waiting',
    kind: 'query',
    about:
      'What each quote that waits for an answer would take, by when it could be promised if it were accepted today, and which work it would put off.',
    input: z.strictObject({}),
    run: (_, context) => ({ quotes: waitingQuotes(context) }),
  }),
]

function waitingQuotes(context: Context) {
  const { db } = context.store
  const base = datedBase(context)
  const closed = closedOn(context)
  return listQuotes(db, NEWEST)
    .filter(({ state, short }) => state === 'sent' && short.validUntil >= base.today)
    .map(({ id, number, short: { customer, total, validUntil } }) => {
      const { snapshot, supersedes } = getQuote(db, id)
      const promised = snapshot.promised ?? null
      const quote = { id, number, customer, total, validUntil, promised, dayOff: closed(promised) }
      // Work that is accepted already stands in the plan; what a change would add to it is not known by its lines.
      if (supersedes !== null && getQuote(db, supersedes).state === 'accepted')
        return { ...quote, would: null }
      const jobs = newJobs(snapshot.lines, base.today, context)
      const minutes = jobs.reduce((sum, job) => sum + job.minutes, 0)
      const there = jobs.flatMap(({ release }) => release ?? []).sort()
      const cloth = there.at(-1) ?? base.today
      return {
        ...quote,
        would: { minutes, cloth: cloth > base.today ? cloth : null, ...ifAdded(jobs, base, context) },
      }
    })
}
