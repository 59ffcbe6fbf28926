import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'

/** A paper's place in a series of numbers that begins at 1 and leaves none out. */
export type Numbered = { series: string; nth: number; number: string }

/** The number of the nth paper of a series, as quotes are numbered: `I-2026-` and 7 give `I-2026-007`. */
export const numberIn = (series: string, nth: number): Numbered => ({
  ...{ series, nth, number: `${series}${String(nth).padStart(3, '0')}` },
})

/** Numbers of a series that no paper bears, below the last that one does. A book in order has none. */
export function gapsIn(papers: readonly Numbered[], series: string): number[] {
  const taken = new Set(papers.flatMap((paper) => (paper.series === series ? [paper.nth] : [])))
  const last = Math.max(0, ...taken)
  return Array.from({ length: last }, (_, i) => i + 1).filter((nth) => !taken.has(nth))
}

/**
 * The book with one paper more. Papers are only ever added to it.
 * @throws Refusal when the paper's number is not the next of its series
 */
export function issued<P extends Numbered>(papers: readonly P[], paper: P): P[] {
  const last = Math.max(0, ...papers.flatMap(({ series, nth }) => (series === paper.series ? [nth] : [])))
  const due = numberIn(paper.series, last + 1)
  if (paper.nth !== due.nth || papers.some(({ number }) => number === paper.number)) {
    throw new Refusal(phrase('refusal.money.number', { number: paper.number, due: due.number }), 'number')
  }
  return [...papers, paper]
}
