import type { Minutes, Skill } from '../sew/types.ts'
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
  /** What she means to earn an hour at the least, all costs paid. */
  targetPerHour: Money
  profit: Profit
  tax: { name: string; basisPoints: number }
  /** The price before tax is rounded to a multiple of this many minor units. */
  rounding: { step: number; direction: 'up' | 'down' | 'nearest' }
  /** Part of the total that is paid before work begins. */
  depositBasisPoints: number
  /** Further parts before delivery, when the rest is due. */
  instalments: Instalment[]
}

/** A part of the total, in basis points, and when it is due. */
export const INSTALMENTS = ['cutting', 'fitting'] as const
export type Instalment = { when: (typeof INSTALMENTS)[number]; basisPoints: number }

/** What is agreed for one garment apart from the workroom's rates. */
export type PriceWish = {
  /** On top for work that must be done before its turn, basis points of the price. */
  rush?: number | undefined
  /** Off the price, basis points. */
  discount?: number | undefined
  /** The price before tax as she sets it herself, whatever is reckoned. */
  set?: Money | undefined
  /** Tax on this garment where it is not the usual one, basis points. */
  tax?: number | undefined
}

/** What a line of the reckoning is for; `set` makes up the difference to a price she sets herself. */
export type PriceLineKind =
  | 'cloth'
  | 'thread'
  | 'notion'
  | 'labour'
  | 'overhead'
  | 'profit'
  | 'rush'
  | 'discount'
  | 'rounding'
  | 'set'
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
  /** Before tax: cost, profit, what is on top or off, and rounded or set. */
  net: Money
  tax: Money
  total: Money
  deposit: Money
  /** What is left of the net price for one expected hour, once materials and workroom costs are paid. */
  earnedPerHour: Money
  /** How sure that is. Quotes of old have none. */
  earning?: Earning
}

/** What a net price earns, given that nobody knows the hours beforehand. */
export type Earning = {
  /** All hours: the making, and what goes on around it. */
  hours: Minutes
  /** The net price at which `targetPerHour` is earned four times in five. */
  floor: Money
  /** Odds of earning less than `targetPerHour` at the net price, 0 to 1. */
  under: number
  /** The workroom's figures of the day that these rest on. */
  targetPerHour: Money
  overheadPerHour: Money
}
