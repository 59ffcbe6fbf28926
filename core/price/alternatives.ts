import { PLAIN_ORDER } from '../lay/types.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { FINISH_PLAN_IDS, type FinishPlanId } from '../words/stitches.ts'
import { type ClothOnSale, cutOf, type Habits, reckoned, type Wanted } from './estimate.ts'
import type { Estimate } from './estimate.types.ts'

/** In what a garment is made otherwise; nothing, and it is the garment as it was asked for. */
export type Variation = {
  finishPlan?: FinishPlanId | undefined
  clothId?: string | undefined
  lined?: boolean | undefined
}

/** One way of making a garment: its figures, or the reason why it cannot be made so. */
export type Alternative = { change: Variation; name: Phrase[]; estimate?: Estimate; refused?: Phrase }

type Trial = { id: string; cloth: ClothOnSale }

/**
 * A garment as asked for and, beside it, sewn in the other ways, cut from the other cloths, with and without its lining: one
 * thing changed at a time. What is drafted and laid alike is drafted and laid once.
 *
 * @param cut drafts and lays a garment
 */
export function alternativesOf(
  wanted: Wanted,
  cloths: readonly Trial[],
  habits: Habits,
  cut: typeof cutOf = cutOf,
): Alternative[] {
  const tried = (change: Variation, name: Phrase[], other: Wanted): Alternative => {
    try {
      return { change, name, estimate: reckoned(cut(other, habits), other, habits) }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      return { change, name, refused: error.phrase }
    }
  }
  const base = cut(wanted, habits)
  const { lined } = base.draft.choices
  const plans = FINISH_PLAN_IDS.filter((id) => id !== wanted.finishPlan)
  return [
    { change: {}, name: nameOf({ finishPlan: wanted.finishPlan }), estimate: reckoned(base, wanted, habits) },
    ...plans.map((finishPlan) => ({
      change: { finishPlan },
      name: nameOf({ finishPlan }),
      estimate: reckoned(base, varied(wanted, { finishPlan }), habits),
    })),
    ...cloths.map(({ id, cloth }) => {
      const change = { clothId: id }
      return tried(change, nameOf(change, cloth.name), varied(wanted, change, cloth))
    }),
    ...(typeof lined === 'boolean'
      ? [tried({ lined: !lined }, nameOf({ lined: !lined }), varied(wanted, { lined: !lined }))]
      : []),
  ]
}

/**
 * A garment with a variation put in. Places laid for another cloth or other pieces are not kept, nor a price that was set by
 * hand: that is the price of the garment as it stands.
 */
export function varied<W extends Wanted>(wanted: W, change: Variation, cloth?: W['cloth']): W {
  const { finishPlan = wanted.finishPlan, lined } = change
  const moved = cloth !== undefined || lined !== undefined
  return {
    ...wanted,
    finishPlan,
    share: undefined,
    price: { ...wanted.price, set: undefined },
    ...(cloth === undefined ? {} : { cloth, brought: undefined }),
    choices: lined === undefined ? wanted.choices : { ...wanted.choices, lined },
    ...(moved && wanted.lay !== undefined ? { lay: { ...PLAIN_ORDER, manner: wanted.lay.manner } } : {}),
  }
}

/** A variation in words, one phrase a difference. */
export function nameOf({ finishPlan, lined, clothId }: Variation, cloth = ''): Phrase[] {
  return [
    ...(finishPlan === undefined
      ? []
      : [phrase('quote.option.plan', { plan: phrase(`sew.finishPlan.${finishPlan}`) })]),
    ...(clothId === undefined ? [] : [phrase('quote.option.cloth', { cloth })]),
    ...(lined === undefined ? [] : [phrase(lined ? 'quote.option.lined' : 'quote.option.unlined')]),
  ]
}
