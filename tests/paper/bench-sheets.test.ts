import { describe, expect, it } from 'vitest'
import { cuttingSheet } from '../../core/paper/cutting-sheet.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { workOrder } from '../../core/paper/work-order.ts'
import { collisions, outsideMargins } from './boxes.ts'
import { draft, type FixtureOptions } from './fixture.ts'
import { hasPoppler, infoOf, taggedText, textOf } from './poppler.ts'
import { sheetOf, textsOf } from './sheet-of.ts'

const LONG =
  'The Most Extraordinarily Longwinded and Yet Entirely Respectable Society of Players at Northby-under-the-Hill'

const printed = (document: PaperDocument) =>
  printPdf(document, { title: 'Sheet', language: 'en-GB', createdAt: '2026-11-28T10:00:00Z' })
const makers = [
  ['work order', workOrder],
  ['cutting sheet', cuttingSheet],
] as const
const options = [
  ['A4', {}],
  ['Letter, inches', { paper: 'Letter', unit: 'in', locale: 'en-US', currency: 'USD' }],
  ['millimetres', { unit: 'mm', locale: 'de-DE' }],
  ['long names', { customer: LONG, wearers: [LONG, LONG], title: LONG }],
  ['names without a space', { customer: 'X'.repeat(90), wearers: ['Y'.repeat(90), 'Z'.repeat(90)] }],
] as const satisfies readonly (readonly [string, FixtureOptions])[]

describe.each(makers)('the %s', (_, make) => {
  it.each(options)('on %s: no words run into each other', (_name, option) => {
    for (const page of make(sheetOf(option)).pages) expect(collisions(page)).toEqual([])
  })

  it.each(options)(
    'on %s: all words stand inside the margins, and below them only the foot',
    (_name, option) => {
      const document = make(sheetOf(option))
      for (const page of document.pages) {
        const outside = outsideMargins(page, document.paper)
        expect(outside.at(-1)).toMatch(/^(Page \d+ of|Seite \d+ von) \d+$/)
        expect(outside.slice(0, -1).join('')).toMatch(
          /^(Work order|Cutting sheet|Arbeitsblatt|Zuschneideblatt) C-2026-031/,
        )
      }
    },
  )

  it('has the same bytes twice', async () => {
    const [once, again] = [await printed(make(sheetOf())), await printed(make(sheetOf()))]
    expect(Buffer.from(again).equals(Buffer.from(once))).toBe(true)
  })

  it('ends its cautions with the word that local rules and licensed practice decide', () => {
    const texts = textsOf(make(sheetOf()))
    const from = texts.indexOf('Take care')
    const items = texts.slice(from).filter((text) => text.endsWith('.'))
    expect(from).toBeGreaterThan(0)
    expect(items.indexOf('Local rules and licensed practice decide.')).toBeGreaterThan(1)
  })

  it.skipIf(!hasPoppler)('says whose it is and is tagged', async () => {
    const pdf = await printed(make(sheetOf()))
    const text = textOf(pdf)
    for (const words of ['C-2026-031', 'Q-2026-014', 'Þórunn', 'Łucja', '2 of 2', '28 November 2026']) {
      expect(text).toContain(words)
    }
    expect(infoOf(pdf)).toMatch(/Tagged: +yes/)
    expect(taggedText(pdf)).toMatch(/Figure/)
  })
})

