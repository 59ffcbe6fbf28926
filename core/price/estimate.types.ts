import type { Draft } from '../draft/types.ts'
import type { OtherRole } from '../lay/as-cut.ts'
import type { Lay, Purchase } from '../lay/types.ts'
import type { Doubt } from '../sew/pace/time-of.ts'
import type { FinishPlan, Minutes, Sewing } from '../sew/types.ts'
import type { Work } from '../sew/work.ts'
import type { Price } from './types.ts'

/** Everything computed for one garment: what is cut, from how much cloth, in what time, at what price. */
export type Estimate = {
  draft: Draft
  lay: Lay
  purchase: Purchase
  /** Lining, interlining and facing that are cut from cloth of their own. Quotes of old have none. */
  others?: OtherLay[]
  /** Cloth that the customer brings, mm, and whether it is as much as is needed. */
  brought?: { length: number; needed: number; enough: boolean }
  /** Length of its own cloth that it pays for, mm: bought, its share of a common length, or used of one in stock. */
  charged?: number
  finishPlan: FinishPlan
  sewing: Sewing
  /** Time around the making. Quotes of old have none, nor the doubts. */
  attendance?: { work: Work; total: Minutes }
  /** What makes the hours uncertain, most doubtful first. */
  doubts?: Doubt[]
  price: Price
}

/** What is cut from one cloth besides the garment's own. */
export type OtherLay = { role: OtherRole; cloth: string; lay: Lay; purchase: Purchase }
