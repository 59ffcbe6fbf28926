import { z } from 'zod'
import { type Account, accountOf, overrunOf, type Totals, together, totalsOf } from '../plan/account.ts'
import { adviceFrom } from '../plan/advice.ts'
import { spentByStep } from '../plan/logged.ts'
import { lineAsTaken } from '../quote/options.ts'
import {
  accountsByClient,
  accountsByCommission,
  accountsByConstruction,
  accountsByMonth,
  allAccounts,
  keepAccounts,
  worstOverrun,
} from '../store/accounts.ts'
import {
  actualsOf,
  type CommissionRow,
  garmentsOfCommission,
  getCommission,
  getGarment,
  setActual,
  stepsOfGarments,
  updateCommission,
} from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { timesOfCommission } from '../store/times.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { spentOf, stepsOf } from './pace.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

const metres = z.number().min(0).max(100_000).nullable()

/** What became of the work: delivered, and quoted against actual. */
export const deliveryRequests = [
  request({
    name: 'garment.took',
    kind: 'command',
    about:
      'Writes down what a garment really took: length of cloth, and thread in metres. Null takes it back.',
    input: z.strictObject({
      garmentId: inputs.id,
      cloth: inputs.length.nullable().default(null).describe('of its own cloth, as bought'),
      handThread: metres.default(null),
      machineThread: metres.default(null),
    }),
    run: ({ garmentId, cloth, ...threads }, context) => {
      const { db } = context.store
      getGarment(db, garmentId, 'garmentId')
      const { unit } = settingsOf(context).letterhead
      const length = cloth === null ? null : refusingAt('cloth', () => readLength(cloth, unit))
      const before = actualsOf(db, [garmentId])[0] ?? null
      setActual(db, { garmentId, cloth: length, ...threads })
      accountsAnew(getGarment(db, garmentId).commissionId, context)
      recorded(context, 'garment.took', 'garment', garmentId, before, actualsOf(db, [garmentId])[0])
      return { took: actualsOf(db, [garmentId])[0]! }
    },
  }),
  request({
    name: 'commission.deliver',
    kind: 'command',
    about: 'Notes that a commission is delivered. What is quoted and what it took can then be compared.',
    input: z.strictObject({
      id: inputs.id,
      revision: inputs.revision,
      day: inputs.day.optional().describe('today, if not said'),
    }),
    run: ({ id, revision, day }, context) => {
      const before = getCommission(context.store.db, id)
      if (before.state !== 'open')
        throw new Refusal(phrase('refusal.plan.closed', { number: before.number }), 'id')
      return delivered(before, revision, 'commission.deliver', day ?? today(context), context)
    },
  }),
  request({
    name: 'commission.reopen',
    kind: 'command',
    about: 'Takes a delivery back: the commission is open again.',
    input: z.strictObject({ id: inputs.id, revision: inputs.revision }),
    run: ({ id, revision }, context) => {
      const before = getCommission(context.store.db, id)
      if (before.state !== 'delivered')
        throw new Refusal(phrase('refusal.plan.notDelivered', { number: before.number }), 'id')
      return delivered(before, revision, 'commission.reopen', null, context)
    },
  }),
  request({
    name: 'commission.account',
    kind: 'query',
    about: 'Quoted against actual for one commission: cloth, thread, hours, and what an hour earned.',
    input: z.strictObject({ id: inputs.id }),
    run: ({ id }, context) => accountFor(getCommission(context.store.db, id), context),
  }),
  request({
    name: 'accounts.list',
    kind: 'query',
    about:
      'Quoted against actual for what was delivered, all of it or within some days: by month, construction, client and commission, and what to change.',
    input: z.strictObject({
      most: z.int().min(1).max(1000).default(60),
      from: inputs.day.optional().describe('the first day of delivery that counts'),
      to: inputs.day.optional().describe('the last'),
    }),
    run: ({ most, ...days }, context) => {
      const { db } = context.store
      const { currency, targetPerHour } = settingsOf(context).rates
      const summed = <T extends Totals>(row: T) => together(row, currency)
      const all = allAccounts(db, days)
      return {
        commissions: accountsByCommission(db, days, most).map((row) => ({
          ...{ id: row.id, number: row.number, customer: row.customer, deliveredDay: row.deliveredDay },
          together: summed(row),
        })),
        months: accountsByMonth(db, days, most).map((row) => ({ month: row.month, together: summed(row) })),
        constructions: accountsByConstruction(db, days).map((row) => ({
          ...{ id: row.id, title: row.title, together: summed(row) },
        })),
        clients: accountsByClient(db, days, most).map((row) => ({
          ...{ id: row.id, name: row.name, together: summed(row) },
        })),
        together: summed(all),
        targetPerHour,
        advice: adviceFrom(all, targetPerHour, worstOverrun(db, days)),
      }
    },
  }),
]

