import { describe, expect, test } from 'vitest'
import { startGuide } from '../../core/paper/start-guide.ts'
import { DEFAULT_SETTINGS } from '../../core/workroom/default-settings.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch, workroom } from '../support/store.ts'

describe.runIf(hasBrowser)(`the first hour${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('shows the way to a first quote, step by step, until it is saved', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByLabel('Name of the workroom, as it stands on your quotes').fill('Ropewalk')
    await page.getByRole('button', { name: 'Begin' }).click()
    const way = page.locator('.first-steps')
    await way.getByText('✓ done').waitFor()
    const paper = page.context().waitForEvent('page')
    await page.getByRole('button', { name: 'Print “The first hour”' }).click()
    await (await paper).close()
    const next = async (words: string) => {
      await page.evaluate(() => {
        location.hash = '#/today'
      })
      await way.locator('.main', { hasText: words }).click()
    }
    await next('Enter a client')
    await page.getByLabel('New client').fill('Maud')
    await page.getByRole('button', { name: 'Enter in the book' }).click()
    await page.getByRole('heading', { name: 'First measures' }).waitFor()
    await next('Take her measures')
    await page.getByRole('heading', { name: 'First measures' }).waitFor()
    await page.getByLabel('bust girth').first().fill('95')
    await page.getByRole('button', { name: 'Keep these measures' }).click()
    await page.getByText('not used by a quote yet').waitFor()
    await next('Enter a cloth')
    await page.getByRole('heading', { name: 'A cloth to buy' }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)
})

test('the page for it is one page, on A4 and on Letter, and is kept among the papers', async () => {
  for (const paper of ['A4', 'Letter'] as const)
    expect(startGuide({ ...DEFAULT_SETTINGS.letterhead, paper }).pages).toHaveLength(1)
  const { done } = workroom()
  type Printed = { document: { kind: string; pages: number; bytes: number } }
  const { document } = await done<Printed>('startGuide.print')
  expect(document).toMatchObject({ kind: 'startGuide', pages: 1 })
  expect(document.bytes).toBeGreaterThan(5000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so the first hour was not tried', () => {})
