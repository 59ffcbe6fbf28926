import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheCloths } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

type Cloth = { supplier: string; leadDays: number; warpShrinkage: number; width: number; selvedge: number }

describe.runIf(hasBrowser)(`the store room on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('a cloth gets its supplier, and a test square its shrinkage', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { cloth: id } = await openUncut(planner)
    const kept = async () => (await granted<{ cloth: Cloth }>(planner, 'cloth.get', { id })).cloth
    await toTheCloths(page)
    await page.getByRole('button', { name: 'Change it: White linen' }).click()
    const change = page.getByRole('form', { name: 'Change it: White linen' })
    await change.getByLabel('From whom').fill('Weir Mill')
    await change.getByLabel('Days until it comes').fill('soon')
    await change.getByRole('button', { name: 'Keep the change' }).click()
    await change.locator('.wrong').waitFor()
    await change.getByLabel('Days until it comes').fill('10')
    await change.getByRole('button', { name: 'Keep the change' }).click()
    await page
      .getByText('150 cm wide; shrinks 5 % × 3 %; sold by 10 cm · from Weir Mill within 10 days')
      .waitFor()
    expect(await kept()).toMatchObject({ supplier: 'Weir Mill', leadDays: 10, width: 1500, selvedge: 0 })
    await page.getByRole('button', { name: 'Change it: White linen' }).click()
    await change.getByLabel('Selvedge at each side, cm').fill('1')
    await change.getByRole('button', { name: 'Keep the change' }).click()
    await expect.poll(async () => (await kept()).selvedge).toBe(10)
    await page.getByRole('button', { name: 'Change it: White linen' }).click()
    await change.getByLabel('Selvedge at each side, cm').fill('80')
    await change.getByRole('button', { name: 'Keep the change' }).click()
    await change
      .locator('.wrong')
      .getByText(/^The selvedges cannot take up/)
      .waitFor()
    await change.getByLabel('Selvedge at each side, cm').fill('0')
    await change.getByRole('button', { name: 'Keep the change' }).click()
    await expect.poll(async () => (await kept()).selvedge).toBe(0)

    await page.getByRole('button', { name: 'Test square: White linen' }).click()
    const square = page.getByRole('form', { name: 'Test square: White linen' })
    const marks = (name: string) => square.getByRole('group', { name, exact: true })
    const measure = async (name: string, before: string, after: string) => {
      await marks(name).getByLabel('Before the wash').fill(before)
      await marks(name).getByLabel('After the wash').fill(after)
    }
    await measure('Along the selvedge, marks 1', '40', '38')
    await square.getByRole('button', { name: 'Reckon the shrinkage' }).click()
    await square.getByText(/^The test square has no marks across the cloth/).waitFor()
    await measure('From selvedge to selvedge, marks 1', '40', '39')
    await square.getByRole('button', { name: 'Reckon the shrinkage' }).click()
    await square.getByText('It shrinks 5 % in length and 2.5 % in width.').waitFor()
    // A second pair changes the average, so what was reckoned before is not kept.
    await square.getByRole('button', { name: 'More marks' }).click()
    await measure('Along the selvedge, marks 2', '40', '37')
    await square.getByRole('button', { name: 'Reckon the shrinkage' }).click()
    await square.getByText('It shrinks 6.25 % in length and 2.5 % in width.').waitFor()
    expect((await kept()).warpShrinkage).toBe(0.05)
    await square.getByRole('button', { name: 'Keep it as this cloth’s shrinkage' }).click()
    await page
      .getByText('150 cm wide; shrinks 6.25 % × 2.5 %; sold by 10 cm · from Weir Mill within 10 days')
      .waitFor()
    expect((await kept()).warpShrinkage).toBeCloseTo(0.0625, 12)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('what agreed work lacks is listed, ordered once, and put into the drawer', async () => {
    const options = {
      viewport: { width: 900, height: 800 },
      permissions: ['clipboard-read', 'clipboard-write'],
    }
    const planner = await openPlanner(browser(), scratch(), options)
    const { page } = planner
    await openUncut(planner)
    await toTheCloths(page)
    await page.getByRole('link', { name: 'Shopping list' }).click()
    const lines = page.locator('main .entries > li')
    const linen = lines.filter({ hasText: 'White linen' })
    await linen.getByText(/^[\d.]+ cm for gored undertunic for Ása Holt/).waitFor()
    const toBuy = await linen.locator('strong').nth(1).textContent()
    await page.getByRole('button', { name: 'Copy as text' }).click()
    await page.getByText(/^The list is copied/).waitFor()
    const text = await page.evaluate(() => navigator.clipboard.readText())
    expect(text).toContain(`White linen: ${toBuy}`)
    expect(text).not.toContain('Ása')

    await page.getByRole('button', { name: /^I have ordered it: .*White linen$/ }).click()
    expect(await linen.getByLabel('How much of it').inputValue()).toBe(toBuy)
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await linen.getByRole('button', { name: 'It is ordered' }).click()
    await linen.waitFor({ state: 'detached' })

    const thread = lines.filter({ hasText: 'linen thread' })
    await thread.getByRole('button', { name: /^I have it/ }).click()
    await thread.getByRole('button', { name: 'Into the drawer' }).click()
    await thread.waitFor({ state: 'detached' })
    await page.getByRole('link', { name: 'Cloths and lengths' }).click()
    const row = page.locator('.life > li')
    await row.getByText(/^[\d.]+ cm set aside for gored undertunic for Ása Holt/).waitFor()
    await row.getByText(/expected on/).waitFor()
    const drawer = page.locator('.drawer > li')
    await drawer.filter({ hasText: 'linen thread' }).getByText('100 m left').waitFor()
    const tape = drawer.filter({ hasText: 'tape' })
    await tape.getByRole('button', { name: /^Count it/ }).click()
    await tape.getByLabel('Length of it').fill('5 m')
    await tape.getByRole('button', { name: 'Keep the count' }).click()
    await tape.getByText('500 cm left').waitFor()
    await tape.getByRole('button', { name: /^Count it/ }).click()
    await tape.getByLabel('Length of it').fill('0')
    await tape.getByRole('button', { name: 'Keep the count' }).click()
    await tape.getByText('none left').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
