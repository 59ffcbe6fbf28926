import type { Notion } from '../draft/types.ts'
import type { OtherRole } from '../lay/as-cut.ts'
import type { Minutes, Sewing, Skill, ThreadUse } from '../sew/types.ts'
import { SKILLS } from '../sew/types.ts'
import {
  addMoney,
  type Money,
  noMoney,
  partOf,
  payFor,
  priceOfLength,
  roundMoney,
  subtractMoney,
  sumMoney,
} from '../words/money.ts'
import { type PhraseValue, phrase } from '../words/phrase.ts'
import { earningOf, leftOf, perHour } from './earning.ts'
import { type NotionStock, notionCost } from './notions.ts'
import { profitOn } from './profit.ts'
import { type ThreadStock, threadCost } from './thread-stock.ts'
import type { Price, PriceLine, PriceLineKind, PriceWish, Rates } from './types.ts'

/** A cloth of the garment, the length charged for it in mm, and whose or from where it is. */
export type ClothCharged = {
  name: string
  pricePerMetre: Money
  length: number
  role?: OtherRole
  /** `bought` for this order, `used` from stock at what it takes, or the customer's, which costs nothing. */
  charged?: 'bought' | 'used' | 'customer'
}

/** All that the price of one garment is reckoned from. */
export type Priced = {
  /** The garment's own cloth, then those of lining, interlining and facing. */
  cloths: readonly ClothCharged[]
  threads: Sewing['threads']
  /** All hours, of the making and around it. */
  hours: { total: Minutes; bySkill: Sewing['bySkill'] }
  rates: Rates
  threadStock: ThreadStock
  notions: readonly Notion[]
  notionStock: NotionStock
  wish?: PriceWish
}

/**
 * The reckoning of one garment, line by line: cloths as bought or used, thread as used, notions, each kind of labour at its
 * rate on the expected time, the workroom's costs by the hour, profit, what is on top or off, and the rounding of
 * the net price or what she sets it to; then tax. Every sum is the sum of its lines in whole minor units.
 */
export function priceOf(priced: Priced): Price {
  const { cloths, threads, hours, rates, threadStock, notions, notionStock, wish = {} } = priced
  const { currency } = rates
  const materialLines = [
    ...cloths.filter(({ length }) => length > 0).map(clothLine),
    ...threads.map((use) => threadLine(use, threadStock)),
    ...notions.flatMap((notion) => notionLine(notion, notionStock)),
  ]
  const labourLines = SKILLS.flatMap((skill) => {
    const time = hours.bySkill[skill]
    return time === undefined ? [] : [labourLine(skill, time.mean, rates.perHour[skill])]
  })
  const overhead = payFor(rates.overheadPerHour, hours.total.mean)
  const overheadHow = { time: { minutes: hours.total.mean }, rate: rates.overheadPerHour }

  const sum = (lines: readonly PriceLine[]) =>
    sumMoney(
      lines.map(({ amount }) => amount),
      currency,
    )
  const [materials, labour] = [sum(materialLines), sum(labourLines)]
  const cost = sumMoney([materials, labour, overhead], currency)
  const profit = profitOn(cost, rates.profit)
  const usual = addMoney(cost, profit)
  const rush = partOf(usual, wish.rush ?? 0)
  const hurried = addMoney(usual, rush)
  const discount = subtractMoney(noMoney(currency), partOf(hurried, wish.discount ?? 0))
  const exact = addMoney(hurried, discount)
  const net = wish.set ?? roundMoney(exact, rates.rounding.step, rates.rounding.direction)
  const settled = subtractMoney(net, exact)
  const taxed = wish.tax ?? rates.tax.basisPoints
  const tax = partOf(net, taxed)
  const total = addMoney(net, tax)
  const percent = (basisPoints: number) => ({ percent: basisPoints / 100 })
  return {
    lines: [
      ...materialLines,
      ...labourLines,
      line('overhead', 'price.how.time', overhead, overheadHow),
      line('profit', `price.how.${rates.profit.kind}`, profit, percent(rates.profit.basisPoints)),
      ...unlessNothing(line('rush', 'price.how.rush', rush, percent(wish.rush ?? 0))),
      ...unlessNothing(line('discount', 'price.how.discount', discount, percent(wish.discount ?? 0))),
      ...unlessNothing(
        wish.set === undefined
          ? line('rounding', `price.how.rounding.${rates.rounding.direction}`, settled, {
              step: { minor: rates.rounding.step, currency },
            })
          : line('set', 'price.how.set', settled, { reckoned: exact }),
      ),
      {
        ...line('tax', 'price.how.tax', tax, percent(taxed)),
        name: phrase('price.line.tax', { name: rates.tax.name }),
      },
    ],
    ...{ materials, labour, overhead, cost, profit, net, tax, total },
    deposit: partOf(total, rates.depositBasisPoints),
    earnedPerHour: perHour(leftOf(net, materials, hours.total.mean, rates.overheadPerHour), hours.total.mean),
    earning: earningOf(net, materials, hours.total, rates),
  }
}

type Reckoned = PriceLineKind & ('overhead' | 'profit' | 'rush' | 'discount' | 'rounding' | 'set' | 'tax')
type How =
  | `price.how.${'time' | 'markup' | 'margin' | 'rush' | 'discount' | 'set' | 'tax'}`
  | `price.how.rounding.${Rates['rounding']['direction']}`

const line = (kind: Reckoned, how: How, amount: Money, params: Record<string, PhraseValue>): PriceLine => ({
  kind,
  name: phrase(`price.line.${kind}`),
  how: phrase(how, params),
  amount,
})

const unlessNothing = (one: PriceLine): PriceLine[] => (one.amount.minor === 0 ? [] : [one])

const clothLine = ({ name, pricePerMetre, length, role, charged = 'bought' }: ClothCharged): PriceLine => ({
  kind: 'cloth',
  name: phrase(role === undefined ? 'price.line.cloth' : `price.line.${role}`, { cloth: name }),
  how: phrase(`price.how.${charged}`, { length: { mm: length }, price: pricePerMetre }),
  amount: charged === 'customer' ? { ...pricePerMetre, minor: 0 } : priceOfLength(pricePerMetre, length),
})

function notionLine(notion: Notion, stock: NotionStock): PriceLine[] {
  const price = stock[notion.notion]
  if (price === undefined) return []
  const how =
    'count' in notion
      ? phrase('price.how.pieces', { count: notion.count, price })
      : phrase('price.how.bought', { length: { mm: notion.mm }, price })
  return [
    { kind: 'notion', name: phrase(`draft.notion.${notion.notion}`), how, amount: notionCost(notion, price) },
  ]
}

function threadLine(use: ThreadUse, stock: ThreadStock): PriceLine {
  const { sort, amount, reels } = threadCost(use, stock)
  const { soldAs = 'reel', pricePerReel: price } = sort
  const how = phrase(`price.how.${soldAs}`, { metres: Math.ceil(use.metres), reels, price })
  return { kind: 'thread', name: phrase('price.line.thread', { thread: sort.name }), how, amount }
}

const labourLine = (skill: Skill, minutes: number, rate: Money): PriceLine => ({
  kind: 'labour',
  name: phrase(`price.skill.${skill}`),
  how: phrase('price.how.time', { time: { minutes }, rate }),
  amount: payFor(rate, minutes),
})
