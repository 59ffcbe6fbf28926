import type { Notion } from '../draft/types.ts'
import type { OtherRole } from '../lay/as-cut.ts'
import type { Sewing, Skill, ThreadUse } from '../sew/types.ts'
import { SKILLS } from '../sew/types.ts'
import {
  addMoney,
  type Money,
  partOf,
  payFor,
  priceOfLength,
  roundMoney,
  shareOf,
  subtractMoney,
  sumMoney,
} from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { type NotionStock, notionCost } from './notions.ts'
import { profitOn } from './profit.ts'
import { type ThreadStock, threadCost } from './thread-stock.ts'
import type { Price, PriceLine, PriceLineKind, Rates } from './types.ts'

export type Priced = {
  /** The garment's own cloth, then those of lining, interlining and facing. */
  cloths: readonly { name: string; pricePerMetre: Money; toBuy: number; role?: OtherRole }[]
  sewing: Pick<Sewing, 'threads' | 'bySkill' | 'total'>
  rates: Rates
  threadStock: ThreadStock
  notions: readonly Notion[]
  notionStock: NotionStock
}

/**
 * The reckoning of one garment, line by line: cloths as bought, thread as used, notions, each kind of labour at its
 * rate on the expected time, the workroom's costs by the hour, profit, and the rounding of the net price;
 * then tax. Every sum is the sum of its lines in whole minor units.
 */
export function priceOf({ cloths, sewing, rates, threadStock, notions, notionStock }: Priced): Price {
  const { currency } = rates
  const materialLines = [
    ...cloths.filter(({ toBuy }) => toBuy > 0).map(clothLine),
    ...sewing.threads.map((use) => threadLine(use, threadStock)),
    ...notions.flatMap((notion) => notionLine(notion, notionStock)),
  ]
  const labourLines = SKILLS.flatMap((skill) => {
    const time = sewing.bySkill[skill]
    return time === undefined ? [] : [labourLine(skill, time.mean, rates.perHour[skill])]
  })
  const overhead = payFor(rates.overheadPerHour, sewing.total.mean)
  const overheadHow = phrase('price.how.time', {
    time: { minutes: sewing.total.mean },
    rate: rates.overheadPerHour,
  })
  const overheadLine: PriceLine = {
    kind: 'overhead',
    name: phrase('price.line.overhead'),
    how: overheadHow,
    amount: overhead,
  }

  const sum = (lines: readonly PriceLine[]) =>
    sumMoney(
      lines.map(({ amount }) => amount),
      currency,
    )
  const [materials, labour] = [sum(materialLines), sum(labourLines)]
  const cost = sumMoney([materials, labour, overhead], currency)
  const profit = profitOn(cost, rates.profit)
  const exact = addMoney(cost, profit)
  const net = roundMoney(exact, rates.rounding.step, rates.rounding.direction)
  const rounding = subtractMoney(net, exact)
  const tax = partOf(net, rates.tax.basisPoints)
  const total = addMoney(net, tax)
  const { kind, basisPoints } = rates.profit
  return {
    lines: [
      ...materialLines,
      ...labourLines,
      overheadLine,
      line('profit', `price.how.${kind}`, profit, { percent: basisPoints / 100 }),
      ...(rounding.minor === 0
        ? []
        : [
            line('rounding', 'price.how.rounding', rounding, {
              step: { minor: rates.rounding.step, currency },
            }),
          ]),
      {
        ...line('tax', 'price.how.tax', tax, { percent: rates.tax.basisPoints / 100 }),
        name: phrase('price.line.tax', { name: rates.tax.name }),
      },
    ],
    ...{ materials, labour, overhead, cost, profit, net, tax, total },
    deposit: partOf(total, rates.depositBasisPoints),
    earnedPerHour: perHour(sumMoney([labour, profit, rounding], currency), sewing.total.mean),
  }
}

type How = 'price.how.markup' | 'price.how.margin' | 'price.how.rounding' | 'price.how.tax'

const line = (
  kind: PriceLineKind & ('profit' | 'rounding' | 'tax'),
  how: How,
  amount: Money,
  params: Record<string, number | Money>,
): PriceLine => ({
  kind,
  name: phrase(`price.line.${kind}`),
  how: phrase(how, params),
  amount,
})

const clothLine = ({ name, pricePerMetre, toBuy, role }: Priced['cloths'][number]): PriceLine => ({
  kind: 'cloth',
  name:
    role === undefined
      ? phrase('price.line.cloth', { cloth: name })
      : phrase(`price.line.${role}`, { cloth: name }),
  how: phrase('price.how.length', { length: { mm: toBuy }, price: pricePerMetre }),
  amount: priceOfLength(pricePerMetre, toBuy),
})

function notionLine(notion: Notion, stock: NotionStock): PriceLine[] {
  const price = stock[notion.notion]
  if (price === undefined) return []
  const how =
    'count' in notion
      ? phrase('price.how.pieces', { count: notion.count, price })
      : phrase('price.how.length', { length: { mm: notion.mm }, price })
  return [
    { kind: 'notion', name: phrase(`draft.notion.${notion.notion}`), how, amount: notionCost(notion, price) },
  ]
}

function threadLine(use: ThreadUse, stock: ThreadStock): PriceLine {
  const { sort, amount, reels } = threadCost(use, stock)
  const how = phrase('price.how.thread', { metres: Math.ceil(use.metres), reels, price: sort.pricePerReel })
  return { kind: 'thread', name: phrase('price.line.thread', { thread: sort.name }), how, amount }
}

const labourLine = (skill: Skill, minutes: number, rate: Money): PriceLine => ({
  kind: 'labour',
  name: phrase(`price.skill.${skill}`),
  how: phrase('price.how.time', { time: { minutes }, rate }),
  amount: payFor(rate, minutes),
})

/** Nothing for no time: an hour that is not worked earns nothing. */
const perHour = (earned: Money, minutes: number): Money =>
  minutes === 0 ? { ...earned, minor: 0 } : shareOf(earned, 6000, Math.max(1, Math.round(minutes * 100)))
