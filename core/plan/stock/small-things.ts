import type { Day } from '../../words/dates.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { dayOf } from './acts.ts'
import { fromHundredths, hundredths } from './exact.ts'

export const SOLD_BY = ['reel', 'skein', 'piece', 'metre'] as const
export type SoldBy = (typeof SOLD_BY)[number]

/**
 * A sort of thread or a notion. It is counted in metres of thread where it is sold by reel or skein, in whole pieces,
 * or, where it is sold by the metre, in mm.
 */
export type SmallThing = {
  id: string
  kind: 'thread' | 'notion'
  soldBy: SoldBy
  /** So much is bought at once: metres on a reel, pieces in a packet, the step a shop cuts by in mm. */
  pack: number
}

/** One line of the ledger of a small thing: what came in, what was used, and what was there when it was counted. */
export type SmallMove =
  | { kind: 'came' | 'counted'; day: Day; amount: number }
  | { kind: 'used'; day: Day; amount: number; garmentId?: string | undefined }

/** `came + changed = used + left`, to the hundredth. */
export type SmallBalance = { came: number; used: number; changed: number; left: number }

/** The most that anyone may write down at once: a million metres, pieces or mm. */
const MOST = 1_000_000

export function smallBalanceOf(moves: readonly SmallMove[]): SmallBalance {
  let [came, used, changed, left] = [0, 0, 0, 0]
  for (const { kind, amount } of moves) {
    const now = hundredths(amount)
    if (kind === 'came') came += now
    if (kind === 'used') used += now
    if (kind === 'counted') changed += now - left
    left = kind === 'counted' ? now : kind === 'came' ? left + now : left - now
    // `takeFrom` refuses whatever would end in this.
    if (left < 0) throw new Error('the ledger of a small thing does not add up')
  }
  const of = fromHundredths
  return { came: of(came), used: of(used), changed: of(changed), left: of(left) }
}

/** So many reels, skeins or packets came in; of what is sold by the metre, so many steps of the shop. */
export const packsIn = (thing: SmallThing, act: { day: Day; packs: number }): SmallMove =>
  takeIn(thing, { day: act.day, amount: act.packs * thing.pack })

export const takeIn = (thing: SmallThing, act: { day: Day; amount: number }): SmallMove => ({
  ...{ kind: 'came', day: dayOf(act), amount: amountOf(thing, act) },
})

/** @throws Refusal when there is not so much */
export function takeFrom(
  thing: SmallThing,
  moves: readonly SmallMove[],
  act: { day: Day; amount: number; garmentId?: string | undefined },
): SmallMove {
  const amount = amountOf(thing, act)
  const { left } = smallBalanceOf(moves)
  if (amount > left)
    throw new Refusal(phrase(`refusal.stock.small.none.${thing.soldBy}`, { asked: amount, left }), 'amount')
  const { garmentId } = act
  return { kind: 'used', day: dayOf(act), amount, ...(garmentId === undefined ? {} : { garmentId }) }
}

/** Counted again: so much is there, be it nothing. */
export const recount = (thing: SmallThing, act: { day: Day; amount: number }): SmallMove => ({
  kind: 'counted',
  ...{ day: dayOf(act), amount: act.amount === 0 ? 0 : amountOf(thing, act) },
})

/** An amount that goes into a ledger, to the hundredth; pieces are whole. */
function amountOf({ soldBy }: SmallThing, { amount }: { amount: number }): number {
  const read = fromHundredths(hundredths(amount))
  if (!(read > 0 && read <= MOST)) throw new Refusal(phrase('refusal.stock.small.amount'), 'amount')
  if (soldBy === 'piece' && !Number.isInteger(amount))
    throw new Refusal(phrase('refusal.stock.small.whole'), 'amount')
  return read
}
