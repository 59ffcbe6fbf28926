import type { QuoteLine, QuoteSnapshot } from '../quote/types.ts'
import { numberFormat } from '../words/formats.ts'
import { printMoney } from '../words/money.ts'
import { type Reader, say } from '../words/say.ts'
import type { Block } from './block.ts'
import type { Row } from './cells.ts'
import { BESIDE_ITS_WORDS, flatBlocks, ON_A_QUOTE } from './flat.ts'
import { layPages } from './flow.ts'
import { capital } from './names.ts'
import type { PaperDocument } from './page.ts'
import {
  addressed,
  footOf,
  letterhead,
  listed,
  readerOf,
  refuseUnprintable,
  type Teller,
  tellerOf,
} from './sheet.ts'

/**
 * The client's quote: who asks whom for what, at what price, on what terms, with a line to sign. Every
 * amount is printed as the snapshot holds it; nothing of the workroom's own reckoning is on it.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function quoteSheet(snapshot: QuoteSnapshot): PaperDocument {
  refuseUnprintable(snapshot)
  const tell = tellerOf(readerOf(snapshot))
  const { letterhead: house, number, day } = snapshot
  const foot = footOf(tell, tell('paper.quote.foot', { house: house.name, number, day: { date: day } }))
  const roomy = layPages(blocksOf(snapshot, false), house.paper, foot)
  if (roomy.pages.length === 1 || snapshot.lines.length > 1) return roomy
  const close = layPages(blocksOf(snapshot, true), house.paper, foot)
  return close.pages.length === 1 ? close : roomy
}

/** @param close whether one garment is to take as little height as it can, its words beside its drawing */
function blocksOf(snapshot: QuoteSnapshot, close: boolean): Block[] {
  const tell = tellerOf(readerOf(snapshot))
  const { number, day, validUntil } = snapshot
  const date = (value: string) => tell('paper.date', { day: { date: value } })
  return [
    ...letterhead(snapshot),
    { kind: 'space', height: close ? 4 : 8 },
    addressed(tell('paper.quote.title'), tell('paper.quote.for'), snapshot.customer, [
      [tell('paper.quote.number'), number],
      [tell('paper.quote.day'), date(day)],
      [tell('paper.quote.validUntil'), date(validUntil)],
      ...(snapshot.promised === undefined
        ? []
        : [[tell('paper.quote.promised'), date(snapshot.promised)] as const]),
      ...(snapshot.answerBy === undefined
        ? []
        : [[tell('paper.quote.answerBy'), date(snapshot.answerBy)] as const]),
      ...(snapshot.supersedes === undefined
        ? []
        : [[tell('paper.quote.supersedes'), snapshot.supersedes] as const]),
    ]),
    garments(snapshot, close),
    ...(close ? toldDrawnAndSummed(snapshot) : drawnAndSummed(snapshot)),
    ...options(snapshot),
    // Nobody signs on a page that does not show the terms.
    { kind: 'together', blocks: [...terms(snapshot), ...acceptance(snapshot)] },
  ]
}

function garments(snapshot: QuoteSnapshot, close: boolean): Block {
  const tell = tellerOf(readerOf(snapshot))
  return {
    kind: 'table',
    before: close ? 4 : 8,
    pad: { above: 1.6, below: 2.4, gap: 3 },
    columns: [
      { heading: tell('paper.quote.column.garment'), share: 94 },
      { heading: tell('paper.quote.column.quantity'), share: 17, align: 'right', look: 'amount' },
      { heading: tell('paper.quote.column.each'), share: 29, align: 'right', look: 'amount' },
      { heading: tell('paper.quote.column.amount'), share: 29, align: 'right', look: 'amount' },
    ],
    rows: snapshot.lines.map((line) => garment(line, snapshot, close)),
  }
}

function garment(line: QuoteLine, snapshot: QuoteSnapshot, close: boolean): Row {
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const amount = (value: QuoteLine['net']) => printMoney(value, reader.locale)
  return {
    cells: [
      {
        paragraphs: [
          { words: capital(say(line.title, reader)), look: 'subheading' },
          { words: wornBy(line, tell), look: 'proseItalic' },
          ...(close ? [] : [{ words: told(line, reader), look: 'prose' as const }]),
        ],
      },
      String(line.quantity),
      amount(line.estimate.price.net),
      amount(line.net),
    ],
  }
}

/** For whom it is; and by which measures, which the terms speak of. */
const wornBy = ({ wearer, body, measurementSet }: QuoteLine, tell: Teller): string =>
  Object.keys(body.measures).length === 0
    ? tell('paper.quote.wearer', { wearer: wearer.name })
    : tell('paper.quote.wearerMeasured', { wearer: wearer.name, day: { date: measurementSet.day } })

const told = ({ description }: QuoteLine, reader: Reader): string =>
  description.map((sentence) => say(sentence, reader)).join(' ')

/** One garment in words at the left; at the right its drawing, and the sums under the column of amounts. */
function toldDrawnAndSummed(snapshot: QuoteSnapshot): Block[] {
  const reader = readerOf(snapshot)
  return [
    {
      ...{ kind: 'beside', share: 0.5, before: 2 },
      left: snapshot.lines.map(
        (line): Block => ({ kind: 'paragraph', words: told(line, reader), before: 0 }),
      ),
      right: [...flatBlocks(snapshot.lines, reader, BESIDE_ITS_WORDS), sums(snapshot, [1, 100, 52])],
    },
  ]
}