/** Keeps the accounts of a commission up to date, once it is delivered: lists add them up without opening quotes. */
export function accountsAnew(commissionId: string, context: Context): void {
  const { db } = context.store
  const row = getCommission(db, commissionId)
  const garments = row.state === 'delivered' ? accountFor(row, context).garments : []
  keepAccounts(
    db,
    commissionId,
    garments.map(({ id, construction, account }) => ({
      ...{ garmentId: id, commissionId, customerId: row.customerId, construction, account },
      deliveredDay: row.deliveredDay ?? row.day,
    })),
  )
}

function delivered(
  before: CommissionRow,
  revision: number,
  name: string,
  day: string | null,
  context: Context,
) {
  const changes = { state: day === null ? ('open' as const) : ('delivered' as const), deliveredDay: day }
  const commission = updateCommission(context.store.db, before, revision, changes)
  accountsAnew(before.id, context)
  recorded(context, name, 'commission', before.id, { state: before.state }, changes)
  return { commission }
}

/** The account of a commission, garment by garment and together. */
function accountFor(row: CommissionRow, context: Context) {
  const { db } = context.store
  const { snapshot } = getQuote(db, row.quoteId)
  const garments = garmentsOfCommission(db, row.id)
  const ids = garments.map(({ id }) => id)
  const times = timesOfCommission(db, row.id).filter(({ removedAt }) => removedAt === null)
  const spent = spentByStep(times.map(spentOf), stepsOf(times, context))
  const actuals = new Map(actualsOf(db, ids).map((one) => [one.garmentId, one]))
  const steps = stepsOfGarments(db, ids)
  const accounts = garments.map((garment) => {
    const line = lineAsTaken(snapshot, garment)
    const own = steps.filter(({ garmentId }) => garmentId === garment.id)
    const logged = own.filter(({ id }) => spent.has(id))
    // A step whose time nobody logged is taken as it was quoted, as long as anything was logged at all.
    const minutes = own.reduce((sum, { id, minutes: quoted }) => sum + (spent.get(id) ?? quoted.mean), 0)
    const { cloth = null, handThread = null, machineThread = null } = actuals.get(garment.id) ?? {}
    const took = { cloth, handThread, machineThread, minutes: logged.length > 0 ? minutes : null }
    const timed = own.map(({ id, name, minutes: quoted }) => ({
      ...{ id, name, quoted: quoted.mean, actual: spent.get(id) ?? null },
    }))
    const account: Account = {
      ...accountOf(line.estimate, line.cloth.pricePerMetre, took),
      ...{ inPart: logged.length > 0 && logged.length < own.length, overrun: overrunOf(timed) },
    }
    return {
      ...{ id: garment.id, title: line.title, construction: line.construction, account, steps: timed },
      wearer: line.wearer.name,
    }
  })
  return {
    customer: snapshot.customer.name,
    garments: accounts,
    together: together(totalsOf(accounts.map(({ account }) => account)), snapshot.total.currency),
  }
}
