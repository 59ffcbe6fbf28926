import { z } from 'zod'
import { asCut, piecesFrom } from '../lay/as-cut.ts'
import { fibreWords } from '../lay/fibres.ts'
import { saidOfCloths } from '../lay/flame.ts'
import { purchaseOf } from '../lay/purchase.ts'
import type { Cloth } from '../lay/types.ts'
import { wishedLay } from '../lay/wished-lay.ts'
import { alternativesOf } from '../price/alternatives.ts'
import { reckoned } from '../price/estimate.ts'
import type { Estimate } from '../price/estimate.types.ts'
import { getCloth } from '../store/cloths.ts'
import { refusingAt } from '../words/refusal.ts'
import { clothOf } from './cloths.ts'
import { cutFor } from './cuts.ts'
import * as inputs from './inputs.ts'
import { promiserOf } from './ready-by.ts'
import { request } from './request.ts'
import { settingsOf } from './settings.ts'
import {
  clothFor,
  draftFor,
  garment,
  habitsOf,
  onCloth,
  onOrder,
  otherClothsFor,
  wantedFor,
} from './wanted.ts'

const garments = z
  .int()
  .min(1)
  .max(1000)
  .default(1)
  .describe('on the same quote, this one among them: what is done once for all is shared out')
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
    input: z.strictObject({ ...garment, ...onCloth, ...onOrder, garments }),
    run: (input, context) => {
      const settings = settingsOf(context)
      const [wanted, habits] = [wantedFor(input, context), habitsOf(settings, context, input)]
      const found = reckoned(cutFor(wanted, habits), wanted, habits)
      const cautions = saidOfCloths(found.draft.cautions, fibreWords(wanted))
      return { ...found, draft: { ...found.draft, cautions } }
    },
  }),
  request({
    name: 'garment.promise',
    kind: 'query',
    about:
      'The day that can be promised for a garment: kept four times in five with all that is accepted; the day by which the client says yes for it, and when the cloth is there then.',
    input: z.strictObject({ ...garment, ...onCloth, ...onOrder, garments }),
    run: (input, context) => {
      const [wanted, habits] = [wantedFor(input, context), habitsOf(settingsOf(context), context, input)]
      const estimate = reckoned(cutFor(wanted, habits), wanted, habits)
      return promiserOf(context)([{ cloth: wanted.cloth, others: wanted.others, estimate }])
    },
  }),
  request({
    name: 'garment.alternatives',
    kind: 'query',
    about:
      'The same garment sewn otherwise, on another cloth, lined or not: cloth, hours, price and a day for each.',
    input: z.strictObject({
      ...garment,
      ...onCloth,
      ...onOrder,
      garments,
      clothIds: z.array(inputs.id).max(4).default([]).describe('other cloths to try'),
    }),
    run: ({ clothIds, ...input }, context) => {
      const settings = settingsOf(context)
      const habits = habitsOf(settings, context, input)
      const wanted = wantedFor(input, context)
      const cloths = clothIds
        .filter((id) => id !== input.clothId)
        .map((id) => ({ id, cloth: clothOf(getCloth(context.store.db, id, 'clothIds')) }))
      const promise = promiserOf(context)
      const promised = (clothId: string | undefined, estimate: Estimate) => {
        const { cloth } = cloths.find(({ id }) => id === clothId) ?? wanted
        return promise([{ cloth, others: wanted.others, estimate }]).day
      }
      return {
        alternatives: alternativesOf(wanted, cloths, habits, cutFor).map(
          ({ change, name, refused, estimate: found }) => ({
            ...{ change, name },
            ...(refused === undefined ? {} : { refused }),
            ...(found === undefined
              ? {}
              : { figures: { ...figuresOf(found), doneBy: promised(change.clothId, found) } }),
          }),
        ),
      }
    },
  }),
]

/** The figures that alternatives are held against each other by. */
const figuresOf = (estimate: Estimate) => {
  const { purchase, brought, price } = estimate
  return {
    toBuy: brought === undefined ? purchase.toBuy : 0,
    needed: purchase.needed,
    hours: price.earning!.hours,
    net: price.net,
    total: price.total,
    earnedPerHour: price.earnedPerHour,
  }
}
