import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import {
  granted,
  log,
  logAll,
  openWorkroom,
  toTheCommission,
  toWhatItCameTo,
  toYourTimes,
} from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`times on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('are logged at a step and at a whole stage, in any way of writing, and by keyboard', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toTheCommission(page)
    await page.getByText(/£\d+\.\d\d agreed/).waitFor()
    await page.getByText('None yet. Press “Log time” at a step').waitFor()

    const button = page.getByRole('button', { name: 'Log time: Sew the shoulder seams' })
    await button.focus()
    await page.keyboard.press('Enter')
    await page.keyboard.type('a while')
    await page.keyboard.press('Enter')
    await page.getByText('“a while” is no time that can be read. Write 90, 1:30 or 1 h 30.').waitFor()
    await page.keyboard.press('Escape')
    await page.getByLabel('Time spent').waitFor({ state: 'detached' })
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true)

    await log(page, 'Sew the shoulder seams', '1:30')
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true)
    await page.locator('.tick', { hasText: 'Sew the shoulder seams' }).getByText('took 1 h 30').waitFor()
    await page.getByRole('status').getByText('1 h 30 logged: Sew the shoulder seams').waitFor()
    await log(page, 'Sew: all of it', '4 h')
    await page.locator('.times tr', { hasText: 'Sew: all of it' }).getByText('4 h').waitFor()
    await page.getByText('In all 5 h 30.').waitFor()
    await page.locator('.tick', { hasText: 'Try on' }).click()
    await page.getByRole('checkbox', { name: /^Try on/, checked: true }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('are put right, taken back and put back, and kept from teaching', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toTheCommission(page)
    await log(page, 'Lay out, chalk and cut', '70')
    const row = page.locator('.times tbody tr', { hasText: 'Lay out, chalk and cut' })
    const change = row.getByRole('button', { name: /^Change: 1 h 10 on .*, Lay out, chalk and cut$/ })
    await change.click()
    const form = page.getByRole('form', { name: 'Change the time logged: Lay out, chalk and cut' })
    await form.getByLabel('Time spent').fill('0')
    await form.getByRole('button', { name: 'Keep' }).click()
    await form.getByText('“0” is no time that can be read.').waitFor()
    await form.getByLabel('Time spent').fill('50')
    await form.getByLabel('Day').fill('2026-02-03')
    await form.getByLabel('Note').fill('with a blunt chalk')
    await form.getByRole('button', { name: 'Keep' }).click()
    await row.getByText('3 February 2026').waitFor()
    await row.getByText('50 min').waitFor()
    await row.getByText('with a blunt chalk').waitFor()

    await row.getByRole('button', { name: /^Change/ }).click()
    await form.getByRole('button', { name: 'Leave out of the learning' }).click()
    await row.getByText('left out of the learning').waitFor()
    await row.getByRole('button', { name: /^Change/ }).click()
    await form.getByRole('button', { name: 'Take up again' }).click()
    await row.getByText('left out of the learning').waitFor({ state: 'detached' })

    await row.getByRole('button', { name: /^Change/ }).click()
    await form.getByRole('button', { name: 'Remove' }).click()
    await row.getByText('removed').waitFor()
    await page.getByText('In all 0 min.').waitFor()
    await row.getByRole('button', { name: /^Put back/ }).click()
    await page.getByText('In all 50 min.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('teach the pace: hours, pictures, and a standard of her own', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toYourTimes(page)
    await page.getByText('After about three garments the planner knows your pace').waitFor()
    await page.getByRole('row', { name: /^buttonhole stitch/ }).waitFor()
    await page.getByRole('link', { name: 'To the commissions' }).click()
    await page.getByRole('link', { name: /^C-\d{4}-001$/ }).click()
    await page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await logAll(page)

    await toYourTimes(page)
    await page.getByText('Learnt from 3 h 50 of work that is logged and ticked as done.').waitFor()
    const felling = page.getByRole('row', { name: /^felling stitch/ })
    await felling.getByText(/^rests on \d/).waitFor()
    await felling.getByText(/^between [\d.]+ and [\d.]+$/).waitFor()
    await felling
      .getByRole('img', { name: /^Felling stitch: .* minutes a metre\. Standard 33, yours [\d.]+\.$/ })
      .waitFor()
    await page.getByText(/^Not logged yet: \d+ kinds of work/).click()
    await page
      .getByRole('row', { name: /^buttonhole stitch/ })
      .getByText('by hand')
      .waitFor()

    const standard = page.getByLabel('Standard for buttonhole stitch, min a metre')
    expect(await standard.inputValue()).toBe('120')
    await standard.fill('much')
    await standard.press('Enter')
    await page.getByText('“much” is no time that can be read.').waitFor()
    await standard.fill('96')
    await page.getByRole('button', { name: 'Keep the standard for buttonhole stitch' }).click()
    const row = page.getByRole('row', { name: /^buttonhole stitch/ })
    await row.getByText('Your own. Empty it for the common one.').waitFor()
    const { settings } = await granted<{ settings: { ways: unknown } }>(planner, 'settings.get')
    expect(settings.ways).toMatchObject({ perMinute: { buttonhole: 12.5 }, minutes: {} })
    const pressing = page.getByLabel('Standard for fitting, min each')
    await pressing.fill('0:45')
    await pressing.press('Enter')
    await page
      .getByRole('row', { name: /^fitting/ })
      .getByText('Your own.')
      .waitFor()
    expect(await pressing.inputValue()).toBe('45')
    await standard.fill('')
    await standard.press('Enter')
    await row.getByText('Your own.').waitFor({ state: 'detached' })
    expect(await standard.inputValue()).toBe('120')
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('that look wrong are shown first, left out when she says so, or opened to be put right', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toTheCommission(page)
    await logAll(page)
    await log(page, 'Sew the shoulder seams', '12 h')
    await toYourTimes(page)
    const doubt = page.locator('.doubts li')
    await doubt
      .getByText(/^12 h 18 logged in 2 goes, the last on .*; about \d+ min was expected\.$/)
      .waitFor()
    await doubt.getByText('Sew the shoulder seams').waitFor()
    await page
      .getByRole('img', { name: /Looks wrong: \d+ on/ })
      .first()
      .waitFor()
    expect(await page.locator('.plot .plot-open').count()).toBeGreaterThan(0)

    await doubt.getByRole('button', { name: /^Leave it out of the learning/ }).click()
    await page.getByText('12 h 18 is left out of the learning.').waitFor()
    await doubt.waitFor({ state: 'detached' })
    await page.getByText('Learnt from 3 h 32 of work').waitFor()
    await page.getByRole('button', { name: 'Take it up again' }).click()
    await doubt.waitFor()

    await doubt.getByRole('link', { name: /^Put it right in C-/ }).click()
    const form = page.getByRole('form', { name: 'Change the time logged: Sew the shoulder seams' })
    await form.getByLabel('Time spent').fill('12')
    await form.getByRole('button', { name: 'Keep' }).click()
    await form.waitFor({ state: 'detached' })
    await toYourTimes(page)
    await page.getByText('Learnt from 4 h 02 of work').waitFor()
    expect(await page.locator('.doubts').count()).toBe(0)
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})

describe.runIf(hasBrowser)(`quoted against actual${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('stands on the commission, with the cloth and thread she wrote down, and on what it came to', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toWhatItCameTo(page)
    await page.getByText('Nothing has been delivered yet.').waitFor()
    await toTheCommission(page)
    await page.locator('summary', { hasText: 'Quoted against actual' }).click()
    const hours = page.locator('.account').getByRole('row', { name: /^Hours/ })
    await hours.getByText('no time logged').waitFor()
    await log(page, 'Sew: all of it', '6 h')
    await hours.getByText('no time logged').waitFor({ state: 'detached' })
    await page.getByText('No time is logged for 8 of 15 steps').waitFor()

    await page.getByRole('button', { name: 'Delivered', exact: true }).click()
    await page.getByText(/^\d+ of 15 steps are not ticked\.$/).waitFor()
    await page.getByRole('button', { name: 'Handed over all the same' }).click()
    await page.getByText(/delivered on \d/).waitFor()
    expect(await page.getByRole('checkbox', { name: /^Try on/ }).isDisabled()).toBe(true)
    const cloth = page.locator('.account').getByRole('row', { name: /^Cloth/ })
    await cloth.getByText('not written down').waitFor()
    await page.getByLabel('Cloth it took').fill('4,5 m')
    await page.getByLabel('Hand thread, m').fill('plenty')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('“plenty” is no number of metres.').waitFor()
    await page.getByLabel('Hand thread, m').fill('61')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await cloth.getByText('450 cm').waitFor()
    await page
      .locator('.account')
      .getByRole('row', { name: /^Hand thread/ })
      .getByText('61 m')
      .waitFor()
    await page
      .locator('.account')
      .getByRole('row', { name: /^Left for an hour .*£/ })
      .waitFor()
    await page.getByLabel('Hand thread, m').fill('')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page
      .locator('.account')
      .getByRole('row', { name: /^Hand thread .*not written down/ })
      .waitFor()

    await toWhatItCameTo(page)
    await page.getByRole('heading', { name: 'What to change' }).waitFor()
    await page.getByRole('row', { name: /^gored undertunic 1 £/i }).waitFor()
    await page.getByRole('row', { name: /^Ása Holt 1 £/ }).waitFor()
    await page
      .getByRole('link', { name: /^C-\d{4}-001$/ })
      .first()
      .click()
    await page.getByRole('button', { name: 'Open it again' }).click()
    await page.getByRole('button', { name: 'Delivered', exact: true }).waitFor()
    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    await page.getByRole('link', { name: 'What it came to' }).click()
    await page.getByText('Nothing has been delivered yet.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
