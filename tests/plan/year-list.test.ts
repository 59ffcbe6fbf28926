import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { creditNoteFor } from '../../core/plan/money/credit-note.ts'
import { decimalOf, toCsv } from '../../core/plan/money/csv.ts'
import { invoiceOf } from '../../core/plan/money/invoice.ts'
import { receiptFor } from '../../core/plan/money/receipt.ts'
import { numberIn } from '../../core/plan/money/series.ts'
import { type BookRow, yearRows, yearSums } from '../../core/plan/money/year.ts'
import { BYTE_ORDER_MARK, guarded, quoted } from '../../core/words/csv.ts'
import { money } from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'
import { entry, gbp } from './agreed.ts'
import { given, line } from './invoiced.ts'

/** The list without its mark, as a spreadsheet has it once it has read that. */
function unmarked(csv: string): string {
  expect(csv.startsWith(BYTE_ORDER_MARK)).toBe(true)
  return csv.slice(BYTE_ORDER_MARK.length)
}

/** Reads RFC 4180 strictly, section 2: records end in CRLF, quotes stand around the whole field or nowhere. */
function readCsv(text: string): string[][] {
  const records: string[][] = []
  let [fields, at]: [string[], number] = [[], 0]
  while (at < text.length) {
    const field = /"((?:[^"]|"")*)"|[^",\r\n]*/y
    field.lastIndex = at
    const [whole, inQuotes] = field.exec(text)!
    fields.push(inQuotes === undefined ? whole : inQuotes.replaceAll('""', '"'))
    at += whole.length
    if (text.startsWith('\r\n', at)) {
      records.push(fields)
      fields = []
      at += 2
    } else if (text[at] === ',') at++
    else throw new Error(`no RFC 4180 at ${at}`)
  }
  if (fields.length > 0) throw new Error('the last record does not end')
  return records
}

const row = (more: Partial<BookRow>): BookRow => ({
  ...{ day: '2026-11-02', number: 'I-1', kind: 'invoice', customer: 'A', net: gbp(100), taxes: [] },
  ...{ total: gbp(100), paid: null, method: null, ...more },
})

