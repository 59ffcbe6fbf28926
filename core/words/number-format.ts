const known = new Map<string, Intl.NumberFormat>()

/** A number format of the runtime, made once: making one takes far longer than using it. */
export function numberFormat(locale: string, options: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`
  let format = known.get(key)
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, options)
    known.set(key, format)
  }
  return format
}
