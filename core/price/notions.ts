import type { Notion, NotionId } from '../draft/types.ts'
import { type Money, priceOfLength, shareOf } from '../words/money.ts'

/** What a piece, or a metre, of each notion costs. */
export type NotionStock = Partial<Record<NotionId, Money>>

/** What a notion of a garment costs: whole pieces, or its length. */
export const notionCost = (notion: Notion, price: Money): Money =>
  'count' in notion ? shareOf(price, notion.count, 1) : priceOfLength(price, notion.mm)
