// Making a format of the runtime takes a thousand times as long as using it, and a list asks for one in every row.
const numbers = new Map<string, Intl.NumberFormat>()
const moments = new Map<string, Intl.DateTimeFormat>()

function madeOnce<F, O>(known: Map<string, F>, locale: string, options: O, make: () => F): F {
  const key = `${locale} ${JSON.stringify(options)}`
  let format = known.get(key)
  if (format === undefined) {
    format = make()
    known.set(key, format)
  }
  return format
}

/** A format of numbers, made once. @param locale BCP 47 @throws RangeError for options that the runtime does not know */
export const numberFormat = (locale: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat =>
  madeOnce(numbers, locale, options, () => new Intl.NumberFormat(locale, options))

/** A format of moments, in the zone of the machine unless another is given, made once. @param locale BCP 47 @throws RangeError as above */
export const momentFormat = (locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
  madeOnce(moments, locale, options, () => new Intl.DateTimeFormat(locale, options))

/** A format of calendar days, which have no zone: they are given as midnight UTC. @param locale BCP 47 @throws RangeError as above */
export const dayFormat = (locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
  momentFormat(locale, { ...options, timeZone: 'UTC' })
