import type { BuyingRules } from '../lay/types.ts'
import type { NotionStock } from '../price/notions.ts'
import type { ThreadStock } from '../price/thread-stock.ts'
import type { Rates } from '../price/types.ts'
import type { ThreadRules } from '../sew/types.ts'
import type { Letterhead } from './types.ts'

/** What the maker sets once for her workroom; every quote takes it as it is on that day. */
export type WorkroomSettings = {
  letterhead: Letterhead
  /** IANA time zone that decides which calendar day it is. */
  timeZone: string
  /** Hours a week she sews. */
  hoursPerWeek: number
  rates: Rates
  buying: BuyingRules
  threadRules: ThreadRules
  threadStock: ThreadStock
  /** What a piece or a metre of each notion costs. Settings of old have none. */
  notionStock?: NotionStock
  /** Days a quote stands. */
  validityDays: number
  /** Sentences printed under every quote. */
  terms: string[]
}
