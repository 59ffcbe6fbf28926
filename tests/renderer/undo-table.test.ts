import { expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import { requests } from '../../core/workroom.ts'
import { WAYS } from '../../renderer/undo/acts.ts'
import { ANOTHER_BOOK, FINAL } from '../../renderer/undo/final.ts'

/** Commands by which nothing of the maker's book is altered that she could want back. */
const NOTHING_TO_UNDO = ['file.send', 'quote.waitAgain', 'commission.takeUp', 'person.putBack']

test('every command can be undone, or there is a sentence that says why not', () => {
  const commands = requests.filter(({ kind }) => kind === 'command').map(({ name }) => name)
  expect(commands.length).toBeGreaterThan(70)
  const known = [...Object.keys(WAYS), ...Object.keys(FINAL), ...ANOTHER_BOOK, ...NOTHING_TO_UNDO]
  expect(commands.filter((name) => !known.includes(name))).toEqual([])
})

test('nothing is both', () => {
  expect(Object.keys(WAYS).filter((name) => name in FINAL)).toEqual([])
})

test('what can be undone has a name', () => {
  expect(Object.keys(WAYS).filter((name) => !(`undo.did.${name}` in english))).toEqual([])
})
