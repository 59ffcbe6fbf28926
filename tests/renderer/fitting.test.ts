import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`a fitting on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('leads to new measures, to a new draft that is tried before it is kept, and to work on the list', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { commission } = await openUncut(planner)
    const garmentId = commission.garments[0]!.id
    await granted(planner, 'stage.tick', { garmentId, stage: 'cut', anyway: ['unmeasured'] })
    await granted(planner, 'fitting.add', { commissionId: commission.id, garmentId, day: '2027-02-03' })
    await toTheUncut(page)
    const section = page.locator('section', { has: page.getByRole('heading', { name: 'Fittings' }) })
    await section.getByRole('button', { name: /^Write down what was found/ }).click()
    await section.getByRole('textbox', { name: 'What was found' }).fill('Tight across the bust.')
    await section.getByLabel('Work it added').fill('30')
    await section.getByRole('button', { name: 'Keep what was found' }).click()
    await page.getByRole('checkbox', { name: /^Alter what the fitting on 3 February 2027 found/ }).waitFor()

    const second = section.getByRole('heading', { name: '2 of 3: measures that changed' })
    await second.waitFor()
    expect(await second.evaluate((at) => at === document.activeElement)).toBe(true)
    const measures = section.getByRole('form', { name: 'Take measures anew' })
    await measures.getByRole('button', { name: 'No measure changed, go on' }).waitFor()
    await measures.getByLabel('bust girth', { exact: true }).fill('101 cm')
    await measures.getByRole('button', { name: 'Keep the new measures' }).click()
    await section.getByText('led to another set of measures').waitFor()

    await section.getByRole('heading', { name: '3 of 3: what is made otherwise' }).waitFor()
    const draft = section.getByRole('form', { name: 'Draft it again' })
    await draft.getByRole('row', { name: /^front × 1/ }).waitFor()
    await draft.getByLabel('Hem level', { exact: true }).selectOption('ankle')
    await draft.getByRole('row', { name: /^gore × 4/ }).waitFor()
    await draft.getByText(/^Cloth as bought: .* before, .* now\./).waitFor()
    const toCut = draft.getByRole('group', { name: /Pieces to cut for the new draft$/ })
    await toCut.getByText(/^back × 1/).click()
    await draft.getByRole('button', { name: 'Make it so' }).click()
    await draft.waitFor({ state: 'detached' })
    await page.getByRole('checkbox', { name: /^Cut for the new draft: front; left sleeve; / }).waitFor()
    type Made = { made: { choices: object; again: object[] } }
    const { made } = await granted<Made>(planner, 'garment.made', { garmentId })
    expect(made).toMatchObject({ choices: { hemLevel: 'ankle' }, again: [{ number: 2 }] })
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
