import { describe, expect, test } from 'vitest'
import {
  chooseFile,
  hasBrowser,
  openPlanner,
  type Planner,
  usingBrowser,
  withoutBrowser,
} from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'

/** The name of the paper that a button prints. */
async function printed({ page, store }: Planner, button: string): Promise<string> {
  const kept = new Promise<string>((resolve) => {
    const stop = store.listen((event) => {
      if (!('answer' in event) || !event.answer.ok) return
      stop()
      resolve((event.answer.result as { document: { name: string } }).document.name)
    })
  })
  const shown = page.context().waitForEvent('page')
  await page.getByRole('button', { name: button, exact: true }).click()
  await (await shown).close()
  return kept
}

describe.runIf(hasBrowser)(`papers on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('are looked at page by page, and printed from where the work is', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    await page.locator('summary', { hasText: 'More papers' }).click()
    await page.getByLabel('To look at on the screen').selectOption('cuttingSheet')
    await page.getByRole('button', { name: 'Look at it first', exact: true }).click()
    await page.getByRole('img', { name: /^Page 1 of \d$/ }).waitFor()
    await page
      .getByRole('img', { name: /^Page 1 of \d$/ })
      .getByText('Cutting sheet', { exact: true })
      .waitFor()
    await page.getByRole('button', { name: 'Close it' }).click()
    await page.getByRole('img', { name: /^Page 1 of \d$/ }).waitFor({ state: 'detached' })

    await page.getByLabel('Pattern printed on').selectOption('oneSheet')
    const number = /^C-\d{4}-001/
    expect(await printed(planner, 'Cutting sheet')).toMatch(number)
    await page.getByText(/Cutting sheet printed /).waitFor()
    expect(await printed(planner, 'Full-size pattern')).toMatch(/-1-pattern$/)
    expect(await printed(planner, 'How to care for it')).toMatch(/-1-care$/)
    expect(await printed(planner, 'Labels for what is cut')).toMatch(number)
    expect(await printed(planner, 'Write a reminder')).toMatch(/-reminder-/)
    await page.getByRole('button', { name: 'Add a payment' }).click()
    await page.getByRole('button', { name: 'Write it down' }).click()
    expect(await printed(planner, `Print R-${new Date().getFullYear()}-001`)).toMatch(/^R-/)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('bear the mark of the workroom once it has one', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await page.getByRole('link', { name: 'Workroom', exact: true }).click()
    await page.getByText('There is no mark yet.').waitFor()
    const picture = await page.screenshot()
    await chooseFile(page, 'Choose a picture', { name: 'mark.png', mimeType: 'image/png', buffer: picture })
    await page.getByRole('img', { name: 'Your mark' }).waitFor()
    await toTheUncut(page)
    await page.getByRole('link', { name: 'Quotes', exact: true }).click()
    await page.locator('.entry').first().click()
    // The quote was made before there was one.
    await page.getByRole('button', { name: 'Look at it first' }).click()
    await page.getByRole('img', { name: /^Page 1 of \d$/ }).waitFor()
    expect(await page.locator('.shown-pages image').count()).toBe(0)
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
