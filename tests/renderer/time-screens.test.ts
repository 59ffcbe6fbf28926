import { AxeBuilder } from '@axe-core/playwright'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { deliver, openWorkroom, toTheCommission, toWhatItCameTo, toYourTimes } from '../support/undertunic.ts'

/** Goes through the screens of time, empty and full. */
async function tour(planner: Planner, look: (screen: string) => Promise<void>): Promise<void> {
  const { page } = planner
  const commission = await openWorkroom(planner)
  await toYourTimes(page)
  await page.getByRole('row', { name: /^buttonhole stitch/ }).waitFor()
  await look('your times, nothing logged')
  await toWhatItCameTo(page)
  await page.getByText('Nothing has been delivered yet.').waitFor()
  await look('what it came to, nothing delivered')
  await toTheCommission(page)
  await page
    .getByRole('button', { name: /^Log time: / })
    .first()
    .click()
  await page.getByLabel('Time spent').press('Enter')
  await page.locator('.log-form .wrong').waitFor()
  await page.locator('summary').click()
  await page.locator('.account').waitFor()
  await look('a commission, logging')
  await deliver(planner, commission)
  await toYourTimes(page)
  await page.locator('.plot').first().waitFor()
  await page.locator('summary').click()
  await look('your times')
  await page
    .getByRole('link', { name: /^Put it right/ })
    .first()
    .click()
  await page.getByRole('form', { name: /^Change the time logged/ }).waitFor()
  await page.locator('.account').waitFor()
  await look('a commission, delivered')
  await toWhatItCameTo(page)
  await page.locator('.lines').first().waitFor()
  await look('what it came to')
}

describe.runIf(hasBrowser)(`the screens of time${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test.each(['light', 'dark'] as const)(
    'in %s are clean by axe-core, WCAG 2.2 AA',
    async (colorScheme) => {
      const planner = await openPlanner(browser(), scratch(), { colorScheme, reducedMotion: 'reduce' })
      const found: string[] = []
      await tour(planner, async (screen) => {
        const { violations } = await new AxeBuilder({ page: planner.page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'])
          .analyze()
        found.push(...violations.map(({ id, nodes }) => `${screen}: ${id} at ${nodes[0]!.target}`))
      })
      expect(found).toEqual([])
      expect(planner.errors).toEqual([])
      await planner.close()
    },
    120_000,
  )

  test.each([900, 1280, 1920])(
    'fit a window %i wide, and everything to touch is 44 high',
    async (width) => {
      const planner = await openPlanner(browser(), scratch(), { viewport: { width, height: 800 } })
      await tour(planner, async (screen) => {
        const wide = await planner.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        expect(wide, `${screen} is wider than the window`).toBeLessThanOrEqual(0)
        const small = await planner.page.evaluate(() =>
          [
            ...document.querySelectorAll(
              'button, .button, input:not([type="checkbox"]), select, summary, nav a, .tick',
            ),
          ]
            .filter((control) => control.getClientRects().length > 0)
            .map((control) => ({
              text: control.textContent ?? '',
              height: control.getBoundingClientRect().height,
            }))
            .filter(({ height }) => height < 43.9),
        )
        expect(small, screen).toEqual([])
      })
      await planner.close()
    },
    120_000,
  )
})
