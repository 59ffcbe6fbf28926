import { z } from 'zod'
import { jobsOf, type ToMake } from '../plan/jobs.ts'
import { latestStarts } from '../plan/schedule/latest-start.ts'
import { finishOdds } from '../plan/schedule/odds.ts'
import { promiseDay } from '../plan/schedule/promise.ts'
import { type Reason, reasonsOf } from '../plan/schedule/reasons.ts'
import { schedule } from '../plan/schedule/schedule.ts'
import type { Base, Job } from '../plan/schedule/types.ts'
import { whatIf } from '../plan/schedule/what-if.ts'
import { plannedSteps } from '../plan/steps.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { listAbsences } from '../store/bench-people.ts'
import { clientNames } from '../store/clients.ts'
import { garmentsOf, openCommissions, openStepsOf } from '../store/commissions.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { getQuote } from '../store/quotes.ts'
import { phrase } from '../words/phrase.ts'
import * as inputs from './inputs.ts'
import { paceOf } from './pace.ts'
import { peopleOf } from './people.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'
import { lengthsIn } from './stock.ts'

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
      const jobs = snapshot.lines.flatMap((line) => newJobs(line.estimate, line.quantity, line.id, context))
      const { added, changed } = whatIf(base, jobs)
      const numbers = new Map(openCommissions(context.store.db).map(({ id, number }) => [id, number]))
      return {
        promise: promiseDay(base, jobs, paceOf(context)),
        finish: added[0]?.finish ?? null,
        changed: changed.map((one) => ({ ...one, number: numbers.get(one.commission) ?? '' })),
      }
    },
  }),
]

/** Everything a plan is made from: open steps, people, days off. */
export function baseOf(context: Context): Base {
  const { db } = context.store
  return {
    jobs: jobsOf(toMake(context), paceOf(context)),
    people: peopleOf(context),
    away: listAbsences(db).map(({ personId, from, to }) => ({ person: personId, from, to })),
    today: today(context),
  }
}

/**
 * The same with a day for work that has none: the one by which it is done four times in five as things are. Nothing that
 * was accepted is put off by a new promise, whether a day was named for it or not.
 */
function datedBase(context: Context): Base {
  const base = baseOf(context)
  const days = new Map(finishOdds(base, paceOf(context)).map(({ commission, p80 }) => [commission, p80]))
  return {
    ...base,
    jobs: base.jobs.map((job) => ({ ...job, due: job.due ?? days.get(job.commission) ?? null })),
  }
}

/** The garments of open work with the steps that are left, and what they wait for. */
function toMake(context: Context): ToMake[] {
  const { db } = context.store
  const commissions = new Map(openCommissions(db).map((row) => [row.id, row]))
  const garments = garmentsOf(db, [...commissions.keys()])
  const steps = Map.groupBy(
    openStepsOf(
      db,
      garments.map(({ id }) => id),
    ),
    ({ garmentId }) => garmentId,
  )
  const cloths = clothDays(context)
  const fittings = fittingsFrom(db, today(context)).map(({ fitting }) => fitting)
  return garments.flatMap(({ id, commissionId }) => {
    const { dueDay, eventDay } = commissions.get(commissionId)!
    const fitting = fittings.find(
      (one) => one.garmentId === id || (one.garmentId === null && one.commissionId === commissionId),
    )
    return [
      {
        ...{ id, commission: commissionId, due: dueDay ?? eventDay, cloth: cloths.get(id) ?? null },
        fitting: fitting?.day ?? null,
        steps: steps.get(id) ?? [],
      },
    ]
  })
}

/** By garment the day on which cloth promised to it is to arrive, where it is still on its way. */
function clothDays(context: Context): Map<string, string> {
  const days = new Map<string, string>()
  for (const { row, length } of lengthsIn(context)) {
    if (row.arrivedDay !== null || row.expectedDay === null) continue
    for (const { garmentId } of length.reservedFor) days.set(garmentId, row.expectedDay)
  }
  return days
}

/** The jobs of a garment that is not accepted yet, so many times over. */
function newJobs(estimate: Estimate, quantity: number, id: string, context: Context): Job[] {
  const steps = plannedSteps(estimate)
  return Array.from({ length: quantity }, (_, copy) =>
    jobsOf(
      [
        {
          ...{ id: `${id}-${copy}`, commission: 'new', due: null, cloth: null, fitting: null },
          steps: steps.map((step) => ({ ...step, id: `${id}-${copy}-${step.key}` })),
        },
      ],
      paceOf(context),
    ),
  ).flat()
}

/** The day that can be promised for a garment as reckoned, by what is known of all open work; null if it is never done. */
export function promiserOf(context: Context): (estimate: Estimate) => string | null {
  const base = datedBase(context)
  const pace = paceOf(context)
  return (estimate) => promiseDay(base, newJobs(estimate, 1, 'new', context), pace)
}

/** The day that can be promised for all garments of an order together; null if they are never done. */
export const promiseFor = (
  lines: readonly { id: string; estimate: Estimate; quantity: number }[],
  context: Context,
): string | null =>
  promiseDay(
    datedBase(context),
    lines.flatMap(({ id, estimate, quantity }) => newJobs(estimate, quantity, id, context)),
    paceOf(context),
  )

/** The plan of all open work as screens show it. */
export function planFor(context: Context, { odds: wanted } = { odds: true }) {
  const { db } = context.store
  const base = baseOf(context)
  const { commissions, impossible, weeks, slots } = schedule(base.jobs, base.people, base.away, base.today)
  const odds = new Map((wanted ? finishOdds(base, paceOf(context)) : []).map((one) => [one.commission, one]))
  const latest = latestStarts(base)
  const reasons = reasonsOf(base)
  const rows = openCommissions(db)
  const names = clientNames(
    db,
    rows.map(({ customerId }) => customerId),
  )
  const byId = new Map(commissions.map((one) => [one.commission, one]))
  return {
    day: base.today,
    commissions: rows.map(({ id, number, customerId, dueDay, eventDay }) => ({
      ...{ id, number, customer: names.get(customerId) ?? '', dueDay, eventDay },
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
