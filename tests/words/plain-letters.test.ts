import { describe, expect, test } from 'vitest'
import { namedSo, plainLetters, spellingsOf } from '../../core/words/plain-letters.ts'
import { workroom } from '../support/store.ts'

describe('a name typed without its marks', () => {
  test.each([
    ['Þórunn', 'thorunn'],
    ['Þórður', 'thordur'],
    ['Bjørnson', 'bjornson'],
    ['Łucja', 'lucja'],
    ['Græg', 'graeg'],
    ['Weiß', 'weiss'],
  ])('%s is found by %s', (name, typed) => {
    expect(plainLetters(name)).toBe(typed)
    expect(namedSo(name, typed)).toBe(true)
    const written = name.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '')
    expect(spellingsOf(typed)).toContain(written)
    expect(spellingsOf(typed)[0]).toBe(typed)
    // What is typed as it is written is one of its own spellings.
    expect(spellingsOf(written)[0]).toBe(written)
  })

  test('has few spellings, however long it is', () => {
    expect(spellingsOf('ostrdlod'.repeat(8)).length).toBeLessThanOrEqual(64)
    expect(spellingsOf('')).toEqual([''])
  })

  test('is found among everything that is kept, in the middle of other words as well', async () => {
    const room = workroom()
    await room.done('client.add', { name: 'Þórður Bjørnson' })
    await room.done('client.add', { name: 'Theodora Bourne' })
    const found = async (text: string) =>
      (await room.done<{ hits: { title: string }[] }>('search.find', { text })).hits.map(({ title }) => title)
    expect(await found('thordur')).toEqual(['Þórður Bjørnson'])
    expect(await found('bjorn thord')).toEqual(['Þórður Bjørnson'])
    expect(await found('THEODORA')).toEqual(['Theodora Bourne'])
    expect(await found('theodora "OR" thordur')).toEqual([])
  })
})
