import { addDays, type Day } from '../../words/dates.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { fromHundredths, hundredths, stepsFor } from './exact.ts'
import { byDay, type DatedCloth, type FromStock, type Lack, missingCloth } from './missing-cloth.ts'
import type { ClothLength } from './types.ts'

/** Who sells it, and how many days after the order it is there. */
export type Supplier = { id: string; name: string; leadDays: number }

/** Something a shop sells. `step`: mm of cloth or of a notion, metres on a reel or skein, pieces in a packet. */
export type Article = {
  id: string
  kind: 'cloth' | 'thread' | 'notion'
  step: number
  supplierId: string | null
  /** Days from the order until it is there, where they are not the supplier's. */
  leadDays?: number | undefined
}

/** Thread (metres) or a notion (pieces or mm) of open work. */
export type DatedSmall = { articleId: string; garmentId: string; amount: number; day: Day | null }

/** All that a shopping list is made from: what there is to buy, what open work needs and what is in the house. */
export type Shopping = {
  articles: readonly Article[]
  suppliers: readonly Supplier[]
  cloths: readonly DatedCloth[]
  lengths: readonly ClothLength[]
  smalls: readonly DatedSmall[]
  /** What is left of each small thing; none where nothing is known of it. */
  left: ReadonlyMap<string, number>
}

/** One line of the list: so many steps are bought, which is as much as is missing or a little more. */
export type ShoppingItem = {
  article: Article
  missing: number
  buy: number
  steps: number
  /** The first day that any of it is needed, and the last on which it can be ordered for that. */
  neededBy: Day | null
  orderBy: Day | null
  garments: Omit<Lack, 'articleId'>[]
}

/** What to order by which day, and what is taken from the shelf instead. */
export type ShoppingList = {
  /** The most pressing supplier first, and with each the most pressing line; null is whatever nobody is named for. */
  suppliers: { supplier: Supplier | null; orderBy: Day | null; items: ShoppingItem[] }[]
  fromStock: FromStock[]
}

/**
 * What must be bought for all open work, by supplier.
 * @throws Refusal when a supplier's days or a shop's step cannot be
 */
export function shoppingList({ articles, suppliers, cloths, lengths, smalls, left }: Shopping): ShoppingList {
  const cloth = missingCloth(cloths, lengths)
  const lacks = byDay([...cloth.lacks, ...missingSmalls(smalls, left)])
  const ids = [...new Set(lacks.map(({ articleId }) => articleId))]
  const items = ids.map((id) => {
    const article = articles.find((one) => one.id === id)
    if (article === undefined) throw new Error(`work needs ${id}, which nobody sells`)
    const supplier = suppliers.find((one) => one.id === article.supplierId) ?? null
    return { supplier, item: itemOf(article, supplier, lacks) }
  })
  const sellers = [...new Set(items.map(({ supplier }) => supplier))]
  const lists = sellers.map((supplier) => {
    const own = items.filter((one) => one.supplier === supplier).map(({ item }) => item)
    const pressing = byOrder(own)
    return { supplier, orderBy: pressing[0]!.orderBy, items: pressing }
  })
  return { suppliers: byOrder(lists), fromStock: cloth.fromStock }
}

function itemOf(article: Article, supplier: Supplier | null, lacks: readonly Lack[]): ShoppingItem {
  const { id, step } = article
  if (!(step > 0 && Number.isFinite(step))) throw new Refusal(phrase('refusal.stock.step'), 'step')
  const garments = lacks.filter(({ articleId }) => articleId === id).map(({ articleId: _, ...lack }) => lack)
  const missing = fromHundredths(garments.reduce((sum, lack) => sum + hundredths(lack.missing), 0))
  const steps = stepsFor(missing, step)
  const neededBy = garments[0]!.day
  const orderBy = neededBy === null ? null : addDays(neededBy, -leadOf(article, supplier))
  return { article, missing, buy: steps * step, steps, neededBy, orderBy, garments }
}

/** Small things serve whoever needs them first; they are lacking from where they run out. */
function missingSmalls(smalls: readonly DatedSmall[], left: ReadonlyMap<string, number>): Lack[] {
  const rest = new Map([...left].map(([id, amount]) => [id, hundredths(amount)]))
  return byDay(smalls).flatMap(({ articleId, garmentId, amount, day }) => {
    const [need, have] = [Math.ceil(amount * 100 - 1e-6), rest.get(articleId) ?? 0]
    rest.set(articleId, Math.max(0, have - need))
    return need <= have ? [] : [{ articleId, garmentId, day, missing: fromHundredths(need - have) }]
  })
}

function leadOf({ leadDays }: Article, supplier: Supplier | null): number {
  const days = leadDays ?? supplier?.leadDays ?? 0
  if (!(Number.isInteger(days) && days >= 0 && days <= 1000))
    throw new Refusal(phrase('refusal.stock.leadDays'), 'leadDays')
  return days
}

const byOrder = <T extends { orderBy: Day | null }>(all: readonly T[]): T[] =>
  byDay(all.map((one) => ({ one, day: one.orderBy }))).map(({ one }) => one)
