import { type Money, subtractMoney } from '../words/money.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import type { Overrun } from './account.ts'
import type { Asked } from './asked.ts'

/** What is known of a commission that earned less an hour than was meant. Minutes; what materials cost more. */
export type Paid = {
  asked: Asked
  minutes: { quoted: number; actual: number }
  /** What materials cost more than was quoted; less than nothing where they cost less. */
  moreMaterials: Money
  target: Money
}

/** Hours over the reckoned by less than this part of them did not make a price bad. */
const MUCH = 0.08

/** A step that ran over by less than this is not worth a word, minutes. */
const LONG = 15

/** Whether a step ran over by so much that it is worth looking at. */
export const ranOver = (overrun: Overrun | null | undefined): overrun is Overrun =>
  overrun !== null && overrun !== undefined && overrun.actual - overrun.quoted >= LONG

/** What made it badly paid, in figures: the price, the rates it was reckoned at, the hours, the materials, or her aim. */
export function whyBadlyPaid({ asked, minutes, moreMaterials, target }: Paid): Phrase[] {
  const { net, reckoned, floor } = asked
  const low = floor === null ? net.minor < reckoned.minor : net.minor < floor.minor
  const more = minutes.actual - minutes.quoted
  const short = floor === null ? {} : { under: subtractMoney(floor, net) }
  const price = !low
    ? []
    : net.minor < reckoned.minor
      ? [
          phrase(floor === null ? 'plan.why.set' : 'plan.why.asked', {
            ...short,
            off: subtractMoney(reckoned, net),
          }),
        ]
      : [phrase('plan.why.rates', short)]
  const hours = more > (low ? MUCH * minutes.quoted : 0)
  const raised = asked.target !== null && target.minor > asked.target.minor
  const all = [
    ...price,
    ...(hours ? [phrase('plan.why.hours', { more: { minutes: more } })] : []),
    ...(moreMaterials.minor > 0 ? [phrase('plan.why.cloth', { more: moreMaterials })] : []),
    ...(raised ? [phrase('plan.why.target', { before: asked.target!, target })] : []),
  ]
  // A quote of old tells no floor: where neither price nor hours nor cloth gave, the rates did.
  return all.length > 0 ? all : [phrase('plan.why.ratesOld')]
}
