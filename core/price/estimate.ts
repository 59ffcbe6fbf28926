import type { Asked } from '../draft/choices.ts'
import type { Construction } from '../draft/construction.ts'
import { draftGarment } from '../draft/constructions.ts'
import type { Extras } from '../draft/extras.ts'
import { CLOTH_ROLES, type Draft } from '../draft/types.ts'
import { asCut, type OtherCloths, piecesFrom } from '../lay/as-cut.ts'
import { purchaseOf } from '../lay/purchase.ts'
import { type BuyingRules, type Cloth, type Lay, PLAIN_ORDER, type Purchase } from '../lay/types.ts'
import { type LayWish, wishedLay } from '../lay/wished-lay.ts'
import type { Body } from '../measure/body.ts'
import { FINISH_PLANS } from '../sew/finish-plans.ts'
import { doubtsOf, timeOf } from '../sew/pace/time-of.ts'
import { USUAL_WAYS } from '../sew/parameters.ts'
import { sew, timesOf } from '../sew/sewing.ts'
import type { ThreadRules, Ways } from '../sew/types.ts'
import type { Money } from '../words/money.ts'
import { refusingAt } from '../words/refusal.ts'
import type { FinishPlanId } from '../words/stitches.ts'
import type { LengthUnit } from '../words/units.ts'
import { attendanceOf } from './attendance.ts'
import type { Estimate, OtherLay } from './estimate.types.ts'
import type { NotionStock } from './notions.ts'
import { type ClothCharged, priceOf } from './price.ts'
import type { ThreadStock } from './thread-stock.ts'
import type { PriceWish, Rates } from './types.ts'

/** A cloth with its name and its price; a garment pays for what is bought unless it is charged as used. */
export type ClothOnSale = Cloth & { name: string; pricePerMetre: Money; charged?: 'bought' | 'used' }

/** A garment that somebody asks the price of. */
export type Wanted = {
  construction: string | Construction
  body: Body
  choices: Asked
  extras?: Extras | undefined
  cloth: ClothOnSale
  /** The customer brings the cloth: so much of it, mm as bought. */
  brought?: number | undefined
  /** Cloths of their own for lining, interlining and facing. */
  others?: OtherCloths<ClothOnSale> | undefined
  finishPlan: FinishPlanId
  /** Length of the cloth it pays for, mm, when it is cut from one length with others. */
  share?: number | undefined
  /** How the cloth is laid out; flat, by a first lay, if not said. */
  lay?: Omit<LayWish, 'quantity'>
  /** Garments on the same order, among which what is done once for all is shared out. */
  garments?: number | undefined
  price?: PriceWish | undefined
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
  /** How she sews, and how fast. */
  ways?: Ways | undefined
}

/** A garment drafted, and laid on its cloths. */
export type Cut = { draft: Draft; lay: Lay; purchase: Purchase; others: OtherLay[] }

/**
 * From a body and choices to a price: pieces, a first lay that an independent check has passed, cloth to
 * buy, thread and hours under the finish plan, and the reckoning.
 *
 * @throws Refusal at `measures`, `choices` or `cloth`, when there is no such garment
 */
export const estimate = (wanted: Wanted, habits: Habits): Estimate =>
  reckoned(cutOf(wanted, habits), wanted, habits)

/** The draft and its lays: all that does not depend on how it is sewn or what anything costs. */
export function cutOf(
  { construction, body, choices, extras = {}, cloth, others = {}, lay: wish }: Wanted,
  habits: Habits,
): Cut {
  const plain = draftGarment(construction, body, choices, habits.unit, extras)
  const draft = refusingAt('cloth', () => asCut(plain, cloth, others))
  return refusingAt('cloth', () => {
    const pieces = piecesFrom(draft.pieces, 'main', others)
    const lay = wishedLay(pieces, cloth, habits.buying, { ...PLAIN_ORDER, ...wish })
    const purchase = purchaseOf(lay, cloth, habits.buying)
    return { draft, lay, purchase, others: otherLays(draft, others, habits) }
  })
}

/** Thread, hours and price of a garment that is drafted and laid. */
export function reckoned(
  { draft, lay, purchase, others: apart }: Cut,
  wanted: Wanted,
  habits: Habits,
): Estimate {
  const { cloth, brought, others = {}, share, garments = 1 } = wanted
  const { ways = USUAL_WAYS } = habits
  const plan = FINISH_PLANS[wanted.finishPlan]
  const sewing = sew(draft, plan, cloth.thickness, habits.threadRules, ways)
  const around = attendanceOf(garments, draft.construction === 'alteration', ways)
  const works = [...sewing.steps.map(({ work = {} }) => work), around]
  const own: ClothCharged =
    brought === undefined
      ? charged(cloth, purchase, share)
      : { name: cloth.name, pricePerMetre: cloth.pricePerMetre, length: purchase.needed, charged: 'customer' }
  const price = priceOf({
    cloths: [
      own,
      ...apart.map(({ role, purchase: bought }) => ({ ...charged(others[role]!, bought), role })),
    ],
    threads: sewing.threads,
    hours: timesOf(works, ways),
    notions: draft.notions ?? [],
    rates: habits.rates,
    threadStock: habits.threadStock,
    notionStock: habits.notionStock ?? {},
    ...(wanted.price === undefined ? {} : { wish: wanted.price }),
  })
  return {
    ...{ draft, lay, purchase },
    ...(apart.length > 0 ? { others: apart } : {}),
    ...(brought === undefined
      ? {}
      : { brought: { length: brought, needed: purchase.needed, enough: brought >= purchase.needed } }),
    charged: own.length,
    finishPlan: plan,
    sewing,
    attendance: { work: around, total: timeOf(ways.pace, [around]) },
    doubts: doubtsOf(ways.pace, works),
    price,
  }
}

const charged = (cloth: ClothOnSale, { toBuy, needed }: Purchase, share = toBuy): ClothCharged => ({
  ...{ name: cloth.name, pricePerMetre: cloth.pricePerMetre },
  ...(cloth.charged === 'used' ? { length: needed, charged: 'used' } : { length: share }),
})

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
