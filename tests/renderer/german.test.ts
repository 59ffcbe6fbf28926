import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'

describe.skipIf(!hasBrowser)(`the planner in German${withoutBrowser}`, () => {
  const browser = usingBrowser()
  let folder: string
  let planner: Planner
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'german-'))
    planner = await openPlanner(browser(), folder, { locale: 'de-AT' })
  })
  afterAll(async () => {
    await planner?.close()
    rmSync(folder, { recursive: true, force: true })
  })

  test('greets a machine that speaks it, and begins in its money', async () => {
    const { page } = planner
    await page.getByRole('heading', { name: 'Eine neue Werkstatt' }).waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('de-AT')
    await page.getByLabel('Sprache').selectOption('English')
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    await page.getByLabel('Language').selectOption('Deutsch')
    await page.getByLabel('Name der Werkstatt').fill('Nadelöhr')
    await page.getByRole('button', { name: 'Anfangen' }).click()
    await page.getByRole('link', { name: 'Werkstatt', exact: true }).click()
    expect(await page.getByLabel('Währung').inputValue()).toBe('EUR')
    expect(await page.getByLabel('Eine Stunde Zuschneiden').inputValue()).toBe('18,00')
    expect(await page.getByLabel('Bedingungen').inputValue()).toContain('eine Anprobe ist inbegriffen')
  })

  test('takes amounts and days as they are written there, and says what it cannot read', async () => {
    const { page } = planner
    const hour = page.getByLabel('Eine Stunde Zuschneiden')
    await hour.fill('1.234')
    await page.getByRole('button', { name: 'Diese Einstellungen behalten' }).click()
    await page.getByText('Hier lässt sich keine Zahl lesen.').first().waitFor()
    await hour.fill('19,5')
    await page.getByRole('button', { name: 'Diese Einstellungen behalten' }).click()
    await expect.poll(() => page.getByLabel('Eine Stunde Zuschneiden').inputValue()).toBe('19,50')
    const first = page.getByLabel('Erster freier Tag')
    await first.fill('32.12.2026')
    await first.blur()
    await page.getByText('„32.12.2026“ lässt sich nicht als Tag lesen. So schreiben: 25.11.2026.').waitFor()
    await first.fill('3.12.26')
    await first.blur()
    expect(await first.inputValue()).toBe('03.12.2026')
    await page.getByRole('button', { name: 'Freie Tage aufschreiben' }).click()
    await page.getByText('3. Dezember 2026').first().waitFor()
  })

  test('changes its language and its html with the settings', async () => {
    const { page, errors } = planner
    await page.getByLabel('Sprache').selectOption('English')
    await page.getByRole('button', { name: 'Diese Einstellungen behalten' }).click()
    await page.getByRole('heading', { name: 'Workroom', exact: true }).waitFor()
    await expect.poll(() => page.locator('html').getAttribute('lang')).toBe('en-AT')
    expect(await page.getByLabel(/^Terms under every quote/).inputValue()).toContain(
      'one fitting is included',
    )

    // A look at the other language costs neither the region nor the terms.
    await page.getByLabel('Written as in').selectOption('United Kingdom')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await expect.poll(() => page.locator('html').getAttribute('lang')).toBe('en-GB')
    await page.getByLabel('Language').selectOption('Deutsch')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await page.getByRole('status').getByText('✓ Behalten.').waitFor()
    await page.getByLabel('Sprache').selectOption('English')
    await page.getByRole('button', { name: 'Diese Einstellungen behalten' }).click()
    await expect.poll(() => page.locator('html').getAttribute('lang')).toBe('en-GB')
    expect(errors).toEqual([])
  })
})
