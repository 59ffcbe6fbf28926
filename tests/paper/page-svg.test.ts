import { describe, expect, test } from 'vitest'
import { cuttingSheet } from '../../core/paper/cutting-sheet.ts'
import { shownPages } from '../../core/paper/page-svg.ts'
import { quoteSheet } from '../../core/paper/quote-sheet.ts'
import { makeSnapshot } from './fixture.ts'

const NO_IMAGES = (): Uint8Array => {
  throw new Error('there is no picture on this sheet')
}

describe('a paper on the screen', () => {
  const snapshot = makeSnapshot({ customer: '<script>alert(1)</script> & "שרה"' })

  test('has the pages, the words and the places of the one that is printed', () => {
    const document = quoteSheet(snapshot)
    const pages = shownPages(document, NO_IMAGES)
    expect(pages).toHaveLength(document.pages.length)
    expect(pages[0]).toMatchObject({ width: 210, height: 297 })
    const texts = document.pages[0]!.marks.filter((mark) => mark.kind === 'text' && mark.text.trim() !== '')
    const shown = [...pages[0]!.svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)]
    expect(shown).toHaveLength(texts.length)
    for (const [i, mark] of texts.entries())
      expect(Number(shown[i]![2])).toBeCloseTo((mark as { y: number }).y, 2)
  })

  test('lets nothing that was typed become markup', () => {
    const [page] = shownPages(quoteSheet(snapshot), NO_IMAGES)
    expect(page!.svg).not.toContain('<script')
    expect(page!.svg).toContain('&lt;script&gt;')
    expect(page!.svg).toMatch(/direction="rtl"[^>]*>שרה/)
  })

  test('keeps curves, and cuts a lay off where its stretch ends', () => {
    const sheet = {
      snapshot,
      line: snapshot.lines[0]!,
      commissionNumber: 'C-1',
      copy: 1,
      day: '2026-11-28',
      stepsDone: {},
    }
    const svg = shownPages(cuttingSheet(sheet), NO_IMAGES)
      .map((page) => page.svg)
      .join('')
    expect(svg).toMatch(/A[\d.]+ [\d.]+ 0 /)
    expect(svg).toContain('overflow="hidden"')
  })
})
