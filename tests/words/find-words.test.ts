import { expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import type { PhraseCode } from '../../core/words/phrase.ts'
import { readerIn } from '../../core/words/readers.ts'
import { say } from '../../core/words/say.ts'
import { matched } from '../../renderer/find/matching.ts'

const SHEETS = Object.keys(english)
  .map((code) => /^guiding\.find\.(\w+)$/.exec(code)?.[1])
  .filter((sheet) => sheet !== undefined)

/** The sheets of the settings that all words of a text lead to. */
function foundBy(text: string, locale: string): string[] {
  const reader = readerIn({ locale, unit: 'cm' })
  return SHEETS.filter((sheet) => {
    const called = ['', '.also'].map((end) =>
      say({ code: `guiding.find.${sheet}${end}` as PhraseCode }, reader),
    )
    return matched(text, called.join(' ')).rest === ''
  })
}

test.each([
  ['en-GB', ['holiday', 'holidays', 'days off', 'day off', 'free days', 'vacation']],
  ['de-DE', ['Urlaub', 'Feiertage', 'freie Tage', 'freier Tag', 'Ferien']],
])('the days off are found by the words for them: %s', (locale, texts) => {
  for (const text of texts) expect(foundBy(text, locale), text).toEqual(['daysOff'])
})
