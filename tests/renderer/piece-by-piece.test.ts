import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'

describe.runIf(hasBrowser)(`cutting on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('the washed cloth is measured, and the garment cut piece by piece', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    await page.locator('summary', { hasText: 'Cut piece by piece: 0 of' }).click()
    const pieces = page.getByRole('group', { name: /^Pieces of gored undertunic/ })
    await pieces.locator('.tick').first().click()
    await page.getByText('nobody has measured what is left of it').waitFor()
    await page.getByRole('button', { name: /^Measure the washed cloth/ }).click()
    const wash = page.getByRole('form', { name: /^Measure the washed cloth/ })
    await wash.getByLabel('Width, washed').fill('145 cm')
    await wash.getByLabel('Length, washed').fill('1 m')
    await wash.getByRole('button', { name: 'Lay it on this cloth' }).click()
    await wash.getByText('The cloth is 100 cm long now, and the lay needs').waitFor()
    await wash.getByLabel('Length, washed').fill('6 m')
    await wash.getByRole('button', { name: 'Lay it on this cloth' }).click()
    await page
      .getByText(
        /^Measured after the wash: 145 cm wide, 600 cm long\. The lay takes .* to spare, after the lay and what is kept beyond its last piece\.$/,
      )
      .waitFor()
    await pieces.locator('.tick').first().click()
    await page.getByText(/^Cut piece by piece: 1 of \d+ cut$/).waitFor()
    await pieces.locator('.tick').first().click()
    await page.getByText(/^Cut piece by piece: 0 of \d+ cut$/).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('a piece is cut all the same when she was warned', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    await page.locator('summary', { hasText: 'Cut piece by piece' }).click()
    await page.locator('.picks .tick').first().click()
    await page.getByRole('button', { name: 'Cut all the same' }).click()
    await page.getByText(/^Cut piece by piece: 1 of/).waitFor()
    await page.locator('.picks .tick').nth(1).click()
    await page.getByText(/^Cut piece by piece: 2 of/).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
