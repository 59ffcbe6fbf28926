import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

const pounds = (text: string): number => Math.round(100 * Number(text.replace(/[^\d.-]/g, '')))

describe.runIf(hasBrowser)(`what it came to${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('opens on the month of the last delivery, names what was badly paid, and leads to what would mend it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    const open = () =>
      page.evaluate(() => {
        location.hash = '#/commissions/accounts'
      })
    await open()
    const sheet = (title: string) =>
      page.locator('.sheet', { has: page.getByRole('heading', { level: 2, name: title }) })
    await sheet('By commission').getByText('overtunic for Þórður Underhill').waitFor()
    expect(await sheet('By commission').getByRole('link').count()).toBe(1)

    await page.getByRole('button', { name: 'Show all the time there is' }).click()
    await page.locator('p', { hasText: 'On the table:' }).getByRole('link', { name: /^C-/ }).waitFor()
    const bad = page.locator('table.bad')
    await bad.getByText('circle cloak for Łucja Orme, paid by Ἑλένη Marsh').waitFor()
    const cells = await bad.locator('tbody tr').first().locator('td').allInnerTexts()
    const [asked, reckoned, floor, , , earned] = cells
    expect(pounds(asked!)).toBe(29_000)
    const under = ((pounds(floor!) - pounds(asked!)) / 100).toFixed(2)
    const off = ((pounds(reckoned!) - pounds(asked!)) / 100).toFixed(2)
    await bad.getByText(`£${under} below the floor, because £${off} less was asked`).waitFor()
    expect(pounds(earned!)).toBeLessThan(1400)

    // No table here or in the account has more columns than can be taken in.
    const widest = () =>
      page
        .locator('main table thead tr')
        .evaluateAll((rows) => Math.max(...rows.map((row) => row.children.length)))
    expect(await widest()).toBeLessThanOrEqual(7)

    await page.getByRole('link', { name: 'Change the cloth bought on top' }).click()
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('name')))
      .toBe('clothMargin')
    await page.goBack()
    await bad.getByRole('link', { name: 'See the quote' }).click()
    await page.getByRole('heading', { level: 1, name: /^Quote Q-/ }).waitFor()
    await page.goBack()
    await bad.getByRole('link', { name: /^C-/ }).click()
    await page
      .getByRole('heading', { level: 1, name: /^Commission C-.* for Łucja Orme, paid by Ἑλένη Marsh$/ })
      .waitFor()

    // The lines of the account add up to what is left, as it was quoted and as it came out.
    const account = page.locator('table.account').first()
    await account.waitFor()
    const rows = await account
      .locator('tbody tr')
      .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent ?? '')))
    const left = rows.findIndex(([name]) => name === 'Left for you')
    expect(left).toBeGreaterThan(3)
    for (const column of [1, 2]) {
      const spent = rows.slice(1, left).reduce((sum, row) => sum + pounds(row[column]!), 0)
      expect(pounds(rows[0]![column]!) - spent).toBe(pounds(rows[left]![column]!))
    }
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)

  test('stands beside the books, which name what was handed over and has no invoice, and lead to making it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    await page.evaluate(() => {
      location.hash = '#/commissions'
    })
    await page
      .getByRole('row', { name: /circle cloak for Łucja Orme/ })
      .getByRole('link')
      .click()
    await page
      .getByRole('button', { name: /^Cancel/ })
      .first()
      .click()
    await page.getByLabel('Why it is cancelled').fill('Wrong name')
    await page.getByRole('button', { name: 'Cancel the invoice' }).click()
    await page.getByText(/cancelled by I-/).waitFor()
    await page.getByRole('link', { name: 'Books' }).click()
    await page.getByRole('heading', { level: 2, name: 'Handed over, no invoice yet' }).waitFor()
    await page.getByRole('cell', { name: 'circle cloak for Łucja Orme, paid by Ἑλένη Marsh' }).waitFor()
    await page.getByRole('link', { name: /^Make the invoice of C-/ }).click()
    await page.getByRole('button', { name: 'Make it', exact: true }).click()
    await page.getByText(/^Invoice I-.* is made\./).waitFor()
    await page.getByRole('link', { name: 'Books' }).click()
    await page.getByRole('heading', { level: 1, name: 'Books' }).waitFor()
    await page.locator('table.books').waitFor()
    expect(await page.getByText('Handed over, no invoice yet').count()).toBe(0)
    expect(await page.locator('table.books thead th').count()).toBeLessThanOrEqual(7)
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so the screen was not tried', () => {})
