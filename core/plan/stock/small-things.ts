import type { Day } from '../../words/dates.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { dayOf } from './acts.ts'
import { fromHundredths, hundredths } from './exact.ts'

/** How a shop sells small things. */
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
  | PutBack

/**
 * What was used for a garment was not used after all. So much of it lies in the drawer again as `back` says; the rest was
 * counted there meanwhile.
 */
type PutBack = { kind: 'putBack'; day: Day; amount: number; back: number; garmentId: string }

/** `came + changed = used + left`, to the hundredth; what was put back is not used. */
export type SmallBalance = { came: number; used: number; changed: number; left: number }

/** The most that anyone may write down at once: a million metres, pieces or mm. */
const MOST = 1_000_000

/** How a small thing stands, counted as its sort is. @throws Error when more was used than there was */
export function smallBalanceOf(moves: readonly SmallMove[]): SmallBalance {
  let [came, used, changed, left] = [0, 0, 0, 0]
  for (const move of moves) {
    const now = hundredths(move.amount)
    const before = left
    switch (move.kind) {
      case 'came':
        came += now
        left += now
        break
      case 'used':
        used += now
        left -= now
        break
      case 'counted':
        left = now
        changed += now - before
        break
      case 'putBack':
        left += hundredths(move.back)
        used -= now
        changed += hundredths(move.back) - now
    }
    // `takeFrom` refuses whatever would end in this.
    if (left < 0) throw new Error('the ledger of a small thing does not add up')
  }
  const of = fromHundredths
  return { came: of(came), used: of(used), changed: of(changed), left: of(left) }
}

/** So many reels, skeins or packets came in; of what is sold by the metre, so many steps of the shop. */
export const packsIn = (thing: SmallThing, act: { day: Day; packs: number }): SmallMove =>
  takeIn(thing, { day: act.day, amount: act.packs * thing.pack })

/**
 * So much came in: metres of thread, pieces, or mm.
 * @throws Refusal when there is no such day, or it is no amount of such a thing
 */
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

/**
 * Takes for a garment, once it is sewn, what it needed: all of it, or what there is. Nothing where the thing was never
 * counted, for then nobody knows what is there, or where it was taken for the garment already.
 */
export function takeForSewn(
  thing: SmallThing,
  moves: readonly SmallMove[],
  { amount, ...act }: { day: Day; amount: number; garmentId: string },
): SmallMove | undefined {
  const much = Math.min(amount, smallBalanceOf(moves).left)
  if (moves.length === 0 || hundredths(much) === 0 || takenFor(moves, act.garmentId).amount > 0)
    return undefined
  return takeFrom(thing, moves, { ...act, amount: fromHundredths(hundredths(much)) })
}

/** Puts back what was taken for a garment, which is not sewn after all; nothing where nothing was. */
export function putBack(
  moves: readonly SmallMove[],
  { day, garmentId }: { day: Day; garmentId: string },
): SmallMove | undefined {
  const { amount, back } = takenFor(moves, garmentId)
  return amount === 0 ? undefined : { kind: 'putBack', day: dayOf({ day }), amount, back, garmentId }
}

/** What is taken for a garment now, and how much of that since the drawer was last counted. */
function takenFor(moves: readonly SmallMove[], garmentId: string) {
  const sums = { amount: 0, back: 0 }
  for (const move of moves) {
    if (move.kind === 'counted') sums.back = 0
    if (!('garmentId' in move) || move.garmentId !== garmentId) continue
    sums.amount = move.kind === 'used' ? sums.amount + hundredths(move.amount) : 0
    sums.back = move.kind === 'used' ? sums.back + hundredths(move.amount) : 0
  }
  return { amount: fromHundredths(sums.amount), back: fromHundredths(sums.back) }
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
