import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { axeFaults } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheCloths } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`what is left, and what does not come, on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('a remnant gets its place and lies with the lengths; an order is called off', async () => {
    const planner = await openPlanner(browser(), scratch(), { viewport: { width: 900, height: 800 } })
    const { page } = planner
    const { cloth, commission } = await openUncut(planner)
    const { id: garmentId } = commission.garments[0]!
    await granted(planner, 'stock.add', { clothId: cloth, length: '3 m', orderedDay: '2026-11-02' })
    await granted(planner, 'stage.tick', { garmentId, stage: 'cut', anyway: ['unmeasured'] })
    await granted(planner, 'remnants.keep', { garmentId, offcuts: [0] })
    await toTheCloths(page)

    const coming = page.locator('.life > li').filter({ hasText: 'on its way' })
    await coming.getByRole('button', { name: /^It will not come/ }).click()
    await coming.getByRole('button', { name: 'Take it off' }).click()
    await coming.waitFor({ state: 'detached' })

    const shelf = page.locator('section').filter({ hasText: 'Remnants on the shelf' })
    await shelf.getByText('washed', { exact: true }).waitFor()
    await shelf.getByRole('button', { name: /^Put it elsewhere/ }).click()
    await shelf.getByLabel('Place', { exact: true }).fill('the blue box')
    expect(await axeFaults(page)).toEqual([])
    await shelf.getByRole('button', { name: 'Keep the place' }).click()
    await shelf.getByText('at the blue box · washed').waitFor()
    await shelf.getByRole('button', { name: /^Put it with the lengths: White linen/ }).click()
    await shelf.getByRole('button', { name: 'Put it with the lengths', exact: true }).last().click()
    await shelf.waitFor({ state: 'detached' })
    const rows = page.locator('.life > li')
    await rows.getByText('at the blue box · washed').waitFor()
    expect(await rows.count()).toBe(1)
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
