import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Invoice, invoiceOf } from '../../core/plan/money/invoice.ts'
import { receiptFor } from '../../core/plan/money/receipt.ts'
import { gapsIn, issued, numberIn } from '../../core/plan/money/series.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { refused } from '../support/refused.ts'
import { entry, gbp } from './agreed.ts'
import { given } from './invoiced.ts'

describe('a series of numbers', () => {
  test('has no gap and no number twice, whatever is asked for', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('I-2026-', 'C-2026-'), fc.nat({ max: 8 })), {
          maxLength: 30,
          size: 'max',
        }),
        (asked) => {
          let book: Invoice[] = []
          const counters: Record<string, number> = { 'I-2026-': 0, 'C-2026-': 0 }
          for (const [series, nth] of asked) {
            const next = counters[series]! + 1
            // Half of them ask for the next number, the others for any.
            const number = numberIn(series, nth % 2 === 0 ? next : nth)
            try {
              book = issued(book, { ...invoiceOf(given(1)), ...number })
              expect(number.nth).toBe(next)
              counters[series] = next
            } catch (error) {
              if (!(error instanceof Refusal)) throw error
              expect(number.nth).not.toBe(next)
            }
          }
          expect(gapsIn(book, 'I-2026-')).toEqual([])
          expect(new Set(book.map(({ number }) => number)).size).toBe(book.length)
        },
      ),
    )
  })

  test('says what is missing of one that is not in order', () => {
    expect(gapsIn([numberIn('I-', 2), numberIn('I-', 5), numberIn('C-', 1)], 'I-')).toEqual([1, 3, 4])
    expect(refused(() => issued([numberIn('I-', 1)], numberIn('I-', 3))).sentence).toBe(
      'I-003 is not the next number. Papers are numbered without a gap, and the next is I-002.',
    )
  })
})

describe('a receipt', () => {
  test('says what came, for what, and what is left as of then', () => {
    const { seller, customer } = given(1)
    const payments = [entry('a', 40_000), entry('b', 70_000), entry('c', 10_000, 'refund')]
    const on = { number: numberIn('R-', 3), seller, customer, on: 'C-2026-004', agreed: gbp(100_000) }
    expect(receiptFor('a', payments, on)).toMatchObject({
      kind: 'receipt',
      paid: gbp(40_000),
      balance: gbp(60_000),
    })
    expect(receiptFor('b', payments, on).balance).toEqual(gbp(-10_000))
    expect(receiptFor('c', payments, on)).toMatchObject({
      kind: 'refund',
      amount: gbp(10_000),
      balance: gbp(0),
    })
    expect(refused(() => receiptFor('d', payments, on)).code).toBe('refusal.money.noPayment')
  })
})
