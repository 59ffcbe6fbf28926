import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'

/** A woman's measures in inches, in the order of the form; her waist written as 20 ¾ where the tape said 30 ¾. */
const TAPE: Record<string, string> = {
  stature: '65',
  'cervical height': '55 1/2',
  'head girth': '22 1/8',
  'neck base girth': '15',
  'shoulder length': '4 3/4',
  'bust girth': '37½',
  'waist girth': '20 3/4',
  'hip girth': '40',
  'arm length': '22 5/8',
  'upper arm girth': 'L 11 1/2 R 11 5/8',
  'forearm girth': '9 3/4',
  'wrist girth': '6 3/8',
  'hand girth': '7 3/8',
  'waist height': '40',
  'inside leg height': '30',
  'knee height': '18',
  'calf girth': '14 1/4',
}

async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let i = 0; i < 150; i++) {
    await page.keyboard.press('Tab')
    const name = await page.evaluate(() => {
      const focused = document.activeElement as HTMLElement | null
      const label = document.querySelector(`label[for="${focused?.id}"]`)
      return (label?.textContent ?? focused?.textContent ?? '').trim()
    })
    if (wanted.test(name)) return
  }
  throw new Error(`the Tab key never reaches ${wanted}`)
}

describe.runIf(hasBrowser)(`measures on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('are typed in inches by keyboard; a slip is caught, a warning taken with a note, and both printed', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByLabel('New client').fill('Ysolt Brand')
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'First measures' }).waitFor()
    await tabTo(page, /^Unit of the tape/)
    await page.keyboard.type('inches')
    await tabTo(page, /^Proportions of/)
    await page.keyboard.type('a woman')
    for (const [measure, inches] of Object.entries(TAPE)) {
      await tabTo(page, new RegExp(`^${measure}`, 'i'))
      await page.keyboard.type(inches)
    }
    const doubt = page.locator('li.doubt')
    await expect.poll(() => doubt.allTextContents()).toHaveLength(1)
    expect(await doubt.first().textContent()).toMatch(/^waist girth: .*not 20¾ in/)

    // Put right, the doubt goes; a knee that is really so is noted, and stays as it is.
    const waist = page.getByLabel(/^waist girth/i)
    await waist.fill('30 3/4')
    await expect.poll(() => doubt.count()).toBe(0)
    await page.getByLabel(/^calf girth/i).fill('18 1/4')
    const why = page.getByLabel('Why it is so: calf girth')
    await why.fill('rows on the river')
    await expect.poll(() => doubt.count()).toBe(0)
    await page.getByRole('button', { name: 'Estimate what is missing' }).click()
    await expect
      .poll(() => page.getByLabel(/^neck girth/i).getAttribute('placeholder'))
      .toMatch(/^estimated .* in ± .* in$/)
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Keep these measures' }).click()

    const set = page.locator('.sheet', { has: page.getByRole('heading', { name: /^Measures of/ }) })
    await expect.poll(() => set.textContent()).toContain('calf girth (rows on the river)')
    const text = (await set.textContent())!
    expect(text).toMatch(/neck girth.{0,3}estimated \d/)
    expect(text).toMatch(/upper arm girth.{0,3}L \d.* R \d/)

    // Printed again, it is a paper in a page of its own.
    const opened = page.waitForEvent('popup')
    // Not every Chromium shows papers itself, but each fetches them for the new page.
    const fetched = page.context().waitForEvent('response', (one) => /\/paper\//.test(one.url()))
    await page.getByRole('button', { name: 'Print', exact: true }).click()
    await opened
    expect(await (await fetched).headerValue('content-type')).toBe('application/pdf')

    // A new set starts from this one, and the note with it.
    await page.getByRole('button', { name: 'Take measures' }).click()
    await expect.poll(() => page.getByLabel(/^waist girth/i).inputValue()).toBe('30¾')
    expect(await page.getByLabel('Why it is so: calf girth').inputValue()).toBe('rows on the river')
    expect(errors).toEqual([])
    await close()
  }, 90_000)

  test('come back on a form, and are understood by the names people use', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByLabel('New client').fill('Ysolt Brand')
    await page.keyboard.press('Enter')
    await page.getByText('Read a form that came back').click()
    await page.getByLabel('Its text, pasted here').fill('height: 165 cm\nhips: 102\nshoe colour: red')
    await page.getByRole('button', { name: 'Take these sizes over' }).click()
    await expect.poll(() => page.getByLabel(/^hip girth/i).inputValue()).toBe('102')
    expect(await page.getByLabel(/^stature/i).inputValue()).toBe('165 cm')
    await page.getByText('Not understood: shoe colour: red').waitFor()
    await page.getByLabel('Find a measure').fill('biceps')
    await expect.poll(() => page.locator('.measure-line').count()).toBe(1)
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('go with the client who is forgotten', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.getByRole('link', { name: 'Clients', exact: true }).click()
    await page.getByLabel('New client').fill('Ysolt Brand')
    await page.keyboard.press('Enter')
    const given = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Everything kept about this client, as a file' }).click()
    expect((await given).suggestedFilename()).toBe('Ysolt Brand.json')
    await page.getByText('Forget this client').click()
    const button = page.getByRole('button', { name: 'Forget her now' })
    expect(await button.isDisabled()).toBe(true)
    await page.getByLabel('Her name, to be sure').fill('Ysolt Brand')
    await button.click()
    await page.getByRole('heading', { name: 'Clients', level: 1 }).waitFor()
    expect(await page.getByText('Ysolt Brand').count()).toBe(0)
    expect(errors).toEqual([])
    await close()
  }, 60_000)
})
