import { describe, expect, it } from 'vitest'
import { frameOf } from '../../core/paper/flow.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import { quoteSheet } from '../../core/paper/quote-sheet.ts'
import { sumMoney } from '../../core/words/money.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { collisions, outsideMargins } from './boxes.ts'
import { INTERNAL, makeSnapshot } from './fixture.ts'
import { fontsOf, hasPoppler, infoOf, taggedText, textOf, wordsOf } from './poppler.ts'

const options = { title: 'Quote Q-2026-014', language: 'en-GB', createdAt: '2026-11-25T10:00:00Z' }

/** An amount as the reader's locale prints it: the runtime's own Intl (CLDR), from minor units. */
const printed = ({ minor, currency }: { minor: number; currency: string }, locale: string) =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).format(minor / 100)

/** White space of every width as one plain space, for comparing texts. */
const plain = (text: string) => text.replace(/\s+/g, ' ')

const LONG =
  'The Most Extraordinarily Longwinded and Yet Entirely Respectable Society of Players at Northby-under-the-Hill'
const many = Array.from(
  { length: 40 },
  (_, i) => `${i + 1}th wearer of the Worshipful Company of Little Fulling`,
)

const cases = [
  ['one garment on A4', makeSnapshot()],
  ['one garment on Letter', makeSnapshot({ paper: 'Letter', locale: 'en-US', currency: 'USD', unit: 'in' })],
  ['three wearers', makeSnapshot({ wearers: ['Ἑλένη', 'Łucja', 'Мария'] })],
  ['long names on A4', makeSnapshot({ customer: LONG, wearers: [LONG, LONG], title: LONG })],
  ['a name without any space', makeSnapshot({ customer: 'X'.repeat(120), wearers: ['Y'.repeat(120)] })],
  ['forty lines on A4', makeSnapshot({ customer: LONG, wearers: many })],
  ['forty lines on Letter', makeSnapshot({ paper: 'Letter', customer: LONG, wearers: many })],
] as const

describe('the client’s quote as laid out', () => {
  it.each(cases)('%s: no words run into each other', (_, snapshot) => {
    for (const page of quoteSheet(snapshot).pages) expect(collisions(page)).toEqual([])
  })

  it.each(cases)('%s: every word stands inside the margins, and below them only the foot', (_, snapshot) => {
    const document = quoteSheet(snapshot)
    for (const page of document.pages) {
      const outside = outsideMargins(page, document.paper)
      expect(outside).toHaveLength(2)
      expect(outside[0]).toMatch(/^Quote Q-2026-014 · 25 November 2026|^Quote Q-2026-014 · November 25, 2026/)
      expect(outside[1]).toMatch(/^Page \d+ of \d+$/)
    }
  })

  it('repeats the headings of a table on every page it runs over, silently for a reader aloud', () => {
    const { pages } = quoteSheet(makeSnapshot({ wearers: many }))
    const headings = pages.map((page) =>
      page.marks.filter((mark) => mark.kind === 'text' && mark.text === 'Price each').map((mark) => mark.tag),
    )
    expect(pages.length).toBeGreaterThan(4)
    expect(headings[0]).toHaveLength(1)
    expect(headings[0]![0]).not.toBeNull()
    for (const again of headings.slice(1, -1)) expect(again).toEqual([null])
  })

  it.each([
    ['customer.name', makeSnapshot({ customer: 'Anna 🧵 Weber' })],
    ['lines.1.wearer.name', makeSnapshot({ wearers: ['Łucja', 'Anna 🧵'] })],
    ['terms.2', { ...makeSnapshot(), terms: ['Plain.', 'Plainer.', 'No 🧵 is lent.'] }],
    [
      'letterhead.address.0',
      { ...makeSnapshot(), letterhead: { ...makeSnapshot().letterhead, address: ['🧵 Lane'] } },
    ],
  ])('refuses a character that no font can print in %s, naming it and where it stands', (field, snapshot) => {
    try {
      quoteSheet(snapshot)
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(error.field).toBe(field)
      expect(error.phrase.code).toBe('refusal.paper.character')
      expect(error.phrase.params).toMatchObject({ character: '🧵', code: 'U+1F9F5' })
      return
    }
    throw new Error('it was not refused')
  })
})

