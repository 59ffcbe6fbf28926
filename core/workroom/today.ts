import { z } from 'zod'
import { clientNames } from '../store/clients.ts'
import { listCloths } from '../store/cloths.ts'
import { type CommissionRow, openCommissions, unsettledCommissions } from '../store/commissions.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { listQuotes } from '../store/quotes.ts'
import { awaitedLengths } from '../store/stock.ts'
import { runningTimer } from '../store/times.ts'
import { addDays } from '../words/dates.ts'
import type { Phrase } from '../words/phrase.ts'
import { planFor } from './calendar.ts'
import { atAGlance } from './commissions.ts'
import { duesOf, remindOf } from './money-of.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'
import { told } from './timers.ts'

/** So many days ahead things are announced. */
const AHEAD = 7
/** Money for work that is closed is asked for so many days, and of so many commissions of each kind at a time. */
const ASKED_FOR = 365
const CLOSED = 20
/** So many steps are named as next. */
const NEXT = 6

/** What the day begins with. */
export const todayRequests = [
  request({
    name: 'today.show',
    kind: 'query',
    about: 'What to do next, what is late, whom to ring, what arrives, and the timer that runs.',
    input: z.strictObject({}),
    run: (_, context) => {
      const { db } = context.store
      const day = today(context)
      const soon = addDays(day, AHEAD)
      const timer = runningTimer(db)
      const plan = planFor(context, { odds: false })
      const open = openCommissions(db)
      return {
        day,
        timer: timer === undefined ? null : told(timer, context),
        next: nextSteps(plan, context),
        late: plan.commissions.filter(({ late, never }) => (late !== null && late > 0) || never.length > 0),
        fittings: fittingsSoon(day, soon, context),
        arriving: arriving(soon, context),
        ring: [...moneyDue(open, day, context), ...silent(day, context)],
        week: plan.weeks.slice(0, 6),
      }
    },
  }),
]

/** What she sees to herself before a step can be taken; and what nobody here can hasten. */
const TO_DO = [
  'waits.toBuy',
  'waits.unpromised',
  'waits.fittingNotBooked',
  'waits.fittingNotWritten',
] as const
const IN_THE_WAY = ['waits.coming', 'waits.coming.noDay', 'waits.fitting']

/**
 * The steps that the plan begins with today, and after them the next ones of what is most pressing; what cannot be gone on
 * with comes last. Where something is to be seen to first, that is what there is to do.
 */
function nextSteps(plan: ReturnType<typeof planFor>, context: Context) {
  const now = new Set(plan.today.map(({ job }) => job))
  // What is late should have been begun before any day that is left; what nobody waits for comes last.
  const urgency = new Map(
    plan.commissions.map(({ id, late, latestStart }) => [
      id,
      latestStart ?? (late !== null && late > 0 ? '' : '9999'),
    ]),
  )
  const takesUp = ({ id, first }: { id: string; first: string | null }) => first !== null || now.has(id)
  return atAGlance(openCommissions(context.store.db), context)
    .flatMap(({ id, number, customer, garments }) =>
      garments.flatMap(({ id: garmentId, title, next, waits }) => {
        if (next === null) return []
        // Cloth that waits to be washed holds nothing up: its washing is a step like others.
        const held = waits.filter(({ code }) => code !== 'waits.wash')
        const first =
          TO_DO.flatMap((todo) => (held.some(({ code }) => code === todo) ? [todo] : []))[0] ?? null
        return [{ ...next, garmentId, title, first, waits: held, commissionId: id, number, customer }]
      }),
    )
    .sort(
      (a, b) =>
        Number(stands(a)) - Number(stands(b)) ||
        Number(takesUp(b)) - Number(takesUp(a)) ||
        urgency.get(a.commissionId)!.localeCompare(urgency.get(b.commissionId)!),
    )
    .slice(0, NEXT)
}

/** Whether nothing can be done for a step but wait. */
const stands = ({ first, waits }: { first: string | null; waits: readonly Phrase[] }): boolean =>
  first === null && waits.some(({ code }) => IN_THE_WAY.includes(code))

function fittingsSoon(day: string, soon: string, { store: { db } }: Context) {
  const rows = fittingsFrom(db, day).filter(({ fitting }) => fitting.day <= soon)
  const names = clientNames(
    db,
    rows.map(({ customerId }) => customerId),
  )
  return rows.map(({ fitting: { id, day: on, time, commissionId }, number, customerId }) => ({
    ...{ id, day: on, time, number, commissionId },
    customer: names.get(customerId) ?? '',
  }))
}

function arriving(soon: string, { store: { db } }: Context) {
  const names = new Map(listCloths(db).map(({ id, name }) => [id, name]))
  return awaitedLengths(db)
    .filter(({ expectedDay }) => expectedDay === null || expectedDay <= soon)
    .map(({ id, clothId, expectedDay, supplier }) => ({
      ...{ id, expectedDay, supplier, cloth: names.get(clothId) ?? '' },
    }))
}

/** Customers of whom money is due, and has been for long enough to ask: of open work, and of what is handed over or called off. */
function moneyDue(open: readonly CommissionRow[], day: string, context: Context) {
  const { db } = context.store
  // Each for itself: of what was called off hardly anything is owed, and it must not crowd out what was handed over.
  const closed = (['delivered', 'cancelled'] as const).flatMap((state) =>
    unsettledCommissions(db, state, addDays(day, -ASKED_FOR), CLOSED),
  )
  const dues = duesOf([...open, ...closed], context)
  const rows = [...open, ...closed].flatMap((row) => {
    const due = dues.get(row.id)!
    const remind = remindOf(due)
    return due.due.minor > 0 && remind !== null && remind <= day ? [{ row, amount: due.due }] : []
  })
  const names = clientNames(
    db,
    rows.map(({ row }) => row.customerId),
  )
  return rows.map(({ row: { id, number, customerId }, amount }) => ({
    ...{ why: 'due' as const, customer: names.get(customerId) ?? '', number },
    ...{ commissionId: id, quoteId: null, amount },
  }))
}

/** Quotes that have stood without an answer and will soon stand no longer. */
const silent = (day: string, { store: { db } }: Context) =>
  listQuotes(db, 200).flatMap(({ id, number, state, short }) =>
    state === 'sent' && short.validUntil >= day && short.validUntil <= addDays(day, AHEAD)
      ? [
          {
            why: 'silent' as const,
            ...{ customer: short.customer, number, commissionId: null, quoteId: id, amount: short.total },
          },
        ]
      : [],
  )
