import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { screensAreSound } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'

/** Goes through every screen of the sample workroom. */
async function tour(page: Page, look: (screen: string) => Promise<void>): Promise<void> {
  await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
  await look('first start')
  await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
  await page.locator('.bill').waitFor()
  await look('quote desk')
  for (const summary of await page.locator('summary').all()) await summary.click()
  await look('quote desk, opened')
  await page.getByRole('link', { name: 'Draft a garment of your own' }).click()
  await page.getByRole('button', { name: 'Add a piece' }).click()
  await page.locator('.own-edges figure').first().waitFor()
  await look('a garment of her own')
  const rooms = [
    ['Clients', 'a.entry', 'client'],
    ['Cloth', '', ''],
    ['Commissions', 'tbody a', 'commission'],
    ['Quotes', 'a.entry', 'quote'],
    ['Workroom', '', ''],
  ] as const
  for (const [room, entry, one] of rooms) {
    await page.getByRole('link', { name: room, exact: true }).click()
    await page.getByRole('heading', { name: room, level: 1 }).waitFor()
    if (entry === '') {
      await page.getByText(room === 'Cloth' ? 'White linen' : 'On your papers').waitFor()
      await look(room)
      continue
    }
    await page.locator(entry).first().waitFor()
    await look(room)
    await page.locator(entry).first().click()
    await page.locator('.sheet h2').first().waitFor()
    await look(one)
  }
  for (const [address, heading] of [
    ['#/workroom/times', 'Your times'],
    ['#/commissions/accounts', 'What it came to'],
  ] as const) {
    await page.evaluate((hash) => {
      location.hash = hash
    }, address)
    await page.getByRole('heading', { name: heading, level: 1 }).waitFor()
    for (const summary of await page.locator('summary').all()) await summary.click()
    await look(heading)
  }
}

describe.runIf(hasBrowser)(`the screens${withoutBrowser}`, () => {
  const browser = usingBrowser()

  screensAreSound(browser, ({ page }, look) => tour(page, look))

  test('show at once what does not fit, and what would mend it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    await page.getByLabel('Sweep', { exact: true }).fill('130 cm')
    await page.locator('.misfits, .refusal', { hasText: /more sweep|too narrow/ }).waitFor()
    await page.getByLabel('Sweep', { exact: true }).fill('much')
    await page.locator('.field .wrong', { hasText: 'cannot be read as a length' }).waitFor()
    await page.getByLabel('Sweep', { exact: true }).fill('')
    await page.locator('.wrong').waitFor({ state: 'detached' })
    await planner.close()
  })

  test('keep the workroom’s settings, and reckon by them', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    const before = await page.locator('.bill').textContent()
    await page.getByRole('link', { name: 'Workroom', exact: true }).click()
    await page.getByLabel('An hour of sewing by hand').fill('24,50')
    await page.getByLabel('Name', { exact: true }).fill('Weir Lane')
    await page.getByLabel('hooks and eyes, each').fill('0.35')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await page.locator('.head-name', { hasText: 'Weir Lane' }).waitFor()
    await page.getByLabel('Tax, %').fill('lots')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await page.locator('.refusal').waitFor()
    await page.getByRole('link', { name: 'Quote desk' }).click()
    await page.getByText('at £24.50 an hour').first().waitFor()
    await page.getByLabel('Garment', { exact: true }).selectOption('smock')
    await page.getByText('at £0.35').first().waitFor()
    expect(await page.locator('.bill').textContent()).not.toBe(before)
    await planner.close()
  })

  test('tell a page that was opened without its key how to open it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const other = await browser().newContext()
    const page = await other.newPage()
    await page.goto(`http://127.0.0.1:${planner.server.port}/`)
    await page.getByText('opened without its key').waitFor()
    await other.close()
    await planner.close()
  })

  test('work in a second tab, and the address opens only once', async () => {
    const planner = await openPlanner(browser(), scratch())
    await planner.page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    const second = await planner.page.context().newPage()
    await second.goto(`http://127.0.0.1:${planner.server.port}/`)
    await second.getByRole('heading', { name: 'A new workroom' }).waitFor()
    const stranger = await browser().newContext()
    const page = await stranger.newPage()
    await page.goto(planner.server.address)
    await page.getByText('opened without its key').waitFor()
    await stranger.close()
    await planner.close()
  })
})
