import { type Account, accountOf, overrunOf, together, totalsOf } from '../plan/account.ts'
import { askedFor, askedTogether, costsOf, costsTogether } from '../plan/asked.ts'
import { spentByStep } from '../plan/logged.ts'
import { lineAsTaken } from '../quote/options.ts'
import { actualsOf, type CommissionRow, garmentsOfCommission, stepsOfGarments } from '../store/commissions.ts'
import { getQuote } from '../store/quotes.ts'
import { timesOfCommission } from '../store/times.ts'
import { spentOf, stepsOf } from './pace.ts'
import type { Context } from './request.ts'

/** The account of a commission, garment by garment and together. */
export function accountFor(row: CommissionRow, context: Context) {
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
      ...{ asked: askedFor(line.estimate.price), costs: costsOf(line.estimate.price, account) },
      wearer: line.wearer.name,
    }
  })
  return {
    customer: snapshot.customer.name,
    garments: accounts,
    asked: askedTogether(
      accounts.map(({ asked }) => asked),
      snapshot.total.currency,
    ),
    sums: costsTogether(
      accounts
        .filter(({ account }) => account.left.actual !== null)
        .map(({ account, costs }) => ({ ...account, costs })),
      snapshot.total.currency,
    ),
    together: together(totalsOf(accounts.map(({ account }) => account)), snapshot.total.currency),
  }
}
