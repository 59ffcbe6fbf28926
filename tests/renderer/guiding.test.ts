import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooWide } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { granted } from '../support/undertunic.ts'

const to = (page: Page, place: string) =>
  page.evaluate((hash) => {
    location.hash = hash
  }, `#/${place}`)

describe.runIf(hasBrowser)(`a workroom on its first day${withoutBrowser}`, () => {
  const browser = usingBrowser()
  const begun = async () => {
    const planner = await openPlanner(browser(), scratch(), { viewport: { width: 900, height: 800 } })
    const { page } = planner
    await page.getByText('Money in British pounds, lengths in centimetres, prints on A4;').waitFor()
    await page.getByLabel('Name of the workroom, as it stands on your quotes').fill('Ropewalk')
    await page.getByRole('button', { name: 'Begin' }).click()
    await page.locator('.first-steps').waitFor()
    return planner
  }

  test('is told at the price what is not her own yet, led to where it is set, and told no more once it is', async () => {
    const planner = await begun()
    const { page } = planner
    // Nobody undoes the name she has just given.
    expect(await page.getByRole('button', { name: /^Undo/ }).count()).toBe(0)
    const { client } = await granted<{ client: { id: string } }>(planner, 'client.add', { name: 'Maud' })
    await granted(planner, 'measurementSet.add', { clientId: client.id, measures: WOMAN })
    await to(page, 'cloths')
    for (const [label, text] of [
      ['Width as sold, cm', '150'],
      ['Price of a metre, GBP', '16.50'],
    ] as const)
      await page.getByLabel(label).fill(text)
    await page.getByLabel('Name', { exact: true }).fill('Grey twill')
    await page.getByRole('button', { name: 'Keep this cloth' }).click()
    await page.getByRole('status').getByText('Grey twill is in the book.').waitFor()
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole('link', { name: 'Quote with it' }).click()
    await page.locator('.bill').waitFor()
    const rates = page.getByText('The price is made of hourly rates that are still starting figures.')
    const address = page.getByText('Your address is not set, so it will not be on the quote.')
    await address.waitFor()
    expect(await axeFaults(page)).toEqual([])
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    await rates.getByRole('link').click()
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('settings-money')
    // What an hour is to earn makes no price; the rates do.
    await page.locator('input[name="target"]').fill('17')
    await page.locator('input[name="handSewing"]').fill('17')
    await page.getByLabel('Address, parts divided by commas').fill('Ropewalk 2, Harrowby')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await page.getByRole('button', { name: /^Undo the last change: settings kept/ }).waitFor()
    await to(page, 'desk')
    await page.locator('.bill').waitFor()
    await page.getByText(/less than the £17\.00|to be £17\.00 or more/).waitFor()
    await rates.waitFor({ state: 'detached' })
    expect(await address.count()).toBe(0)
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)

  test('teaches in every empty place what fills it, and leads there', async () => {
    const planner = await begun()
    const { page } = planner
    for (const [place, go, lead] of [
      ['quotes', 'To the quote desk', 'desk'],
      ['commissions', 'To the quotes', 'quotes'],
      ['commissions/plan', 'To the quotes', 'quotes'],
      ['cloths/shopping', 'To the commissions', 'commissions'],
    ] as const) {
      await to(page, place)
      await page.locator('main').getByRole('link', { name: go }).click()
      await expect.poll(() => new URL(page.url()).hash).toBe(`#/${lead}`)
    }
    await to(page, 'cloths')
    await page.getByText(/^No cloth is in the book yet\./).waitFor()
    await planner.close()
  }, 60_000)

  test('looks round the sample and comes back to what was half filled at home', async () => {
    const planner = await begun()
    const { page } = planner
    await to(page, 'clients')
    await page.getByLabel('New client').fill('Maud')
    await to(page, 'workroom')
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    await to(page, 'clients')
    await page.getByText('Þórunn Vale').waitFor()
    expect(await page.getByLabel('New client').inputValue()).toBe('')
    await page.getByRole('button', { name: 'Leave the sample' }).click()
    await page.locator('.head', { hasText: 'Ropewalk' }).waitFor()
    await to(page, 'clients')
    await page.getByText('Nobody is in the book yet.').waitFor()
    expect(await page.getByLabel('New client').inputValue()).toBe('Maud')
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)

  test.each([900, 1000])(
    'has a head of two lines in a window %i wide, in the sample too',
    async (width) => {
      const planner = await openPlanner(browser(), scratch(), { viewport: { width, height: 800 } })
      const { page } = planner
      await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
      await page.locator('.bill').waitFor()
      await to(page, 'commissions')
      await page.locator('.at-a-glance:not(.bygone)').getByRole('link', { name: /^C-/ }).first().click()
      await page.locator('.tick', { hasText: 'Press the seams' }).click()
      await page.getByRole('button', { name: /^Undo the last change: step ticked/ }).waitFor()
      // Everything in it is 44 high: what is lower than two of them is one line.
      for (const line of ['.head', '.strip'])
        expect((await page.locator(line).boundingBox())!.height, line).toBeLessThan(2 * 44)
      await planner.close()
    },
    60_000,
  )
})

test.skipIf(hasBrowser)('there is no Chromium here, so the first day was not tried', () => {})
