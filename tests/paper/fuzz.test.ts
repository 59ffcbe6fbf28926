import { describe, expect, test } from 'vitest'
import { careSheet } from '../../core/paper/care-sheet.ts'
import { cuttingSheet } from '../../core/paper/cutting-sheet.ts'
import { labelSheets } from '../../core/paper/labels.ts'
import { invoiceSheet } from '../../core/paper/money/invoice-sheet.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import { quoteSheet } from '../../core/paper/quote-sheet.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { workOrder } from '../../core/paper/work-order.ts'
import { invoiceOf } from '../../core/plan/money/invoice.ts'
import { numberIn } from '../../core/plan/money/series.ts'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { chance } from '../support/chance.ts'
import { collisions, outsideMargins } from './boxes.ts'
import { makeSnapshot } from './fixture.ts'

const COMMISSIONS = 500

const WORDS = [
  ...[
    'Anna',
    'Þórunn',
    'Łucja',
    'Ἑλένη',
    'Мария',
    'שרה',
    'לוי',
    'ليلى',
    'بنت',
    'حسن',
    'O’Neill',
    '"quoted"',
    '<b>',
  ],
  ...[
    '</script>',
    '&amp;',
    '=1+1',
    'Weatherbottomleigh-under-Fullingham',
    'ſtraſse',
    'Ştefănescu',
    '12',
    '(2)',
    '–',
  ],
  ...['fi', 'ffl', 'Q', 'jjj', 'W'.repeat(30), 'a\nb', 'x\ty', '½', '£20', '100 %', 'é'.normalize('NFD')],
]
/** What no embedded font has: such words must be refused, not printed as boxes. */
const STRANGE = ['🧵', '山田', '👩🏽‍🏭', 'ნინო', '𓀀']

function maker(seed: number) {
  const draw = chance(seed)
  const whole = (most: number) => Math.floor(draw.uniform() * (most + 1))
  const pick = <T>(of: readonly T[]): T => of[whole(of.length - 1)]!
  const words = (most: number) => Array.from({ length: 1 + whole(most) }, () => pick(WORDS)).join(' ')
  const name = () =>
    draw.uniform() < 0.01 ? `${words(2)} ${pick(STRANGE)}` : words(draw.uniform() < 0.1 ? 25 : 3)
  return { draw, whole, pick, name, words }
}

function snapshotOf(seed: number): QuoteSnapshot {
  const { draw, whole, pick, name, words } = maker(seed)
  // Most quotes are short, a few are very long.
  const lines = draw.uniform() < 0.04 ? 20 + whole(40) : 1 + whole(4)
  const base = makeSnapshot({
    ...{ paper: pick(['A4', 'Letter'] as const), unit: pick(['mm', 'cm', 'in'] as const) },
    ...{ customer: name(), title: words(4), locale: pick(['en-GB', 'de-DE', 'en-US']) },
    wearers: Array.from({ length: lines }, name),
  })
  const note = words(40).slice(0, 300)
  return {
    ...base,
    customer: { ...base.customer, address: Array.from({ length: whole(6) }, name) },
    letterhead: {
      ...base.letterhead,
      name: name(),
      address: Array.from({ length: whole(5) }, () => words(4)),
    },
    terms: Array.from({ length: whole(8) }, () => note),
  }
}

const sheetOf = (snapshot: QuoteSnapshot): GarmentSheet => ({
  ...{ snapshot, line: snapshot.lines[0]!, commissionNumber: 'C-2026-031', copy: 1 },
  ...{ day: '2026-11-28', stepsDone: {} },
})

const invoiced = ({ letterhead, customer, lines }: QuoteSnapshot): PaperDocument =>
  invoiceSheet({
    ...{ letterhead, commissionNumber: 'C-2026-031' },
    invoice: invoiceOf({
      ...{ number: numberIn('I-2026-', 1), day: '2026-11-28', seller: letterhead, customer },
      paid: { minor: 0, currency: 'EUR' },
      lines: lines.map(({ wearer, net }) => ({
        ...{ text: wearer.name, quantity: 1, each: net, basisPoints: 2000 },
      })),
    }),
  })

/** A paper of the snapshot: the quote of every one, and by turns another. */
const OTHERS: ((snapshot: QuoteSnapshot) => PaperDocument)[] = [
  (snapshot) => workOrder(sheetOf(snapshot)),
  (snapshot) => cuttingSheet(sheetOf(snapshot)),
  (snapshot) => careSheet(sheetOf(snapshot)),
  (snapshot) => invoiced(snapshot),
  (snapshot) =>
    labelSheets({
      ...{ letterhead: snapshot.letterhead, commissionNumber: 'C-2026-031', day: '2026-11-28' },
      garments: [sheetOf(snapshot)],
    }),
]

describe(`papers of ${COMMISSIONS} commissions put together by chance`, () => {
  test('never run over a margin or into each other, and what cannot be printed is refused', async () => {
    let refused = 0
    for (let seed = 0; seed < COMMISSIONS; seed++) {
      const snapshot = snapshotOf(seed)
      for (const lay of [quoteSheet, OTHERS[seed % OTHERS.length]!]) {
        let document: PaperDocument
        try {
          document = lay(snapshot)
        } catch (error) {
          if (!(error instanceof Refusal) || error.phrase.code !== 'refusal.paper.character') throw error
          refused++
          continue
        }
        for (const page of document.pages) {
          expect(collisions(page), `seed ${seed}`).toEqual([])
          const outside = outsideMargins(page, document.paper)
          expect(
            outside.every((text) => footed(page, text)),
            `seed ${seed}: ${outside.join(' | ')}`,
          ).toBe(true)
        }
        if (seed % 50 === 0)
          await printPdf(document, { title: 'x', language: 'en-GB', createdAt: '2026-11-28T10:00:00Z' })
      }
    }
    expect(refused).toBeGreaterThan(5)
    expect(refused).toBeLessThan(COMMISSIONS / 3)
  }, 240_000)
})

/** Whether a text is of the foot, the one thing that stands below the margin: all of it is of the foot's size. */
const footed = ({ marks }: PaperDocument['pages'][number], text: string): boolean =>
  marks.some((mark) => mark.kind === 'text' && mark.text === text && mark.size === 8.5)
