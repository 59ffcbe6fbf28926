import { type Day, readDay } from '../../words/dates.ts'
import { addMoney, type Money, noMoney, partOf, shareOf, subtractMoney, sumMoney } from '../../words/money.ts'
import { type Phrase, phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'
import type { Numbered } from './series.ts'

/** Who sells, or who buys. */
export type Party = { name: string; address: string[]; taxNumber?: string | undefined }

/** What was made or done: how many, and the price of one before tax. `basisPoints` is its rate of tax. */
export type LineGiven = { text: string; quantity: number; each: Money; basisPoints: number }
export type InvoiceLine = LineGiven & { net: Money; tax: Money; total: Money }

/** Tax at one rate: what it is reckoned on, and what it comes to. */
export type TaxAtRate = { basisPoints: number; net: Money; tax: Money }

/**
 * An invoice, or the credit note that cancels one: complete in itself, never altered and never deleted. What it says
 * follows Directive 2006/112/EC, article 226.
 */
export type Invoice = Numbered & {
  kind: 'invoice' | 'creditNote'
  day: Day
  /** The day the garments were handed over, if not the day of the invoice. */
  supplied?: Day | undefined
  seller: Party
  customer: Party
  lines: InvoiceLine[]
  /** One a rate, the lowest first. */
  taxes: TaxAtRate[]
  net: Money
  tax: Money
  total: Money
  /** Paid by then, and what is left to pay; less than nothing is the customer's. */
  paid: Money
  balance: Money
  /** Of a credit note: the number of the invoice that it cancels, and why. */
  cancels?: string
  reason?: string
}

/** What an invoice is made from; sums and taxes are reckoned from its lines. */
export type InvoiceGiven = Pick<Invoice, 'day' | 'supplied' | 'seller' | 'customer' | 'paid'> & {
  number: Numbered
  lines: readonly LineGiven[]
}

/**
 * An invoice with its sums. Tax is reckoned line by line, as on the quote, so that the sums on paper are those of the
 * lines on paper.
 *
 * @throws Refusal at what is not given, or cannot be
 */
export function invoiceOf({
  number,
  day,
  supplied,
  seller,
  customer,
  paid,
  lines: given,
}: InvoiceGiven): Invoice {
  refusingAt('day', () => readDay(day))
  if (supplied !== undefined) refusingAt('supplied', () => readDay(supplied))
  if (given.length === 0) throw new Refusal(phrase('refusal.money.invoice.empty'), 'lines')
  for (const [field, { name }] of Object.entries({ seller, customer })) {
    if (name.trim() === '') throw new Refusal(phrase('refusal.money.invoice.name'), `${field}.name`)
  }
  const { currency } = paid
  const lines = given.map((line, i) => lineOf(line, `lines.${i}`))
  const sum = (pick: 'net' | 'tax' | 'total', of: readonly InvoiceLine[] = lines) =>
    sumMoney(
      of.map((line) => line[pick]),
      currency,
    )
  const rates = [...new Set(lines.map(({ basisPoints }) => basisPoints))].sort((a, b) => a - b)
  const total = sum('total')
  return {
    ...number,
    kind: 'invoice',
    day,
    ...(supplied === undefined ? {} : { supplied }),
    ...{ seller, customer, lines },
    taxes: rates.map((basisPoints) => {
      const own = lines.filter((line) => line.basisPoints === basisPoints)
      return { basisPoints, net: sum('net', own), tax: sum('tax', own) }
    }),
    ...{ net: sum('net'), tax: sum('tax'), total, paid, balance: subtractMoney(total, paid) },
  }
}

/** What the paper still lacks for a bookkeeper, where the law of the land asks for a full invoice. */
export function lackingOn({ seller, customer, tax }: Invoice): Phrase[] {
  return [
    ...(seller.address.length > 0 ? [] : [phrase('money.lacks.sellerAddress')]),
    ...(customer.address.length > 0 ? [] : [phrase('money.lacks.customerAddress')]),
    ...(tax.minor === 0 || seller.taxNumber ? [] : [phrase('money.lacks.taxNumber')]),
  ]
}

function lineOf(line: LineGiven, field: string): InvoiceLine {
  const { text, quantity, each, basisPoints } = line
  if (text.trim() === '') throw new Refusal(phrase('refusal.money.invoice.text'), `${field}.text`)
  if (!(Number.isSafeInteger(quantity) && quantity > 0))
    throw new Refusal(phrase('refusal.money.invoice.quantity'), `${field}.quantity`)
  if (!(Number.isInteger(basisPoints) && basisPoints >= 0 && basisPoints <= 10_000))
    throw new Refusal(phrase('refusal.money.invoice.rate'), `${field}.basisPoints`)
  const net = shareOf(addMoney(each, noMoney(each.currency)), quantity, 1)
  const tax = partOf(net, basisPoints)
  return { text, quantity, each, basisPoints, net, tax, total: addMoney(net, tax) }
}
