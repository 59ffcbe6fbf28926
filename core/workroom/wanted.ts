import { z } from 'zod'
import { draftGarment } from '../draft/constructions.ts'
import type { OtherCloths } from '../lay/as-cut.ts'
import type { Body } from '../measure/body.ts'
import { ageOn } from '../measure/grown.ts'
import { readBody } from '../measure/read-body.ts'
import type { Habits } from '../price/estimate.ts'
import { DEFAULT_NOTION_STOCK } from '../price/parameters.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import type { QuotedCloth } from '../quote/types.ts'
import { getClient } from '../store/clients.ts'
import { getCloth } from '../store/cloths.ts'
import { getMeasurementSet, type MeasurementSet } from '../store/measurement-sets.ts'
import { readLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { WorkroomUnit } from '../words/units.ts'
import { clothOf, readCloth } from './cloths.ts'
import { constructionFor } from './constructions.ts'
import * as inputs from './inputs.ts'
import { paceOf } from './pace.ts'
import type { Context } from './request.ts'
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
/** And how it is sewn and sold. */
export const onOrder = {
  finishPlan: inputs.finishPlan,
  lay: inputs.layWish,
  brought: inputs.brought,
  threadIds: inputs.threadIds,
  price: inputs.priceWish,
}
const ordered = z.strictObject(onOrder)
type Order = z.output<typeof ordered>
type GarmentAsked = BodyAsked & {
  construction: string
  choices: z.output<typeof inputs.choices>
  extras: z.output<typeof inputs.extras>
} & ClothAsked & { otherClothIds: z.output<typeof inputs.otherClothIds> } & Order & {
    garments?: number
    share?: number | undefined
  }

/** A garment as it is asked for, with all that is looked up for it. */
export function wantedFor(input: GarmentAsked, context: Context) {
  const { choices, extras, finishPlan, lay, price, share, garments } = input
  return {
    construction: constructionFor(input.construction, context),
    body: bodyFor(input, context),
    ...{ choices, extras, finishPlan, lay, price, share, garments },
    cloth: clothFor(input, context),
    others: otherClothsFor(input, context),
    brought: broughtOf(input, context),
  }
}

/** The length of cloth that a customer brings, mm. */
export function broughtOf(
  { brought, unit }: { brought?: number | string | undefined; unit?: WorkroomUnit | undefined },
  context: Context,
) {
  if (brought === undefined) return undefined
  return refusingAt('brought', () => readLength(brought, unit ?? settingsOf(context).letterhead.unit))
}

type BodyAsked = {
  measures?: z.output<typeof inputs.measures> | undefined
  measurementSetId?: string | undefined
  unit?: z.output<typeof inputs.unit> | undefined
}

/** A draft without lay or price. @throws Refusal when construction, body, choices or extras do not make one */
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

/**
 * The body given in the request, or that of a saved measurement set.
 * @throws Refusal when neither is given, there is no such set, or the measures make no body
 */
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

/** A set as papers name it: its day, what was worn under the tape, and what was said besides the measures. */
export const setInShort = ({ id, day, over, note, remarks, notes }: MeasurementSet) => ({
  ...{ id, day },
  ...(over === '' ? {} : { over }),
  told: [note, ...Object.values(remarks), ...Object.values(notes)].filter((text) => text !== ''),
})

type ClothAsked = { cloth?: Parameters<typeof readCloth>[0] | undefined; clothId?: string | undefined }

/**
 * The cloth given in the request, or a saved one.
 * @throws Refusal when neither is given, there is no such cloth, or what is given makes none
 */
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

type Sewn = {
  unit?: WorkroomUnit | undefined
  threadIds?: z.output<typeof inputs.threadIds> | undefined
}

/**
 * The part of the settings that an estimate rests on, and the pace that was learnt; notions priced in another currency have
 * no price.
 *
 * @throws Refusal at `threadIds` when such a thread is not in the drawer
 */
export function habitsOf(
  settings: WorkroomSettings,
  context: Context,
  { unit = settings.letterhead.unit, threadIds = {} }: Sewn = {},
): Habits {
  const { buying, threadRules, rates, notionStock = DEFAULT_NOTION_STOCK, ways } = settings
  const threadOf = (work: 'hand' | 'machine') => {
    const id = threadIds[work]
    if (id === undefined) return settings.threadStock[work]
    const sort = settings.otherThreads.find((one) => one.id === id && one.work === work)
    if (sort === undefined) throw new Refusal(phrase('refusal.quote.noThread'), `threadIds.${work}`)
    return sort
  }
  return {
    ...{ unit, buying, threadRules, rates },
    threadStock: { hand: threadOf('hand'), machine: threadOf('machine') },
    ways: { density: ways.density, minutes: ways.minutes, pace: paceOf(context) },
    notionStock: Object.fromEntries(
      Object.entries(notionStock).filter(([, { currency }]) => currency === rates.currency),
    ),
  }
}
