import { type Money, minorDigits } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { englishReader, type Reader, say } from '../../words/say.ts'
import { type BookRow, ratesIn, taxAt } from './year.ts'

/** Without it a spreadsheet reads the letters of names in the encoding of its own machine. */
export const BYTE_ORDER_MARK = '\uFEFF'

/**
 * A year's list as a table for any bookkeeping: RFC 4180 in UTF-8 with its mark, a line of headings first. Days are `YYYY-MM-DD` and amounts
 * plain decimals with a point, so that they read alike everywhere; what is not said of a row is left empty.
 *
 * @throws Refusal when rows are of two currencies
 */
export function toCsv(rows: readonly BookRow[], reader: Reader = englishReader): string {
  const rates = ratesIn(rows)
  const said = (...[code, params]: Parameters<typeof phrase>) => guarded(say(phrase(code, params), reader))
  const headings = [
    ...(['day', 'number', 'kind', 'customer', 'net'] as const).map((name) => said(`money.column.${name}`)),
    ...rates.map((basisPoints) => said('money.column.tax', { percent: basisPoints / 100 })),
    ...(['total', 'paid', 'method', 'currency'] as const).map((name) => said(`money.column.${name}`)),
  ]
  const currency = currencyOf(rows)
  const records = rows.map((row) => [
    ...[row.day, row.number].map(guarded),
    said(`money.kind.${row.kind}`),
    guarded(row.customer),
    ...[row.net, ...rates.map((rate) => taxAt(row, rate)), row.total, row.paid].map(decimal),
    row.method === null ? '' : said(`money.method.${row.method}`),
    currency,
  ])
  const lines = [headings, ...records].map((fields) => `${fields.map(quoted).join(',')}\r\n`)
  return BYTE_ORDER_MARK + lines.join('')
}

/** An amount as a decimal of the major unit, from its digits alone: `1234` pence are `12.34`. */
export function decimalOf({ minor, currency }: Money): string {
  const digits = minorDigits(currency)
  const text = String(Math.abs(minor)).padStart(digits + 1, '0')
  const sign = minor < 0 ? '-' : ''
  return digits === 0 ? sign + text : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`
}

const decimal = (amount: Money | null): string => (amount === null ? '' : decimalOf(amount))

/**
 * Text that a spreadsheet would take for a formula gets an apostrophe before it: a customer's name must not reckon
 * (CWE-1236). Amounts never come through here, for their minus is meant.
 */
export const guarded = (text: string): string => (FORMULA.test(text) ? `'${text}` : text)

/** What a formula begins with, also in the wide letters of Chinese and Japanese keyboards. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/

/** RFC 4180, section 2, rules 5 to 7: a field with a comma, a quote or a line break stands in quotes. */
export const quoted = (field: string): string =>
  /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field

function currencyOf(rows: readonly BookRow[]): string {
  const all = rows.flatMap(({ net, total, paid, taxes }) => [
    net,
    total,
    paid,
    ...taxes.map(({ tax }) => tax),
  ])
  const [one = '', other] = new Set(all.flatMap((amount) => (amount === null ? [] : [amount.currency])))
  if (other !== undefined) throw new Refusal(phrase('refusal.money.currencies', { one, other }))
  return one
}
