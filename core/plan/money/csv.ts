import { csvOf, guarded } from '../../words/csv.ts'
import { type Money, minorDigits } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { englishReader, type Reader, say } from '../../words/say.ts'
import { type BookRow, ratesIn, taxAt } from './year.ts'

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
  return csvOf([headings, ...records])
}

/** An amount as a decimal of the major unit, from its digits alone: `1234` pence are `12.34`. */
export function decimalOf({ minor, currency }: Money): string {
  const digits = minorDigits(currency)
  const text = String(Math.abs(minor)).padStart(digits + 1, '0')
  const sign = minor < 0 ? '-' : ''
  return digits === 0 ? sign + text : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`
}

const decimal = (amount: Money | null): string => (amount === null ? '' : decimalOf(amount))

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
