import type { InvoiceGiven, LineGiven } from '../../core/plan/money/invoice.ts'
import { numberIn } from '../../core/plan/money/series.ts'
import { gbp } from './agreed.ts'

export const line = (text: string, quantity: number, each: number, basisPoints: number): LineGiven => ({
  ...{ text, quantity, each: gbp(each), basisPoints },
})

/** An invoice of one tunic at £100 and 20 %, with everything on it. */
export const given = (nth: number, lines: LineGiven[] = [line('Tunic', 1, 10_000, 2000)]): InvoiceGiven => ({
  ...{ number: numberIn('I-2026-', nth), day: '2026-11-02', lines, paid: gbp(0) },
  seller: { name: 'The workroom', address: ['1 Fuller’s Row'], taxNumber: 'GB 123' },
  customer: { name: 'Agnes Webb', address: ['2 Cloth Fair'] },
})
