import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooLow, tooWide } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { granted, openWorkroom, toTheCommission } from '../support/undertunic.ts'

const at = (page: Page): string => new URL(page.url()).hash
const strip = (page: Page) => page.locator('.strip')
const undo = (page: Page) => strip(page).getByRole('button', { name: /^Undo the last change/ })

describe.runIf(hasBrowser)(`the places, the keys and the ways back${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('six places are gone to by keys, in a field too, and the sheet of keys shows them', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    const heads = page.getByRole('navigation', { name: 'Rooms' }).getByRole('link')
    expect(await heads.allTextContents()).toEqual([
      'Today',
      'Quote desk',
      'Clients',
      'Cloth',
      'Commissions',
      'Workroom',
    ])
    for (const [key, place] of ['today', 'desk', 'clients', 'cloths', 'commissions', 'workroom'].entries()) {
      await page.keyboard.press(`Control+${key + 1}`)
      await expect.poll(() => at(page)).toBe(`#/${place}`)
    }
    await page.getByRole('heading', { name: 'On your papers' }).waitFor()
    await page.keyboard.press('Control+3')
    await page.getByLabel('New client').fill('Who is she?')
    await page.getByLabel('New client').press('?')
    await page.getByLabel('New client').press('/')
    expect(await page.getByLabel('New client').inputValue()).toBe('Who is she??/')
    await page.getByLabel('New client').press('Control+1')
    await page.getByRole('heading', { name: 'Today', level: 1 }).waitFor()
    await page.keyboard.press('?')
    const sheet = page.getByRole('dialog', { name: 'Keys' })
    await sheet.getByRole('row', { name: 'Find anything, or say what to do Ctrl+K' }).waitFor()
    // What lies over the page is closed before anything else is done.
    await page.keyboard.press('Control+5')
    expect(at(page)).toBe('#/today')
    expect(await axeFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await sheet.waitFor({ state: 'detached' })
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('back leads out of one thing by button and by key, and old addresses go on working', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id } = await openWorkroom(planner)
    await page.keyboard.press('Control+1')
    await page.locator('.today-next').getByRole('link', { name: /^C-/ }).first().click()
    await page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await strip(page).getByRole('button', { name: 'Back' }).click()
    await expect.poll(() => at(page)).toBe('#/today')
    await page.goForward()
    await page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await page.keyboard.press('Alt+ArrowLeft')
    await expect.poll(() => at(page)).toBe('#/today')

    await page.evaluate(() => {
      location.hash = '#/quotes'
    })
    await page.getByRole('heading', { name: 'Quotes', level: 1 }).waitFor()
    await page
      .getByRole('link', { name: 'Commissions', exact: true })
      .and(page.locator('[aria-current]'))
      .waitFor()
    await page.locator('a.entry').first().click()
    await page.getByRole('button', { name: 'Print the quote' }).waitFor()
    // A window that was opened here has nowhere to go back to but to what is around it.
    await page.evaluate((one) => {
      history.replaceState(null, '', `#/commissions/${one}`)
    }, id)
    await page.reload()
    await page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await strip(page).getByRole('button', { name: 'Back' }).click()
    await page.getByRole('heading', { name: 'Commissions', level: 1 }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('the field finds and does: a quote for somebody, the timer, places; and says what to type instead', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await page.keyboard.press('Control+k')
    await page.keyboard.type('new quote asa')
    const doing = page.getByRole('list', { name: 'Do' })
    await doing.getByRole('link', { name: /^New quote for Ása Holt/ }).waitFor()
    await page.keyboard.press('Enter')
    await expect.poll(() => at(page)).toMatch(/^#\/desk\?wearer=/)

    await page.keyboard.press('Control+k')
    await page.keyboard.type('timer c-')
    await doing.getByRole('button', { name: /^Start the timer on C-\d{4}-001: / }).waitFor()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    const timer = page.getByRole('region', { name: 'Timer' })
    await timer.waitFor()
    await page.keyboard.press('Alt+t')
    await timer.waitFor({ state: 'detached' })

    await page.keyboard.press('Control+k')
    await page.keyboard.type('weeks')
    await doing.getByRole('link', { name: /^The weeks to come/ }).waitFor()
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'The weeks to come', level: 1 }).waitFor()

    await page.keyboard.press('Control+k')
    await page.keyboard.type('holt')
    await page
      .getByRole('list', { name: 'Then' })
      .getByRole('link', { name: /^New quote for Ása/ })
      .waitFor()
    expect(await axeFaults(page)).toEqual([])
    await page.keyboard.press('Control+k')
    await page.keyboard.type('whalebone')
    await page.getByText('Nothing has “whalebone” in it.').waitFor()
    await page.getByText(/^Type a name, a number, a cloth/).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('what was done is undone in turn, by key and by button, and what cannot be is said', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id } = await openWorkroom(planner)
    await toTheCommission(page)
    const notes = async () =>
      (await granted<{ notes: { text: string }[] }>(planner, 'notes.list', { commissionId: id })).notes.map(
        ({ text }) => text,
      )
    const done = async () =>
      (
        await granted<{ commission: { garments: { steps: { doneAt: string | null }[] }[] } }>(
          planner,
          'commission.get',
          { id },
        )
      ).commission.garments[0]!.steps.filter(({ doneAt }) => doneAt !== null).length
    const before = await done()
    await page.getByLabel('About it, in a line').fill('for the spring market')
    await page.getByRole('button', { name: 'Keep these' }).click()
    await undo(page).waitFor()
    await page.locator('.tick', { hasText: 'Press the seams' }).click()
    await expect.poll(done).toBe(before + 1)
    await strip(page).getByText('Undo: step ticked').waitFor()

    // While she types, the same key takes back what she types.
    await page.getByLabel('About it, in a line').press('Control+z')
    expect(await done()).toBe(before + 1)
    await page.getByRole('heading', { level: 1 }).click()
    await page.keyboard.press('Control+z')
    await expect.poll(done).toBe(before)
    await page.getByText('Undone: step ticked.').waitFor()
    await undo(page).click()
    await expect.poll(() => page.getByLabel('About it, in a line').inputValue()).toBe('')
    await undo(page).waitFor({ state: 'detached' })
    expect(await notes()).toEqual([])

    await page.keyboard.press('Control+2')
    await page.getByText(/^Saving sends nothing\. A saved quote keeps its figures/).waitFor()
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.getByRole('button', { name: 'The client declines' }).waitFor()
    await page.keyboard.press('Control+z')
    await page
      .getByRole('status')
      .getByText(/^Not to be undone\. Saving sends nothing\. A saved quote keeps its figures/)
      .waitFor()
    await page.getByRole('button', { name: 'The client declines' }).click()
    // The sentence before speaks of declining too: only the strip says that it is done.
    await strip(page).getByText('Undo: quote declined').waitFor()
    await page.keyboard.press('Control+z')
    await page.getByRole('button', { name: 'The client declines' }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test.each([1280, 900])('head and strip fit a window %i wide, with everything 44 high', async (width) => {
    const planner = await openPlanner(browser(), scratch(), { viewport: { width, height: 800 } })
    const { page } = planner
    await openWorkroom(planner)
    await toTheCommission(page)
    await page.locator('.tick', { hasText: 'Press the seams' }).click()
    await undo(page).waitFor()
    await page.keyboard.press('Control+k')
    await page.keyboard.type('holt')
    await page.getByRole('list', { name: 'Found' }).waitFor()
    expect(await tooWide(page)).toBeLessThanOrEqual(0)
    expect(await tooLow(page, '.strip a, .strip button, .rooms a, .found a, .found button', 44)).toEqual([])
    await planner.close()
  })
})
