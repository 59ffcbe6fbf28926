import { estimatesIn } from '../draft/construction.ts'
import type { Part } from '../plan/money/types.ts'
import type { StageState } from '../plan/steps.ts'
import type { ClothNeed } from '../plan/stock/need.ts'
import type { ClothState } from '../plan/waits.ts'
import { scheduleFor } from '../quote/schedule.ts'
import type { CommissionRow, GarmentRow } from '../store/commissions.ts'
import { firstPiecesCut } from '../store/cut-pieces.ts'
import { draftsOf } from '../store/garment-drafts.ts'
import type { Db } from '../store/open.ts'
import { quoteSnapshots } from '../store/quotes.ts'
import { lineAsMade } from './as-made.ts'
import { clothStates } from './cloth-states.ts'
import { constructionFor } from './constructions.ts'
import { agreedOn } from './money-of.ts'
import { needsOn } from './needs.ts'
import type { Context } from './request.ts'

type Commissions = ReadonlyMap<string, CommissionRow>
type Asked = {
  commissions: Commissions
  garments: readonly GarmentRow[]
  /** By garment how far its stages are. */
  stages: ReadonlyMap<string, readonly Pick<StageState, 'stage' | 'done'>[]>
}

/** Work that still waits for its first cut. */
export type Uncut = {
  uncut: GarmentRow[]
  quoted: QuotedGarments
  /** By garment how its cloth is off; nothing of a garment that needs none. */
  cloths: Map<string, ClothState>
}

/** The garments nothing of which is cut yet, with what their quotes say of them and how their cloth is off. */
export function uncutWork({ commissions, garments, stages }: Asked, context: Context): Uncut {
  const byPiece = new Set(
    firstPiecesCut(context.store.db, [...commissions.keys()]).map(({ garmentId }) => garmentId),
  )
  const doneOf = (id: string) => (stages.get(id) ?? []).filter(({ done }) => done > 0)
  const uncut = garments.filter(
    ({ id }) => !byPiece.has(id) && doneOf(id).every(({ stage }) => stage !== 'cut'),
  )
  const quoted = quotedOf(uncut, commissions, context)
  const cloths = clothStates(
    uncut.map(({ id, commissionId }) => ({
      ...{ id, needs: quoted.get(id)!.needs, touched: doneOf(id).length > 0 },
      accepted: commissions.get(commissionId)!.day,
    })),
    context,
  )
  return { uncut, quoted, cloths }
}

/** What a quote says of one of its garments. */
export type Quoted = { needs: ClothNeed[]; estimated: number; schedule: Part[] }
export type QuotedGarments = ReadonlyMap<string, Quoted>
/** A quote is frozen, and so is every draft: what was read of them is opened once for as long as the store is. */
const READ = new WeakMap<Db, Map<string, Quoted>>()

/** By garment what its quote says of it; quotes that were not read yet are opened together. */
function quotedOf(
  garments: readonly GarmentRow[],
  commissions: Commissions,
  context: Context,
): QuotedGarments {
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
      needs: needsOn(garment.id, line),
      estimated: estimatesIn(constructionFor(line.construction, context), line.body).length,
      schedule: scheduleFor(snapshot, agreedOn(row)),
    })
  }
  return new Map(garments.map((garment) => [garment.id, read.get(keyOf(garment))!]))
}
