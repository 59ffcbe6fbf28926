import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { backUp } from '../../core/store/safekeeping/make.ts'
import { openStore } from '../../core/workroom.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooWide } from '../support/screen-checks.ts'
import { NOON, scratch, workroom } from '../support/store.ts'

/** A workroom of two clients, one of whom came after the copy; then an entry of its history is spoilt. */
async function damaged(): Promise<string> {
  const folder = scratch()
  const file = join(folder, 'workroom.ellwand')
  const store = openStore(file, { now: NOON })
  const { done } = workroom(store)
  await done('settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane' } } })
  await done('client.add', { name: 'Łucja Ōrme' })
  await backUp(store, 'hourly', NOON)
  await done('client.add', { name: 'Ib Falk' })
  store.close()
  const bytes = readFileSync(file)
  bytes[bytes.indexOf('"name":"Ib Falk"')] = 1
  writeFileSync(file, bytes)
  return folder
}

const opened = async (browser: Browser, folder: string) => {
  const planner = await openPlanner(browser, folder)
  const clients = async () => {
    const answered = await planner.store.ask('clients.list', {})
    if (!answered.ok) throw new Error(answered.error.message)
    return (answered.result as { clients: { name: string }[] }).clients.map(({ name }) => name)
  }
  return { planner, clients }
}

describe.runIf(hasBrowser)(`a damaged book on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is said to be damaged, can be looked at and not changed, and is gone on with', async () => {
    const folder = await damaged()
    const { planner, clients } = await opened(browser(), folder)
    const { page } = planner
    await page.getByRole('heading', { name: 'The book is damaged' }).waitFor()
    await page.getByRole('row', { name: 'clients 2 0' }).waitFor()
    await page.getByRole('row', { name: 'history 2 1' }).waitFor()
    await page.getByRole('row', { name: 'clients 2 1 1 0' }).waitFor()
    expect(await axeFaults(page)).toEqual([])
    expect(await tooWide(page)).toBe(0)

    await page.getByRole('button', { name: 'Look at what was saved' }).click()
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByText('Ib Falk').first().waitFor()
    expect(await planner.store.ask('client.add', { name: 'Ada' })).toMatchObject({ ok: false })
    await page.getByRole('button', { name: 'Back to the choice' }).click()

    await page.getByRole('button', { name: 'Go on with what was saved' }).click()
    await page.getByRole('heading', { name: 'The book is damaged' }).waitFor({ state: 'detached' })
    expect(await clients()).toEqual(['Ib Falk', 'Łucja Ōrme'])
    expect(readdirSync(folder).filter((name) => /-damaged-.*\.ellwand$/.test(name)).length).toBe(1)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('that is gone comes back from its copy', async () => {
    const folder = await damaged()
    rmSync(join(folder, 'workroom.ellwand'))
    const { planner, clients } = await opened(browser(), folder)
    const { page } = planner
    await page.getByRole('heading', { name: 'The book is missing' }).waitFor()
    await page.getByRole('button', { name: 'Go back to this copy' }).click()
    await page.getByRole('heading', { name: 'The book is missing' }).waitFor({ state: 'detached' })
    expect(await clients()).toEqual(['Łucja Ōrme'])
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
