import type { ThreadUse } from '../sew/types.ts'
import { type Money, shareOf } from '../words/money.ts'

/** A sort of thread as it is bought: its name says fibre, fineness and colour as the label does. */
export type ThreadSort = {
  name: string
  metresPerReel: number
  pricePerReel: Money
  /** Thread for hand work often comes in skeins. */
  soldAs?: 'reel' | 'skein' | undefined
}

/** Another sort in the drawer: another colour, or finer. */
export type OtherThread = ThreadSort & { id: string; work: ThreadUse['work'] }

/** The thread the workroom sews with, by hand and by machine. */
export type ThreadStock = Record<ThreadUse['work'], ThreadSort>

/**
 * What the thread of a garment costs: the part of a reel it takes, for the rest serves the next garment,
 * and the reels that must be at hand, which are whole.
 */
export function threadCost(
  { work, metres }: ThreadUse,
  stock: ThreadStock,
): { sort: ThreadSort; amount: Money; reels: number } {
  const sort = stock[work]
  const amount = shareOf(sort.pricePerReel, Math.ceil(metres * 100), sort.metresPerReel * 100)
  return { sort, amount, reels: Math.ceil(metres / sort.metresPerReel) }
}
