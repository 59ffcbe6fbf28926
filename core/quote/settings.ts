import type { BuyingRules } from '../lay/types.ts'
import type { NotionStock } from '../price/notions.ts'
import type { OtherThread, ThreadStock } from '../price/thread-stock.ts'
import type { Rates } from '../price/types.ts'
import type { Standards, ThreadRules } from '../sew/types.ts'
import type { Money } from '../words/money.ts'
import type { Numbering } from './numbers.ts'
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
  /** Other colours and finenesses, for a garment to be sewn with. */
  otherThreads: OtherThread[]
  /** Where she sews otherwise than the catalogue has it. */
  ways: Standards
  /** What the workroom costs in a year, and the hours of a year that are sold: the overhead of an hour. */
  yearly: { costs: { name: string; amount: Money }[]; soldHours: number }
  /** What a piece or a metre of each notion costs. Settings of old have none. */
  notionStock?: NotionStock
  /** Days a quote stands. */
  validityDays: number
  numbering: Numbering
  /** Sentences printed under every quote. */
  terms: string[]
  /** Sentence printed besides, when a cloth of the quote has wool in it. Settings of old have none. */
  woolTerm?: string
  /** Sentence printed besides, when the customer brings the cloth. */
  broughtTerm: string
  /** Whether the deposit is kept when an order is cancelled whose cloth is cut. Where it may be is a matter of local law. */
  keepDepositOnceCut: boolean
}

/** Settings as a store may hold them: what later versions added may be missing. */
export type StoredSettings = Omit<WorkroomSettings, Later | 'rates'> &
  Partial<Pick<WorkroomSettings, Later>> & {
    rates: Omit<Rates, 'perHour' | 'targetPerHour' | 'instalments'> &
      Partial<Pick<Rates, 'targetPerHour' | 'instalments'>> & {
        perHour: Omit<Rates['perHour'], 'attending'> & Partial<Pick<Rates['perHour'], 'attending'>>
      }
  }
type Later = 'otherThreads' | 'ways' | 'yearly' | 'numbering' | 'broughtTerm' | 'keepDepositOnceCut'

/** Settings with what later versions added. Amounts are of the workroom's own, so that no currency is mixed in. */
export function completed(stored: StoredSettings, fresh: WorkroomSettings): WorkroomSettings {
  const { perHour } = stored.rates
  const { otherThreads, ways, yearly, numbering, broughtTerm, keepDepositOnceCut } = fresh
  return {
    ...{ otherThreads, ways, numbering, broughtTerm, keepDepositOnceCut, yearly: { ...yearly, costs: [] } },
    ...stored,
    rates: {
      targetPerHour: perHour.pressing,
      instalments: [],
      ...stored.rates,
      perHour: { attending: perHour.pressing, ...perHour },
    },
  }
}
