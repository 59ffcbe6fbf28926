import { z } from 'zod'
import { keepAccounts } from '../store/accounts.ts'
import {
  actualsOf,
  type CommissionRow,
  getCommission,
  getGarment,
  setActual,
  updateCommission,
} from '../store/commissions.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { accountFor } from './account-for.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'
import { whatItCameTo } from './what-it-came-to.ts'

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
      'Quoted against actual for what was delivered, all of it or within some days: by month, construction, client and commission, which was badly paid and why, what to change, and what is logged on work not yet delivered.',
    input: z.strictObject({
      most: z.int().min(1).max(1000).default(60),
      from: inputs.day.optional().describe('the first day of delivery that counts'),
      to: inputs.day.optional().describe('the last'),
    }),
    run: ({ most, ...days }, context) => whatItCameTo(days, most, context),
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
