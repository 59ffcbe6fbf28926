import { entriesOf } from '../sew/work.ts'
import {
  getCommission,
  getGarment,
  getStep,
  type StepRow,
  setActual,
  updateCommission,
} from '../store/commissions.ts'
import { setQuoteState } from '../store/quotes.ts'
import { insertTime } from '../store/times.ts'
import type { Money } from '../words/money.ts'
import { commissionFrom } from './commissions.ts'
import { accountsAnew } from './deliveries.ts'
import { moneyOf } from './money-of.ts'
import { invoiced, paid } from './payments.ts'
import { saveQuote } from './quotes.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { tickStep } from './ticks.ts'

const DAY = 86_400_000
const gbp = (minor: number): Money => ({ minor, currency: 'GBP' })

/** Work of the last months: for whom and of what, so many days ago, and at so many times the standard minutes. */
type Past = {
  construction: string
  /** Places of the payer and the wearer among the sample's people, and of the cloth. */
  payer: number
  wearer: number
  cloth: number
  accepted: number
  delivered: number
  pace: number
  /** Steps that took so many times the standard instead. */
  slow?: Record<string, number>
  /** Agreed before tax, in the place of the reckoned price. */
  price?: Money
  /** What cloth (mm) and thread (m) it took, where that was written down. */
  took?: { cloth: number; handThread: number; machineThread: number }
  /** Whether the rest is still to be paid. */
  owing?: true
}

const PAST: readonly Past[] = [
  { construction: 'shift', payer: 1, wearer: 1, cloth: 0, accepted: 152, delivered: 131, pace: 1.35 },
  {
    ...{ construction: 'shirt', payer: 2, wearer: 2, cloth: 0, accepted: 121, delivered: 97, pace: 1.25 },
    took: { cloth: 2700, handThread: 61, machineThread: 0 },
  },
  { construction: 'petticoat', payer: 0, wearer: 0, cloth: 1, accepted: 90, delivered: 72, pace: 1.2 },
  {
    // Priced by guess for a good customer, and hemmed at night.
    ...{ construction: 'circleCloak', payer: 3, wearer: 1, cloth: 2, accepted: 63, delivered: 41, pace: 1.3 },
    ...{ slow: { bottom: 1.9 }, price: gbp(29_000), owing: true },
  },
  {
    // Its timer ran on over dinner while the seams were pressed.
    ...{ construction: 'overtunic', payer: 2, wearer: 2, cloth: 2, accepted: 30, delivered: 9, pace: 1.25 },
    ...{ slow: { pressSeams: 8 }, took: { cloth: 2600, handThread: 23, machineThread: 108 } },
  },
]

type Person = { id: string; set: string }
type Line = Parameters<typeof saveQuote>[0]['lines'][number]
type Made = Omit<
  Line,
  'wearerId' | 'measurementSetId' | 'clothId' | 'choices' | 'finishPlan' | 'construction'
>

/** Quotes, makes, delivers and is paid for the work of the last months, the oldest first; the commissions' ids. */
export const pastWork = (
  made: Made,
  people: readonly Person[],
  cloths: readonly string[],
  context: Context,
): string[] => PAST.map((past) => finished(past, made, people, cloths, context))

function finished(
  { construction, pace, slow = {}, price, took, owing, ...past }: Past,
  made: Made,
  people: readonly Person[],
  cloths: readonly string[],
  context: Context,
): string {
  const { db } = context.store
  const [payer, wearer] = [people[past.payer]!, people[past.wearer]!]
  const begun = ago(past.accepted, context)
  const line = {
    ...{ ...made, construction, wearerId: wearer.id, measurementSetId: wearer.set },
    ...{ clothId: cloths[past.cloth]!, choices: {}, finishPlan: 'machineWhereHidden' as const },
    price: price === undefined ? made.price : { ...made.price, set: price },
  }
  const quote = saveQuote({ customerId: payer.id, lines: [line] }, begun)
  setQuoteState(db, quote.id, 'accepted', begun.now())
  const { id, garments } = commissionFrom(quote, { dueDay: null, note: '', taken: {} }, begun)
  const row = () => getCommission(db, id)
  const pay = (at: Context) => {
    const { due } = moneyOf(row(), at)
    if (due.minor > 0)
      paid(row(), { kind: 'payment', amount: due, for: null, method: 'transfer', note: '' }, at)
  }
  pay(begun)
  const [garment] = garments
  const { steps } = garment!
  // A step on every few days, the last of them before it is handed over.
  const every = (past.accepted - past.delivered - 1) / steps.length
  for (const [i, step] of steps.entries()) {
    const then = ago(past.accepted - Math.floor(every * i), context)
    tickStep(step, then)
    logStep(step, slow[step.key] ?? pace, then)
  }
  if (took !== undefined) setActual(db, { garmentId: garment!.id, ...took })
  const out = ago(past.delivered, context)
  updateCommission(db, row(), row().revision, { state: 'delivered', deliveredDay: today(out) })
  accountsAnew(id, out)
  invoiced(row(), today(out), out)
  if (owing === undefined) pay(out)
  return id
}

/** The same so many days ago. */
const ago = (days: number, context: Context): Context => ({
  ...context,
  now: () => new Date(Date.parse(context.now()) - days * DAY).toISOString(),
})

/** Logs a step at so many times its standard minutes. */
export function logStep({ id, work }: StepRow, factor: number, context: Context): void {
  const minutes = Math.round(factor * entriesOf(work).reduce((sum, [, standard]) => sum + standard, 0))
  const { commissionId } = getGarment(context.store.db, getStep(context.store.db, id).garmentId)
  const row = {
    id: context.newId(),
    commissionId,
    day: today(context),
    minutes: Math.max(1, minutes),
    note: '',
  }
  insertTime(context.store.db, { ...row, createdAt: context.now() }, [id])
}
