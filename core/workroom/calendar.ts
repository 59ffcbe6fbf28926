import { z } from 'zod'
import { freeOf } from '../plan/schedule/free.ts'
import { latestStarts } from '../plan/schedule/latest-start.ts'
import { finishOdds } from '../plan/schedule/odds.ts'
import { promiseDay } from '../plan/schedule/promise.ts'
import { type Reason, reasonsOf } from '../plan/schedule/reasons.ts'
import { schedule } from '../plan/schedule/schedule.ts'
import type { Base, Job } from '../plan/schedule/types.ts'
import { whatIf } from '../plan/schedule/what-if.ts'
import { clientNames } from '../store/clients.ts'
import { garmentsOf, openCommissions } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { addDays } from '../words/dates.ts'
import { phrase } from '../words/phrase.ts'
import { firstWeekday } from '../words/week.ts'
import { closedOn, daysOffOf } from './days-off.ts'
import * as inputs from './inputs.ts'
import { baseOf } from './open-work.ts'
import { paceOf } from './pace.ts'
import { datedBase, newJobs } from './ready-by.ts'
import { type Context, request } from './request.ts'
import { settingsOf } from './settings.ts'

/** Dates: when open work will be done, and what a new quote would do to it. */
export const calendarRequests = [
  request({
    name: 'plan.show',
    kind: 'query',
    about:
      'When each open commission will be done, how sure that is, what makes it late, and the weeks to come.',
    input: z.strictObject({}),
    run: (_, context) => planFor(context),
  }),
  request({
    name: 'plan.whatIf',
    kind: 'query',
    about: 'What accepting a quote would do: when it would be done, and which work it would put off.',
    input: z.strictObject({ quoteId: inputs.id }),
    run: ({ quoteId }, context) => {
      const base = datedBase(context)
      const { snapshot } = getQuote(context.store.db, quoteId, 'quoteId')
      return ifAdded(newJobs(snapshot.lines, base.today, context), base, context)
    },
  }),
  request({
    name: 'plan.room',
    kind: 'query',
    about:
      'The same for so many hours of sewing by hand, whatever they are of: from today, or from a day on which the cloth is there.',
    input: z.strictObject({
      hours: z.number().positive().max(5000),
      cloth: inputs.day.optional().describe('the day on which the cloth is there, if not yet'),
    }),
    run: ({ hours, cloth }, context) => {
      const job: Job = {
        ...{ id: 'new', garment: 'new', commission: 'new', skill: 'handSewing', minutes: 60 * hours },
        ...{ work: {}, after: [], release: cloth ?? null, wait: 0, due: null },
      }
      return ifAdded([job], datedBase(context), context)
    },
  }),
]

/** What work would do to the weeks if it were accepted today. */
export function ifAdded(jobs: readonly Job[], base: Base, context: Context) {
  const { added, changed } = whatIf(base, jobs)
  const numbers = new Map(openCommissions(context.store.db).map(({ id, number }) => [id, number]))
  return {
    promise: promiseDay(base, jobs, paceOf(context)),
    finish: added[0]?.finish ?? null,
    changed: changed.map((one) => ({ ...one, number: numbers.get(one.commission) ?? '' })),
  }
}

/** Weeks whose hours are told however soon all work is done: what is still free in them is what can be taken on. */
const WEEKS = 8

/** The plan of all open work as screens show it. */
export function planFor(context: Context, { odds: wanted } = { odds: true }) {
  const { db } = context.store
  const base = baseOf(context)
  const { commissions, impossible, weeks, slots } = schedule(base.jobs, base.people, base.away, base.today, {
    weeks: WEEKS,
    firstDay: firstWeekday(settingsOf(context).letterhead.locale),
  })
  const odds = new Map((wanted ? finishOdds(base, paceOf(context)) : []).map((one) => [one.commission, one]))
  const latest = latestStarts(base)
  const reasons = reasonsOf(base)
  const rows = openCommissions(db)
  const names = clientNames(
    db,
    rows.map(({ customerId }) => customerId),
  )
  const closed = closedOn(context)
  const made = Map.groupBy(
    garmentsOf(
      db,
      rows.map(({ id }) => id),
    ),
    ({ commissionId }) => commissionId,
  )
  const byId = new Map(commissions.map((one) => [one.commission, one]))
  return {
    day: base.today,
    commissions: rows.map(({ id, number, customerId, dueDay, eventDay }) => ({
      ...{ id, number, customer: names.get(customerId) ?? '', dueDay, eventDay },
      /** The word for the days off its day is among, on which nobody could hand it over. */
      dayOff: closed(dueDay),
      garments: (made.get(id) ?? []).map(({ title, wearer }) => ({ title, wearer })),
      finish: byId.get(id)?.finish ?? null,
      late: byId.get(id)?.late ?? null,
      p50: odds.get(id)?.p50 ?? null,
      p80: odds.get(id)?.p80 ?? null,
      latestStart: latest.get(id) ?? null,
      reasons: (reasons.get(id) ?? []).map(({ code, days }) => ({ days, why: saidOf(code) })),
      never: impossible
        .filter(({ commission }) => commission === id)
        .map(({ why: { code } }) =>
          phrase(code === 'noSkill' || code === 'noHours' ? `days.never.${code}` : 'days.never.other'),
        )
        .slice(0, 1),
    })),
    weeks,
    free: freeOf(slots, base.people, base.away, base.today),
    daysOff: daysOffOf({ from: base.today, to: addDays(weeks.at(-1)!.begins, 6) }, context),
    today: slots.filter(({ day }) => day === base.today),
  }
}

const SAID = {
  pastDue: 'days.late.past',
  ownHours: 'days.late.hours',
  waits: 'days.late.wait',
  release: 'days.late.cloth',
  othersFirst: 'days.late.others',
} as const
const saidOf = (code: Reason['code']) => phrase(SAID[code])
