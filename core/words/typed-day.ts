import { type Day, daysBetween, readDay } from './dates.ts'
import { dayFormat } from './formats.ts'
import { phrase } from './phrase.ts'
import { Refusal } from './refusal.ts'

type Part = 'day' | 'month' | 'year'

const format = (locale: string, options: Intl.DateTimeFormatOptions) =>
  dayFormat(locale, { ...options, calendar: 'gregory', numberingSystem: 'latn' })

const IN_FIGURES = { day: '2-digit', month: '2-digit', year: 'numeric' } as const

/** A day as it is written in a field: `03.12.2026` in German, `03/12/2026` in British English. */
export const writeDay = (day: Day, locale: string): string =>
  format(locale, IN_FIGURES).format(new Date(`${day}T00:00:00Z`))

/** How a day is to be written: `TT.MM.JJJJ`, from the letters for day, month and year. */
export const formOfDay = (locale: string, letters: string): string =>
  format(locale, IN_FIGURES)
    .formatToParts(0)
    .map(({ type, value }) => {
      const at = ['day', 'month', 'year'].indexOf(type)
      return at < 0 ? value : letters.charAt(at).repeat(value.length)
    })
    .join('')

/** In which order the locale writes day, month and year. */
const orderOf = (locale: string): Part[] =>
  format(locale, IN_FIGURES)
    .formatToParts(0)
    .flatMap(({ type }) => (type === 'day' || type === 'month' || type === 'year' ? [type] : []))

const plain = (name: string): string => name.normalize('NFC').toLowerCase().replace(/\./g, '')

/** The month a word begins, by the locale's names, or 0. Three letters tell them apart in the planner's languages. */
function monthOf(word: string, locale: string): number {
  if (word.length < 3) return 0
  const names = Array.from({ length: 12 }, (_, month) =>
    (['long', 'short'] as const).map((length) =>
      plain(
        format(locale, { day: 'numeric', month: length })
          .formatToParts(Date.UTC(2024, month, 1))
          .find(({ type }) => type === 'month')!.value,
      ),
    ),
  )
  return names.findIndex((both) => both.some((name) => name.startsWith(word))) + 1
}

/** A year of two figures lies in this century, or late in the last. */
const fullYear = (figures: string): string =>
  figures.length > 2 ? figures : `${Number(figures) < 70 ? '20' : '19'}${figures.padStart(2, '0')}`

/** The day of a month that lies nearest to another day. @throws Refusal where no year about has it */
function nearest(within: string, near: Day): Day {
  const year = Number(near.slice(0, 4))
  const days = [year - 1, year, year + 1].flatMap((one) => {
    const day = `${one}-${within}`
    // The 29th of February is not in every year.
    return within === '02-29' && new Date(`${day}T00:00:00Z`).getUTCDate() !== 29 ? [] : [readDay(day)]
  })
  const away = (day: Day) => Math.abs(daysBetween(near, day))
  const [first] = days.sort((a, b) => away(a) - away(b))
  return first ?? readDay(`${year}-${within}`)
}

/**
 * Reads a day as it is written where the locale is spoken, `03.12.2026`, `3.12.26` or `3. Dezember 2026` in German,
 * or with the year first anywhere. Without a year it is the one nearest to `near`.
 *
 * @throws Refusal with an example in the locale's own manner
 */
export function readTypedDay(text: string, locale: string, near?: Day): Day {
  const words = plain(text.replace(/[./,-]/g, ' ')).match(/\d+|\p{L}+/gu) ?? []
  const named = words.findIndex((word) => /^\p{L}/u.test(word))
  const month = named < 0 ? 0 : monthOf(words[named]!, locale)
  const figures = words.filter((word) => /^\d/.test(word))
  const yearFirst: Part[] = ['year', 'month', 'day']
  const bare = near !== undefined && words.length === 2
  const order = (figures[0]?.length === 4 ? yearFirst : orderOf(locale)).filter(
    (part) => (month === 0 || part !== 'month') && (!bare || part !== 'year'),
  )
  const at = (part: Part) => figures[order.indexOf(part)] ?? ''
  try {
    if (words.length !== (bare ? 2 : 3) || figures.length !== order.length)
      throw new Refusal(phrase('refusal.date.unreadable'))
    const two = (figure: string) => figure.padStart(2, '0')
    const within = `${two(month === 0 ? at('month') : String(month))}-${two(at('day'))}`
    return bare ? nearest(within, near) : readDay(`${fullYear(at('year'))}-${within}`)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const example = writeDay('2026-11-25', locale)
    throw new Refusal(phrase('refusal.date.typed', { text: text.trim().slice(0, 40), example }))
  }
}
