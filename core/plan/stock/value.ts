import { type Money, priceOfLength, sumMoney } from '../../words/money.ts'
import type { ClothLength } from './types.ts'

/** What the stock is worth, in all and length by length. */
export type StockValue = {
  total: Money
  each: { lengthId: string; value: Money }[]
  /** Lengths without a price, such as cloth that a customer brought: they are worth nothing here. */
  unpriced: string[]
}

/** What the stock is worth: each length, promised or not, at its price a metre. */
export function stockValue(lengths: readonly ClothLength[], currency: string): StockValue {
  const each = lengths.flatMap(({ id, length, pricePerMetre }) =>
    pricePerMetre === undefined ? [] : [{ lengthId: id, value: priceOfLength(pricePerMetre, length) }],
  )
  return {
    total: sumMoney(
      each.map(({ value }) => value),
      currency,
    ),
    each,
    unpriced: lengths.flatMap(({ id, pricePerMetre }) => (pricePerMetre === undefined ? [id] : [])),
  }
}
