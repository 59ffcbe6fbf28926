import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooLow, tooWide } from '../support/screen-checks.ts'
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
  await page.locator('summary', { hasText: 'Quoted against actual' }).click()
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
        found.push(...(await axeFaults(planner.page)).map((fault) => `${screen}: ${fault}`))
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
        expect(await tooWide(planner.page), `${screen} is wider than the window`).toBeLessThanOrEqual(0)
        const controls = 'button, .button, input:not([type="checkbox"]), select, summary, nav a, .tick'
        const small = await tooLow(planner.page, controls, 43.9)
        expect(small, screen).toEqual([])
      })
      await planner.close()
    },
    120_000,
  )
})
