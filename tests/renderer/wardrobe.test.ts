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

  test('are quoted five at once, one lined, and one of the maker’s own that she drafted on the spot', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    const reckoned = () => page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
    await reckoned()
    // An edge in a drawing has no breadth to click on, but the keyboard finds it.
    const pick = async (name: RegExp) => {
      const edge = page.getByRole('button', { name })
      await edge.focus()
      await edge.press('Enter')
    }
    await page.getByRole('link', { name: 'Draft a garment of your own' }).click()
    await page.getByLabel('Name', { exact: true }).fill('Tube of two widths')
    await page.getByRole('button', { name: 'Add a piece' }).click()
    await page.getByLabel('How many').selectOption('2')
    await page.getByText('8 things are still wrong').waitFor()
    for (const [one, other] of [
      [/^the right edge of piece 1 1,/, /^the left edge of piece 1 2,/],
      [/^the left edge of piece 1 1,/, /^the right edge of piece 1 2,/],
    ] as const) {
      await pick(one)
      await pick(other)
      await page.getByRole('button', { name: 'Sew the two together' }).click()
    }
    for (const edge of ['upper', 'lower'])
      for (const copy of [1, 2]) await pick(new RegExp(`^the ${edge} edge of piece 1 ${copy},`))
    await page.getByRole('button', { name: 'Hem what is picked' }).click()
    await page.getByText('Every seam walks').waitFor()
    await page.getByRole('button', { name: 'Keep it and go to the desk' }).click()
    await reckoned()
    await expect.poll(() => page.getByText('piece 1 × 2').count()).toBeGreaterThan(0)
    const garment = page.getByLabel('Garment', { exact: true })
    const put = page.getByRole('button', { name: 'Another garment on this quote' })
    await put.click()
    for (const [id, piece] of [
      ['shift', 'gore × 4'],
      ['hood', 'hood side × 2'],
      ['circleCloak', 'front quarter × 2'],
      ['hose', 'side of the foot × 4'],
    ] as const) {
      await garment.selectOption(id)
      await expect.poll(() => page.getByText(piece).count(), { timeout: 20_000 }).toBeGreaterThan(0)
      if (id === 'hood') {
        await page.getByLabel('Lining', { exact: true }).selectOption('true')
        await page.getByLabel('Cloth of the lining').selectOption({ label: 'White linen, plain weave' })
        await page.getByRole('heading', { name: 'The lay of the lining' }).waitFor()
      }
      await reckoned()
      await put.click()
    }
    // What is on the quote is still there after a look elsewhere.
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByRole('link', { name: 'Quote desk', exact: true }).click()
    await page.getByText('hose for Łucja Orme').waitFor()
    await reckoned()
    await garment.selectOption('overtunic')
    await expect.poll(() => page.getByText('front neck facing').count()).toBeGreaterThan(0)
    await reckoned()
    await page.getByRole('button', { name: 'Save 6 garments as a quote' }).click()
    await page.locator('.sheet h2').first().waitFor()
    const words = await page.locator('main').textContent()
    for (const title of ['Tube of two widths', 'shift', 'hood', 'circle cloak', 'hose', 'overtunic'])
      expect(words).toContain(title)
    expect(words).toContain('The lining of White linen')
    expect(errors).toEqual([])
    await close()
  }, 120_000)
})
