import { english } from '../core/words/catalogue/english.ts'
import { languageOf } from '../core/words/languages.ts'
import type { Reader } from '../core/words/say.ts'

/** Who reads the screens; the sentences of another language than English are fetched when they are read. */
export async function readerFor({ locale, unit }: Pick<Reader, 'locale' | 'unit'>): Promise<Reader> {
  const catalogue =
    languageOf(locale) === 'de' ? (await import('../core/words/catalogue/german.ts')).german : english
  return { locale, unit, catalogue }
}
