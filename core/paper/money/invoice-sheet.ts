import type { Invoice } from '../../plan/money/invoice.ts'
import type { Letterhead } from '../../quote/types.ts'
import { numberFormat } from '../../words/formats.ts'
import type { Block } from '../block.ts'
import { capital } from '../names.ts'
import type { PaperDocument } from '../page.ts'
import { addressed } from '../sheet.ts'
import { letter, refuseUnprintableIn, sumRows, type Voice, voiceOf } from './letter.ts'

/** An invoice or credit note as it was issued, and how the workroom prints. */
export type InvoicePaper = { letterhead: Letterhead; invoice: Invoice; commissionNumber: string }

/**
 * The invoice, or the credit note that cancels one, with what Directive 2006/112/EC, article 226, asks for. The seller
 * stands as on the day it was made, whatever the letterhead says today.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function invoiceSheet({ letterhead, invoice, commissionNumber }: InvoicePaper): PaperDocument {
  const { seller, customer, lines, number, day, kind } = invoice
  refuseUnprintableIn({
    seller: [seller.name, ...seller.address],
    customer: [customer.name, ...customer.address],
    lines: lines.map(({ text }) => text),
    reason: [invoice.reason ?? ''],
  })
  const house = { ...letterhead, name: seller.name, address: seller.address }
  const voice = voiceOf(house)
  const { tell, date } = voice
  const title = tell(`paper.${kind}.title`)
  const rows: (readonly [string, string])[] = [
    [tell('paper.money.number'), number],
    [tell('paper.money.day'), date(day)],
    [tell('paper.money.commission'), commissionNumber],
    ...(invoice.supplied === undefined
      ? []
      : [[tell('paper.money.supplied'), date(invoice.supplied)] as const]),
    ...(invoice.cancels === undefined ? [] : [[tell('paper.money.cancels'), invoice.cancels] as const]),
    ...(seller.taxNumber ? [[tell('paper.money.taxNumber'), seller.taxNumber] as const] : []),
    ...(customer.taxNumber ? [[tell('paper.money.customerTaxNumber'), customer.taxNumber] as const] : []),
  ]
  const blocks: Block[] = [
    addressed(title, tell('paper.money.to'), customer, rows),
    ...(invoice.cancels === undefined
      ? []
      : [
          {
            kind: 'paragraph' as const,
            words: tell('paper.money.cancelledBecause', {
              number: invoice.cancels,
              reason: invoice.reason ?? '',
            }),
            before: 5,
          },
        ]),
    made(invoice, voice),
    sumRows(sums(invoice, voice)),
    ...(kind === 'invoice' && invoice.balance.minor === 0
      ? [
          {
            kind: 'paragraph' as const,
            words: tell('paper.money.settled'),
            look: 'proseItalic' as const,
            before: 5,
          },
        ]
      : []),
  ]
  return letter(house, blocks, { title, number, day })
}

const isTaxed = ({ taxes }: Invoice): boolean => taxes.some(({ basisPoints }) => basisPoints > 0)

function made(invoice: Invoice, { tell, amount, reader }: Voice): Block {
  const taxed = isTaxed(invoice)
  return {
    ...{ kind: 'table', before: 8, pad: { above: 1.4, below: 1.4, gap: 3 } },
    columns: [
      { heading: tell('paper.money.column.what'), share: taxed ? 80 : 94 },
      { heading: tell('paper.quote.column.quantity'), share: 17, align: 'right', look: 'amount' },
      { heading: tell('paper.quote.column.each'), share: 29, align: 'right', look: 'amount' },
      ...(taxed
        ? [
            {
              heading: tell('paper.money.column.rate'),
              share: 16,
              align: 'right' as const,
              look: 'amount' as const,
            },
          ]
        : []),
      { heading: tell('paper.quote.column.amount'), share: 29, align: 'right', look: 'amount' },
    ],
    rows: invoice.lines.map(({ text, quantity, each, basisPoints, net }) => ({
      cells: [
        { words: capital(text), look: 'prose' as const },
        String(quantity),
        amount(each),
        ...(taxed ? [rate(basisPoints, reader.locale)] : []),
        amount(net),
      ],
    })),
  }
}

const rate = (basisPoints: number, locale: string): string =>
  numberFormat(locale, { style: 'percent', maximumFractionDigits: 2 }).format(basisPoints / 10_000)

type Sum = readonly [name: string, amount: string, strong?: true]

function sums(invoice: Invoice, { tell, amount, reader }: Voice): Sum[] {
  const { net, taxes, total, paid, balance, kind } = invoice
  const taxed = taxes.map(
    (one): Sum => [
      tell('paper.money.tax', { rate: rate(one.basisPoints, reader.locale), net: one.net }),
      amount(one.tax),
    ],
  )
  const left = tell(balance.minor < 0 && kind === 'invoice' ? 'paper.money.over' : 'paper.money.balance')
  const over = balance.minor < 0 ? { ...balance, minor: -balance.minor } : balance
  return [
    ...(isTaxed(invoice) ? [[tell('paper.money.net'), amount(net)] as const, ...taxed] : []),
    [tell('paper.money.total'), amount(total), true],
    ...(kind === 'creditNote' || paid.minor === 0
      ? []
      : [[tell('paper.money.paid'), amount(paid)] as const, [left, amount(over), true] as const]),
  ]
}
