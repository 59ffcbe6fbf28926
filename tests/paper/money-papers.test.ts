import { describe, expect, test } from 'vitest'
import { invoiceSheet } from '../../core/paper/money/invoice-sheet.ts'
import { receiptSheet } from '../../core/paper/money/receipt-sheet.ts'
import { reminderSheet } from '../../core/paper/money/reminder-sheet.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import { creditNoteFor } from '../../core/plan/money/credit-note.ts'
import { dueNow } from '../../core/plan/money/due.ts'
import { invoiceOf, type LineGiven } from '../../core/plan/money/invoice.ts'
import { receiptFor } from '../../core/plan/money/receipt.ts'
import { numberIn } from '../../core/plan/money/series.ts'
import type { Payment } from '../../core/plan/money/types.ts'
import { money, printMoney } from '../../core/words/money.ts'
import { collisions, outsideMargins } from './boxes.ts'
import { makeSnapshot } from './fixture.ts'
import { hasPoppler, textOf } from './poppler.ts'

const gbp = (minor: number) => money(minor, 'GBP')
const said = (minor: number) => printMoney(gbp(minor), 'en-GB')
const LONG = 'The Most Longwinded and Yet Entirely Respectable Society of Players at Northby-under-the-Hill'
const { letterhead } = makeSnapshot()
const seller = { name: letterhead.name, address: letterhead.address, taxNumber: 'GB 000 0000 00' }
const customer = { name: 'שרה לוי', address: ['2 Weir Lane', 'Weirside'] }

const invoiceWith = (lines: LineGiven[], more = {}) =>
  invoiceOf({
    ...{ number: numberIn('I-2026-', 7), day: '2026-11-28', supplied: '2026-11-27', seller, customer, lines },
    ...{ paid: gbp(20_000), ...more },
  })
const invoice = invoiceWith([
  { text: 'gored undertunic for שרה לוי', quantity: 1, each: gbp(33_333), basisPoints: 2000 },
  { text: 'hood', quantity: 2, each: gbp(7_777), basisPoints: 2000 },
  { text: 'child’s shift', quantity: 1, each: gbp(9_950), basisPoints: 0 },
])
const paper = { letterhead, commissionNumber: 'C-2026-031' }
const payment = (id: string, minor: number, kind: Payment['kind'] = 'payment'): Payment => ({
  ...{ id, day: '2026-11-01', kind, amount: gbp(minor), method: 'transfer', for: 'acceptance' },
})
const receipt = (payments: Payment[], id: string) =>
  receiptFor(id, payments, {
    ...{ number: numberIn('R-2026-', 3), seller, customer, on: 'C-2026-031', agreed: gbp(60_000) },
  })
const due = dueNow(
  {
    total: gbp(60_000),
    schedule: [
      { when: 'acceptance', amount: gbp(24_000) },
      { when: 'delivery', amount: gbp(36_000) },
    ],
  },
  [payment('a', 10_000)],
  { acceptance: '2026-10-01' },
)
const reminder = { letterhead, customer, commissionNumber: 'C-2026-031', day: '2026-11-28', due }

const sheets: [string, PaperDocument][] = [
  ['invoice', invoiceSheet({ ...paper, invoice })],
  [
    'credit note',
    invoiceSheet({
      ...paper,
      invoice: creditNoteFor([invoice], invoice.number, {
        ...{ number: numberIn('I-2026-', 8), day: '2026-11-29', reason: 'the address was wrong' },
      }),
    }),
  ],
  [
    'invoice of forty lines and long names',
    invoiceSheet({
      ...paper,
      invoice: invoiceWith(
        Array.from({ length: 40 }, (_, i) => ({
          ...{
            text: `${LONG} ${i}`,
            quantity: i + 1,
            each: gbp(1000 + i),
            basisPoints: i % 2 === 0 ? 2000 : 500,
          },
        })),
        { customer: { name: LONG.repeat(2), address: Array.from({ length: 8 }, () => LONG) } },
      ),
    }),
  ],
  ['receipt', receiptSheet(letterhead, receipt([payment('a', 24_000)], 'a'))],
  ['refund', receiptSheet(letterhead, receipt([payment('a', 24_000), payment('b', 1_000, 'refund')], 'b'))],
  ['reminder', reminderSheet(reminder)],
]

describe.each(sheets)('the %s', (_, document) => {
  test('has no words that run into each other or over the margins', () => {
    for (const page of document.pages) {
      expect(collisions(page)).toEqual([])
      // Below the margins stands the foot alone: what it is, and its number.
      expect(outsideMargins(page, document.paper).length).toBeLessThanOrEqual(8)
    }
  })
})

const printed = async (document: PaperDocument) =>
  textOf(await printPdf(document, { title: 'Sheet', language: 'en-GB', createdAt: '2026-11-28T10:00:00Z' }))

describe.runIf(hasPoppler)(`read back${hasPoppler ? '' : ' (skipped: no poppler here)'}`, () => {
  test('every amount of an invoice stands on it, and they add up', async () => {
    const text = await printed(invoiceSheet({ ...paper, invoice }))
    for (const { net, each } of invoice.lines) {
      expect(text).toContain(printMoney(net, 'en-GB'))
      expect(text).toContain(printMoney(each, 'en-GB'))
    }
    const lines = 33_333 + 2 * 7_777
    const tax = Math.round(33_333 * 0.2) + Math.round(2 * 7_777 * 0.2)
    for (const minor of [lines + 9_950, tax, lines + 9_950 + tax, 20_000, lines + 9_950 + tax - 20_000])
      expect(text).toContain(said(minor))
    for (const fact of ['I-2026-007', '28 November 2026', '27 November 2026', 'GB 000 0000 00', 'C-2026-031'])
      expect(text).toContain(fact)
  })

  test('a credit note says what it cancels and why, all amounts turned round', async () => {
    const text = await printed(sheets[1]![1])
    expect(text).toContain('This note cancels invoice I-2026-007: the address was wrong.')
    expect(text).toContain(printMoney({ ...invoice.total, minor: -invoice.total.minor }, 'en-GB'))
  })

  test('a receipt says what came and what is left, a refund what went back', async () => {
    expect(await printed(sheets[3]![1])).toContain(`Left to pay ${said(36_000)}`)
    const back = await printed(sheets[4]![1])
    expect(back).toContain('Paid back to')
    expect(back).toContain(`Left to pay ${said(37_000)}`)
  })

  test('a reminder names what is due and since when, and none is written where nothing is', async () => {
    const text = await printed(sheets[5]![1])
    expect(text).toContain(`${said(14_000)} has been due since 1 October 2026`)
    expect(() => reminderSheet({ ...reminder, due: { ...due, since: null } })).toThrow('nothingDue')
  })
})
