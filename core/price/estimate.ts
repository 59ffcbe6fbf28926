import type { Asked } from '../draft/choices.ts'
import type { Construction } from '../draft/construction.ts'
import { draftGarment } from '../draft/constructions.ts'
import type { Extras } from '../draft/extras.ts'
import { CLOTH_ROLES, type Draft } from '../draft/types.ts'
import { asCut, type OtherCloths, piecesFrom } from '../lay/as-cut.ts'
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
import type { Estimate, OtherLay } from './estimate.types.ts'
import type { NotionStock } from './notions.ts'
import { priceOf } from './price.ts'
import type { ThreadStock } from './thread-stock.ts'
import type { Rates } from './types.ts'

export type ClothOnSale = Cloth & { name: string; pricePerMetre: Money }

export type Wanted = {
  construction: string | Construction
  body: Body
  choices: Asked
  extras?: Extras | undefined
  cloth: ClothOnSale
  /** Cloths of their own for lining, interlining and facing. */
  others?: OtherCloths<ClothOnSale> | undefined
  finishPlan: FinishPlanId
  /** Length of the cloth it pays for, mm, when it is cut from one length with others. */
  share?: number | undefined
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
  /** What a piece or a metre of each notion costs; those without a price are left out of the reckoning. */
  notionStock?: NotionStock | undefined
}

/**
 * From a body and choices to a price: pieces, a first lay that an independent check has passed, cloth to
 * buy, thread and hours under the finish plan, and the reckoning.
 *
 * @throws Refusal at `measures`, `choices` or `cloth`, when there is no such garment
 */
export function estimate(
  { construction, body, choices, extras = {}, cloth, others = {}, finishPlan, lay: wish, share }: Wanted,
  habits: Habits,
): Estimate {
  const plain = draftGarment(construction, body, choices, habits.unit, extras)
  const draft = refusingAt('cloth', () => asCut(plain, cloth, others))
  const { lay, purchase } = refusingAt('cloth', () => {
    const pieces = piecesFrom(draft.pieces, 'main', others)
    const found = wishedLay(pieces, cloth, habits.buying, { ...PLAIN_ORDER, ...wish })
    return { lay: found, purchase: purchaseOf(found, cloth, habits.buying) }
  })
  const apart = otherLays(draft, others, habits)
  const plan = FINISH_PLANS[finishPlan]
  const sewing = sew(draft, plan, cloth.thickness, habits.threadRules)
  const price = priceOf({
    cloths: [
      { name: cloth.name, pricePerMetre: cloth.pricePerMetre, toBuy: share ?? purchase.toBuy },
      ...apart.map(({ role, cloth: name, purchase: { toBuy } }) => ({
        ...{ name, toBuy, role },
        pricePerMetre: others[role]!.pricePerMetre,
      })),
    ],
    sewing,
    notions: draft.notions ?? [],
    rates: habits.rates,
    threadStock: habits.threadStock,
    notionStock: habits.notionStock ?? {},
  })
  return {
    draft,
    lay,
    purchase,
    ...(apart.length > 0 ? { others: apart } : {}),
    finishPlan: plan,
    sewing,
    price,
  }
}

/** A first lay for each cloth besides the garment's own from which something is cut. */
function otherLays(draft: Draft, others: OtherCloths<ClothOnSale>, { buying }: Habits): OtherLay[] {
  return CLOTH_ROLES.flatMap((role): OtherLay[] => {
    const cloth = role === 'main' ? undefined : others[role]
    const pieces = piecesFrom(draft.pieces, role, others)
    if (role === 'main' || cloth === undefined || pieces.length === 0) return []
    return refusingAt(`others.${role}`, () => {
      const lay = wishedLay(pieces, cloth, buying)
      return [{ role, cloth: cloth.name, lay, purchase: purchaseOf(lay, cloth, buying) }]
    })
  })
}
