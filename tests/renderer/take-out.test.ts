import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { chooseFile, hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { granted } from '../support/undertunic.ts'

const EVIL = '<img src=x onerror=alert(1)>Łucja'

describe.runIf(hasBrowser)(`a workroom taken along, on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is handed over as a file, brought along into a new one, and its lists saved as tables', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    await granted(planner, 'settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane' } } })
    await granted(planner, 'client.add', { name: EVIL, note: '=1+1' })
    await page.reload()
    await page.getByRole('link', { name: 'Workroom', exact: true }).click()
    const section = page.locator('section', { has: page.getByRole('heading', { name: 'Take it with you' }) })

    await section.getByLabel('List').selectOption({ label: 'Clients' })
    const [list] = await Promise.all([
      page.waitForEvent('download'),
      section.getByRole('button', { name: 'Save the list' }).click(),
    ])
    expect(list.suggestedFilename()).toBe('ellwand-clients.csv')
    expect(readFileSync(await list.path(), 'utf8')).toContain(`\r\n${EVIL},,,,,'=1+1,\r\n`)

    const archive = join(scratch(), 'taken.zip')
    const [taken] = await Promise.all([
      page.waitForEvent('download'),
      section.getByRole('button', { name: 'Take everything along' }).click(),
    ])
    await taken.saveAs(archive)
    await section.getByText(/^The file lies at .+\.zip\./).waitFor()
    expect(readFileSync(archive).subarray(0, 2).toString()).toBe('PK')
    await planner.close()

    const other = await openPlanner(browser(), scratch())
    const choose = (path: string) => chooseFile(other.page, 'Choose the file', path)
    await choose(join(import.meta.dirname, 'take-out.test.ts'))
    await other.page.getByText('That file is no workroom that was taken along.').waitFor()
    await choose(archive)
    await other.page.getByRole('link', { name: 'Clients', exact: true }).click()
    await other.page.getByText(EVIL).first().waitFor()
    expect(await other.page.locator('img[src="x"]').count()).toBe(0)
    expect(other.errors).toEqual([])
    expect(planner.errors).toEqual([])
    await other.close()
  })
})
