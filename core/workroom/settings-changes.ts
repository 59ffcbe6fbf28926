import { z } from 'zod'
import { NOTIONS, type NotionId } from '../draft/types.ts'
import { INSTALMENTS } from '../price/types.ts'
import { OPERATION, type TimedId } from '../sew/operations.ts'
import { SKILLS } from '../sew/types.ts'
import { STITCHES } from '../words/stitches.ts'
import * as inputs from './inputs.ts'

const text = inputs.line
const basisPoints = z.int().min(0).max(10_000)
const { money } = inputs
const prefix = z
  .string()
  .trim()
  .regex(/^[\p{L}\p{N}]{1,8}$/u, 'up to eight letters or figures')
const thread = z.strictObject({
  name: inputs.named,
  metresPerReel: z.number().min(1).max(100_000),
  pricePerReel: money,
  soldAs: z.enum(['reel', 'skein']).optional(),
})
const some = <Id extends string, T extends z.ZodType>(ids: readonly Id[], value: T) =>
  z
    .strictObject(Object.fromEntries(ids.map((id) => [id, value.optional()])) as Record<Id, z.ZodOptional<T>>)
    .partial()
    .optional()

/** Every part of the settings that can be set; what is not given stays. */
export const changes = z.strictObject({
  letterhead: z
    .strictObject({
      name: inputs.named,
      address: z.array(text(200)).max(8),
      email: text(200),
      phone: text(60),
      paper: z.enum(['A4', 'Letter']),
      locale: z.string().refine(isLocale, 'not a language tag'),
      unit: inputs.unit,
    })
    .partial()
    .optional(),
  timeZone: z.string().refine(isTimeZone, 'not a time zone').optional(),
  hoursPerWeek: z.number().min(1).max(168).optional(),
  rates: z
    .strictObject({
      currency: z.string().regex(/^[A-Z]{3}$/),
      perHour: z.strictObject(
        Object.fromEntries(SKILLS.map((skill) => [skill, money])) as Record<
          (typeof SKILLS)[number],
          typeof money
        >,
      ),
      overheadPerHour: money,
      targetPerHour: money,
      profit: z.strictObject({
        kind: z.enum(['markup', 'margin']),
        basisPoints: z.int().min(0).max(100_000),
      }),
      tax: z.strictObject({ name: text(40), basisPoints }),
      rounding: z.strictObject({
        step: z.int().min(0).max(1_000_000),
        direction: z.enum(['up', 'down', 'nearest']),
      }),
      depositBasisPoints: basisPoints,
      instalments: z
        .array(z.strictObject({ when: z.enum(INSTALMENTS), basisPoints }))
        .max(INSTALMENTS.length),
    })
    .partial()
    .optional(),
  buying: z
    .strictObject({
      endAllowance: inputs.length,
      squaring: inputs.length,
      testStrip: inputs.length,
      margin: inputs.partOfOne,
      cuttingGap: inputs.length,
    })
    .partial()
    .optional(),
  threadStock: z.strictObject({ hand: thread, machine: thread }).optional(),
  otherThreads: z
    .array(thread.extend({ id: inputs.id, work: z.enum(['hand', 'machine']) }))
    .max(200)
    .optional(),
  threadRules: z
    .strictObject({
      needleful: inputs.length,
      needlefulLost: inputs.length,
      machineEnd: inputs.length,
      machineWaste: inputs.partOfOne,
      doubled: z.array(z.enum(STITCHES)).max(STITCHES.length),
      waxed: z.boolean(),
    })
    .partial()
    .optional(),
  // Each group as a whole: what is not in it goes back to what the catalogue has.
  ways: z
    .strictObject({
      density: some(STITCHES, z.number().min(0.1).max(40)),
      perMinute: some(STITCHES, z.number().min(0.5).max(3000)),
      minutes: some(Object.keys(OPERATION) as TimedId[], z.number().min(0).max(2000)),
    })
    .partial()
    .optional(),
  yearly: z
    .strictObject({
      costs: z.array(z.strictObject({ name: inputs.named, amount: money })).max(60),
      soldHours: z.number().min(1).max(8760),
    })
    .optional(),
  numbering: z.strictObject({ quote: prefix, commission: prefix, yearly: z.boolean() }).partial().optional(),
  woolTerm: text(400).optional(),
  broughtTerm: text(400).optional(),
  keepDepositOnceCut: z.boolean().optional(),
  // A price of nothing at all (null) is taken away: the notion is not charged for.
  notionStock: z
    .strictObject(
      Object.fromEntries(NOTIONS.map((id) => [id, money.nullable()])) as Record<
        NotionId,
        z.ZodNullable<typeof money>
      >,
    )
    .partial()
    .optional(),
  validityDays: z.int().min(1).max(366).optional(),
  terms: z.array(text(400)).max(20).optional(),
})
export type Changes = z.output<typeof changes>

/** Whether a tag is one of BCP 47, such as `en-GB`. */
export function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1
  } catch {
    return false
  }
}

function isTimeZone(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}
