import { describe, expect, test } from 'vitest'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import { fibresOf } from '../../core/lay/fibres.ts'
import { careOf } from '../../core/paper/care.ts'
import { careSheet } from '../../core/paper/care-sheet.ts'
import { labelSheets } from '../../core/paper/labels.ts'
import type { PaperDocument } from '../../core/paper/page.ts'
import { printPdf } from '../../core/paper/pdf.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'
import { collisions } from './boxes.ts'
import { makeSnapshot } from './fixture.ts'
import { hasPoppler, textOf } from './poppler.ts'

const LONG = 'The Most Longwinded and Yet Entirely Respectable Society of Players at Northby-under-the-Hill'

function sheetOf(id: string, fibre: string, wearer = 'ליאת'): GarmentSheet {
  const snapshot = makeSnapshot({ wearers: [wearer] })
  const draft = CONSTRUCTIONS.find((one) => one.id === id)!.draft(bodyOf(WOMAN), {}, 'cm')
  const [quoted] = snapshot.lines
  const line = { ...quoted!, estimate: { ...quoted!.estimate, draft }, cloth: { ...quoted!.cloth, fibre } }
  return { snapshot, line, commissionNumber: 'C-2026-031', copy: 1, day: '2026-11-28', stepsDone: {} }
}

const printed = async (document: PaperDocument) =>
  textOf(await printPdf(document, { title: 'Sheet', language: 'en-GB', createdAt: '2026-11-28T10:00:00Z' }))

describe('care by fibre', () => {
  test('is read from what the maker wrote', () => {
    expect(fibresOf('linen')).toEqual(['linen'])
    expect(fibresOf('Wool 80 %, silk 20 %')).toEqual(['wool', 'silk'])
    expect(fibresOf('hemp')).toEqual(['linen'])
    expect(fibresOf('')).toEqual(['other'])
    expect(fibresOf('viscose')).toEqual(['other'])
    expect(fibresOf('Leinen')).toEqual(['linen'])
    expect(fibresOf('Baumwolle')).toEqual(['cotton'])
    expect(fibresOf('Schurwolle und Seide')).toEqual(['wool', 'silk'])
  })

  // ISO 3758:2012, from memory: one dot 110 °C, two 150 °C, three 200 °C.
  test('is what the tenderest of them bears', () => {
    expect(careOf(['linen'])).toEqual({ wash: 'wash60', dry: 'line', iron: 'three' })
    expect(careOf(['linen', 'wool'])).toEqual({ wash: 'hand30', dry: 'flat', iron: 'two' })
    expect(careOf(['wool', 'silk'])).toMatchObject({ iron: 'one' })
    expect(careOf(['other'])).toEqual(careOf(['silk']))
  })
})

describe.each([
  ['goredUndertunic', 'linen', 'ליאת'],
  ['circleCloak', 'wool', 'Łucja'],
  ['hood', 'no idea', LONG],
] as const)('the papers of the %s of %s', (id, fibre, wearer) => {
  const sheet = sheetOf(id, fibre, wearer)
  const labels = labelSheets({
    ...{ letterhead: sheet.snapshot.letterhead, commissionNumber: 'C-2026-031', day: '2026-11-28' },
    garments: Array.from({ length: 5 }, () => sheet),
  })

  test('have no words that run into each other', () => {
    for (const page of [...careSheet(sheet).pages, ...labels.pages]) expect(collisions(page)).toEqual([])
  })

  test('every piece has its label, with the count of its copies', () => {
    const words = labels.pages.flatMap(({ marks }) =>
      marks.flatMap((one) => (one.kind === 'text' ? [one.text] : [])),
    )
    const { pieces } = sheet.line.estimate.draft
    const counts = words.filter((word) => word.startsWith('×'))
    expect(counts).toHaveLength(5 * pieces.length)
    expect(counts.reduce((sum, word) => sum + Number.parseInt(word.slice(2), 10), 0)).toBe(
      5 * pieces.reduce((sum, { copies }) => sum + copies.length, 0),
    )
  })
})

describe.runIf(hasPoppler)(
  `the care sheet, read back${hasPoppler ? '' : ' (skipped: no poppler here)'}`,
  () => {
    test('warns of flame by its own fibre, and of the closing of a cloak', async () => {
      const text = await printed(careSheet(sheetOf('circleCloak', 'wool')))
      expect(text).toContain('Wool is slow to catch fire')
      expect(text).not.toMatch(/(linen|cotton|silk) burn/i)
      expect(text).toContain('gives way when the cloak is caught')
      expect(text).toContain('moths')
      expect(text).toContain('150 °C at most')
    })

    test('says so where nobody knows the fibre', async () => {
      expect(await printed(careSheet(sheetOf('hood', '')))).toContain('Nobody wrote down what fibre this is')
    })
  },
)
