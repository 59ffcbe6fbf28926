import type { Day } from '../words/dates.ts'

/** The papers that are numbered without gaps. */
export type Numbered = 'quote' | 'commission'

/** How they are numbered: what stands before the number, and whether it begins anew every year. */
export type Numbering = Record<Numbered, string> & { yearly: boolean }

/** Name of the counter that numbers such papers: one for every year, or one for good. */
export const counterFor = (kind: Numbered, day: Day, { yearly }: Numbering): string =>
  yearly ? `${kind}-${day.slice(0, 4)}` : kind

/** `Q-2026-007`, or `Q-007` where numbers do not begin anew: what is printed for the nth paper of its kind. */
export function numberOf(kind: Numbered, day: Day, nth: number, numbering: Numbering): string {
  const year = numbering.yearly ? `${day.slice(0, 4)}-` : ''
  return `${numbering[kind]}-${year}${String(nth).padStart(3, '0')}`
}
