import { numberFormat } from './formats.ts'

/**
 * A number as typed, with point or comma: `12.5`, `12,5`, `1.234,50`, `1'234.50`. One sign before three figures might
 * be either, so `1,234` is not guessed at.
 *
 * @returns NaN when it is none, which the workroom refuses in a sentence
 */
export function readNumber(text: string): number {
  const typed = text.trim().replace(/[−–]/g, '-')
  const [, sign = '', whole = '', part = ''] =
    /^(-?)(\d*|\d{1,3}(?:[ \u00a0\u202f'’]\d{3})+)(?:[.,](\d+))?$/.exec(typed) ?? []
  const [grouped, thousands = '', rest = ''] =
    /^-?(\d{1,3}(?:,\d{3})+)\.(\d+)$/.exec(typed) ?? /^-?(\d{1,3}(?:\.\d{3})+),(\d+)$/.exec(typed) ?? []
  if (grouped !== undefined)
    return Number(`${typed.startsWith('-') ? '-' : ''}${thousands.replace(/\D/g, '')}.${rest}`)
  if (whole + part === '' || (part.length === 3 && /^[1-9]\d{0,2}$/.test(whole))) return Number.NaN
  return Number(`${sign}${whole.replace(/\D/g, '')}.${part}`)
}

/** A number as it stands in a field: with the locale's decimal sign and nothing between thousands, so that it can be read back. */
export const writeNumber = (value: number, locale: string, digits?: number): string =>
  numberFormat(locale, {
    useGrouping: false,
    ...(digits === undefined
      ? { maximumFractionDigits: 6 }
      : { minimumFractionDigits: digits, maximumFractionDigits: digits }),
  }).format(value)
