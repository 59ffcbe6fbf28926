import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'

describe.runIf(hasBrowser)(`the box in which one finds and does${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is reached by its key, goes to a place, does what is typed, and says what to type instead', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    await page.locator('.bill').waitFor()
    const offered = page.locator('.found')
    const type = async (text: string) => {
      await page.keyboard.press('Control+k')
      await page.keyboard.type(text)
    }
    await type('quote luc')
    await offered.getByText('New quote for Łucja Orme').waitFor()
    await page.keyboard.press('Enter')
    await expect.poll(() => page.getByRole('combobox', { name: 'For' }).inputValue()).toBe('Łucja Orme')

    await type('weeks')
    await offered.getByText('The weeks to come').waitFor()
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { level: 1, name: 'The weeks to come' }).waitFor()

    await type('timer C-2026-006')
    await offered.getByText(/^Start the timer on C-2026-006: /).waitFor()
    await page.keyboard.press('Enter')
    await page.locator('.timer').getByText('C-2026-006').waitFor()
    await type('stop timer')
    await offered.getByText('Stop the timer and log it').waitFor()
    await page.keyboard.press('Escape')
    await offered.waitFor({ state: 'detached' })

    for (const [word, place, at] of [
      ['hour', 'Rates: what an hour costs and must earn', 'money'],
      ['holidays', 'Days off and holidays', 'daysOff'],
      ['days off', 'Days off and holidays', 'daysOff'],
      ['backup', 'Safekeeping: copies of the book', 'safekeeping'],
      ['helper', 'Who works here, and on which days', 'people'],
      ['sample', 'Look round the sample, print “The first hour”', 'lookRound'],
    ] as const) {
      await type(word)
      await offered.getByRole('link', { name: place }).click()
      await expect.poll(() => page.url()).toContain(`#/workroom?at=${at}`)
      await expect
        .poll(() =>
          page.evaluate((id) => document.getElementById(id)!.getBoundingClientRect().top, `settings-${at}`),
        )
        .toBeLessThan(800)
    }

    // The address speaks of it already, and she has scrolled away.
    await page.evaluate(() => scrollTo(0, 0))
    const top = () =>
      page.evaluate(() => document.getElementById('settings-lookRound')!.getBoundingClientRect().top)
    expect(await top()).toBeGreaterThan(800)
    await type('sample')
    await offered.getByRole('link', { name: 'Look round the sample, print “The first hour”' }).click()
    await expect.poll(top).toBeLessThan(800)

    for (const word of ['earned', 'profit', 'worth']) {
      await type(word)
      await offered.getByRole('link', { name: 'What it came to' }).click()
      await page.getByRole('heading', { level: 1, name: 'What it came to' }).waitFor()
    }
    await type('margin for cloth')
    await offered.getByRole('link', { name: 'Cloth bought on top of what is laid' }).click()
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('name')))
      .toBe('clothMargin')

    await type('zzzz')
    await offered.getByText('Nothing has “zzzz” in it.').waitFor()
    await offered.getByText(/^Type a name, a number/).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  }, 60_000)

  test('is reached by its key from a link, a button, a choice and a field, and by one pressed while the page opens', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') === 'Find')
    await page.locator('.bill').waitFor()
    for (const from of ['.rooms a', '.strip button', '.desk-choices select', '.desk-choices input']) {
      await page.locator(from).first().focus()
      expect(await focused()).toBe(false)
      await page.keyboard.press('Control+k')
      expect(await focused(), from).toBe(true)
    }
    // The store does not answer until the key was pressed: the page is there, and the field is not yet.
    let answer = () => {}
    const held = new Promise<void>((go) => {
      answer = go
    })
    await page.route('**/ask', async (route) => {
      await held
      await route.continue()
    })
    await page.reload({ waitUntil: 'load' })
    await page.keyboard.press('Control+k')
    answer()
    await expect.poll(focused).toBe(true)
    await planner.close()
  }, 60_000)
})

test.skipIf(hasBrowser)('there is no Chromium here, so the box was not tried', () => {})
