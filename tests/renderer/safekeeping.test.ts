import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { granted } from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`safekeeping on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('a copy is made, held against the book, gone back to, and that undone', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    await granted(planner, 'settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane' } } })
    await granted(planner, 'client.add', { name: 'Łucja Ōrme' })
    await page.reload()
    const toSafekeeping = async () => {
      await page.getByRole('link', { name: 'Workroom', exact: true }).click()
      await page.getByRole('heading', { name: 'Safekeeping' }).waitFor()
    }
    const clients = async () =>
      (await granted<{ clients: { name: string }[] }>(planner, 'clients.list')).clients.map(
        ({ name }) => name,
      )
    await toSafekeeping()
    // None yet, or the one of opening it, where that took its time.
    await page.getByText('There is no copy yet').or(page.getByText('when it was opened')).first().waitFor()
    await page.getByRole('button', { name: 'Make a copy now' }).click()
    await page.getByText('A copy was made and checked.').waitFor()
    await granted(planner, 'client.add', { name: 'Ib Falk' })

    const asked = page.locator('li', { hasText: 'asked for' })
    await asked.getByRole('button', { name: /^Go back to the copy of/ }).click()
    const form = page.getByRole('form', { name: /^Go back to the copy of/ })
    await form.getByRole('row', { name: 'clients 2 1 1 0' }).waitFor()
    await form.getByRole('button', { name: 'Go back to this copy' }).click()
    await expect.poll(clients).toEqual(['Łucja Ōrme'])

    await page.reload()
    await toSafekeeping()
    const before = page.locator('li', { hasText: 'before going back to another' })
    await before.getByRole('button', { name: /^Go back to the copy of/ }).click()
    await before.getByRole('row', { name: 'clients 1 2 0 1' }).waitFor()
    await before.getByRole('button', { name: 'Go back to this copy' }).click()
    await expect.poll(clients).toEqual(['Ib Falk', 'Łucja Ōrme'])
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
