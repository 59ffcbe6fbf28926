import { numberFormat } from './formats.ts'
import { phrase } from './phrase.ts'
import { Refusal } from './refusal.ts'

/** An amount in whole minor units (pence, cents) of an ISO 4217 currency. Never a float of the major unit. */
export type Money = { minor: number; currency: string }

/** An amount of whole minor units. @throws Refusal when they are not whole, or too many to be exact */
export function money(minor: number, currency: string): Money {
  if (!Number.isSafeInteger(minor))
    throw new Refusal(phrase('refusal.money.unreadable', { text: String(minor) }))
  return { minor, currency }
}

/** What a currency is called when there is more than one of it: `British pounds`. */
export const currencyName = (currency: string, locale: string): string =>
  numberFormat(locale, { style: 'currency', currency, currencyDisplay: 'name' })
    .formatToParts(2)
    .find(({ type }) => type === 'currency')?.value ?? currency

/** Nothing at all, in a currency by its ISO 4217 code. */
export const noMoney = (currency: string): Money => ({ minor: 0, currency })

/** @throws Refusal when two currencies meet: the workroom keeps one. */
export function addMoney(a: Money, b: Money): Money {
  if (a.currency !== b.currency) {
    throw new Refusal(phrase('refusal.money.currencies', { one: a.currency, other: b.currency }))
  }
  return money(a.minor + b.minor, a.currency)
}

/** May be less than nothing. @throws Refusal when the currencies differ */
export const subtractMoney = (a: Money, b: Money): Money =>
  addMoney(a, { minor: -b.minor, currency: b.currency })

/** Nothing where there are no amounts. @throws Refusal when one is in another currency */
export function sumMoney(amounts: readonly Money[], currency: string): Money {
  return amounts.reduce(addMoney, noMoney(currency))
}

/**
 * `amount × numerator ÷ denominator`, rounded half away from zero to the minor unit. All three are
 * integers, multiplied as BigInt, so no amount ever passes through a float.
 */
export function shareOf(amount: Money, numerator: number, denominator: number): Money {
  const top = BigInt(amount.minor) * BigInt(numerator)
  const bottom = BigInt(denominator)
  const negative = top < 0n !== bottom < 0n
  const [t, b] = [top < 0n ? -top : top, bottom < 0n ? -bottom : bottom]
  const rounded = (2n * t + b) / (2n * b)
  return money(Number(negative ? -rounded : rounded), amount.currency)
}

/** Price of a length at a rate per metre; the length is taken to the hundredth of a millimetre. */
export const priceOfLength = (perMetre: Money, mm: number): Money =>
  shareOf(perMetre, Math.round(mm * 100), 100_000)

/** Pay for a time at an hourly rate; the time is taken to the hundredth of a minute. */
export const payFor = (perHour: Money, minutes: number): Money =>
  shareOf(perHour, Math.round(minutes * 100), 6000)

/** The least whole amount that pays whole minutes at no less than an hourly rate. */
export function payAtLeast(perHour: Money, minutes: number): Money {
  const pay = payFor(perHour, minutes)
  return pay.minor * 60 < perHour.minor * minutes ? { ...pay, minor: pay.minor + 1 } : pay
}

/** A part given in basis points (1/100 of a per cent). */
export const partOf = (amount: Money, basisPoints: number): Money => shareOf(amount, basisPoints, 10_000)

/** Rounds to a multiple of `step` minor units. A step of 0 or 1 leaves the amount as it is. */
export function roundMoney(amount: Money, step: number, direction: 'up' | 'down' | 'nearest'): Money {
  if (step <= 1) return amount
  const steps = amount.minor / step
  const whole =
    direction === 'up' ? Math.ceil(steps) : direction === 'down' ? Math.floor(steps) : Math.round(steps)
  return money(whole * step, amount.currency)
}

/**
 * Splits an amount in proportion to integer weights so that the parts sum to the whole: each part is
 * rounded down and the minor units left over go to the largest remainders (Hamilton's method), the earlier
 * part first on a tie.
 * @throws Refusal when all weights together are nothing
 */
export function splitMoney(amount: Money, weights: readonly number[]): Money[] {
  const total = weights.reduce((sum, weight) => sum + BigInt(weight), 0n)
  if (total <= 0n) throw new Refusal(phrase('refusal.money.noWeights'))
  const sign = amount.minor < 0 ? -1 : 1
  const whole = BigInt(Math.abs(amount.minor))
  const parts = weights.map((weight, index) => {
    const product = whole * BigInt(weight)
    return { index, floor: product / total, remainder: product % total }
  })
  const left = Number(whole - parts.reduce((sum, part) => sum + part.floor, 0n))
  const lucky = new Set(
    [...parts]
      .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1))
      .slice(0, left)
      .map((part) => part.index),
  )
  return parts.map((part) =>
    money(sign * (Number(part.floor) + (lucky.has(part.index) ? 1 : 0)), amount.currency),
  )
}

/** How many digits of the currency are minor units (ISO 4217, as the runtime's Intl data knows it). */
export function minorDigits(currency: string): number {
  return numberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
}

/** Writes an amount as people who read in the locale write it, with the sign of its currency. @param locale BCP 47 */
export function printMoney(amount: Money, locale: string): string {
  const digits = minorDigits(amount.currency)
  const text = String(Math.abs(amount.minor)).padStart(digits + 1, '0')
  const decimal = digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`
  return numberFormat(locale, { style: 'currency', currency: amount.currency }).format(
    `${amount.minor < 0 ? '-' : ''}${decimal}` as Intl.StringNumericLiteral,
  )
}