describe('the work order', () => {
  it('tells the failing check loudly before anything else, with what would mend it', () => {
    const texts = textsOf(workOrder(sheetOf()))
    const loud = texts.indexOf('This garment does not fit yet')
    expect(loud).toBeGreaterThan(-1)
    expect(loud).toBeLessThan(texts.findIndex((text) => text.startsWith('Measures of')))
    expect(texts.join(' ')).toContain('Lengthen the neck slit by at least 19 mm')
  })

  it('marks estimated measures with their standard deviation, and only those', () => {
    const texts = textsOf(workOrder(sheetOf()))
    expect(texts.filter((text) => text.startsWith('est.'))).toEqual(['est. ± 1.2 cm', 'est. ± 1.7 cm'])
    expect(texts).toContain('carried over')
  })

  it('prints choices that are lengths in the reader’s unit, counts as they are, and yes for yes', () => {
    const all = textsOf(workOrder(sheetOf()))
    const texts = all.slice(all.indexOf('Choices'))
    const value = (name: string) => texts[texts.indexOf(name) + 1]
    expect([value('Length'), value('Gusset'), value('Gores'), value('Tapered')]).toEqual([
      '115 cm',
      '10 cm',
      '4',
      'yes',
    ])
  })

  it('leaves out what there is nothing to say of: a garment made to a size has no measures, none fails', () => {
    const sheet = sheetOf()
    const { estimate } = sheet.line
    const plain = { ...estimate, draft: { ...estimate.draft, fit: [], cautions: [], hems: [], steps: [] } }
    const texts = textsOf(
      workOrder({ ...sheet, line: { ...sheet.line, body: { measures: {} }, estimate: plain } }),
    )
    expect(texts.some((text) => text.startsWith('Measures of'))).toBe(false)
    expect(texts).not.toContain('Fit report')
    expect(texts).not.toContain('This garment does not fit yet')
    expect(texts).toContain('Local rules and licensed practice decide.')
  })

  it('has a box for every step, ticked when it is done, with its day in the workroom’s time zone', () => {
    const count = (sheet: GarmentSheet, said: string) =>
      JSON.stringify(workOrder(sheet).tags).split(`"alt":"${said}"`).length - 1
    const open = sheetOf()
    expect(count(open, 'to do')).toBe(draft.steps.length)
    const done = sheetOf({}, { stepsDone: { prewash: '2026-11-27T23:30:00Z' }, timeZone: 'Europe/Stockholm' })
    expect(count(done, 'done')).toBe(1)
    expect(count(done, 'to do')).toBe(draft.steps.length - 1)
    // 23:30 UTC is half past midnight in Stockholm (UTC+1 in winter).
    expect(textsOf(workOrder(done))).toContain('done 28 November 2026')
  })

  it('names every step, seam and hem, in sewing order', () => {
    const texts = textsOf(workOrder(sheetOf()))
    const from = texts.indexOf('Making')
    const order = draft.steps.flatMap((step) => [
      step.name,
      ...step.seams.map((id) => draft.seams.find((seam) => seam.id === id)!.name),
      ...step.hems.map((id) => draft.hems.find((hem) => hem.id === id)!.name),
    ])
    let at = from
    for (const { params } of order) {
      const next = texts.findIndex((text, i) => i > at && text.includes(String(params?.text)))
      expect(next, String(params?.text)).toBeGreaterThan(at)
      at = next
    }
  })

  it('draws every piece, described for someone who cannot see it', () => {
    const tags = JSON.stringify(workOrder(sheetOf()).tags)
    for (const { name } of draft.pieces) expect(tags).toContain(`Drawing to scale: ${name.params?.text}`)
  })

  it('buys no less than is needed: lengths in inches are rounded up to the eighth', () => {
    const inches = textsOf(workOrder(sheetOf({ unit: 'in', locale: 'en-US' }))).join(' ')
    // 2600 mm ÷ 25.4 = 102.362…, and 102⅜ = 102.375 is the next eighth.
    expect(inches).toContain('Buy 102⅜ in of cloth')
  })
})

describe('the cutting sheet', () => {
  it('names every copy of every piece in its drawings or by its number, and in its table', () => {
    const texts = textsOf(cuttingSheet(sheetOf()))
    for (const copy of draft.pieces.flatMap((piece) => piece.copies)) {
      expect(texts).toContain(String(copy.name.params?.text))
    }
    const drawn = texts.slice(texts.indexOf('The lay'), texts.indexOf('Order of cutting'))
    const copies = draft.pieces.flatMap((piece) => piece.copies)
    for (let number = 1; number <= copies.length; number++) {
      expect(drawn.some((text) => text === String(number) || text.startsWith(`${number} `))).toBe(true)
    }
  })

  it('says once that pieces lie as they were drafted, and only of the others how', () => {
    const texts = textsOf(cuttingSheet(sheetOf()))
    expect(texts.join(' ').match(/as (it was )?drafted/g)).toHaveLength(1)
    // Of the copies in the fixture the right sleeve is mirrored, and one gore is turned.
    const turned = texts.filter((text) => text === 'face down' || text === 'turned 180°')
    expect(turned).toHaveLength(
      sheetOf().line.estimate.lay.placements.filter(({ angle, flipped }) => angle !== 0 || flipped).length,
    )
  })

  it('says how the cloth lies: wrong side up only when it has a right side', () => {
    const text = (rightSide: boolean) => {
      const sheet = sheetOf()
      return textsOf(
        cuttingSheet({ ...sheet, line: { ...sheet.line, cloth: { ...sheet.line.cloth, rightSide } } }),
      ).join(' ')
    }
    expect(text(true)).toContain('Lay the cloth wrong side up')
    expect(text(false)).toContain('Either side may be up')
  })
})
