import { english } from './catalogue/english.ts'
import { german } from './catalogue/german.ts'
import { type Language, languageOf } from './languages.ts'
import type { Reader } from './say.ts'

const CATALOGUES: Record<Language, Reader['catalogue']> = { en: english, de: german }

/** Who reads in a locale, such as `de-AT`, with lengths in a unit. */
export const readerIn = ({ locale, unit }: Pick<Reader, 'locale' | 'unit'>): Reader => ({
  ...{ locale, unit },
  catalogue: CATALOGUES[languageOf(locale)],
})
