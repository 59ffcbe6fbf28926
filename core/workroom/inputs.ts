import { z } from 'zod'
import { MANNERS } from '../lay/types.ts'
import { MEASURE_SOURCES } from '../measure/body.ts'
import { readDay } from '../words/dates.ts'
import { Refusal } from '../words/refusal.ts'
import { FINISH_PLAN_IDS } from '../words/stitches.ts'
import { WORKROOM_UNITS } from '../words/units.ts'

/** Parts of inputs that several requests share. Plain JSON, so that each has a JSON Schema. */

/** What requests take in common: each says its unit and its limits itself. */
export const id = z.string().min(1).max(64).describe('id of a stored thing')
export const revision = z.int().min(1).describe('the revision that was seen; an older one is refused')
export const line = (most: number) => z.string().trim().max(most)
export const named = z.string().trim().min(1).max(200)
export const day = z
  .string()
  .refine(isDay, 'a day is written as year-month-day')
  .describe('calendar day, YYYY-MM-DD')
export const unit = z.enum(WORKROOM_UNITS).describe('unit of lengths given as text without one')
export const length = z
  .union([z.number(), z.string()])
  .describe('mm as a number, or a text such as "38 1/2 in"')
export const partOfOne = z.number().min(0).max(1)
export const minor = z.int().min(0).max(1_000_000_000_000)
export const money = z
  .strictObject({ minor, currency: z.string().regex(/^[A-Z]{3}$/) })
  .describe('whole minor units and ISO 4217 currency')
export const finishPlan = z.enum(FINISH_PLAN_IDS).default('machineWhereHidden')

/** Lengths as text are read in the `unit` beside them, and so is a standard deviation. */
export const measures = z
  .record(
    z.string(),
    z.union([
      length,
      z.strictObject({ length, source: z.enum(MEASURE_SOURCES).optional(), sd: length.optional() }),
    ]),
  )
  .describe('body dimensions by their ISO 8559-1 names')

/** Values by the ids of the construction's choices; mm where one is a length. */
export const choices = z
  .record(z.string(), z.union([z.number(), z.string(), z.boolean()]))
  .default({})
  .describe('choices of the construction; what is not given is worked out from the body')

/** Asked of any garment; mm. */
export const extras = z
  .strictObject({
    growthTucks: z
      .strictObject({ count: z.int().min(0).max(6), depth: z.number().min(5).max(150).describe('mm') })
      .optional(),
    inlay: z.number().min(0).max(60).optional().describe('mm more in the side seams'),
    nursingSlits: z.boolean().optional(),
    trim: z.array(line(80)).max(20).optional().describe('ids of hems'),
  })
  .default({})
  .describe('what the client asks for besides, of whatever garment')

const rectangle = z.strictObject({
  x: z.number().min(0),
  y: z.number().min(0),
  width: z.number().positive(),
  height: z.number().positive(),
})
const placement = z.strictObject({
  piece: line(100),
  copy: line(100),
  x: z.number(),
  y: z.number(),
  angle: z.literal([0, 45, 90, 135, 180, 225, 270, 315]),
  flipped: z.boolean(),
})
/** How a garment is laid out; places and flaws in mm of washed cloth, from the near selvedge and the cut end. */
export const layWish = z
  .strictObject({
    manner: z
      .enum(MANNERS)
      .default('single')
      .describe('cloth flat, folded along its length, or torn in bands'),
    flaws: z.array(rectangle).max(50).default([]).describe('ground not to be covered, mm of washed cloth'),
    locked: z.array(placement).max(500).default([]).describe('copies that stay where they lie'),
    placements: z
      .array(placement)
      .max(500)
      .optional()
      .describe('every copy in its place: a lay already found'),
    tears: z.array(z.number().positive()).max(500).optional(),
  })
  .prefault({})
  .describe('how the cloth is laid out')

const basisPoints = z.int().min(0).max(10_000)
/** What else is asked of a garment: money in minor units, lengths mm or text, times minutes or text. */
export const priceWish = z
  .strictObject({
    rush: basisPoints.optional().describe('on top, basis points'),
    discount: basisPoints.optional().describe('off, basis points'),
    set: money.optional().describe('the price of one before tax, whatever is reckoned'),
    tax: basisPoints.optional().describe('where this garment is not taxed as usual'),
  })
  .prefault({})
  .describe('what is agreed apart from the workroom’s rates')
export const brought = length.optional().describe('the customer brings so much of the cloth')
export const threadIds = z
  .strictObject({ hand: id.optional(), machine: id.optional() })
  .default({})
  .describe('threads of the drawer, where they are not the usual ones')
export const variation = z
  .strictObject({
    finishPlan: z.enum(FINISH_PLAN_IDS).optional(),
    clothId: id.optional(),
    lined: z.boolean().optional(),
  })
  .describe('in what a garment is made otherwise')
export const time = z
  .union([z.number().positive().max(10_000), line(40)])
  .describe('minutes, or a text such as "1 h 20"')

/** Ids of cloths by what is cut from them; from the garment's own where none is named. */
export const otherClothIds = z
  .strictObject({ lining: id.optional(), interlining: id.optional(), facing: id.optional() })
  .default({})
  .describe('cloths of their own for what is not cut from the garment’s')

/** The fields of a cloth, for one of the book as for one that is only asked about. */
export const clothFields = {
  name: named.default('cloth'),
  fibre: line(80).default(''),
  width: length.describe('as sold'),
  selvedge: length.or(z.literal(0)).default(0).describe('lost at each side'),
  warpShrinkage: partOfOne.default(0).describe('in washing, along the cloth, in parts of one'),
  weftShrinkage: partOfOne.default(0).describe('in washing, across the cloth, in parts of one'),
  rightSide: z.boolean().default(false),
  nap: z.boolean().default(false),
  thickness: z.number().default(0.4).describe('of one layer, mm'),
  increment: length.default(100).describe('the shop sells by steps of this'),
  charged: z
    .enum(['bought', 'used'])
    .default('bought')
    .describe('whether a garment pays for the length bought, or for what it uses of a length in stock'),
  pricePerMetre: money,
}

function isDay(text: string): boolean {
  try {
    readDay(text)
    return true
  } catch (error) {
    if (error instanceof Refusal) return false
    throw error
  }
}
