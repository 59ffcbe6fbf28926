import { describe, expect, it } from 'vitest'
import type { Block } from '../../core/paper/block.ts'
import { type Foot, layPages } from '../../core/paper/flow.ts'
import type { Page, PaperDocument } from '../../core/paper/page.ts'
import { collisions, crossing, ink, outsideMargins } from './boxes.ts'

const foot: Foot = { left: 'Foot', page: (page, pages) => `Page ${page} of ${pages}` }
const lay = (blocks: readonly Block[]): PaperDocument => layPages(blocks, 'A4', foot)
const textsOf = (page: Page): string[] =>
  page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text.trim()] : [])).slice(0, -2)
const paragraph = (words: string): Block => ({ kind: 'paragraph', words })
const sound = (document: PaperDocument) => {
  for (const page of document.pages) {
    expect(collisions(page)).toEqual([])
    expect(outsideMargins(page, document.paper)).toHaveLength(2)
  }
}

describe('the checks of these tests', () => {
  const run = {
    kind: 'text',
    y: 50,
    text: 'Hxg',
    face: 'sans',
    size: 12,
    dye: 'ink',
    width: 7,
    angle: 0,
    tag: null,
  } as const

  it('see words that run into each other, upright and turned, and let neighbours be', () => {
    expect(crossing(ink({ ...run, x: 50 }), ink({ ...run, x: 55 }))).toBe(true)
    expect(crossing(ink({ ...run, x: 50 }), ink({ ...run, x: 58 }))).toBe(false)
    expect(crossing(ink({ ...run, x: 50 }), ink({ ...run, x: 54, y: 53, angle: 45 }))).toBe(true)
    expect(crossing(ink({ ...run, x: 50 }), ink({ ...run, x: 60, y: 53, angle: 45 }))).toBe(false)
  })

  it('see words that hang out of the margins', () => {
    const marks = [
      { ...run, x: 10 },
      { ...run, x: 100 },
      { ...run, x: 188 },
      { ...run, x: 100, y: 290 },
    ]
    expect(outsideMargins({ marks }, 'A4')).toHaveLength(3)
  })
})

describe('pages', () => {
  it('never end with a heading, wherever the page happens to be full', () => {
    for (let before = 30; before < 45; before++) {
      const lines = Array.from({ length: before }, (_, i) => paragraph(`Line ${i}`))
      const document = lay([
        ...lines,
        { kind: 'heading', level: 2, words: 'Heading' },
        paragraph('Its text'),
        paragraph('More'),
      ])
      for (const page of document.pages) expect(textsOf(page).at(-1)).not.toBe('Heading')
    }
  })

  it('leave no first or last line of a paragraph alone', () => {
    const words = Array.from({ length: 60 }, (_, i) => `word${i}`).join(' ')
    for (let before = 28; before < 42; before++) {
      const lines = Array.from({ length: before }, (_, i) => paragraph(`Line ${i}`))
      for (const page of lay([...lines, paragraph(words)]).pages) {
        expect(textsOf(page).filter((text) => text.startsWith('word'))).not.toHaveLength(1)
      }
    }
  })

  it('hold together what belongs together when a page can hold it', () => {
    const group: Block = {
      kind: 'together',
      blocks: Array.from({ length: 12 }, (_, i) => paragraph(`Together ${i}`)),
    }
    for (let before = 20; before < 40; before += 3) {
      const lines = Array.from({ length: before }, (_, i) => paragraph(`Line ${i}`))
      const counts = lay([...lines, group]).pages.map(
        (page) => textsOf(page).filter((text) => text.startsWith('Together')).length,
      )
      expect(counts.filter((count) => count > 0)).toEqual([12])
    }
  })

  it('break what belongs together but is taller than a page, losing nothing', () => {
    const group: Block = {
      kind: 'together',
      blocks: Array.from({ length: 120 }, (_, i) => paragraph(`Together ${i}`)),
    }
    const document = lay([paragraph('Before'), group])
    sound(document)
    expect(document.pages.flatMap(textsOf)).toEqual([
      'Before',
      ...Array.from({ length: 120 }, (_, i) => `Together ${i}`),
    ])
  })

  it('break a table row that is taller than a page, and print every word of it', () => {
    const words = Array.from({ length: 900 }, (_, i) => `word${i}`).join(' ')
    const document = lay([
      {
        kind: 'table',
        columns: [
          { heading: 'Name', share: 1 },
          { heading: 'Words', share: 1 },
        ],
        rows: [{ cells: ['short', words] }, { cells: ['next', 'row'] }],
      },
    ])
    sound(document)
    const printed = document.pages.flatMap(textsOf).filter((text) => text.startsWith('word'))
    expect(printed.join(' ')).toBe(words)
    expect(document.pages.length).toBeGreaterThan(2)
  })

  it('break a panel over pages with its ground and bar behind every part of it', () => {
    const document = lay([
      { kind: 'panel', bar: 'madder', blocks: Array.from({ length: 60 }, (_, i) => paragraph(`Care ${i}`)) },
    ])
    sound(document)
    expect(document.pages.length).toBeGreaterThan(1)
    for (const page of document.pages) {
      const grounds = page.marks.filter((mark) => mark.kind === 'path' && mark.fill === 'linen')
      expect(grounds).toHaveLength(textsOf(page).length)
    }
  })

  it('are numbered, each with the number of all', () => {
    const { pages } = lay(Array.from({ length: 100 }, (_, i) => paragraph(`Line ${i}`)))
    const feet = pages.map((page) =>
      page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).at(-1),
    )
    expect(feet).toEqual(pages.map((_, i) => `Page ${i + 1} of ${pages.length}`))
  })

  it('shorten a foot too long for its line rather than let it run into the page number', () => {
    const document = layPages([paragraph('Text')], 'A4', {
      ...foot,
      left: 'Very long words indeed '.repeat(12),
    })
    expect(collisions(document.pages[0]!)).toEqual([])
  })

  it('have one page even when there is nothing to print', () => {
    expect(lay([]).pages).toHaveLength(1)
  })
})
