import type { Draft } from '../draft/types.ts'
import type { Lay, Purchase } from '../lay/types.ts'
import type { FinishPlan, Sewing } from '../sew/types.ts'
import type { Price } from './types.ts'

/** Everything computed for one garment: what is cut, from how much cloth, in what time, at what price. */
export type Estimate = {
  draft: Draft
  lay: Lay
  purchase: Purchase
  finishPlan: FinishPlan
  sewing: Sewing
  price: Price
}
