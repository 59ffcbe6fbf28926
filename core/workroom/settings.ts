import { z } from 'zod'
import type { NotionId } from '../draft/types.ts'
import type { NotionStock } from '../price/notions.ts'
import { completed, type WorkroomSettings } from '../quote/settings.ts'
import { STITCH } from '../sew/stitches.ts'
import { SKILLS } from '../sew/types.ts'
import { listCloths } from '../store/cloths.ts'
import { findWorkroom, insertWorkroom, updateSettings } from '../store/workrooms.ts'
import { type Day, dayAt } from '../words/dates.ts'
import { readLength } from '../words/length.ts'
import { type Money, shareOf, sumMoney } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { readerIn } from '../words/readers.ts'
import { Refusal, refusingAt } from '../words/refusal.ts'
import type { Reader } from '../words/say.ts'
import { STITCHES, type StitchId } from '../words/stitches.ts'
import { asBegun, begunIn, saidAnew } from './begin.ts'
import { DEFAULT_SETTINGS } from './default-settings.ts'
import { recorded } from './history.ts'
import { type Context, request } from './request.ts'
import { type Changes, changes, isLocale } from './settings-changes.ts'

/** The settings of the day; the defaults while none have been set. */
export const settingsOf = ({ store }: Pick<Context, 'store'>): WorkroomSettings => {
  const stored = findWorkroom(store.db)?.settings
  return stored === undefined ? DEFAULT_SETTINGS : completed(stored, DEFAULT_SETTINGS)
}

/** The workroom's own calendar day. */
export const today = (context: Context): Day => dayAt(context.now(), settingsOf(context).timeZone)

/** Stitches to the centimetre where the maker has set none. */
const USUAL_DENSITY = Object.fromEntries(STITCHES.map((id) => [id, STITCH[id].density])) as Record<
  StitchId,
  number
>

/** Reads in the workroom's language and unit. */
export function readerOf(context: Pick<Context, 'store'>): Reader {
  return readerIn(settingsOf(context).letterhead)
}

/** The settings of the workroom. */
export const settingsRequests = [
  request({
    name: 'settings.get',
    kind: 'query',
    about:
      'The settings of the workroom and their revision, whether its rates are still the starting figures, and the stitch densities that are usual.',
    input: z.strictObject({}),
    run: (_, { store }) => {
      const row = findWorkroom(store.db)
      return {
        settings: settingsOf({ store }),
        revision: row?.revision ?? 0,
        starting: row?.kind === 'own' && asBegun(settingsOf({ store }).rates),
        usual: { density: USUAL_DENSITY },
      }
    },
  }),
  request({
    name: 'settings.begun',
    kind: 'query',
    about: 'What a new workroom would begin with where a locale is spoken.',
    input: z.strictObject({ locale: z.string().refine(isLocale, 'not a language tag') }),
    run: ({ locale }) => {
      const { rates, letterhead } = begunIn(locale)
      return { currency: rates.currency, paper: letterhead.paper, unit: letterhead.unit }
    },
  }),
  request({
    name: 'settings.set',
    kind: 'command',
    about:
      'Sets some of the workroom’s settings. Quotes already made keep theirs. Set for the first time with a locale, the rest begins as is usual there: currency, paper, terms. With another language, terms and names that still stand as they began are said in it.',
    input: z.strictObject({ revision: z.int().min(0), changes }),
    run: ({ revision, changes: asked }, context) => {
      const { db } = context.store
      const row = findWorkroom(db)
      const locale = row === undefined ? asked.letterhead?.locale : undefined
      const before = locale === undefined ? settingsOf(context) : begunIn(locale)
      const settings = saidAnew(merged(before, asked), before.letterhead.locale)
      refuseMixedCurrencies(settings)
      refuseOtherCloths(settings, context)
      if (row === undefined && revision !== 0) throw new Refusal(phrase('refusal.store.stale'), 'revision')
      const saved =
        row === undefined
          ? insertWorkroom(db, { id: context.newId(), kind: 'own', settings, createdAt: context.now() })
          : updateSettings(db, row, revision, settings)
      recorded(context, 'settings.set', 'workroom', saved.id, row?.settings, saved.settings)
      return { settings, revision: saved.revision }
    },
  }),
]

