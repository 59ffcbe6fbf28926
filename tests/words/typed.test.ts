import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dayOfNumber } from '../../core/words/dates.ts'
import { LANGUAGES, localeOf, REGIONS } from '../../core/words/languages.ts'
import { readMinutes } from '../../core/words/time.ts'
import { formOfDay, readTypedDay, writeDay } from '../../core/words/typed-day.ts'
import { readNumber, writeNumber } from '../../core/words/typed-number.ts'

const LOCALES = LANGUAGES.flatMap((language) => REGIONS[language].map((region) => localeOf(language, region)))

describe('a day as typed', () => {
  test.each([
    ['03.12.2026', 'de-DE', '2026-12-03'],
    ['3.12.26', 'de-DE', '2026-12-03'],
    ['3. Dezember 2026', 'de-AT', '2026-12-03'],
    ['3. März 2026', 'de-DE', '2026-03-03'],
    ['1. Jänner 2027', 'de-AT', '2027-01-01'],
    ['03/12/2026', 'en-GB', '2026-12-03'],
    ['12/03/2026', 'en-US', '2026-12-03'],
    ['3 Dec 2026', 'en-GB', '2026-12-03'],
    ['December 3, 2026', 'en-US', '2026-12-03'],
    ['2026-12-03', 'de-DE', '2026-12-03'],
    ['2026-12-03', 'en-US', '2026-12-03'],
    ['29/2/2028', 'en-GB', '2028-02-29'],
  ])('%s in %s is %s', (text, locale, day) => {
    expect(readTypedDay(text, locale)).toBe(day)
  })

  test('is without its year the one that is nearest', () => {
    expect(readTypedDay('24 dec', 'en-GB', '2026-11-27')).toBe('2026-12-24')
    expect(readTypedDay('1/1', 'en-GB', '2026-11-27')).toBe('2027-01-01')
    expect(readTypedDay('28. Dezember', 'de-DE', '2027-01-04')).toBe('2026-12-28')
    expect(readTypedDay('29/2', 'en-GB', '2027-03-01')).toBe('2028-02-29')
    expect(() => readTypedDay('30/2', 'en-GB', '2027-03-01')).toThrowError()
    expect(() => readTypedDay('24 dec', 'en-GB')).toThrowError()
  })

  test.each(['31.02.2026', '3.12.', 'bald', '3. Dez', '12/2026', '3.13.2026', '1 2 3 4', '3 Foo 2026'])(
    '%s is refused with an example',
    (text) => {
      expect(() => readTypedDay(text, 'de-DE')).toThrowError(
        expect.objectContaining({
          phrase: { code: 'refusal.date.typed', params: { text, example: '25.11.2026' } },
        }),
      )
    },
  )

  test('is asked for in its form', () => {
    expect([formOfDay('de-DE', 'TMJ'), formOfDay('en-US', 'dmy')]).toEqual(['TT.MM.JJJJ', 'mm/dd/yyyy'])
  })

  test('is read back as it is written, everywhere', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.constantFrom(...LOCALES), (number, locale) => {
        const day = dayOfNumber(number)
        expect(readTypedDay(writeDay(day, locale), locale)).toBe(day)
      }),
    )
  })
})

describe('a number as typed', () => {
  test.each([
    ['3,5', 3.5],
    ['3.5', 3.5],
    ['1.234,50', 1234.5],
    ['1,234.50', 1234.5],
    ['1’234.50', 1234.5],
    ['1 234,5', 1234.5],
    ['1234', 1234],
    [',5', 0.5],
    ['0,125', 0.125],
    ['1234,567', 1234.567],
    ['−2', -2],
  ])('%s is %d', (text, value) => {
    expect(readNumber(text)).toBe(value)
  })

  test.each(['', '1.234', '1,234', '1,2,3', 'zwei', '1.23,4', '5 €', '.'])('%j is none', (text) => {
    expect(readNumber(text)).toBeNaN()
  })

  test('is read back as it is written, everywhere', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -99_999_999, max: 99_999_999 }),
        fc.constantFrom(...LOCALES),
        (hundredths, locale) => {
          expect(readNumber(writeNumber(hundredths / 100, locale, 2))).toBe(hundredths / 100)
        },
      ),
    )
  })
})

test('a time may be typed in German words', () => {
  expect(['1 Std. 20 Min.', '1,5 Stunden', '90 Minuten', '1 Stunde', '½ Stunde'].map(readMinutes)).toEqual([
    80, 90, 90, 60, 30,
  ])
})
