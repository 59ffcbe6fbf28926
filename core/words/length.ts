import { numberFormat } from './formats.ts'
import { phrase } from './phrase.ts'
import { Refusal } from './refusal.ts'
import { isMetric, type LengthUnit, MM_PER, type WorkroomUnit } from './units.ts'

const UNIT_WORDS: Record<string, LengthUnit> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  y: 'yd',
  nl: 'nl',
  nls: 'nl',
  nail: 'nl',
  nails: 'nl',
  n: 'nl',
  qr: 'qr',
  quarter: 'qr',
  quarters: 'qr',
  ell: 'ell',
  ells: 'ell',
}

const VULGAR: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

const PART = /^(?:(\d+(?:[.,]\d+)?)(?!\s*\/))?\s*(?:(\d+)\s*\/\s*(\d+))?\s*("|'|[a-z]+)?\s*/

/** The longest length anyone may type: a kilometre of cloth. Bodies and choices set narrower limits. */
const LONGEST = 1_000_000

/**
 * Reads a length as a maker writes it: `38 1/2`, `38½"`, `38.5 in`, `97,8 cm`, `978 mm`, `5' 6"`,
 * `1 yd 4 nl`. A bare number is in `unit`. Fractions and decimals with point or comma are understood; what
 * could be read in two ways is refused rather than guessed.
 *
 * @returns millimetres, greater than zero
 * @throws Refusal with a sentence for the maker
 */
export function parseLength(text: string, unit: LengthUnit): number {
  const shown = text.trim().slice(0, 40)
  const refuse = (code: 'unreadable' | 'ambiguous' | 'mixed' | 'order' | 'noUnit') =>
    new Refusal(phrase(`refusal.length.${code}`, { text: shown }))
  let rest = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]} `)
    .replace(/[″”“]|''/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/\.(?= |$)/g, '')
    .trim()
  if (rest === '') throw new Refusal(phrase('refusal.length.empty'))
  if (/^[-−–]/.test(rest)) throw new Refusal(phrase('refusal.length.negative', { text: shown }))
  if (/\d[.,]\d+[.,]/.test(rest) || /(?:^|[^\d.,])[1-9]\d{0,2},\d{3}(?!\d)/.test(rest))
    throw refuse('ambiguous')

  let total = 0
  let previous: LengthUnit | undefined
  while (rest !== '') {
    const match = PART.exec(rest)
    const [whole = '', number, top, bottom, word] = match ?? []
    if (whole === '' || (number === undefined && top === undefined)) throw refuse('unreadable')
    if (word !== undefined && !Object.hasOwn(UNIT_WORDS, word)) throw refuse('unreadable')
    if (bottom !== undefined && Number(bottom) === 0) throw refuse('unreadable')
    if (number?.match(/[.,]/) && top !== undefined) throw refuse('ambiguous')
    const value =
      (number === undefined ? 0 : Number(number.replace(',', '.'))) + (top ? Number(top) / Number(bottom) : 0)
    rest = rest.slice(whole.length)
    if (word === undefined && (previous !== undefined || rest !== '')) throw refuse('noUnit')
    const here = word === undefined ? unit : UNIT_WORDS[word]!
    if (previous !== undefined && isMetric(previous) !== isMetric(here)) throw refuse('mixed')
    if (previous !== undefined && MM_PER[here] >= MM_PER[previous]) throw refuse('order')
    total += value * MM_PER[here]
    previous = here
  }
  // The sum of decimal parts is cleaned of binary dust far below any tape's reading.
  const mm = Math.round(total * 1e6) / 1e6
  if (mm === 0) throw new Refusal(phrase('refusal.length.zero'))
  if (!(mm <= LONGEST)) throw new Refusal(phrase('refusal.length.absurd', { text: shown }))
  return mm
}

/**
 * A length from a request: a number is millimetres, a text is read in `unit`.
 * @throws Refusal when it is not a positive, finite length
 */
export function readLength(value: number | string, unit: LengthUnit): number {
  if (typeof value === 'string') return parseLength(value, unit)
  if (!Number.isFinite(value)) throw new Refusal(phrase('refusal.length.unreadable', { text: String(value) }))
  if (value < 0) throw new Refusal(phrase('refusal.length.negative', { text: String(value) }))
  if (value === 0) throw new Refusal(phrase('refusal.length.zero'))
  if (value > LONGEST) throw new Refusal(phrase('refusal.length.absurd', { text: `${value} mm` }))
  return value
}

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']

/**
 * Prints a length: millimetres to the whole, centimetres to the millimetre, inches to the eighth, which is
 * as fine as chalk and tape go. Rounds half up. Without thousands marks, so that what is printed can be read back.
 */
export function printLength(mm: number, unit: WorkroomUnit, locale: string): string {
  return `${printLengthBare(mm, unit, locale)} ${unit}`
}

/** What a length is printed to in each unit, mm. */
const FINEST = { mm: 1, cm: 1, in: MM_PER.in / 8 } as const
/** Rounding dust that must not cost another step, parts of a step. */
const DUST = 1e-6

/** A length that must not be less in print than it is, mm: rounded up to what its unit is printed to. */
export const roundedUp = (mm: number, unit: WorkroomUnit): number =>
  Math.ceil(mm / FINEST[unit] - DUST) * FINEST[unit]

/** As `printLength`, without the unit, for tables whose heading names it. */
export function printLengthBare(mm: number, unit: WorkroomUnit, locale: string): string {
  if (unit === 'in') {
    const sign = mm < 0 ? '−' : ''
    const eighths = Math.round((Math.abs(mm) / MM_PER.in) * 8)
    const whole = Math.floor(eighths / 8)
    const part = EIGHTHS[eighths % 8]!
    return `${sign}${whole === 0 && part !== '' ? '' : whole}${part}`
  }
  const digits = unit === 'cm' ? 1 : 0
  // Nothing is “-0” long.
  const written = { maximumFractionDigits: digits, useGrouping: false, signDisplay: 'negative' } as const
  return numberFormat(locale, written).format(mm / MM_PER[unit])
}
