import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

describe.runIf(hasBrowser)(`the garments at the quote desk${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('draw their own forms, are reckoned, and are quoted', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
    const garment = page.getByLabel('Garment', { exact: true })
    const bill = page.locator('.bill')
    const bills = new Set<string | null>()
    for (const [id, choice] of [
      ['petticoat', 'Widths'],
      ['apron', 'Band across the front'],
      ['kerchief', 'Side of the square'],
    ] as const) {
      const before = await bill.textContent()
      await garment.selectOption(id)
      await page.getByLabel(choice, { exact: true }).waitFor()
      await expect.poll(() => bill.textContent()).not.toBe(before)
      bills.add(await bill.textContent())
    }
    expect(bills.size).toBe(3)
    await garment.selectOption('petticoat')
    await page.getByLabel('Widths', { exact: true }).selectOption('4')
    await expect.poll(() => page.getByText('skirt width × 4').count()).toBeGreaterThan(0)
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.locator('.sheet h2').first().waitFor()
    expect(await page.locator('main').textContent()).toContain('of 4 straight widths')
    expect(errors).toEqual([])
    await close()
  }, 60_000)
})
