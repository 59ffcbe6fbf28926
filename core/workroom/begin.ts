import { isDeepStrictEqual } from 'node:util'
import type { Rates } from '../price/types.ts'
import type { WorkroomSettings } from '../quote/settings.ts'
import { languageOf, regionOf } from '../words/languages.ts'
import { type Money, shareOf } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { readerIn } from '../words/readers.ts'
import { say } from '../words/say.ts'
import { DEFAULT_SETTINGS } from './default-settings.ts'

type Currency = { currency: string; times: number }
const euro: Currency = { currency: 'EUR', times: 1 }

/** The money of each region, and how many of it go roughly to a pound (rounded; hers to change like all that she begins with). */
const MONEY: Record<string, Currency> = {
  GB: { currency: 'GBP', times: 1 },
  ...{ IE: euro, DE: euro, AT: euro, LU: euro, BE: euro, NL: euro, IT: euro, FI: euro },
  ...{ CH: { currency: 'CHF', times: 1 }, LI: { currency: 'CHF', times: 1 } },
  ...{ US: { currency: 'USD', times: 1 }, CA: { currency: 'CAD', times: 2 } },
  ...{ AU: { currency: 'AUD', times: 2 }, NZ: { currency: 'NZD', times: 2 } },
  ...{ DK: { currency: 'DKK', times: 10 }, SE: { currency: 'SEK', times: 10 } },
  ZA: { currency: 'ZAR', times: 20 },
}

/** What the tax on sales is called where it is not called as the language has it (from memory; hers to change). */
const TAX: Record<string, string> = { US: 'Sales tax', CA: 'GST', AU: 'GST', NZ: 'GST' }

/** Regions that print on Letter; elsewhere it is A4. */
const ON_LETTER: readonly string[] = ['US', 'CA']
/** Regions that measure in inches (CLDR, measurement system US; from memory); elsewhere it is centimetres. */
const IN_INCHES: readonly string[] = ['US']

/** What a new workroom begins with where a locale is spoken: its sentences, its money and its paper. */
export function begunIn(locale: string): WorkroomSettings {
  const region = regionOf(locale)
  const { currency, times } = MONEY[region] ?? euro
  const reader = readerIn({ locale, unit: DEFAULT_SETTINGS.letterhead.unit })
  const said = (code: Parameters<typeof phrase>[0]) => say(phrase(code), reader)
  const { threadStock, letterhead } = DEFAULT_SETTINGS
  const here = hereIn({ currency, times })
  const all = allIn({ currency, times })
  const thread = (work: 'hand' | 'machine') => ({
    ...threadStock[work],
    ...{ name: said(`begin.thread.${work}`), pricePerReel: here(threadStock[work].pricePerReel) },
  })
  return {
    ...DEFAULT_SETTINGS,
    letterhead: {
      ...{ ...letterhead, locale, paper: ON_LETTER.includes(region) ? 'Letter' : 'A4' },
      ...(IN_INCHES.includes(region) ? { unit: 'in' } : {}),
    },
    rates: ratesIn({ currency, times }, TAX[region] ?? said('begin.tax')),
    threadStock: { hand: thread('hand'), machine: thread('machine') },
    notionStock: all(DEFAULT_SETTINGS.notionStock ?? {}),
    terms: (['cloth', 'measures', 'deposit'] as const).map((id) => said(`begin.term.${id}`)),
    woolTerm: said('begin.term.wool'),
    broughtTerm: said('begin.term.brought'),
  }
}

/**
 * Settings whose language has changed: sentences and names that a workroom begins with, and that nobody has written anew, are
 * said in the language that is spoken now.
 *
 * @param before BCP 47 locale that they were kept in
 */
export function saidAnew(settings: WorkroomSettings, before: string): WorkroomSettings {
  const { locale } = settings.letterhead
  if (languageOf(locale) === languageOf(before)) return settings
  const [was, is] = [begunIn(before), begunIn(locale)]
  const anew = (text: string, old: string | undefined, now: string | undefined) =>
    text === old && now !== undefined ? now : text
  const thread = (work: 'hand' | 'machine') => ({
    ...settings.threadStock[work],
    name: anew(settings.threadStock[work].name, was.threadStock[work].name, is.threadStock[work].name),
  })
  const { terms, woolTerm, broughtTerm, rates } = settings
  return {
    ...settings,
    terms: terms.map((term) => is.terms[was.terms.indexOf(term)] ?? term),
    ...(woolTerm === undefined ? {} : { woolTerm: anew(woolTerm, was.woolTerm, is.woolTerm) }),
    broughtTerm: anew(broughtTerm, was.broughtTerm, is.broughtTerm),
    threadStock: { hand: thread('hand'), machine: thread('machine') },
    rates: {
      ...rates,
      tax: { ...rates.tax, name: anew(rates.tax.name, was.rates.tax.name, is.rates.tax.name) },
    },
  }
}

const hereIn =
  ({ currency, times }: Currency) =>
  ({ minor }: Money): Money =>
    shareOf({ minor, currency }, times, 1)
const allIn =
  (money: Currency) =>
  <T extends object>(amounts: T): T =>
    Object.fromEntries(
      Object.entries(amounts).map(([id, amount]) => [id, hereIn(money)(amount as Money)]),
    ) as T

function ratesIn(money: Currency, taxName: string): Rates {
  const { rates } = DEFAULT_SETTINGS
  const here = hereIn(money)
  return {
    ...rates,
    ...{ currency: money.currency, perHour: allIn(money)(rates.perHour) },
    ...{ overheadPerHour: here(rates.overheadPerHour), targetPerHour: here(rates.targetPerHour) },
    tax: { ...rates.tax, name: taxName },
    rounding: { ...rates.rounding, step: rates.rounding.step * money.times },
  }
}

/**
 * Whether these rates are still those that a new workroom of this currency begins with: nobody has set her own. What an
 * hour is to earn is none of them, for no price is made of it.
 */
export const asBegun = ({ targetPerHour, ...rates }: Rates): boolean =>
  [euro, ...Object.values(MONEY)].some(
    (money) =>
      money.currency === rates.currency &&
      isDeepStrictEqual({ ...ratesIn(money, rates.tax.name), targetPerHour }, { ...rates, targetPerHour }),
  )