describe('a year’s list', () => {
  const invoice = invoiceOf(given(1, [line('Tunic', 1, 10_000, 2000), line('Book', 1, 1000, 0)]))
  const other = invoiceOf({ ...given(2), day: '2027-01-01' })
  const note = creditNoteFor([invoice], 'I-2026-001', {
    ...{ number: numberIn('I-2026-', 3), day: '2026-11-30', reason: 'Withdrawn' },
  })
  const { seller, customer } = given(1)
  const receipt = (id: string, nth: number) =>
    receiptFor(id, [entry('a', 5000), { ...entry('b', 5000, 'refund'), method: 'cash' }], {
      ...{ number: numberIn('R-', nth), seller, customer, on: 'I-2026-001', agreed: gbp(13_000) },
    })
  const rows = yearRows(2026, [note, receipt('a', 1), receipt('b', 2), other, invoice])

  test('has a row for every paper of the year, and counts nothing twice', () => {
    expect(unmarked(toCsv(rows)).split('\r\n')).toEqual([
      'Day,Number,Kind,Customer,Before tax,Tax at 0 %,Tax at 20 %,Total,Paid,How,Currency',
      '2026-11-02,R-001,payment,Agnes Webb,,,,,50.00,bank transfer,GBP',
      '2026-11-02,R-002,refund,Agnes Webb,,,,,-50.00,cash,GBP',
      '2026-11-02,I-2026-001,invoice,Agnes Webb,110.00,0.00,20.00,130.00,,,GBP',
      '2026-11-30,I-2026-003,credit note,Agnes Webb,-110.00,0.00,-20.00,-130.00,,,GBP',
      '',
    ])
    // All of it was undone again.
    expect(yearSums(rows, 'GBP')).toEqual({
      ...{ net: gbp(0), total: gbp(0), paid: gbp(0) },
      taxes: [
        { basisPoints: 0, tax: gbp(0) },
        { basisPoints: 2000, tax: gbp(0) },
      ],
    })
    expect(refused(() => toCsv([row({}), row({ net: money(1, 'EUR') })])).code).toBe(
      'refusal.money.currencies',
    )
  })

  // RFC 4180, section 2, rules 6 and 7, with its own examples.
  test('quotes what RFC 4180 quotes', () => {
    expect(['aaa', 'b \r\nbb', 'b"bb', 'z,y', ' a ', ''].map(quoted)).toEqual([
      ...['aaa', '"b \r\nbb"', '"b""bb"', '"z,y"', ' a ', ''],
    ])
    expect(readCsv('"aaa","b \r\nbb","ccc"\r\nzzz,"b""bb",xxx\r\n')).toEqual([
      ['aaa', 'b \r\nbb', 'ccc'],
      ['zzz', 'b"bb', 'xxx'],
    ])
  })

  // The Unicode Standard, section 23.8: U+FEFF in UTF-8 is EF BB BF.
  test('begins with the mark of UTF-8, so that names are read as they are written', () => {
    const bytes = Buffer.from(toCsv([row({ customer: 'Łucja Ōrme' })]), 'utf8')
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf])
    const read = new TextDecoder('utf-8').decode(bytes)
    expect(read.startsWith('Day,')).toBe(true)
    expect(read).toContain(',Łucja Ōrme,')
  })

  // CWE-1236: text that begins with one of these is run by spreadsheets.
  test('lets no name be a formula, and leaves amounts alone', () => {
    const names = ['=1+1', '+44 20', '-1', '@SUM(A1)', '\tx', '\rx', '\nx', '＝1', '＋1', '－1', '＠A']
    expect(names.map(guarded)).toEqual(names.map((name) => `'${name}`))
    const plain = ['Ann = Bee', "'quoted", 'é', '']
    expect(plain.map(guarded)).toEqual(plain)
    const [, read] = readCsv(
      unmarked(toCsv([row({ customer: '=HYPERLINK("x","y")', net: gbp(-5), total: gbp(-5) })])),
    )
    expect(read!.slice(3, 6)).toEqual(['\'=HYPERLINK("x","y")', '-0.05', '-0.05'])
  })

  test('writes amounts from their digits, whatever the currency', () => {
    const all = [gbp(0), gbp(5), gbp(-5), gbp(123_456), gbp(9_007_199_254_740_991), money(1234, 'JPY')]
    expect([...all, money(-1234, 'KWD')].map(decimalOf)).toEqual([
      ...['0.00', '0.05', '-0.05', '1234.56', '90071992547409.91', '1234', '-1.234'],
    ])
  })

  test('is read back as it was, whatever stands in it', () => {
    const amount = fc.option(fc.maxSafeInteger().map((minor) => gbp(minor + 0)))
    const text = fc.oneof(
      fc.string({ unit: fc.constantFrom(...'=+-@＝＠\t\r\n",;\' aé') }),
      fc.string({ unit: 'grapheme' }),
    )
    const taxes = fc.uniqueArray(
      fc.record({ basisPoints: fc.constantFrom(0, 500, 2000), tax: fc.integer().map(gbp) }),
      { selector: ({ basisPoints }) => basisPoints },
    )
    const any = fc.record({
      ...{ customer: text, number: text, net: amount, total: amount, paid: amount, taxes },
      method: fc.constantFrom('cash' as const, null),
    })
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (asked) => {
        const all = asked.map(row)
        const [headings, ...records] = readCsv(unmarked(toCsv(all)))
        expect(records.length).toBe(all.length)
        const column = (record: string[], name: string) => record[headings!.indexOf(name)] ?? ''
        // Back to minor units by the digits, without a float.
        const back = (decimal: string) =>
          decimal === '' ? null : gbp(Number(BigInt(decimal.replace('.', '')).toString()))
        records.forEach((record, i) => {
          const { customer: name, number, net, total, paid, taxes: rates, method } = all[i]!
          expect(record.length).toBe(headings!.length)
          for (const [heading, wanted] of [
            ['Customer', name],
            ['Number', number],
          ] as const) {
            const read = column(record, heading)
            expect(read).toBe(/^[=+\-@\t\r\n＝＋－＠]/.test(wanted) ? `'${wanted}` : wanted)
            expect(read).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/)
          }
          expect(back(column(record, 'Before tax'))).toEqual(net)
          expect(back(column(record, 'Total'))).toEqual(total)
          expect(back(column(record, 'Paid'))).toEqual(paid)
          for (const { basisPoints, tax } of rates)
            expect(back(column(record, `Tax at ${basisPoints / 100} %`))).toEqual(tax)
          expect(column(record, 'How')).toBe(method ?? '')
        })
      }),
      { numRuns: 2000 },
    )
  })
})
