import type { OutputOf } from '../../core/workroom.ts'
import type { useTell } from '../workroom.tsx'

type Tell = ReturnType<typeof useTell>
/** A thread or notion of the drawer, and a line of the shopping list; each counted as it is sold. */
export type Supply = OutputOf<'supplies.list'>['supplies'][number]
export type Item = OutputOf<'shopping.list'>['suppliers'][number]['items'][number]
/** How a thing is counted; cloth, which is none of these, by its length. */
type SoldBy = Supply['soldBy'] | null

/** So much of a thing: metres of thread to the tenth, pieces, or a length. */
export function amountSaid(tell: Tell, soldBy: SoldBy, amount: number): string {
  if (soldBy === 'reel' || soldBy === 'skein')
    return tell('shopping.metres', { amount: Math.round(amount * 10) / 10 })
  if (soldBy === 'piece') return tell('shopping.pieces', { amount })
  return tell('shopping.length', { length: { mm: amount } })
}

/** What to ask for in the shop. */
export function buySaid(tell: Tell, { soldBy, buy, steps, article: { step } }: Item): string {
  if (soldBy !== 'reel' && soldBy !== 'skein') return amountSaid(tell, soldBy, buy)
  return steps === 1
    ? tell(`shopping.buy.one.${soldBy}`, { pack: step })
    : tell(`shopping.buy.${soldBy}`, { pack: step, count: steps })
}
