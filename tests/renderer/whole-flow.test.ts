import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

/** Measures as a maker with an inch tape writes them. */
const INCHES: Record<string, string> = {
  stature: '65',
  'cervical height': '55 1/2',
  'head girth': '22 1/8',
  'neck base girth': '15',
  'shoulder length': '4 3/4',
  'bust girth': '37½',
  'waist girth': '30 3/4',
  'hip girth': '40',
  'arm length': '22 5/8',
  'upper arm girth': '11 5/8',
  'elbow girth': '10 3/8',
  'forearm girth': '9 3/4',
  'hand girth': '7 3/8',
  'waist height': '40',
  'hip height': '34',
  'inside leg height': '30',
  'knee height': '18',
  'calf girth': '14 1/4',
}

/** Goes from field to field with the Tab key until `wanted` says that the right one has the focus. */
async function tabTo(page: Page, wanted: string | RegExp): Promise<void> {
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press('Tab')
    const name = await page.evaluate(() => {
      const focused = document.activeElement as HTMLElement | null
      const label = focused?.id === '' ? null : document.querySelector(`label[for="${focused?.id}"]`)
      const own = focused?.closest('label')
      const words = (label ?? own ?? focused)?.cloneNode(true) as HTMLElement | undefined
      // The key that does the same stands beside the words.
      for (const key of words?.querySelectorAll('.key') ?? []) key.remove()
      return (words?.textContent ?? '').trim()
    })
    if (typeof wanted === 'string' ? name === wanted : wanted.test(name)) return
  }
  throw new Error(`the Tab key never reaches ${wanted}`)
}

describe.runIf(hasBrowser)(`the whole job by keyboard alone${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('new client, measures in inches, tunic, quote, commission, ticks, and all of it after a restart', async () => {
    const folder = scratch()
    const first = await openPlanner(browser(), folder)
    const { page } = first
    const press = async (wanted: string | RegExp) => {
      await tabTo(page, wanted)
      await page.keyboard.press('Enter')
    }
    const type = async (label: string | RegExp, text: string) => {
      await tabTo(page, label)
      await page.keyboard.type(text)
    }

    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    await type('Name of the workroom, as it stands on your quotes', 'Ropewalk Sewing')
    await press('Begin')
    await page.getByRole('heading', { name: 'Quote desk' }).waitFor()

    await press('Enter a client')
    await type('New client', 'Łucja Wiatr')
    await press('Enter in the book')
    await page.getByRole('heading', { name: 'First measures' }).waitFor()
    await tabTo(page, 'Unit of the tape')
    await page.keyboard.type('inches')
    for (const [measure, inches] of Object.entries(INCHES)) {
      await type(new RegExp(`^${measure}( \\(.*\\))?$`), inches)
    }
    await press('Keep these measures')
    await page.getByText('not used by a quote yet').waitFor()
    await page.locator('dl.measures', { hasText: /bust girth.*95\.3 cm/ }).waitFor()

    await press('Cloth')
    await page.getByRole('heading', { name: 'A cloth to buy' }).waitFor()
    await type('Name', 'White linen')
    await type('Width as sold, cm', '150 cm')
    await type(/^Price of a metre, [A-Z]{3}$/, '16.50')
    await press('Keep this cloth')
    await page.getByText('150 cm wide').waitFor()

    await press('Quote desk')
    const bill = page.locator('.bill')
    await bill.waitFor()
    const before = await bill.textContent()
    await tabTo(page, 'Hem level')
    await page.keyboard.type('ankle')
    await type('Ease at the chest', '5 1/2 in')
    await tabTo(page, 'Gores')
    await page.keyboard.type('6')
    await page.getByText('centre gore × 2', { exact: true }).waitFor()
    await page.waitForFunction((text) => document.querySelector('.bill')?.textContent !== text, before)
    await page.locator('.desk-results[aria-busy="false"]').waitFor()
    await press('Save as a quote')
    await page.getByRole('heading', { name: /^Quote Q-\d{4}-001 for Łucja Wiatr$/ }).waitFor()

    const paper = page.context().waitForEvent('page')
    await press('Print the quote')
    await (await paper).close()
    await press('The client accepts')
    await page.getByRole('heading', { name: /^Commission C-\d{4}-001 for Łucja Wiatr$/ }).waitFor()
    const order = page.context().waitForEvent('page')
    await press('Work order')
    await (await order).close()
    const ticked = (name: string) =>
      page.getByRole('checkbox', { name: new RegExp(name) }).and(page.locator(':checked'))
    const tick = async (name: string) => {
      await tabTo(page, new RegExp(name))
      await page.keyboard.press('Space')
    }
    await tick('Wash and press the cloth')
    await ticked('Wash and press the cloth').waitFor()
    await tick('Lay out, chalk and cut')
    await page.getByText('nobody has measured what is left of it').waitFor()
    await press('Cut all the same')
    await ticked('Lay out, chalk and cut').waitFor()
    for (const stage of ['Sew: all of it', 'Hem: all of it']) {
      await tick(stage)
      await ticked(stage).waitFor()
    }
    await first.page.waitForTimeout(50)
    expect(first.errors).toEqual([])
    await first.close()

    const again = await openPlanner(browser(), folder)
    await again.page.getByRole('link', { name: 'Commissions' }).click()
    const row = again.page.getByRole('row', { name: /Łucja Wiatr/ })
    await row.waitFor()
    expect(await row.getByText('✓ done').count()).toBe(3)
    await again.page.getByRole('link', { name: 'Quotes' }).click()
    await again.page.getByText('accepted').waitFor()
    expect(again.errors).toEqual([])
    await again.close()
  }, 120_000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so the screens were not tried', () => {})
