import type { Skill } from '../sew/types.ts'
import type { Money } from '../words/money.ts'
import type { Phrase } from '../words/phrase.ts'

/** Profit is a markup on cost or a margin of the net price: never the one for the other. Basis points. */
export type Profit = { kind: 'markup' | 'margin'; basisPoints: number }

/** What the workroom's settings say of money. */
export type Rates = {
  currency: string
  perHour: Record<Skill, Money>
  /** Yearly fixed costs ÷ billable hours. */
  overheadPerHour: Money
  profit: Profit
  tax: { name: string; basisPoints: number }
  /** The price before tax is rounded to a multiple of this many minor units. */
  rounding: { step: number; direction: 'up' | 'down' | 'nearest' }
  depositBasisPoints: number
}

export type PriceLineKind =
  | 'cloth'
  | 'thread'
  | 'notion'
  | 'labour'
  | 'overhead'
  | 'profit'
  | 'rounding'
  | 'tax'

/** One line of the reckoning; `how` says what it was reckoned from. */
export type PriceLine = { kind: PriceLineKind; name: Phrase; how: Phrase; amount: Money }

/** The reckoning of one garment: lines in order, and their sums. All sums are exact in minor units. */
export type Price = {
  lines: PriceLine[]
  materials: Money
  labour: Money
  overhead: Money
  cost: Money
  profit: Money
  /** Before tax, rounded: cost + profit + rounding. */
  net: Money
  tax: Money
  total: Money
  deposit: Money
  /** What labour and profit pay for one hour of the estimated work. */
  earnedPerHour: Money
}
