import { english } from './catalogue/english.ts'
import { printDate } from './dates.ts'
import { numberFormat } from './formats.ts'
import { printLength } from './length.ts'
import { printMoney } from './money.ts'
import type { Phrase, PhraseCode, PhraseValue } from './phrase.ts'
import { printMinutes } from './time.ts'
import type { WorkroomUnit } from './units.ts'

/** Who reads: the language's catalogue, the Intl locale, and the unit lengths are printed in. */
export type Reader = { locale: string; unit: WorkroomUnit; catalogue: Record<PhraseCode, string> }

/** Who reads where nobody has said anything else. */
export const englishReader: Reader = { locale: 'en-GB', unit: 'cm', catalogue: english }

/** Says a phrase: every `{name}` of its sentence is replaced by that parameter, printed for the reader. */
export function say(phrase: Phrase, reader: Reader = englishReader): string {
  const params = phrase.params ?? {}
  return reader.catalogue[phrase.code].replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = Object.hasOwn(params, name) ? params[name] : undefined
    return value === undefined ? whole : sayValue(value, reader)
  })
}

function sayValue(value: PhraseValue, reader: Reader): string {
  if (typeof value === 'string') return isolated(value)
  if (typeof value === 'number')
    return numberFormat(reader.locale, { maximumFractionDigits: 2 }).format(value)
  if ('mm' in value) return printLength(value.mm, reader.unit, reader.locale)
  if ('minutes' in value) return printMinutes(value.minutes)
  if ('date' in value) return printDate(value.date, reader.locale)
  if ('minor' in value) return printMoney(value, reader.locale)
  return say(value, reader)
}

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}]/u

/**
 * What is written from right to left keeps to itself within a sentence of another direction (UAX #9, isolates), or a
 * figure that follows a name would be drawn before it.
 */
const isolated = (text: string): string => (RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text)
