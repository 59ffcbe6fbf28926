import { expect, test } from 'vitest'
import type { StoreHost } from '../../electron/store-host.ts'
import { following, tellHere } from '../../electron/tongue.ts'

test('the shell follows the language of the workroom that is entered and its settings', async () => {
  const workrooms = {
    own: { locale: 'de-DE', revision: 3 },
    sample: { locale: 'en-GB', revision: 1 },
  }
  let here = workrooms.own
  const asked: string[] = []
  const store = {
    enter: async (which: 'own' | 'sample') => {
      here = workrooms[which]
      return { ok: true, result: {} }
    },
    ask: async (name: string) => {
      asked.push(name)
      if (name === 'settings.set') here.locale = 'en-AT'
      const { locale, revision } = here
      return { ok: true, result: { settings: { letterhead: { locale, unit: 'cm' } }, revision } }
    },
  } as unknown as StoreHost
  let changes = 0
  const followed = following(store, () => changes++)
  await followed.enter('own')
  expect(tellHere('shell.menu.file')).toBe('Datei')
  await followed.enter('sample')
  expect(tellHere('shell.menu.file')).toBe('File')
  await followed.enter('own')
  await followed.ask('settings.set', {})
  expect(tellHere('shell.menu.file')).toBe('File')
  expect(changes).toBe(4)
  asked.length = 0
  await followed.ask('client.list', {})
  expect(asked).toEqual(['client.list'])
})
