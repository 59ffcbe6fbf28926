import { estimatesIn } from '../draft/construction.ts'
import { dueNow } from '../plan/money/due.ts'
import type { Part } from '../plan/money/types.ts'
import type { StageState } from '../plan/steps.ts'
import { offerFor } from '../plan/stock/offer.ts'
import { type ClothState, type Wait, waitsFor } from '../plan/waits.ts'
import { scheduleFor } from '../quote/schedule.ts'
import type { CommissionRow, GarmentRow, StepRow } from '../store/commissions.ts'
import { firstPiecesCut } from '../store/cut-pieces.ts'
import { fittingsFrom } from '../store/fittings.ts'
import { draftsOf } from '../store/garment-drafts.ts'
import { paymentsOf } from '../store/money.ts'
import type { Db } from '../store/open.ts'
import { quoteSnapshots } from '../store/quotes.ts'
import { addDays } from '../words/dates.ts'
import { type Money, noMoney } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { lineAsMade } from './as-made.ts'
import { constructionFor } from './constructions.ts'
import { agreedOn, paymentOf } from './money-of.ts'
import { needOn } from './needs.ts'
import type { Context } from './request.ts'
import { today } from './settings.ts'
import { lengthsIn } from './stock.ts'

/** Fittings that were not written down are asked for so many days back. */
const LOOKED_BACK = 60

type Commissions = ReadonlyMap<string, CommissionRow>
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
  const byPiece = new Set(
    firstPiecesCut(context.store.db, [...commissions.keys()]).map(({ garmentId }) => garmentId),
  )
  const cut = (id: string) =>
    byPiece.has(id) || (stages.get(id) ?? []).some(({ stage, done }) => stage === 'cut' && done > 0)
  const uncut = making.filter(({ id }) => !cut(id))
  const known = quotedOf(uncut, commissions, context)
  const deposits = depositsOf(uncut, commissions, known, context)
  const cloths = clothsOf(uncut, known, context)
  const fittings = fittingsFrom(context.store.db, addDays(day, -LOOKED_BACK)).map(({ fitting }) => fitting)
  return new Map(
    making.map(({ id, commissionId }) => {
      const row = commissions.get(commissionId)!
      const fitting = fittings.find(
        (one) => one.garmentId === id || (one.garmentId === null && one.commissionId === commissionId),
      )
      const waits = waitsFor(open.get(id)!, cut(id), {
        ...{ today: day, fitting: fitting?.day ?? null, cloth: cloths.get(id) ?? null },
        deposit: deposits.get(commissionId) ?? noMoney(row.currency),
        estimated: known.get(id)?.estimated ?? 0,
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
    case 'measures':
      return phrase(wait.count === 1 ? 'waits.measures.one' : 'waits.measures', { count: wait.count })
    case 'fitting':
    case 'fittingNotWritten':
      return phrase(`waits.${wait.for}`, { day: { date: wait.day } })
    default:
      return phrase(`waits.${wait.for}`)
  }
}

type Need = NonNullable<ReturnType<typeof needOn>>
/** What a quote says of one of its garments. */
type Quoted = { need: Need | undefined; estimated: number; schedule: Part[] }
type Known = ReadonlyMap<string, Quoted>
/** A quote is frozen, and so is every draft: what was read of them is opened once for as long as the store is. */
const READ = new WeakMap<Db, Map<string, Quoted>>()

/** By garment what its quote says of it; quotes that were not read yet are opened together. */
function quotedOf(garments: readonly GarmentRow[], commissions: Commissions, context: Context): Known {
  const { db } = context.store
  const read = READ.get(db) ?? new Map<string, Quoted>()
  READ.set(db, read)
  const ids = garments.map(({ id }) => id)
  const drafts = new Map(draftsOf(db, ids).map(({ garmentId, number }) => [garmentId, number]))
  const keyOf = ({ id, quoteGarmentId, option }: GarmentRow) =>
    `${id} ${quoteGarmentId} ${option} ${drafts.get(id) ?? 1}`
  const fresh = garments.filter((garment) => !read.has(keyOf(garment)))
  const rowOf = ({ commissionId }: GarmentRow) => commissions.get(commissionId)!
  const snapshots = quoteSnapshots(
    db,
    fresh.map((garment) => rowOf(garment).quoteId),
  )
  for (const garment of fresh) {
    const row = rowOf(garment)
    const snapshot = snapshots.get(row.quoteId)!
    const line = lineAsMade(snapshot, garment, context)
    read.set(keyOf(garment), {
      need: needOn(garment.id, line),
      estimated: estimatesIn(constructionFor(line.construction, context), line.body).length,
      schedule: scheduleFor(snapshot, agreedOn(row)),
    })
  }
  return new Map(garments.map((garment) => [garment.id, read.get(keyOf(garment))!]))
}

/** By commission what is left of the payment at acceptance, of those that have garments to cut. */
function depositsOf(uncut: readonly GarmentRow[], open: Commissions, known: Known, { store }: Context) {
  const schedules = new Map(uncut.map(({ id, commissionId }) => [commissionId, known.get(id)!.schedule]))
  const payments = Map.groupBy(
    paymentsOf(store.db, [...schedules.keys()]),
    ({ commissionId }) => commissionId,
  )
  return new Map(
    [...schedules].map(([id, quoted]): [string, Money] => {
      const row = open.get(id)!
      const schedule = row.schedule.length > 0 ? row.schedule : quoted
      const paid = (payments.get(id) ?? []).map(paymentOf)
      return [id, dueNow({ total: agreedOn(row), schedule }, paid, { acceptance: row.day }).due]
    }),
  )
}

/** By garment how its cloth is off. A workroom that keeps no shelf in here is told nothing of cloth. */
function clothsOf(uncut: readonly GarmentRow[], known: Known, context: Context): Map<string, ClothState> {
  const lengths = lengthsIn(context)
  if (lengths.length === 0) return new Map()
  const here = lengths.flatMap(({ row, length }) => (row.arrivedDay === null ? [] : [length]))
  const held = new Map(
    lengths.flatMap(({ row, length }) =>
      length.reservedFor.map(({ garmentId }): [string, ClothState] => [
        garmentId,
        row.arrivedDay === null ? { at: 'coming', day: row.expectedDay } : { at: 'here' },
      ]),
    ),
  )
  return new Map(
    uncut.flatMap(({ id }): [string, ClothState][] => {
      const quoted = known.get(id)!.need
      if (quoted === undefined) return []
      const promised = held.get(id)
      if (promised !== undefined) return [[id, promised]]
      const { offers, buy } = offerFor(quoted.need, here, quoted.increment)
      if (offers.length > 0) return [[id, { at: 'unpromised' }]]
      return buy === undefined ? [] : [[id, { at: 'toBuy', mm: buy.toBuy }]]
    }),
  )
}
