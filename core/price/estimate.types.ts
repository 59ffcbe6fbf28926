import type { Draft } from '../draft/types.ts'
import type { OtherRole } from '../lay/as-cut.ts'
import type { Lay, Purchase } from '../lay/types.ts'
import type { FinishPlan, Sewing } from '../sew/types.ts'
import type { Price } from './types.ts'

/** Everything computed for one garment: what is cut, from how much cloth, in what time, at what price. */
export type Estimate = {
  draft: Draft
  lay: Lay
  purchase: Purchase
  /** Lining, interlining and facing that are cut from cloth of their own. Quotes of old have none. */
  others?: OtherLay[]
  finishPlan: FinishPlan
  sewing: Sewing
  price: Price
}

/** What is cut from one cloth besides the garment's own. */
export type OtherLay = { role: OtherRole; cloth: string; lay: Lay; purchase: Purchase }
