import type { english } from './catalogue/english.ts'
import type { Money } from './money.ts'

/** A code of the sentence catalogue. */
export type PhraseCode = keyof typeof english

/** What a sentence may be filled with; lengths, money and durations are printed in the reader's units. */
export type PhraseValue =
  | string
  | number
  | { mm: number }
  | { minutes: number }
  | { date: string }
  | Money
  | Phrase

/**
 * A sentence, a name or a label, still without language: the core speaks in phrases, and screen, paper and
 * `ask` say them with `say` in one reader's language and units.
 */
export type Phrase = { code: PhraseCode; params?: Record<string, PhraseValue> }

/** A phrase of the catalogue with what its sentence is filled with. */
export function phrase(code: PhraseCode, params?: Record<string, PhraseValue>): Phrase {
  return params === undefined ? { code } : { code, params }
}
