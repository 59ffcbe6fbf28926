import { addMoney, type Money, sumMoney } from '../words/money.ts'
import type { QuoteLine, QuoteSnapshot } from './types.ts'

/** A garment of a commission: its line, and which of the line's options the customer took. */
type Picked = { quoteGarmentId: string; option: number | null }

/** The line of a garment as it is to be made. */
export function lineAsTaken({ lines }: Pick<QuoteSnapshot, 'lines'>, picked: Picked): QuoteLine {
  const line = lines.find(({ id }) => id === picked.quoteGarmentId)
  if (line === undefined) throw new Error(`no line ${picked.quoteGarmentId} in this quote`)
  if (picked.option === null) return line
  const option = line.options?.[picked.option]
  if (option === undefined) throw new Error(`line ${line.id} has no option ${picked.option}`)
  const { name: _, ...made } = option
  return { ...line, ...made }
}

/** What an order comes to with the options that were taken; one not named is taken as it stands. */
export function totalAsTaken(
  snapshot: Pick<QuoteSnapshot, 'lines' | 'shipping' | 'total'>,
  taken: Readonly<Record<string, number | null | undefined>>,
): Money {
  const lines = sumMoney(
    snapshot.lines.map((line) => {
      const option = taken[line.id] ?? null
      return option === null ? line.total : (line.options?.[option]?.total ?? line.total)
    }),
    snapshot.total.currency,
  )
  return snapshot.shipping === undefined ? lines : addMoney(lines, snapshot.shipping.total)
}
