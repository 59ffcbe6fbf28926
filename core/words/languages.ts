/** The languages the planner speaks, by their ISO 639 codes. */
export const LANGUAGES = ['en', 'de'] as const
export type Language = (typeof LANGUAGES)[number]

/** The regions whose way of writing days, numbers and amounts may be chosen with each language (ISO 3166-1). */
export const REGIONS: Record<Language, readonly string[]> = {
  en: ['GB', 'IE', 'US', 'CA', 'AU', 'NZ', 'ZA', 'DE', 'AT', 'CH', 'NL', 'BE', 'DK', 'SE', 'FI'],
  de: ['DE', 'AT', 'CH', 'LI', 'LU', 'BE', 'IT'],
}

/** Whether the planner speaks the language of a locale. */
export const isSpoken = (locale: string): boolean =>
  (LANGUAGES as readonly string[]).includes(new Intl.Locale(locale).language)

/** The language of a locale; English where the planner does not speak it. */
export const languageOf = (locale: string): Language =>
  LANGUAGES.find((one) => one === new Intl.Locale(locale).language) ?? 'en'

/** The region of a locale, or else the one where most speak its language. */
export function regionOf(locale: string): string {
  const one = new Intl.Locale(locale)
  return one.region ?? one.maximize().region ?? 'GB'
}

/** The locale of a language as it is written in a region; that of its first region where it is not offered there. */
export function localeOf(language: Language, region: string): string {
  return `${language}-${REGIONS[language].includes(region) ? region : REGIONS[language][0]}`
}
