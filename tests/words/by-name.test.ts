import { expect, test } from 'vitest'
import { byName } from '../../core/words/by-name.ts'

const sorted = (names: string[], locale: string) =>
  byName(
    names.map((name) => ({ name })),
    locale,
  ).map(({ name }) => name)

// Expected: the order of the Unicode Collation Algorithm (UTS #10) with CLDR's tailorings for Swedish and Polish.
test('names stand where a reader of the language looks for them', () => {
  expect(sorted(['Bea', 'Ása', 'Łucja', 'Mona', 'asa'], 'en-GB')).toEqual([
    'asa',
    'Ása',
    'Bea',
    'Łucja',
    'Mona',
  ])
  expect(sorted(['Zoe', 'Åsa', 'Ärla', 'Eda'], 'sv-SE')).toEqual(['Eda', 'Zoe', 'Åsa', 'Ärla'])
  expect(sorted(['Lz', 'Ła', 'Ma'], 'pl-PL')).toEqual(['Lz', 'Ła', 'Ma'])
  expect(sorted(['linen 10', 'linen 9'], 'en-GB')).toEqual(['linen 9', 'linen 10'])
})
