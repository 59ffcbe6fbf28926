import type { PhraseCode } from '../words/phrase.ts'

/** Body dimensions by their ISO 8559-1 names (filled in below). */
export const MEASURES = {
  bustGirth: { range: [200, 2000] },
} as const satisfies Record<string, { range: readonly [number, number] }>
export type MeasureId = keyof typeof MEASURES
export type { PhraseCode }
