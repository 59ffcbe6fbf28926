import type { Day } from '../words/dates.ts'

/** The papers that are numbered without gaps, year by year. */
export type Numbered = 'quote' | 'commission'

const LETTER: Record<Numbered, string> = { quote: 'Q', commission: 'C' }

/** Name of the counter that numbers such papers in the year of `day`. */
export const counterFor = (kind: Numbered, day: Day): string => `${kind}-${day.slice(0, 4)}`

/** `Q-2026-007`: what is printed for the nth paper of its kind in the year of `day`. */
export const numberOf = (kind: Numbered, day: Day, nth: number): string =>
  `${LETTER[kind]}-${day.slice(0, 4)}-${String(nth).padStart(3, '0')}`
