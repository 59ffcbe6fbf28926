import { type Money, subtractMoney } from '../words/money.ts'
import type { QuoteLine, QuoteSnapshot } from './types.ts'

/** In what a quote differs from the one it replaces: garments that fall away, that are new, and the money. */
export type Difference = {
  dropped: Pick<QuoteLine, 'id' | 'title' | 'wearer' | 'total'>[]
  added: Pick<QuoteLine, 'id' | 'title' | 'wearer' | 'total'>[]
  before: Money
  after: Money
  more: Money
}

/**
 * Pairs lines that are the same garment made the same way: of one construction, wearer, set of measures, choices, extras, cloth
 * and way of sewing. Each is paired once.
 */
export function sameLines(before: readonly QuoteLine[], after: readonly QuoteLine[]): Map<string, string> {
  const left = [...before]
  const pairs = new Map<string, string>()
  for (const line of after) {
    const at = left.findIndex((one) => keyOf(one) === keyOf(line) && one.quantity === line.quantity)
    if (at === -1) continue
    pairs.set(line.id, left[at]!.id)
    left.splice(at, 1)
  }
  return pairs
}

/** In what two quotes differ; totals after tax, and `more` below nothing where the later one is less. */
export function differenceOf(before: QuoteSnapshot, after: QuoteSnapshot): Difference {
  const same = sameLines(before.lines, after.lines)
  const kept = new Set(same.values())
  const short = ({ id, title, wearer, total }: QuoteLine) => ({ id, title, wearer, total })
  return {
    dropped: before.lines.filter(({ id }) => !kept.has(id)).map(short),
    added: after.lines.filter(({ id }) => !same.has(id)).map(short),
    ...{ before: before.total, after: after.total, more: subtractMoney(after.total, before.total) },
  }
}

const keyOf = ({
  construction,
  wearer,
  measurementSet,
  asked,
  extras = {},
  cloth,
  estimate,
}: QuoteLine): string =>
  JSON.stringify([
    construction,
    wearer.id,
    measurementSet.id,
    asked,
    extras,
    cloth.id ?? cloth.name,
    estimate.finishPlan,
  ])
