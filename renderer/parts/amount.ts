import { type Money, minorDigits } from '../../core/words/money.ts'
import { readNumber, writeNumber } from '../../core/words/typed-number.ts'

/** A plain number as typed, with point or comma; what is none becomes NaN, which the workroom refuses. */
export const numberOf = readNumber

/** An amount as it stands in a field: `12.50`, or `12,50` where that is how it is written. */
export const amountText = ({ minor, currency }: Money, locale: string): string =>
  writeNumber(minor / 10 ** minorDigits(currency), locale, minorDigits(currency))

/** An amount as typed, in whole minor units. */
export const amountOf = (text: string, currency: string): Money => ({
  minor: Math.round(numberOf(text) * 10 ** minorDigits(currency)),
  currency,
})

/** A part in per cent as typed, in basis points. */
export const basisPointsOf = (text: string): number => Math.round(numberOf(text) * 100)
