import type { Day } from '../../words/dates.ts'
import { addMoney, type Money, noMoney, subtractMoney, sumMoney } from '../../words/money.ts'
import type { Invoice, TaxAtRate } from './invoice.ts'
import type { Receipt } from './receipt.ts'
import type { PaymentMethod } from './types.ts'

/**
 * One line of a year's list for the bookkeeper. Invoices and credit notes say what was earned, receipts and refunds
 * what was paid: neither says both, so that no column counts anything twice.
 */
export type BookRow = {
  day: Day
  number: string
  kind: Invoice['kind'] | Receipt['kind']
  customer: string
  net: Money | null
  /** Tax by rate. */
  taxes: Pick<TaxAtRate, 'basisPoints' | 'tax'>[]
  total: Money | null
  /** Less than nothing where it went back. */
  paid: Money | null
  method: PaymentMethod | null
}

/** The papers of a calendar year, by day; those of one day in the order in which they are given. */
export function yearRows(year: number, papers: readonly (Invoice | Receipt)[]): BookRow[] {
  return papers
    .filter(({ day }) => day.startsWith(`${year}-`))
    .map(rowOf)
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}

function rowOf(paper: Invoice | Receipt): BookRow {
  const { day, number, customer } = paper
  const row = { day, number, customer: customer.name }
  if ('amount' in paper) {
    const { kind, amount, method } = paper
    const paid = kind === 'receipt' ? amount : subtractMoney(noMoney(amount.currency), amount)
    return { ...row, kind, net: null, taxes: [], total: null, paid, method }
  }
  const { kind, net, total } = paper
  const taxes = paper.taxes.map(({ basisPoints, tax }) => ({ basisPoints, tax }))
  return { ...row, kind, net, taxes, total, paid: null, method: null }
}

/** The rates of tax that rows name, the lowest first. */
export const ratesIn = (rows: readonly Pick<BookRow, 'taxes'>[]): number[] =>
  [...new Set(rows.flatMap(({ taxes }) => taxes.map(({ basisPoints }) => basisPoints)))].sort((a, b) => a - b)

/** What a row says of one rate; null where it does not speak of it. */
export function taxAt({ taxes }: Pick<BookRow, 'taxes'>, rate: number): Money | null {
  const [first, ...more] = taxes.filter(({ basisPoints }) => basisPoints === rate).map(({ tax }) => tax)
  return first === undefined ? null : more.reduce(addMoney, first)
}

/** The foot of the list: its columns added up. */
export function yearSums(rows: readonly BookRow[], currency: string) {
  const sum = (pick: (row: BookRow) => Money | null) =>
    sumMoney(
      rows.flatMap((row) => pick(row) ?? []),
      currency,
    )
  return {
    net: sum(({ net }) => net),
    taxes: ratesIn(rows).map((basisPoints) => ({ basisPoints, tax: sum((row) => taxAt(row, basisPoints)) })),
    total: sum(({ total }) => total),
    paid: sum(({ paid }) => paid),
  }
}
