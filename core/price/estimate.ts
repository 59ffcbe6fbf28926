import type { Asked } from '../draft/choices.ts'
import { draftGarment } from '../draft/constructions.ts'
import { asCut } from '../lay/as-cut.ts'
import { purchaseOf } from '../lay/purchase.ts'
import { type BuyingRules, type Cloth, PLAIN_ORDER } from '../lay/types.ts'
import { type LayWish, wishedLay } from '../lay/wished-lay.ts'
import type { Body } from '../measure/body.ts'
import { FINISH_PLANS } from '../sew/finish-plans.ts'
import { sew } from '../sew/sewing.ts'
import type { ThreadRules } from '../sew/types.ts'
import type { Money } from '../words/money.ts'
import { refusingAt } from '../words/refusal.ts'
import type { FinishPlanId } from '../words/stitches.ts'
import type { LengthUnit } from '../words/units.ts'
import type { Estimate } from './estimate.types.ts'
import { priceOf } from './price.ts'
import type { ThreadStock } from './thread-stock.ts'
import type { Rates } from './types.ts'

export type Wanted = {
  construction: string
  body: Body
  choices: Asked
  cloth: Cloth & { name: string; pricePerMetre: Money }
  finishPlan: FinishPlanId
  /** How the cloth is laid out; flat, by a first lay, if not said. */
  lay?: Omit<LayWish, 'quantity'>
}

/** The workroom's habits and rates that an estimate rests on. */
export type Habits = {
  unit: LengthUnit
  buying: BuyingRules
  threadRules: ThreadRules
  threadStock: ThreadStock
  rates: Rates
}

/**
 * From a body and choices to a price: pieces, a first lay that an independent check has passed, cloth to
 * buy, thread and hours under the finish plan, and the reckoning.
 *
 * @throws Refusal at `measures`, `choices` or `cloth`, when there is no such garment
 */
export function estimate(
  { construction, body, choices, cloth, finishPlan, lay: wish }: Wanted,
  habits: Habits,
): Estimate {
  const plain = draftGarment(construction, body, choices, habits.unit)
  const draft = refusingAt('cloth', () => asCut(plain, cloth))
  const { lay, purchase } = refusingAt('cloth', () => {
    const found = wishedLay(draft.pieces, cloth, habits.buying, { ...PLAIN_ORDER, ...wish })
    return { lay: found, purchase: purchaseOf(found, cloth, habits.buying) }
  })
  const plan = FINISH_PLANS[finishPlan]
  const sewing = sew(draft, plan, cloth.thickness, habits.threadRules)
  const price = priceOf({
    cloth: { name: cloth.name, pricePerMetre: cloth.pricePerMetre, toBuy: purchase.toBuy },
    sewing,
    rates: habits.rates,
    threadStock: habits.threadStock,
  })
  return { draft, lay, purchase, finishPlan: plan, sewing, price }
}
