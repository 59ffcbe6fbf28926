import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { creditNoteFor } from '../../core/plan/money/credit-note.ts'
import { type InvoiceGiven, invoiceOf, lackingOn } from '../../core/plan/money/invoice.ts'
import { numberIn } from '../../core/plan/money/series.ts'
import { refused } from '../support/refused.ts'
import { gbp, whole } from './agreed.ts'
import { given, line } from './invoiced.ts'

const code = (work: () => unknown) => refused(work).code.replace('refusal.money.', '')

describe('an invoice', () => {
  // Directive 2006/112/EC, article 226: date, number, both parties, quantity and nature, day of supply, unit price and
  // taxable amount by rate, the rate, and the tax.
  test('says what it must, with tax by rate and what is left to pay', () => {
    const invoice = invoiceOf({
      ...given(7, [
        line('Tunic', 2, 30_000, 2000),
        line('Pattern book', 1, 1050, 500),
        line('Hood', 1, 9999, 2000),
      ]),
      ...{ supplied: '2026-10-30', paid: gbp(40_000) },
    })
    expect(invoice).toMatchObject({
      ...{ number: 'I-2026-007', kind: 'invoice', day: '2026-11-02', supplied: '2026-10-30' },
      // 600.00 and 99.99 at 20 %: 120.00 + 20.00; 10.50 at 5 %: 0.53, half a penny up.
      taxes: [
        { basisPoints: 500, net: gbp(1050), tax: gbp(53) },
        { basisPoints: 2000, net: gbp(69_999), tax: gbp(14_000) },
      ],
      ...{ net: gbp(71_049), tax: gbp(14_053), total: gbp(85_102), paid: gbp(40_000), balance: gbp(45_102) },
    })
    expect(lackingOn(invoice)).toEqual([])
    const bare = { ...invoice, customer: { name: 'A', address: [] }, seller: { name: 'B', address: [] } }
    expect(lackingOn(bare).map((one) => one.code)).toEqual([
      ...['money.lacks.sellerAddress', 'money.lacks.customerAddress', 'money.lacks.taxNumber'],
    ])
  })

  test('that does not say it is refused, where it does not', () => {
    const field = (more: Partial<InvoiceGiven>) => refused(() => invoiceOf({ ...given(1), ...more })).field
    expect(field({ lines: [] })).toBe('lines')
    expect(field({ lines: [line('Tunic', 1.5, 1, 0)] })).toBe('lines.0.quantity')
    expect(field({ lines: [line(' ', 1, 1, 0)] })).toBe('lines.0.text')
    expect(field({ lines: [line('Tunic', 1, 1, 10_001)] })).toBe('lines.0.basisPoints')
    expect(field({ customer: { name: '', address: [] } })).toBe('customer.name')
    expect(field({ day: 'soon' })).toBe('day')
    expect(code(() => invoiceOf({ ...given(1), lines: [line('Tunic', 1, 0.5, 0)] }))).toBe('unreadable')
  })

  test('is cancelled by a credit note, once, and the two come to nothing', () => {
    const invoice = invoiceOf({ ...given(1), paid: gbp(10_000) })
    const how = { number: numberIn('I-2026-', 2), day: '2026-11-09', reason: 'Withdrawn' }
    const note = creditNoteFor([invoice], 'I-2026-001', how)
    expect(note).toMatchObject({
      ...{ kind: 'creditNote', number: 'I-2026-002', day: '2026-11-09', cancels: 'I-2026-001' },
      ...{ total: gbp(-12_000), paid: gbp(0), balance: gbp(-12_000) },
    })
    // 120.00 invoiced, 100.00 of them paid: the customer gets 100.00 back.
    expect(invoice.balance.minor + note.balance.minor).toBe(-10_000)
    const book = [invoice, note]
    expect(code(() => creditNoteFor(book, 'I-2026-001', how))).toBe('cancelled')
    expect(code(() => creditNoteFor(book, 'I-2026-002', how))).toBe('isCreditNote')
    expect(code(() => creditNoteFor(book, 'I-2026-003', how))).toBe('noInvoice')
  })

  test('of any lines adds up in whole minor units, and so does its credit note', () => {
    const lines = fc.array(
      fc.tuple(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 0, max: 500_000 }),
        fc.constantFrom(0, 500, 700, 1900, 2000, 2550),
      ),
      { minLength: 1, maxLength: 12 },
    )
    fc.assert(
      fc.property(lines, fc.nat({ max: 100_000 }), (all, paid) => {
        const invoice = invoiceOf({
          ...given(
            1,
            all.map((one) => line('Work', ...one)),
          ),
          paid: gbp(paid),
        })
        const note = creditNoteFor([invoice], invoice.number, {
          ...{ number: numberIn('C-', 1), day: '2026-11-09', reason: '' },
        })
        for (const paper of [invoice, note]) {
          const { net, tax, total, balance, taxes } = paper
          whole([net, tax, total, paper.paid, balance])
          whole(paper.lines.flatMap((one) => [one.each, one.net, one.tax, one.total]))
          const sum = (amounts: readonly { minor: number }[]) =>
            amounts.reduce((all, { minor }) => all + minor, 0)
          expect(sum([net, tax])).toBe(total.minor)
          expect(sum(paper.lines.map((one) => one.total))).toBe(total.minor)
          expect(sum(taxes.map((rate) => rate.tax))).toBe(tax.minor)
          expect(sum(taxes.map((rate) => rate.net))).toBe(net.minor)
          expect(sum([paper.paid, balance])).toBe(total.minor)
        }
        expect(invoice.total.minor + note.total.minor).toBe(0)
        const exact = all.reduce((sum, [quantity, each, rate]) => sum + (quantity * each * rate) / 10_000, 0)
        expect(Math.abs(invoice.tax.minor - exact)).toBeLessThanOrEqual(all.length / 2 + 1e-6)
      }),
      { numRuns: 1000 },
    )
  })
})
