import { describe } from 'vitest'
import { hasBrowser, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { screensAreSound } from '../support/screen-checks.ts'
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
  await page.locator('.account').first().waitFor()
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
  await page.locator('.account').first().waitFor()
  await look('a commission, delivered')
  await toWhatItCameTo(page)
  await page.locator('.lines').first().waitFor()
  await look('what it came to')
}

describe.runIf(hasBrowser)(`the screens of time${withoutBrowser}`, () => {
  const browser = usingBrowser()

  screensAreSound(browser, tour)
})
