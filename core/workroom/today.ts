import { z } from 'zod'
import { clientNames } from '../store/clients.ts'
import { listCloths } from '../store/cloths.ts'
import { openCommissions } from '../store/commissions.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { awaitedLengths } from '../store/stock.ts'
import { runningTimer } from '../store/times.ts'
import { addDays } from '../words/dates.ts'
import type { Phrase } from '../words/phrase.ts'
import { planFor } from './calendar.ts'
import { atAGlance } from './commissions.ts'
import { type Context, request } from './request.ts'
import { today } from './settings.ts'
import { clothOrderDays } from './shopping.ts'
import { told } from './timers.ts'
import { whomToRing } from './whom-to-ring.ts'

/** So many days ahead things are announced. */
const AHEAD = 7
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
        ring: whomToRing(open, day, context),
        week: plan.weeks.slice(0, 6),
      }
    },
  }),
]

/** What she sees to herself before a step can be taken; and what nobody here can hasten. */
const TO_DO = [
  'waits.deposit',
  'waits.toBuy',
  'waits.unpromised',
  'waits.unpromised.coming',
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
  const steps = atAGlance(openCommissions(context.store.db), context)
    .flatMap(({ id, number, customer, garments }) =>
      garments.flatMap(({ id: garmentId, title, wearer, next, waits }) => {
        if (next === null) return []
        // Cloth that waits to be washed holds nothing up: its washing is a step like others.
        const held = waits.filter(({ code }) => code !== 'waits.wash')
        const first =
          TO_DO.flatMap((todo) => (held.some(({ code }) => code === todo) ? [todo] : []))[0] ?? null
        const about = { garmentId, title, wearer, commissionId: id, number, customer }
        return [{ ...next, ...about, first, waits: held, stands: stands({ first, waits: held }) }]
      }),
    )
    .sort(
      (a, b) =>
        Number(a.stands) - Number(b.stands) ||
        Number(takesUp(b)) - Number(takesUp(a)) ||
        urgency.get(a.commissionId)!.localeCompare(urgency.get(b.commissionId)!),
    )
    .slice(0, NEXT)
  // The list is long work, and on most days nothing is to be ordered.
  const orders = steps.some(toOrder) ? clothOrderDays(context) : undefined
  return steps.map((step) => ({
    ...step,
    orderBy: toOrder(step) ? (orders?.get(step.garmentId) ?? null) : null,
  }))
}

const toOrder = ({ first }: { first: string | null }): boolean => first === 'waits.toBuy'

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
