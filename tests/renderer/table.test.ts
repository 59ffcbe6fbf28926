import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults, tooLow, tooWide } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

type Sizes = { pieces: { cutSize: { width: number; height: number } }[] }

const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { level: 1, name })
const centimetres = (mm: number) => String(Math.round(mm) / 10)

async function toTheTable(page: Page): Promise<void> {
  await toTheUncut(page)
  await page.getByRole('link', { name: /^At the cutting table: gored undertunic for Ása Holt$/i }).click()
  await page.locator('.table-station').waitFor()
}

describe.runIf(hasBrowser)(`the cutting table${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('goes from the washed cloth over every piece to the cutting by keyboard, and asks what cutting asks', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { commission } = await openUncut(planner)
    await toTheTable(page)
    await heading(page, 'Measure the cloth anew').waitFor()
    await page.keyboard.press('ArrowLeft')
    await heading(page, /^Wash and press the cloth ✓ done$/).waitFor()
    await page.keyboard.press('ArrowRight')
    await heading(page, 'Measure the cloth anew').waitFor()

    const { pieces } = await granted<Sizes>(planner, 'garment.table', {
      garmentId: commission.garments[0]!.id,
    })
    expect(pieces.length).toBeGreaterThan(3)
    for (const [i, { cutSize }] of pieces.entries()) {
      await page.keyboard.press('ArrowRight')
      await page.getByText(`Piece ${i + 1} of ${pieces.length}`).waitFor()
      const size = `${centimetres(cutSize.width)} × ${centimetres(cutSize.height)}`
      expect(await page.locator('.table-size').textContent()).toBe(size)
      const letters = await page.locator('.table-size').evaluate((one) => getComputedStyle(one).fontSize)
      expect(Number.parseFloat(letters)).toBeGreaterThanOrEqual(48)
      expect(await page.getByRole('button', { name: 'Done' }).count()).toBe(0)
    }
    await page.keyboard.press('ArrowRight')
    await heading(page, 'Lay out, chalk and cut').waitFor()
    await page.getByText('cut away from your hand').waitFor()
    await page.keyboard.press('Space')
    await page.getByText('nobody has measured what is left of it').waitFor()
    await page.getByRole('button', { name: 'Cut all the same' }).click()
    await heading(page, 'Lay out, chalk and cut ✓ done').waitFor()
    await page.getByRole('button', { name: /^Undo/ }).click()
    await heading(page, /^Lay out, chalk and cut$/).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('is worked by touch: large targets, the timer started and stopped, done, and on to the next step', async () => {
    const planner = await openPlanner(browser(), scratch(), {
      hasTouch: true,
      viewport: { width: 768, height: 1024 },
    })
    const { page } = planner
    const { commission } = await openUncut(planner)
    const cut = commission.garments[0]!.steps.find(({ key }) => key === 'cut')!
    await granted(planner, 'step.tick', { id: cut.id, anyway: ['unmeasured'] })
    await toTheTable(page)
    await heading(page, 'Sew the shoulder seams').waitFor()
    await page
      .getByRole('row', { name: /shoulder seam/i })
      .first()
      .waitFor()
    expect(await tooLow(page, '.table a, .table button, .table summary, .table .tick', 64)).toEqual([])
    await page.getByRole('button', { name: 'Start the timer: Sew the shoulder seams' }).tap()
    await page.getByRole('button', { name: /^Stop timer, / }).tap()
    await page.getByRole('status').getByText('Less than half a minute: nothing is logged.').waitFor()
    await page.getByRole('button', { name: 'Done' }).tap()
    await heading(page, 'Sew the shoulder seams ✓ done').waitFor()
    await page.getByRole('button', { name: 'Next' }).tap()
    await heading(page, /^Set the gores/).waitFor()
    await page.getByRole('button', { name: 'Back' }).tap()
    await page.getByRole('button', { name: 'Open it again' }).tap()
    await heading(page, /^Sew the shoulder seams$/).waitFor()
    await page.getByRole('link', { name: /^Back to C-/ }).tap()
    await page.getByRole('heading', { name: /^Commission C-/ }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test.each([768, 900, 1280])(
    'fits a screen %s px wide, every piece of it, and axe finds nothing',
    async (width) => {
      const planner = await openPlanner(browser(), scratch(), { viewport: { width, height: 800 } })
      const { page } = planner
      await openUncut(planner)
      await toTheTable(page)
      for (let i = 0; i < 9; i++) {
        expect(await tooWide(page)).toBeLessThanOrEqual(0)
        expect(await tooLow(page, '.table a, .table button, .table summary, .table .tick', 64)).toEqual([])
        if (i < 3) expect(await axeFaults(page)).toEqual([])
        await page.keyboard.press('ArrowRight')
      }
      expect(planner.errors).toEqual([])
      await planner.close()
    },
  )
})
