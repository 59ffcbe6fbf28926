import { fibresOf } from '../lay/fibres.ts'
import { addDays, type Day } from '../words/dates.ts'
import { addMoney, type Money, noMoney, partOf, shareOf, sumMoney } from '../words/money.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { answerBy } from './answer.ts'
import { paymentsOf } from './payments.ts'
import type { WorkroomSettings } from './settings.ts'
import type { QuoteLine, QuoteOption, QuoteSnapshot, SharedLay } from './types.ts'

type Sums = 'net' | 'tax' | 'total'
/** A line before its sums are drawn. */
export type LineDraft = Omit<QuoteLine, Sums | 'options'> & { options?: Omit<QuoteOption, Sums>[] }

type Given = {
  number: string
  day: Day
  settings: WorkroomSettings
  customer: QuoteSnapshot['customer']
  lines: readonly LineDraft[]
  shared?: SharedLay[]
  /** Postage and packing before tax. */
  shipping?: Money | undefined
  /** Number of the quote this one replaces. */
  supersedes?: string
  /** The day that is promised, if one is. */
  promised?: Day
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
  shipping: carriage,
  supersedes,
  promised,
}: Given): QuoteSnapshot {
  if (drafts.length === 0) throw new Refusal(phrase('refusal.quote.empty'), 'lines')
  const { rates, letterhead, validityDays } = settings
  const usual = rates.tax.basisPoints
  const lines = drafts.map((line) => priced(line, line.taxBasisPoints ?? usual))
  const shipping = carriage === undefined ? undefined : taxed(carriage, usual)
  const charged = [
    ...lines.map((line) => ({ ...line, basisPoints: line.taxBasisPoints ?? usual })),
    ...(shipping === undefined ? [] : [{ ...shipping, basisPoints: usual }]),
  ]
  const sum = (pick: (line: Pick<QuoteLine, Sums>) => Money, of: typeof charged = charged) =>
    sumMoney(of.map(pick), rates.currency)
  const total = sum((line) => line.total)
  const rests = [...new Set(charged.map(({ basisPoints }) => basisPoints))]
  const payments = paymentsOf(total, rates)
  const terms = [
    ...settings.terms,
    ...(lines.some(hasWool) ? [settings.woolTerm ?? ''] : []),
    ...(lines.some(isBrought) ? [settings.broughtTerm] : []),
  ]
  const validUntil = addDays(day, validityDays)
  return {
    version: 1,
    number,
    day,
    validUntil,
    letterhead,
    customer,
    lines,
    ...(shared.length > 0 ? { shared } : {}),
    ...(shipping === undefined ? {} : { shipping }),
    net: sum((line) => line.net),
    tax: { ...rates.tax, amount: sum((line) => line.tax) },
    ...(rests.length === 1 && rests[0] === usual
      ? {}
      : {
          taxes: rests.map((basisPoints) => {
            const own = charged.filter((line) => line.basisPoints === basisPoints)
            return { basisPoints, net: sum((line) => line.net, own), amount: sum((line) => line.tax, own) }
          }),
        }),
    total,
    deposit: payments.find(({ when }) => when === 'acceptance')?.amount ?? noMoney(rates.currency),
    payments,
    terms: terms.filter((sentence) => sentence !== ''),
    keepDepositOnceCut: settings.keepDepositOnceCut,
    ...(supersedes === undefined ? {} : { supersedes }),
    ...(promised === undefined ? {} : { promised, answerBy: answerBy(day, validUntil) }),
  }
}

/** Whether wool is in any of its cloths, or in one that it is offered in: by their fibre, or where none is said, by their name. */
const hasWool = ({ cloth, others, options = [] }: Pick<QuoteLine, 'cloth' | 'others' | 'options'>): boolean =>
  [{ cloth, others }, ...options]
    .flatMap((way) => [way.cloth, ...Object.values(way.others ?? {})])
    .some(({ fibre, name }) => fibresOf(fibre.trim() === '' ? name : fibre).includes('wool'))

const isBrought = ({ estimate }: Pick<QuoteLine, 'estimate'>): boolean => estimate.brought !== undefined

function priced({ options, ...line }: LineDraft, basisPoints: number): QuoteLine {
  const sums = (of: Pick<QuoteLine, 'estimate'>) =>
    taxed(shareOf(of.estimate.price.net, line.quantity, 1), basisPoints)
  return {
    ...line,
    ...sums(line),
    ...(options === undefined || options.length === 0
      ? {}
      : { options: options.map((option) => ({ ...option, ...sums(option) })) }),
  }
}

function taxed(net: Money, basisPoints: number): Pick<QuoteLine, Sums> {
  const tax = partOf(net, basisPoints)
  return { net, tax, total: addMoney(net, tax) }
}
