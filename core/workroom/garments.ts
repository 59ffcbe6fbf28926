import { z } from 'zod'
import { draftGarment } from '../draft/constructions.ts'
import { asCut, type OtherCloths, piecesFrom } from '../lay/as-cut.ts'
import { purchaseOf } from '../lay/purchase.ts'
import type { Cloth } from '../lay/types.ts'
import { wishedLay } from '../lay/wished-lay.ts'
import type { Body } from '../measure/body.ts'
import { ageOn } from '../measure/grown.ts'
import { readBody } from '../measure/read-body.ts'
import { estimate, type Habits } from '../price/estimate.ts'
import { DEFAULT_NOTION_STOCK } from '../price/parameters.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import type { QuotedCloth } from '../quote/types.ts'
import { getClient } from '../store/clients.ts'
import { getCloth } from '../store/cloths.ts'
import { getMeasurementSet, type MeasurementSet } from '../store/measurement-sets.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { clothOf, readCloth } from './cloths.ts'
import { constructionFor } from './constructions.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'
import { settingsOf, today } from './settings.ts'

/** A garment as it is asked for. */
export const garment = {
  construction: z.string().describe('id of a construction'),
  measures: inputs.measures
    .optional()
    .describe('ISO 8559-1 names, of a body that is not saved; else measurementSetId'),
  measurementSetId: inputs.id.optional(),
  unit: inputs.unit.optional(),
  choices: inputs.choices,
  extras: inputs.extras,
}
/** And its cloth. */
export const onCloth = {
  cloth: z.strictObject(inputs.clothFields).optional().describe('a cloth that is not saved; else clothId'),
  clothId: inputs.id.optional(),
  otherClothIds: inputs.otherClothIds,
}
const plainCloth = z.strictObject({ ...inputs.clothFields, pricePerMetre: inputs.money.optional() })

/** The computation of a garment, without saving anything. */
export const garmentRequests = [
  request({
    name: 'garment.draft',
    kind: 'query',
    about: 'Pieces, seams, hems, steps and fit report of a construction on a body.',
    input: z.strictObject(garment),
    run: (input, context) => draftFor(input, context),
  }),
  request({
    name: 'garment.lay',
    kind: 'query',
    about: 'A first lay of a garment on a cloth, checked, and the length to buy.',
    input: z.strictObject({
      ...garment,
      cloth: plainCloth.optional(),
      clothId: inputs.id.optional(),
      otherClothIds: inputs.otherClothIds,
      lay: inputs.layWish,
      quantity: z.int().min(1).max(24).default(1),
    }),
    run: (input, context) => {
      const { buying, rates } = settingsOf(context)
      const plain = draftFor(input, context)
      const free = { minor: 0, currency: rates.currency }
      const asked =
        input.cloth === undefined
          ? undefined
          : { ...input.cloth, pricePerMetre: input.cloth.pricePerMetre ?? free }
      const cloth: Cloth = clothFor({ cloth: asked, clothId: input.clothId }, context)
      const others = otherClothsFor(input, context)
      const at = input.clothId === undefined ? 'cloth' : 'clothId'
      return refusingAt(at, () => {
        const draft = asCut(plain, cloth, others)
        const pieces = piecesFrom(draft.pieces, 'main', others)
        const lay = wishedLay(pieces, cloth, buying, { ...input.lay, quantity: input.quantity })
        return { lay, purchase: purchaseOf(lay, cloth, buying) }
      })
    },
  }),
  request({
    name: 'garment.estimate',
    kind: 'query',
    about: 'Everything computed for a garment: draft, lay, cloth, thread, hours and price.',
    input: z.strictObject({ ...garment, ...onCloth, finishPlan: inputs.finishPlan, lay: inputs.layWish }),
    run: (input, context) => {
      const settings = settingsOf(context)
      const { choices, extras, finishPlan, lay } = input
      const construction = constructionFor(input.construction, context)
      const body = bodyFor(input, context)
      const cloth = clothFor(input, context)
      const others = otherClothsFor(input, context)
      const wanted = { construction, body, choices, extras, cloth, others, finishPlan, lay }
      return estimate(wanted, habitsOf(settings, input.unit))
    },
  }),
]

type BodyAsked = {
  measures?: z.output<typeof inputs.measures> | undefined
  measurementSetId?: string | undefined
  unit?: z.output<typeof inputs.unit> | undefined
}

export function draftFor(
  input: BodyAsked & {
    construction: string
    choices: z.output<typeof inputs.choices>
    extras: z.output<typeof inputs.extras>
  },
  context: Context,
) {
  const unit = input.unit ?? settingsOf(context).letterhead.unit
  const construction = constructionFor(input.construction, context)
  return draftGarment(construction, bodyFor(input, context), input.choices, unit, input.extras)
}

/** The body given in the request, or that of a saved measurement set. */
export function bodyFor({ measures, measurementSetId, unit }: BodyAsked, context: Context): Body {
  if (measurementSetId !== undefined)
    return bodyOfSet(getMeasurementSet(context.store.db, measurementSetId, 'measurementSetId'), context)
  if (measures === undefined) throw new Refusal(phrase('refusal.request.noBody'), 'measures')
  return refusingAt('measures', () => readBody(measures, unit ?? settingsOf(context).letterhead.unit))
}

/** The body of a saved set, with its age where the book knows the birth day. */
export function bodyOfSet({ clientId, measures }: MeasurementSet, context: Context): Body {
  const { birthDay } = getClient(context.store.db, clientId)
  return { measures, ...(birthDay === null ? {} : { age: ageOn(birthDay, today(context)) }) }
}

type ClothAsked = { cloth?: Parameters<typeof readCloth>[0] | undefined; clothId?: string | undefined }

/** The cloth given in the request, or a saved one. */
export function clothFor({ cloth, clothId }: ClothAsked, context: Context) {
  if (clothId !== undefined) return clothOf(getCloth(context.store.db, clothId, 'clothId'))
  if (cloth === undefined) throw new Refusal(phrase('refusal.request.noCloth'), 'cloth')
  return refusingAt('cloth', () => readCloth(cloth, settingsOf(context)))
}

/** The saved cloths that lining, interlining and facing are cut from, where they have their own. */
export const otherClothsFor = (
  { otherClothIds }: { otherClothIds: z.output<typeof inputs.otherClothIds> },
  { store }: Context,
): OtherCloths<QuotedCloth> =>
  Object.fromEntries(
    Object.entries(otherClothIds).flatMap(([role, id]) =>
      id === undefined ? [] : [[role, clothOf(getCloth(store.db, id, `otherClothIds.${role}`))]],
    ),
  )

/** The part of the settings that an estimate rests on; notions priced in another currency have no price. */
export const habitsOf = (
  {
    letterhead,
    buying,
    threadRules,
    threadStock,
    rates,
    notionStock = DEFAULT_NOTION_STOCK,
  }: WorkroomSettings,
  unit = letterhead.unit,
): Habits => ({
  ...{ unit, buying, threadRules, threadStock, rates },
  notionStock: Object.fromEntries(
    Object.entries(notionStock).filter(([, { currency }]) => currency === rates.currency),
  ),
})
