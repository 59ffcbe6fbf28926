import { describe, expect, test } from 'vitest'
import {
  chooseFile,
  hasBrowser,
  openPlanner,
  type Planner,
  usingBrowser,
  withoutBrowser,
} from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheCloths, toTheUncut } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`lengths of cloth on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('one is bought, promised and cut; one is ordered, arrives, is measured and counted', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { commission } = await openUncut(planner)
    await toTheUncut(page)
    await page.getByText(/^It needs .* of washed cloth, .* buy [0-9.]+ cm\.$/).waitFor()

    await toTheCloths(page)
    await page.getByRole('button', { name: 'Add a length' }).click()
    await page.getByLabel('Length of it').fill('8 m')
    await page.getByLabel('Place', { exact: true }).fill('shelf 2')
    await page.getByRole('button', { name: 'Keep this length' }).click()
    const rows = page.locator('.life > li')
    await rows.getByText('800 cm free').waitFor()
    await page.getByText('All that is in the house is worth £132.00.').waitFor()

    await toTheUncut(page)
    await page.getByText(/^A length of 800 cm, at shelf 2, would serve: it takes/).waitFor()
    await page.getByRole('button', { name: /^Set it aside/ }).click()
    await page.getByText(/^[\d.]+ cm of White linen, at shelf 2, is set aside for it$/).waitFor()
    await page.getByRole('button', { name: /^Let it go/ }).click()
    await page.getByRole('button', { name: /^Set it aside/ }).click()
    await toTheCloths(page)
    await rows.getByText(/^[\d.]+ cm set aside for gored undertunic for Ása Holt \(C-\d{4}-001\)$/).waitFor()
    const { id: garmentId } = commission.garments[0]!
    await granted(planner, 'stage.tick', { garmentId, stage: 'cut', anyway: ['unmeasured'] })
    await toTheUncut(page)
    await page.getByText(/^[\d.]+ cm of White linen was cut for it$/).waitFor()

    await toTheCloths(page)
    await rows.getByText(/^[\d.]+ cm cut for gored undertunic/).waitFor()
    await page.getByRole('button', { name: 'Add a length' }).click()
    await page.getByLabel('Length of it').fill('3 m')
    await page.getByLabel('How it comes').selectOption('ordered')
    await page.getByLabel('Expected on').fill('2027-01-20')
    await page.getByRole('button', { name: 'Keep this length' }).click()
    const ordered = rows.filter({ hasText: '300 cm × 150 cm wide' })
    await ordered.getByText('not washed · expected on 20 January 2027').waitFor()
    await ordered.getByRole('button', { name: /^It has arrived/ }).click()
    await ordered.getByLabel('Place', { exact: true }).fill('chest')
    await ordered.getByRole('button', { name: 'It is here' }).click()
    await ordered.getByText('at chest · not washed', { exact: true }).waitFor()
    await ordered.getByRole('button', { name: /^Measure after the wash/ }).click()
    await ordered.getByLabel('Length, washed').fill('285')
    await ordered.getByLabel('Width, washed').fill('146')
    await ordered.getByRole('button', { name: 'Keep the measures' }).click()
    const washed = rows.filter({ hasText: '285 cm × 146 cm wide' })
    await washed.getByText('at chest · washed').waitFor()
    await washed.getByRole('button', { name: /^Count again/ }).click()
    await washed.getByLabel('Really there').fill('0')
    await washed.getByRole('button', { name: 'Keep the count' }).click()
    await washed.waitFor({ state: 'detached' })
    await page.getByRole('checkbox', { name: 'Show lengths that are used up' }).click({ force: true })
    await rows.nth(1).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test.each(['light', 'dark'] as const)(
    'and of all that happens to a commission are clean by axe-core in %s, 44 high and no wider than 900',
    async (colorScheme) => {
      const options = { colorScheme, viewport: { width: 900, height: 800 } }
      const planner = await openPlanner(browser(), scratch(), options)
      const found: string[] = []
      await tour(planner, async (screen) => {
        found.push(...(await axeFaults(planner.page)).map((fault) => `${screen}: ${fault}`))
        const wide = await planner.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect(wide, `${screen} is wider than the window`).toBeLessThanOrEqual(0)
        const low = await planner.page.evaluate(() =>
          [...document.querySelectorAll('main :is(button, .button, input[id], select, summary, .tick)')]
            .filter((control) => control.getClientRects().length > 0)
            .filter((control) => control.getBoundingClientRect().height < 43.9)
            .map((control) => control.outerHTML.slice(0, 120)),
        )
        expect(low, screen).toEqual([])
      })
      expect(found).toEqual([])
      expect(planner.errors).toEqual([])
      await planner.close()
    },
    120_000,
  )
})

/** Goes through the screens with something on each of them, and a form open. */
async function tour(planner: Planner, look: (screen: string) => Promise<void>): Promise<void> {
  const { page } = planner
  const { commission, cloth } = await openUncut(planner)
  const commissionId = commission.id
  const ask = (name: string, payload: unknown) => granted(planner, name, payload)
  await ask('stock.add', { clothId: cloth, length: '8 m', place: 'shelf 2' })
  await ask('stock.add', {
    clothId: cloth,
    length: '2 m',
    orderedDay: '2026-03-01',
    expectedDay: '2026-03-09',
  })
  await ask('fitting.add', { commissionId, day: '2026-04-01', time: '10:00' })
  await ask('note.add', { commissionId, text: 'No wool next to the skin.' })
  await ask('payment.add', { commissionId, amount: { minor: 2000, currency: 'GBP' } })
  await ask('invoice.make', { commissionId })
  await toTheUncut(page)
  const picture = await page.screenshot()
  await chooseFile(page, 'Add pictures', { name: 'effigy.png', mimeType: 'image/png', buffer: picture })
  await page.locator('.thumbnail').click()
  await page.locator('figure img').waitFor()
  await page.locator('summary', { hasText: 'Cut piece by piece' }).click()
  for (const name of [
    /^Call it off/,
    /^Measure the washed/,
    /^Write down what/,
    /^Write a note/,
    /^Add a pay/,
  ])
    await page.getByRole('button', { name }).click()
  await page.locator('.recut .tick').first().waitFor()
  await look('a commission')
  await toTheCloths(page)
  await page.getByRole('button', { name: 'Add a length' }).click()
  await page.getByRole('button', { name: /^It has arrived/ }).click()
  await look('the cloths')
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('link', { name: 'Books' }).click()
  await page.getByRole('row', { name: /payment.*Ása Holt/ }).waitFor()
  await look('the books')
}