/** The settings with what was asked put in: whole values are replaced, groups part by part. */
function merged(settings: WorkroomSettings, asked: Changes): WorkroomSettings {
  const { letterhead, rates, buying, notionStock, threadRules, ways, yearly, numbering, ...rest } = asked
  const unit = letterhead?.unit ?? settings.letterhead.unit
  const { margin, ...lengths } = given(buying)
  const { machineWaste, doubled, waxed, ...ends } = given(threadRules)
  const inMillimetres = (group: string, some: Record<string, number | string | undefined>) =>
    Object.fromEntries(
      Object.entries(some).map(([name, value]) => [
        name,
        value === undefined || value === 0
          ? value
          : refusingAt(`changes.${group}.${name}`, () => readLength(value, unit)),
      ]),
    )
  const perHour =
    yearly === undefined || yearly.costs.length === 0 ? {} : { overheadPerHour: overheadOf(yearly, settings) }
  return {
    ...settings,
    ...given(rest),
    letterhead: { ...settings.letterhead, ...given(letterhead) },
    numbering: { ...settings.numbering, ...given(numbering) },
    rates: { ...settings.rates, ...given(rates), ...perHour },
    ...(yearly === undefined ? {} : { yearly }),
    ways: { ...settings.ways, ...without(ways) },
    threadRules: {
      ...settings.threadRules,
      ...inMillimetres('threadRules', ends),
      ...given({ machineWaste, doubled, waxed }),
    },
    ...(notionStock === undefined
      ? {}
      : { notionStock: priced({ ...settings.notionStock, ...notionStock }) }),
    buying: {
      ...settings.buying,
      ...inMillimetres('buying', lengths),
      ...(margin === undefined ? {} : { margin }),
    },
  }
}

/** Yearly costs over the hours that are sold. */
function overheadOf({ costs, soldHours }: WorkroomSettings['yearly'], { rates }: WorkroomSettings): Money {
  const year = sumMoney(
    costs.map(({ amount }) => amount),
    rates.currency,
  )
  return shareOf(year, 10, Math.round(soldHours * 10))
}

/** Groups as given, without what was left out of each. */
const without = (ways: Changes['ways']): Partial<WorkroomSettings['ways']> =>
  Object.fromEntries(Object.entries(given(ways)).map(([group, values]) => [group, given(values)]))

const priced = (prices: { [id in NotionId]?: Money | null | undefined }): NotionStock =>
  Object.fromEntries(Object.entries(prices).flatMap(([id, price]) => (price ? [[id, price]] : [])))

/** The fields that were given. */
type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> }
const given = <T extends object>(fields: T | undefined): Given<T> =>
  Object.fromEntries(Object.entries(fields ?? {}).filter(([, value]) => value !== undefined)) as Given<T>

/** @throws Refusal when cloths are priced in another currency: a workroom keeps one */
function refuseOtherCloths({ rates }: WorkroomSettings, { store }: Context): void {
  const other = listCloths(store.db).find(({ currency }) => currency !== rates.currency)
  if (other === undefined) return
  const params = { cloth: other.name, one: other.currency, other: rates.currency }
  throw new Refusal(phrase('refusal.settings.clothCurrency', params), 'changes.rates.currency')
}

/** @throws Refusal when an amount is in another currency than the workroom's */
function refuseMixedCurrencies({
  rates,
  threadStock,
  otherThreads,
  yearly,
  notionStock = {},
}: WorkroomSettings): void {
  const amounts: [field: string, amount: Money][] = [
    ...SKILLS.map((skill): [string, Money] => [`changes.rates.perHour.${skill}`, rates.perHour[skill]]),
    ['changes.rates.overheadPerHour', rates.overheadPerHour],
    ['changes.rates.targetPerHour', rates.targetPerHour],
    ...yearly.costs.map(({ amount }, i): [string, Money] => [`changes.yearly.costs.${i}`, amount]),
    ...otherThreads.map(({ pricePerReel }, i): [string, Money] => [
      `changes.otherThreads.${i}`,
      pricePerReel,
    ]),
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
