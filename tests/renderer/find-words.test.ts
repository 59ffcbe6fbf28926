import { expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import { german } from '../../core/words/catalogue/german.ts'
import { matched } from '../../renderer/find/matching.ts'

const PLACES = {
  account: ['times.accounts.title', 'find.also.accounts'],
  daysOff: ['guiding.find.daysOff', 'guiding.find.daysOff.also'],
  margin: ['guiding.find.clothMargin', 'guiding.find.clothMargin.also'],
} as const

const asked = (catalogue: Record<string, string>, place: keyof typeof PLACES, text: string) =>
  matched(text, PLACES[place].map((code) => catalogue[code]).join(' '))

test.each([
  ['account', ['earned', 'profit', 'worth', 'worth it', 'income']],
  ['daysOff', ['holidays', 'holiday', 'days off', 'vacation']],
  ['margin', ['margin for cloth', 'cloth margin', 'buying margin']],
] as const)('in English the place of %s is found by every word one would think of', (place, texts) => {
  for (const text of texts) expect(asked(english, place, text).rest, text).toBe('')
})

test.each([
  ['account', ['verdienst', 'verdient', 'gewinn', 'gelohnt', 'lohnt']],
  ['daysOff', ['urlaub', 'ferien', 'freie tage']],
  ['margin', ['stoffzuschlag', 'zuschlag für stoff', 'marge für stoff']],
] as const)('and in German that of %s', (place, texts) => {
  for (const text of texts) expect(asked(german, place, text).rest, text).toBe('')
})

test('a word of nothing finds none of them', () => {
  for (const place of Object.keys(PLACES) as (keyof typeof PLACES)[])
    expect(asked(english, place, 'thimble').words).toBe(0)
})
