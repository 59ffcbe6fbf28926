import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'

const reckonedAnew = (page: Page) => page.locator('.desk-results[aria-busy="false"] .bill').waitFor()

describe.runIf(hasBrowser)(`a price at the quote desk${withoutBrowser}`, () => {
  const browser = usingBrowser()
  const desk = async () => {
    const planner = await openPlanner(browser(), scratch(), { reducedMotion: 'reduce' })
    await planner.page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await reckonedAnew(planner.page)
    return planner
  }

  test('typed by hand tells what an hour earns, the odds of falling short, and the floor', async () => {
    const { page, close, errors } = await desk()
    const says = page.locator('.earned')
    await says.waitFor()
    expect(await says.textContent()).toMatch(/you keep £\d+.* ask at least £\d+/)
    expect(await says.getAttribute('class')).toBe('earned')
    await page.getByLabel('Your price before tax').fill('150')
    await page.locator('.earned.below').waitFor()
    const under =
      /^£150\.00 does not pay for .*: £\d+\.\d\d are lacking, and .* earn nothing\. .*ask at least £\d+/
    expect(await says.textContent()).toMatch(under)
    await page.getByLabel('Your price before tax').fill('200')
    await page.locator('.earned', { hasText: 'At £200.00 you keep £' }).waitFor()
    expect(await says.getAttribute('class')).toBe('earned below')
    await page.getByLabel('Your price before tax').fill('a lot')
    await page.locator('.earnings [role="alert"], .refusal').first().waitFor()
    await page.getByLabel('Your price before tax').fill('')
    await page.locator('.earned:not(.below)').waitFor()
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('stands beside other ways of making it; what is offered the client picks from', async () => {
    const { page, close, errors } = await desk()
    await page.getByText('Other ways of making it').click()
    const rows = page.locator('.ways tbody tr')
    await rows.nth(3).waitFor()
    const names = await page.locator('.ways th[scope="row"]').allTextContents()
    expect(names[0]).toContain('as it is set')
    expect(names.slice(1, 3)).toEqual(['sewn by hand throughout', 'sewn by machine throughout'])
    expect(await axeFaults(page, '.desk-results')).toEqual([])
    await page.getByRole('checkbox', { name: 'offer it sewn by hand throughout' }).press('Space')
    await page.getByText('offered: 1').waitFor()
    await page.getByText('What is agreed besides').click()
    await page.getByLabel('On top for haste, %').fill('10')
    await page.getByLabel('The customer brings this much of the cloth').fill('1 m')
    await page.getByText('That is not enough').waitFor()
    await reckonedAnew(page)
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.getByRole('radio', { name: /sewn by hand throughout/ }).check()
    await page.getByRole('button', { name: 'The client accepts' }).click()
    await page.getByRole('heading', { name: /^Commission C-/ }).waitFor()
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('rests on settings that can all be set on their screen', async () => {
    const { page, close, errors } = await desk()
    await page.getByRole('link', { name: 'Workroom', exact: true }).click()
    await page.getByRole('button', { name: 'Add a cost' }).click()
    await page.getByLabel('Cost', { exact: true }).fill('rent')
    await page.getByLabel('A year', { exact: true }).fill('9000')
    await page.getByLabel('Hours of a year that are sold').fill('900')
    await page.getByRole('button', { name: 'Add another thread' }).click()
    await page.getByLabel('Thread', { exact: true }).nth(2).fill('silk 40/3, madder')
    await page.getByLabel('Metres on it').nth(2).fill('30')
    await page.getByLabel('Price, GBP').nth(2).fill('9')
    await page.getByLabel('Quotes are numbered').fill('EST')
    await page.getByLabel('Due before the cloth is cut, %').fill('30')
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await page.waitForFunction(() =>
      [...document.querySelectorAll('input')].some((field) => field.value === '10.00'),
    )
    await page.getByRole('link', { name: 'Quote desk', exact: true }).click()
    await reckonedAnew(page)
    await page.getByText('What is agreed besides').click()
    await page.getByLabel('Thread for the hand').selectOption({ label: 'silk 40/3, madder' })
    await reckonedAnew(page)
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.getByRole('heading', { name: /^Quote EST-/ }).waitFor()
    await page.getByText('before the cloth is cut').waitFor()
    expect(errors).toEqual([])
    await close()
  }, 60_000)
})
