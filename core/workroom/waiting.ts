import { dueNow } from '../plan/money/due.ts'
import type { StageState } from '../plan/steps.ts'
import { type Wait, waitsFor } from '../plan/waits.ts'
import type { CommissionRow, GarmentRow, StepRow } from '../store/commissions.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { paymentsOf } from '../store/money.ts'
import { addDays } from '../words/dates.ts'
import { type Money, noMoney } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { agreedOn, paymentOf } from './money-of.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { type QuotedGarments, uncutWork } from './uncut.ts'

/** Fittings that were not written down are asked for so many days back. */
const LOOKED_BACK = 60

type Asked = {
  rows: readonly CommissionRow[]
  garments: readonly GarmentRow[]
  /** By garment, the steps still to be done and how far its stages are. */
  open: ReadonlyMap<string, readonly StepRow[]>
  stages: ReadonlyMap<string, readonly Pick<StageState, 'stage' | 'done'>[]>
}

/** What each garment of open work waits for, in words; nothing is said of those that can go on, or are done. */
export function waitingFor({ rows, garments, open, stages }: Asked, context: Context): Map<string, Phrase[]> {
  const commissions = new Map(rows.filter(({ state }) => state === 'open').map((row) => [row.id, row]))
  const making = garments.filter(({ id, commissionId }) => commissions.has(commissionId) && open.has(id))
  if (making.length === 0) return new Map()
  const day = today(context)
  const { uncut, quoted, cloths } = uncutWork({ commissions, garments: making, stages }, context)
  const deposits = depositsOf(uncut, commissions, quoted, context)
  const fittings = fittingsFrom(context.store.db, addDays(day, -LOOKED_BACK)).map(({ fitting }) => fitting)
  return new Map(
    making.map(({ id, commissionId }) => {
      const row = commissions.get(commissionId)!
      const fitting = fittings.find(
        (one) => one.garmentId === id || (one.garmentId === null && one.commissionId === commissionId),
      )
      const waits = waitsFor(open.get(id)!, !quoted.has(id), {
        ...{ today: day, fitting: fitting?.day ?? null, cloth: cloths.get(id) ?? null },
        deposit: deposits.get(commissionId) ?? noMoney(row.currency),
        estimated: quoted.get(id)?.estimated ?? 0,
      })
      return [id, waits.map(said)]
    }),
  )
}

function said(wait: Wait): Phrase {
  switch (wait.for) {
    case 'deposit':
      return phrase('waits.deposit', { left: wait.left })
    case 'coming':
      return wait.day === null
        ? phrase('waits.coming.noDay')
        : phrase('waits.coming', { day: { date: wait.day } })
    case 'toBuy':
      return phrase('waits.toBuy', { length: { mm: wait.mm } })
    case 'unpromised':
      return phrase(wait.coming ? 'waits.unpromised.coming' : 'waits.unpromised')
    case 'measures':
      return phrase(wait.count === 1 ? 'waits.measures.one' : 'waits.measures', { count: wait.count })
    case 'fitting':
    case 'fittingNotWritten':
      return phrase(`waits.${wait.for}`, { day: { date: wait.day } })
    default:
      return phrase(`waits.${wait.for}`)
  }
}

/** By commission what is left of the payment at acceptance, of those that have garments to cut. */
function depositsOf(
  uncut: readonly GarmentRow[],
  open: ReadonlyMap<string, CommissionRow>,
  quoted: QuotedGarments,
  { store }: Context,
) {
  const schedules = new Map(uncut.map(({ id, commissionId }) => [commissionId, quoted.get(id)!.schedule]))
  const payments = Map.groupBy(
    paymentsOf(store.db, [...schedules.keys()]),
    ({ commissionId }) => commissionId,
  )
  return new Map(
    [...schedules].map(([id, asQuoted]): [string, Money] => {
      const row = open.get(id)!
      const schedule = row.schedule.length > 0 ? row.schedule : asQuoted
      const paid = (payments.get(id) ?? []).map(paymentOf)
      return [id, dueNow({ total: agreedOn(row), schedule }, paid, { acceptance: row.day }).due]
    }),
  )
}
