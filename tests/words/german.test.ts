import { readdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import { german } from '../../core/words/catalogue/german.ts'
import { isSpoken, languageOf, localeOf, regionOf } from '../../core/words/languages.ts'
import { type PhraseCode, phrase } from '../../core/words/phrase.ts'
import { readerIn } from '../../core/words/readers.ts'
import { say } from '../../core/words/say.ts'
import { begunIn } from '../../core/workroom/begin.ts'

const CODES = Object.keys(english) as PhraseCode[]
const slots = (text: string) => [...new Set(text.match(/\{\w+\}/g))].sort()
const files = (language: string) =>
  readdirSync(resolve(import.meta.dirname, '../../core/words/catalogue', language)).sort()

/** Words that only English has, or that a German sentence would not use. */
const ONLY_ENGLISH =
  /(?<!\p{L})(the|of|and|is|are|with|for|not|this|that|to|you|your|her|from|been)(?!\p{L})/iu

describe('the German catalogue', () => {
  test('has a file for each English one', () => {
    expect(files('german')).toEqual(files('english'))
  })

  test('has the same phrases, each filled by the same names', () => {
    expect(Object.keys(german).sort()).toEqual([...CODES].sort())
    for (const code of CODES) expect(slots(german[code]), code).toEqual(slots(english[code]))
  })

  test('says nothing empty, and refuses in whole sentences', () => {
    for (const code of CODES) {
      expect(german[code].trim(), code).not.toBe('')
      if (code.startsWith('refusal.')) expect(german[code], code).toMatch(/[.}]$/)
    }
  })

  test('has no English left in it', () => {
    // The title of an English book.
    const read = CODES.filter((code) => code !== 'help.source.workwoman')
    const left = read.filter((code) => ONLY_ENGLISH.test(german[code].replace(/\{\w+\}/g, '')))
    expect(left.map((code) => `${code}: ${german[code]}`)).toEqual([])
    const same = read.filter((code) => german[code] === english[code] && english[code].split(' ').length > 3)
    expect(same.filter((code) => /[a-z]{4}/.test(german[code].replace(/\{\w+\}/g, '')))).toEqual([])
  })

  test('quotes as German does', () => {
    for (const code of CODES) expect(german[code].match(/”/g), code).toBeNull()
  })
})

describe('a locale', () => {
  test('has a language of the planner, and English where it speaks none', () => {
    expect(['de-DE', 'de-AT', 'de', 'en-US', 'fr-FR'].map(languageOf)).toEqual(['de', 'de', 'de', 'en', 'en'])
    expect(['de-CH', 'en', 'nl-NL'].map(isSpoken)).toEqual([true, true, false])
  })

  test('has the region that is named, or where most speak its language', () => {
    expect(['de-AT', 'de', 'en', 'en-GB'].map(regionOf)).toEqual(['AT', 'DE', 'US', 'GB'])
    expect(localeOf('de', 'AT')).toBe('de-AT')
    expect(localeOf('de', 'US')).toBe('de-DE')
  })

  test('has its sentences filled in its manner', () => {
    const reader = readerIn({ locale: 'de-DE', unit: 'cm' })
    expect(
      say(
        phrase('price.how.bought', { length: { mm: 2745 }, price: { minor: 1850, currency: 'EUR' } }),
        reader,
      ),
    ).toBe('274,5 cm zu 18,50\u00a0€ je Meter')
    expect(say(phrase('paper.quote.stands', { day: { date: '2026-12-03' } }), reader)).toBe(
      'Dieses Angebot gilt bis 3. Dezember 2026.',
    )
  })
})

describe('a new workroom', () => {
  test('begins with the money, paper and terms of its region', () => {
    const german = begunIn('de-AT')
    expect(german.rates.currency).toBe('EUR')
    expect(german.letterhead).toMatchObject({ locale: 'de-AT', paper: 'A4' })
    expect(german.terms[2]).toBe('Die Arbeit beginnt, wenn die Anzahlung eingegangen ist.')
    expect(begunIn('en-US')).toMatchObject({
      letterhead: { paper: 'Letter' },
      rates: { currency: 'USD', tax: { name: 'Sales tax' } },
    })
  })

  test('never mixes currencies', () => {
    for (const locale of ['en-GB', 'en-DK', 'de-CH', 'en-ZA']) {
      const { rates, threadStock, notionStock = {} } = begunIn(locale)
      const amounts = [
        ...Object.values(rates.perHour),
        ...[rates.overheadPerHour, rates.targetPerHour],
        ...[threadStock.hand.pricePerReel, threadStock.machine.pricePerReel],
        ...Object.values(notionStock),
      ]
      expect(new Set(amounts.map(({ currency }) => currency)), locale).toEqual(new Set([rates.currency]))
    }
  })
})
