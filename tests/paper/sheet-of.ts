import type { PaperDocument } from '../../core/paper/page.ts'
import type { GarmentSheet } from '../../core/paper/sheet.ts'
import { type FixtureOptions, makeSnapshot } from './fixture.ts'

/** What the sheets of the second garment of a quote are made from. */
export function sheetOf(options: FixtureOptions = {}, more: Partial<GarmentSheet> = {}): GarmentSheet {
  const snapshot = makeSnapshot({ wearers: ['Ἑλένη', 'Łucja'], ...options })
  return {
    snapshot,
    line: snapshot.lines[1]!,
    commissionNumber: 'C-2026-031',
    copy: 2,
    day: '2026-11-28',
    stepsDone: {},
    lengthChoices: ['length', 'ease', 'gusset'],
    ...more,
  }
}

/** Every piece of text on a paper, in the order in which it was set. */
export const textsOf = (document: PaperDocument): string[] =>
  document.pages.flatMap((page) =>
    page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text.replaceAll('\u00a0', ' ').trim()] : [])),
  )
