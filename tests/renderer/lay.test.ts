import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { granted } from '../support/undertunic.ts'

async function toTheDesk(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look round Tenter Lane' }).click()
  await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
}

const price = (page: Page) => page.locator('.bill dl', { hasText: 'Price' }).locator('dd')
const settled = (page: Page) => page.locator('.desk-results[aria-busy="false"]').waitFor()

/** Drags the middle of a piece by pixels. */
async function drag(page: Page, piece: Locator, dx: number, dy: number): Promise<void> {
  const { x, y, width, height } = (await piece.boundingBox())!
  const [fromX, fromY] = [x + width / 2, y + height / 2]
  await page.mouse.move(fromX, fromY)
  await page.mouse.down()
  await page.mouse.move(fromX + dx, fromY + dy, { steps: 4 })
  await page.mouse.up()
}

describe.runIf(hasBrowser)(`the lay on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is searched for while the maker looks on, and stopped when she likes; the quote keeps it', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await toTheDesk(page)
    await page.getByRole('button', { name: 'Look for a shorter lay' }).click()
    await page.getByRole('progressbar', { name: 'Looking for a shorter lay' }).waitFor()
    await page.getByRole('button', { name: 'Stop and keep the best' }).click()
    await page.getByRole('button', { name: 'Back to the first lay' }).waitFor()
    await page.getByText(/shorter than the first lay|No shorter lay/).waitFor()
    await settled(page)
    const reckoned = await price(page).textContent()
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.locator('.sheet h2').first().waitFor()
    expect(await page.locator('main').textContent()).toContain(reckoned)
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('leaves the desk as it was when the thread that searches dies, and says so', async () => {
    const dying = new URL('../support/dying-search.ts', import.meta.url)
    const { page, errors, close } = await openPlanner(browser(), scratch(), { thread: dying })
    await toTheDesk(page)
    const reckoned = await price(page).textContent()
    await page.getByRole('button', { name: 'Look for a shorter lay' }).click()
    await page.getByText('The search for a shorter lay broke down.').waitFor()
    await page.getByRole('button', { name: 'Back to the first lay' }).click()
    await settled(page)
    expect(await price(page).textContent()).toBe(reckoned)
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.locator('.sheet h2').first().waitFor()
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('takes a piece laid by hand where it can be cut, and refuses it where it cannot', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await toTheDesk(page)
    await page.getByRole('button', { name: 'Lay by hand' }).click()
    const pieces = page.locator('.hand-lay .piece')
    await pieces.first().scrollIntoViewIfNeeded()
    const sleeve = page.getByRole('button', { name: /^left sleeve/ })
    const before = await sleeve.getAttribute('aria-label')

    const front = (await page.getByRole('button', { name: /^front,/ }).boundingBox())!
    const from = (await sleeve.boundingBox())!
    await drag(
      page,
      sleeve,
      front.x + front.width / 2 - from.x - from.width / 2,
      front.y + front.height / 2 - from.y - from.height / 2,
    )
    await page.getByText('Two pieces lie over each other.').waitFor()
    expect(await sleeve.getAttribute('aria-label')).toBe(before)

    const cloth = (await page.locator('.hand-lay').boundingBox())!
    const now = (await sleeve.boundingBox())!
    await drag(page, sleeve, cloth.x + cloth.width - now.x - now.width - 2, 0)
    await page.getByRole('button', { name: 'Lay the rest around those held' }).waitFor()
    await expect.poll(() => sleeve.getAttribute('aria-label')).not.toBe(before)
    expect(await sleeve.getAttribute('aria-pressed')).toBe('true')
    expect(await axeFaults(page)).toEqual([])

    // By keyboard alone: a step along the cloth, and back into the lay's own choice.
    const held = await sleeve.getAttribute('aria-label')
    await sleeve.focus()
    await page.keyboard.press('Shift+ArrowLeft')
    await expect.poll(() => sleeve.getAttribute('aria-label')).not.toBe(held)
    await page.keyboard.press('l')
    await expect.poll(() => sleeve.getAttribute('aria-pressed')).toBe('false')
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('keeps the pieces off a flaw that is marked, and lets the mark be taken away', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await toTheDesk(page)
    await page.getByText('Flaws in the cloth').click()
    const fields = { 'From the selvedge': '20', 'From the cut end': '0', Across: '30 cm', Along: '600 mm' }
    for (const [label, text] of Object.entries(fields))
      await page.getByLabel(label, { exact: true }).fill(text)
    await page.getByRole('button', { name: 'Mark the flaw' }).click()
    await settled(page)
    const taken = page.getByRole('button', { name: /^Take the mark away: 30 cm × 60 cm at 20 cm/ })
    await taken.waitFor()
    await page.getByRole('button', { name: 'Lay by hand' }).click()
    // Pieces are drawn over it: where it is seen, none covers it.
    await page.locator('.hand-lay .flaw').scrollIntoViewIfNeeded()
    const { x, y, width, height } = (await page.locator('.hand-lay .flaw').boundingBox())!
    for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const seen = await page.evaluate(
        ([left, top]) => document.elementFromPoint(left!, top!)?.getAttribute('class'),
        [x + part * width, y + part * height],
      )
      expect(seen).toBe('flaw')
    }
    await taken.click()
    await expect.poll(() => page.locator('.hand-lay .flaw').count()).toBe(0)
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('says what each way of laying and each cloth would cost', async () => {
    const { page, errors, close } = await openPlanner(browser(), scratch())
    await toTheDesk(page)
    await page.getByRole('combobox', { name: 'For' }).fill('Þórunn Vale')
    await page.getByRole('option', { name: 'Þórunn Vale', exact: true }).click()
    await page.getByText('What each way of laying costs').first().click()
    const folded = page.getByRole('row', { name: /folded along its length/i })
    await folded.waitFor()
    expect(await folded.textContent()).toMatch(/£\d/)
    await page.getByText('On other cloths').click()
    await page.getByRole('button', { name: 'Compare the cloths' }).click()
    const narrow = page.getByRole('row', { name: /56 cm/ })
    await narrow.waitFor()
    await expect.poll(() => page.getByRole('row').count()).toBeGreaterThan(10)
    expect(errors).toEqual([])
    await close()
  }, 60_000)

  test('says how much shorter a lay must be for a step of the shop less, where it is little', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page, errors, close } = planner
    await granted(planner, 'settings.set', {
      revision: 0,
      changes: { letterhead: { name: 'Ropewalk', locale: 'en-GB' } },
    })
    const { client } = await granted<{ client: { id: string } }>(planner, 'client.add', { name: 'Maud' })
    const { measurementSet } = await granted<{ measurementSet: { id: string } }>(
      planner,
      'measurementSet.add',
      {
        ...{ clientId: client.id, measures: WOMAN },
      },
    )
    const linen = {
      name: 'Linen',
      fibre: 'linen',
      width: 1500,
      pricePerMetre: { minor: 1000, currency: 'GBP' },
    }
    const { cloth } = await granted<{ cloth: { id: string; revision: number } }>(planner, 'cloth.add', linen)
    const { purchase } = await granted<{ purchase: { needed: number; layLength: number } }>(
      planner,
      'garment.estimate',
      {
        ...{ construction: 'goredUndertunic', measurementSetId: measurementSet.id, clothId: cloth.id },
      },
    )
    // A step that twice is bought for two centimetres more than one.
    const increment = Math.round(purchase.needed) - 20
    await granted(planner, 'cloth.change', {
      id: cloth.id,
      revision: cloth.revision,
      cloth: { ...linen, increment },
    })
    await page.reload()
    await page.evaluate(() => {
      location.hash = '#/desk'
    })
    await settled(page)
    const said = await page.getByText(/^Were the lay /).textContent()
    const [, less, saved] = /lay (\S+) cm shorter, .* less would be bought: £(\S+)\.$/.exec(said!)!
    // Washing, margin and all in proportion: a little less than the two centimetres that are lacking.
    expect(Number(less)).toBeGreaterThan(1.5)
    expect(Number(less)).toBeLessThanOrEqual(2.1)
    expect(Number(saved)).toBeCloseTo(increment / 100, 2)
    expect(errors).toEqual([])
    await close()
  }, 60_000)
})
