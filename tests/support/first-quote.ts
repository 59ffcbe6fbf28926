import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** From the first start by the sample workroom to its first quote, as a maker looks round. */
export async function lookAtFirstQuote(page: Page): Promise<void> {
  await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
  await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
  await page.locator('.bill').waitFor()
  await page.getByRole('link', { name: 'Quotes', exact: true }).click()
  const entry = page.locator('a.entry').first()
  const name = /Q-\d{4}-\d+/.exec((await entry.textContent()) ?? '')?.[0]
  expect(name).toBeDefined()
  await entry.click()
  await page.getByRole('heading', { level: 1, name: name! }).waitFor()
  expect(await page.locator('main').textContent()).toMatch(/£\d/)
}