describe('the printed quote', () => {
  it('has the same bytes twice', async () => {
    const once = await printPdf(quoteSheet(makeSnapshot({ wearers: ['Ἑλένη', 'Łucja'] })), options)
    await printPdf(quoteSheet(makeSnapshot({ customer: LONG })), options)
    const again = await printPdf(quoteSheet(makeSnapshot({ wearers: ['Ἑλένη', 'Łucja'] })), options)
    expect(Buffer.from(again).equals(Buffer.from(once))).toBe(true)
  })

  it('has other bytes when an amount is other by a penny', async () => {
    const snapshot = makeSnapshot()
    const dearer = { ...snapshot, deposit: { ...snapshot.deposit, minor: snapshot.deposit.minor + 1 } }
    const [one, other] = [
      await printPdf(quoteSheet(snapshot), options),
      await printPdf(quoteSheet(dearer), options),
    ]
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(false)
  })

  it.skipIf(!hasPoppler).each([
    ['en-GB', 'EUR'],
    ['en-US', 'USD'],
    ['de-DE', 'EUR'],
    ['fr-FR', 'EUR'],
  ])('read back in %s, has every amount of the snapshot, and they add up', async (locale, currency) => {
    const snapshot = makeSnapshot({ locale, currency, wearers: ['Ἑλένη', 'Łucja', 'Мария'] })
    const text = plain(textOf(await printPdf(quoteSheet(snapshot), options)))
    const has = (amount: { minor: number; currency: string }) =>
      expect(text).toContain(plain(printed(amount, locale)))
    for (const line of snapshot.lines) {
      has(line.estimate.price.net)
      has(line.net)
      expect(line.net.minor).toBe(line.estimate.price.net.minor * line.quantity)
    }
    for (const amount of [snapshot.net, snapshot.tax.amount, snapshot.total, snapshot.deposit]) has(amount)
    expect(
      sumMoney(
        snapshot.lines.map((line) => line.net),
        currency,
      ),
    ).toEqual(snapshot.net)
    expect(snapshot.net.minor + snapshot.tax.amount.minor).toBe(snapshot.total.minor)
  })

  it.skipIf(!hasPoppler)(
    'sums on paper: the column of amounts adds up to the net, as read back from the file',
    async () => {
      const snapshot = makeSnapshot({ wearers: many })
      const lines = textOf(await printPdf(quoteSheet(snapshot), options))
      // Each line of the table reads: title, quantity, price each, amount.
      const rows = [...lines.matchAll(/Gored undertunic (\d+) €([\d,]+\.\d\d) €([\d,]+\.\d\d)/g)]
      const minor = (text: string) => Number(text.replace(/[,.]/g, ''))
      expect(rows).toHaveLength(40)
      for (const [, quantity, each, amount] of rows)
        expect(minor(each!) * Number(quantity)).toBe(minor(amount!))
      const net = /Net €([\d,]+\.\d\d)/.exec(lines)![1]!
      expect(rows.reduce((sum, [, , , amount]) => sum + minor(amount!), 0)).toBe(minor(net))
    },
  )

  it.skipIf(!hasPoppler)(
    'has the names in their own scripts, the terms, the dates and the tax with its rate',
    async () => {
      const snapshot = makeSnapshot({ customer: 'Þórunn', wearers: ['Ἑλένη', 'Łucja', 'Мария'] })
      const text = textOf(await printPdf(quoteSheet(snapshot), options))
      for (const words of [
        'Þórunn',
        'Ἑλένη',
        'Łucja',
        'Мария',
        'The Blue Thimble',
        'Q-2026-014',
        'VAT at 20%',
      ]) {
        expect(text).toContain(words)
      }
      for (const words of ['25 November 2026', '25 December 2026', 'One fitting is included.', 'Signature']) {
        expect(text).toContain(words)
      }
    },
  )

  it.skipIf(!hasPoppler)('shows the client nothing of the workroom’s own reckoning', async () => {
    const text = textOf(await printPdf(quoteSheet(makeSnapshot({ wearers: ['Ἑλένη', 'Łucja'] })), options))
    expect(text).not.toMatch(
      /\b(rate|rates|hour|hours|hourly|overhead|margin|markup|profit|cost|costs|labour|minutes)\b/i,
    )
    for (const minor of Object.values(INTERNAL)) expect(text).not.toContain((minor / 100).toFixed(2))
    expect(text).not.toContain('internal')
  })

  it.skipIf(!hasPoppler).each([
    ['A4', '595.276 x 841.89 pts (A4)'],
    ['Letter', '612 x 792 pts (letter)'],
  ] as const)('on %s has that size, a title, tags and its own fonts', async (paper, size) => {
    const pdf = await printPdf(quoteSheet(makeSnapshot({ paper })), options)
    const info = infoOf(pdf)
    expect(info).toContain(size)
    expect(info).toMatch(/Title: +Quote Q-2026-014/)
    expect(info).toMatch(/Tagged: +yes/)
    expect(info).toMatch(/JavaScript: +no/)
    const rows = fontsOf(pdf)
      .split('\n')
      .slice(2)
      .filter((row) => row !== '')
    expect(rows.length).toBeGreaterThan(2)
    // Columns emb, sub, uni: embedded, a subset, and readable as text.
    for (const row of rows) expect(row).toMatch(/Identity-H\s+yes yes yes/)
  })

  it.skipIf(!hasPoppler)(
    'is read aloud in order: house, title, customer, table with headings, sums, terms, acceptance',
    async () => {
      const text = taggedText(await printPdf(quoteSheet(makeSnapshot()), options))
      const order = [
        '"The Blue Thimble"',
        'H1',
        '"Quote"',
        '"Þórunn"',
        'TH',
        '"Garment"',
        '"Gored undertunic"',
        '"€290.00"',
        '"Total"',
        '"Terms"',
        '"Acceptance"',
      ]
      let from = 0
      for (const words of order) {
        const at = text.indexOf(words, from)
        expect(at, words).toBeGreaterThanOrEqual(from)
        from = at
      }
      expect(text).toMatch(/^Document/)
      // Words that a line's end parts do not run together.
      expect(text.replace(/"\s+"/g, '')).toContain('gores, and gussets under the arms')
    },
  )

  it.skipIf(!hasPoppler)('puts every word where the page data says: inside the paper’s margins', async () => {
    for (const paper of ['A4', 'Letter'] as const) {
      const pdf = await printPdf(quoteSheet(makeSnapshot({ paper, customer: LONG, wearers: many })), options)
      const frame = frameOf(paper)
      const words = wordsOf(pdf)
      expect(words.length).toBeGreaterThan(1000)
      for (const { x, right } of words) {
        expect(x).toBeGreaterThan(frame.x - 0.6)
        expect(right).toBeLessThan(frame.x + frame.width + 0.6)
      }
    }
  })
})