/** The finished garments and the sums: one garment beside them, several in rows above. */
function drawnAndSummed(snapshot: QuoteSnapshot): Block[] {
  const drawn = flatBlocks(snapshot.lines, readerOf(snapshot), ON_A_QUOTE)
  if (snapshot.lines.length > 1 || drawn.length === 0) return [...drawn, sums(snapshot)]
  return [{ kind: 'beside', share: 0.5, before: 4, left: drawn, right: [sums(snapshot)] }]
}

/** Net, tax, total and deposit (without tax only the last two), standing under the column of amounts. */
function sums(snapshot: QuoteSnapshot, [lead, name, sum]: readonly number[] = [64, 66, 39]): Block {
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const amount = (value: QuoteLine['net']) => printMoney(value, reader.locale)
  const rate = numberFormat(reader.locale, { style: 'percent', maximumFractionDigits: 2 })
  const { tax, shipping, payments = [] } = snapshot
  const taxes = snapshot.taxes ?? [{ basisPoints: tax.basisPoints, net: snapshot.net, amount: tax.amount }]
  const untaxed = taxes.every(({ basisPoints }) => basisPoints === 0)
  const carriage =
    shipping === undefined ? [] : [amountRow(tell('paper.quote.shipping'), amount(shipping.net))]
  const rows: Row[] = [
    ...carriage,
    ...(untaxed
      ? []
      : [
          amountRow(tell('paper.quote.net'), amount(snapshot.net)),
          ...taxes.map((one) =>
            amountRow(
              tell('paper.quote.tax', { name: tax.name, rate: rate.format(one.basisPoints / 10_000) }),
              amount(one.amount),
            ),
          ),
        ]),
    {
      ...(untaxed && carriage.length === 0 ? {} : { over: 'sum' as const }),
      cells: [
        '',
        { words: tell('paper.quote.total'), look: 'amountTotal' },
        { words: amount(snapshot.total), look: 'amountTotal' },
      ],
    },
    ...(payments.length > 2
      ? payments.map(({ when, amount: part }) =>
          amountRow(capital(tell(`quote.payment.${when}`)), amount(part)),
        )
      : snapshot.deposit.minor === 0
        ? []
        : [amountRow(tell('paper.quote.deposit'), amount(snapshot.deposit))]),
  ]
  return {
    kind: 'together',
    blocks: [
      {
        kind: 'table',
        headings: false,
        before: 2.4,
        look: 'amount',
        columns: [
          { heading: '', share: lead! },
          { heading: '', share: name!, align: 'right' },
          { heading: '', share: sum!, align: 'right' },
        ],
        rows,
      },
    ],
  }
}

const amountRow = (name: string, amount: string): Row => ({ cells: ['', name, amount] })

/** Other ways of making a garment, each with a box to mark and the price of it all. */
function options(snapshot: QuoteSnapshot): Block[] {
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const offered = snapshot.lines.filter((line) => (line.options ?? []).length > 0)
  if (offered.length === 0) return []
  // Above the line amounts are net; what is chosen between are whole prices.
  const amounts = snapshot.tax.amount.minor === 0 ? 'amount' : 'withTax'
  const row = (line: QuoteLine, way: string, total: QuoteLine['total'], first: boolean): Row => ({
    keep: first,
    cells: [
      { tick: false, said: tell('paper.quote.options.box') },
      first ? capital(say(line.title, reader)) : '',
      way,
      printMoney(total, reader.locale),
    ],
  })
  return [
    { kind: 'heading', level: 2, words: tell('paper.quote.options') },
    { kind: 'paragraph', words: tell('paper.quote.options.about'), keepWithNext: true },
    {
      kind: 'table',
      before: 2,
      pad: { above: 1, below: 1, gap: 3 },
      columns: [
        { heading: '', share: 8 },
        { heading: tell('paper.quote.column.garment'), share: 50 },
        { heading: tell('paper.quote.column.way'), share: 76 },
        { heading: tell(`paper.quote.column.${amounts}`), share: 35, align: 'right', look: 'amount' },
      ],
      rows: offered.flatMap((line) => [
        row(line, tell('paper.quote.options.asQuoted'), line.total, true),
        ...(line.options ?? []).map(({ name, total }) =>
          row(line, name.map((phrase) => say(phrase, reader)).join(', '), total, false),
        ),
      ]),
    },
  ]
}

function terms(snapshot: QuoteSnapshot): Block[] {
  const tell = tellerOf(readerOf(snapshot))
  const readyBy = (day: string, answerBy: string | undefined) =>
    answerBy === undefined
      ? tell('paper.quote.promisedTerm', { day: { date: day } })
      : tell('paper.quote.promisedUntil', { day: { date: day }, answer: { date: answerBy } })
  return [
    { kind: 'heading', level: 2, words: tell('paper.quote.terms') },
    listed([
      tell('paper.quote.stands', { day: { date: snapshot.validUntil } }),
      ...(snapshot.promised === undefined ? [] : [readyBy(snapshot.promised, snapshot.answerBy)]),
      ...snapshot.terms,
    ]),
  ]
}

/** A sentence to accept by, with room for a name, a signature and a date. */
function acceptance(snapshot: QuoteSnapshot): Block[] {
  const tell = tellerOf(readerOf(snapshot))
  return [
    { kind: 'heading', level: 2, words: tell('paper.quote.acceptance') },
    {
      kind: 'paragraph',
      words: tell('paper.quote.accept', { number: snapshot.number, total: snapshot.total }),
      keepWithNext: true,
    },
    {
      kind: 'write',
      before: 3,
      labels: [
        { words: tell('paper.quote.signature'), share: 60 },
        { words: tell('paper.quote.name'), share: 60 },
        { words: tell('paper.quote.date'), share: 36 },
      ],
    },
  ]
}
