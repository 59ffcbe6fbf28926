/**
 * Things in the order of their names as it is usual where a locale is spoken: with Á beside A, whatever byte it is written by.
 * @param locale BCP 47
 */
export function byName<T extends { name: string }>(things: readonly T[], locale: string): T[] {
  const { compare } = new Intl.Collator(locale, { numeric: true })
  return [...things].sort((a, b) => compare(a.name, b.name))
}
