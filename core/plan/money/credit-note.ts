import { type Day, readDay } from '../../words/dates.ts'
import { type Money, noMoney, subtractMoney } from '../../words/money.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'
import type { Invoice } from './invoice.ts'
import type { Numbered } from './series.ts'

/**
 * The paper that cancels an invoice, with a number of its own: the same lines, all amounts turned round, and the
 * number of the invoice it undoes (Directive 2006/112/EC, article 219). Both stay in the book, and sum to nothing.
 *
 * @param papers all invoices and credit notes so far
 * @throws Refusal when there is no such invoice, or it is cancelled already
 */
export function creditNoteFor(
  papers: readonly Invoice[],
  cancels: string,
  { number, day, reason }: { number: Numbered; day: Day; reason: string },
): Invoice {
  refusingAt('day', () => readDay(day))
  const invoice = papers.find((paper) => paper.number === cancels)
  if (invoice === undefined)
    throw new Refusal(phrase('refusal.money.noInvoice', { number: cancels }), 'cancels')
  if (invoice.kind === 'creditNote')
    throw new Refusal(phrase('refusal.money.isCreditNote', { number: cancels }), 'cancels')
  const before = papers.find((paper) => paper.cancels === cancels)
  if (before !== undefined) {
    const params = { number: cancels, by: before.number }
    throw new Refusal(phrase('refusal.money.cancelled', params), 'cancels')
  }
  const total = turned(invoice.total)
  return {
    ...invoice,
    ...number,
    ...{ kind: 'creditNote', day, cancels, reason },
    lines: invoice.lines.map((line) => ({
      ...line,
      ...{ each: turned(line.each), net: turned(line.net), tax: turned(line.tax), total: turned(line.total) },
    })),
    taxes: invoice.taxes.map((rate) => ({ ...rate, net: turned(rate.net), tax: turned(rate.tax) })),
    ...{ net: turned(invoice.net), tax: turned(invoice.tax), total },
    // What was paid stands on the invoice; the two balances together are what goes back.
    ...{ paid: noMoney(total.currency), balance: total },
  }
}

const turned = (amount: Money): Money => subtractMoney(noMoney(amount.currency), amount)
