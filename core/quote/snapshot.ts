import { addDays, type Day } from '../words/dates.ts'
import { addMoney, type Money, partOf, shareOf, sumMoney } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import type { WorkroomSettings } from './settings.ts'
import type { QuoteLine, QuoteSnapshot, SharedLay } from './types.ts'

/** A line before its sums are drawn. */
export type LineDraft = Omit<QuoteLine, 'net' | 'tax' | 'total'>

type Given = {
  number: string
  day: Day
  settings: WorkroomSettings
  customer: QuoteSnapshot['customer']
  lines: readonly LineDraft[]
  shared?: SharedLay[]
  /** Number of the quote this one replaces. */
  supersedes?: string
}

/**
 * Puts a quote together from its lines and the settings of the day. Tax is reckoned line by line, so that
 * the sums on paper are the sums of the lines on paper.
 *
 * @throws Refusal when there is no line
 */
export function quoteSnapshot({
  number,
  day,
  settings,
  customer,
  lines: drafts,
  shared = [],
  supersedes,
}: Given): QuoteSnapshot {
  if (drafts.length === 0) throw new Refusal(phrase('refusal.quote.empty'), 'lines')
  const { rates, letterhead, terms, validityDays } = settings
  const lines = drafts.map((line) => priced(line, rates.tax.basisPoints))
  const sum = (pick: (line: QuoteLine) => Money) => sumMoney(lines.map(pick), rates.currency)
  const total = sum((line) => line.total)
  return {
    version: 1,
    number,
    day,
    validUntil: addDays(day, validityDays),
    letterhead,
    customer,
    lines,
    ...(shared.length > 0 ? { shared } : {}),
    net: sum((line) => line.net),
    tax: { ...rates.tax, amount: sum((line) => line.tax) },
    total,
    deposit: partOf(total, rates.depositBasisPoints),
    terms,
    ...(supersedes === undefined ? {} : { supersedes }),
  }
}

function priced(line: LineDraft, taxBasisPoints: number): QuoteLine {
  const net = shareOf(line.estimate.price.net, line.quantity, 1)
  const tax = partOf(net, taxBasisPoints)
  return { ...line, net, tax, total: addMoney(net, tax) }
}
