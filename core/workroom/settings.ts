import { z } from 'zod'
import { NOTIONS, type NotionId } from '../draft/types.ts'
import type { NotionStock } from '../price/notions.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import { SKILLS } from '../sew/types.ts'
import { findWorkroom, insertWorkroom, updateSettings } from '../store/workrooms.ts'
import { type Day, dayAt } from '../words/dates.ts'
import { readLength } from '../words/length.ts'
import type { Money } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import { englishReader, type Reader } from '../words/say.ts'
import { DEFAULT_SETTINGS } from './default-settings.ts'
import { recorded } from './history.ts'
import * as inputs from './inputs.ts'
import { type Context, request } from './request.ts'

/** The settings of the day; the defaults while none have been set. */
export const settingsOf = ({ store }: Pick<Context, 'store'>): WorkroomSettings =>
  findWorkroom(store.db)?.settings ?? DEFAULT_SETTINGS

/** The workroom's own calendar day. */
export const today = (context: Context): Day => dayAt(context.now(), settingsOf(context).timeZone)

/** Reads in the workroom's language and unit. */
export function readerOf(context: Pick<Context, 'store'>): Reader {
  const { locale, unit } = settingsOf(context).letterhead
  return { ...englishReader, locale, unit }
}

const text = inputs.line
const basisPoints = z.int().min(0).max(10_000)
const { money } = inputs
const thread = z.strictObject({
  name: inputs.named,
  metresPerReel: z.number().min(1).max(100_000),
  pricePerReel: money,
})

/** Every part of the settings that can be set; what is not given stays. */
const changes = z.strictObject({
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

type Changes = z.output<typeof changes>

export const settingsRequests = [
  request({
    name: 'settings.get',
    kind: 'query',
    about: 'The settings of the workroom and their revision.',
    input: z.strictObject({}),
    run: (_, { store }) => {
      const row = findWorkroom(store.db)
      return { settings: row?.settings ?? DEFAULT_SETTINGS, revision: row?.revision ?? 0 }
    },
  }),
  request({
    name: 'settings.set',
    kind: 'command',
    about: 'Sets some of the workroom’s settings. Quotes already made keep theirs.',
    input: z.strictObject({ revision: z.int().min(0), changes }),
    run: ({ revision, changes: asked }, context) => {
      const { db } = context.store
      const row = findWorkroom(db)
      const settings = merged(row?.settings ?? DEFAULT_SETTINGS, asked)
      refuseMixedCurrencies(settings)
      if (row === undefined && revision !== 0) throw new Refusal(phrase('refusal.store.stale'), 'revision')
      const saved =
        row === undefined
          ? insertWorkroom(db, { id: context.newId(), kind: 'own', settings, createdAt: context.now() })
          : updateSettings(db, row, revision, settings)
      recorded(context, 'settings.set', 'workroom', saved.id, row?.settings, saved.settings)
      return { settings: saved.settings, revision: saved.revision }
    },
  }),
]

/** The settings with what was asked put in: whole values are replaced, groups part by part. */
function merged(settings: WorkroomSettings, asked: Changes): WorkroomSettings {
  const { letterhead, rates, buying, notionStock, ...rest } = asked
  const unit = letterhead?.unit ?? settings.letterhead.unit
  const { margin, ...lengths } = given(buying)
  const read = (name: string, value: number | string | undefined) =>
    value === undefined || value === 0
      ? value
      : refusingAt(`changes.buying.${name}`, () => readLength(value, unit))
  const inMillimetres = Object.fromEntries(
    Object.entries(lengths).map(([name, value]) => [name, read(name, value)]),
  )
  return {
    ...settings,
    ...given(rest),
    letterhead: { ...settings.letterhead, ...given(letterhead) },
    rates: { ...settings.rates, ...given(rates) },
    ...(notionStock === undefined
      ? {}
      : { notionStock: priced({ ...settings.notionStock, ...notionStock }) }),
    buying: { ...settings.buying, ...inMillimetres, ...(margin === undefined ? {} : { margin }) },
  }
}

const priced = (prices: { [id in NotionId]?: Money | null | undefined }): NotionStock =>
  Object.fromEntries(Object.entries(prices).flatMap(([id, price]) => (price ? [[id, price]] : [])))

/** The fields that were given. */
type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> }
const given = <T extends object>(fields: T | undefined): Given<T> =>
  Object.fromEntries(Object.entries(fields ?? {}).filter(([, value]) => value !== undefined)) as Given<T>

/** @throws Refusal when an amount is in another currency than the workroom's */
function refuseMixedCurrencies({ rates, threadStock, notionStock = {} }: WorkroomSettings): void {
  const amounts: [field: string, amount: Money][] = [
    ...SKILLS.map((skill): [string, Money] => [`changes.rates.perHour.${skill}`, rates.perHour[skill]]),
    ['changes.rates.overheadPerHour', rates.overheadPerHour],
    ['changes.threadStock.hand', threadStock.hand.pricePerReel],
    ['changes.threadStock.machine', threadStock.machine.pricePerReel],
    ...Object.entries(notionStock).map(([id, price]): [string, Money] => [
      `changes.notionStock.${id}`,
      price,
    ]),
  ]
  const other = amounts.find(([, amount]) => amount.currency !== rates.currency)
  if (other === undefined) return
  throw new Refusal(
    phrase('refusal.money.currencies', { one: rates.currency, other: other[1].currency }),
    other[0],
  )
}

function isLocale(tag: string): boolean {
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
