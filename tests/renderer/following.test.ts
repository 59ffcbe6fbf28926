import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'
import { granted, openWorkroom, toTheCommission } from '../support/undertunic.ts'

type Steps = { commission: { garments: { steps: { id: string; doneAt: string | null }[] }[] } }

describe.runIf(hasBrowser)(`following the work on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('a stage ticked by mistake is undone to just what was ticked before', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id } = await openWorkroom(planner)
    await toTheCommission(page)
    const doneAt = async () =>
      (await granted<Steps>(planner, 'commission.get', { id })).commission.garments[0]!.steps.map(
        (step) => step.doneAt,
      )
    const before = await doneAt()
    await page.locator('.tick', { hasText: 'Sew: all of it' }).click()
    await page.getByRole('status').getByText('Ticked: Sew: all of it.').waitFor()
    expect(await doneAt()).not.toEqual(before)
    await page.getByRole('button', { name: 'Undo: Sew: all of it' }).focus()
    await page.keyboard.press('Enter')
    await page.getByRole('status').getByText('Open again: Sew: all of it.').waitFor()
    expect(await doneAt()).toEqual(before)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('what cutting asks first goes on with the step that was ticked, and a piece is undone too', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    await page.getByText('Cut piece by piece: 0 of').click()
    const piece = page.locator('.pieces .tick').first()
    await piece.click()
    await page.locator('.pieces').getByRole('button', { name: 'Cut all the same' }).click()
    await page.getByText(/^Cut piece by piece: 1 of/).waitFor()
    await page.locator('.pieces').getByRole('button', { name: /^Undo/ }).click()
    await page.getByText(/^Cut piece by piece: 0 of/).waitFor()

    await page.locator('.tick', { hasText: 'Lay out, chalk and cut' }).click()
    await page.getByRole('button', { name: 'Cut all the same' }).click()
    await page.getByRole('status').getByText('Ticked: Lay out, chalk and cut.').waitFor()
    await page.getByRole('button', { name: 'Undo: Lay out, chalk and cut' }).click()
    await page.getByText('Cut piece by piece: 0 of').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('what was taken off is put back, and the empty search field leads to what was changed lately', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id } = await openWorkroom(planner)
    type Made = { note: { id: string; revision: number } }
    const { note } = await granted<Made>(planner, 'note.add', { commissionId: id, text: 'a belt and shoes' })
    await granted(planner, 'note.remove', { id: note.id, revision: note.revision })
    await page.getByRole('link', { name: 'Today', exact: true }).click()
    await page.getByRole('link', { name: 'Taken off lately' }).click()
    await page.getByRole('button', { name: 'Put back: Note: a belt and shoes' }).click()
    await page.getByRole('status').getByText('Back in its place: Note: a belt and shoes.').waitFor()
    await page.getByText('Nothing was taken off in the last 30 days.').waitFor()

    await page.keyboard.press('/')
    const lately = page.getByRole('list', { name: 'Changed lately' })
    await lately.getByRole('link', { name: /^C-\d{4}-001 Ása Holt .*commission/ }).waitFor()
    await page.keyboard.press('Escape')
    await lately.waitFor({ state: 'detached' })
    await page.keyboard.press('/')
    await lately.waitFor()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.getByText('a belt and shoes').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('work agreed already is a commission at once, and the list says what it waits for', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await page.getByRole('button', { name: 'Already agreed: enter it as a commission' }).click()
    const form = page.getByRole('form', { name: 'Already agreed: enter it as a commission' })
    await form.getByLabel('Due on').fill('2027-03-01')
    await form.getByLabel('About it, in a line').fill('for the spring market')
    await form.getByRole('button', { name: 'Make it a commission' }).click()
    await page.getByRole('heading', { name: /^Commission C-\d{4}-002 for/ }).waitFor()
    expect(await page.getByLabel('Due on').inputValue()).toBe('01/03/2027')
    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    const row = page.getByRole('row', { name: /^C-\d{4}-002/ })
    await row.getByText(/^Waits for the client: £[\d.]+ of the deposit is not paid/).waitFor()
    await row.getByText(/cloth: \d+ cm is to be bought/).waitFor()
    await page.getByRole('link', { name: 'Today', exact: true }).click()
    await page
      .locator('.today-next li', { hasText: /C-\d{4}-002/ })
      .getByText(/^Waits for the client: £[\d.]+ of the deposit is not paid/)
      .waitFor()
    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    await page
      .getByRole('row', { name: /^C-\d{4}-001/ })
      .getByText(/^Sew/)
      .waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('open work stays in sight, however much was delivered since', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    type Made = { id: string; revision: number }
    const { clients } = await granted<{ clients: Made[] }>(planner, 'clients.list')
    const { cloths } = await granted<{ cloths: Made[] }>(planner, 'cloths.list')
    const wearerId = clients[0]!.id
    const { measurementSets } = await granted<{ measurementSets: Made[] }>(planner, 'client.get', {
      id: wearerId,
    })
    const line = { construction: 'kerchief', measurementSetId: measurementSets[0]!.id, wearerId }
    for (let i = 0; i < 100; i++) {
      const { commission } = await granted<{ commission: Made }>(planner, 'commission.enter', {
        ...{ customerId: wearerId, lines: [{ ...line, clothId: cloths[0]!.id }] },
      })
      await granted(planner, 'commission.deliver', { id: commission.id, revision: commission.revision })
    }
    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    const rows = page.locator('.at-a-glance:not(.bygone) tbody tr')
    await rows.first().getByText(/^Sew/).waitFor()
    expect(await rows.first().getByRole('link').textContent()).toMatch(/^C-\d{4}-001$/)
    expect(await rows.count()).toBe(1)
    // Of the others only those in view are there, and all of them can be scrolled to.
    const bygone = page.locator('.bygone')
    await expect.poll(() => bygone.getAttribute('aria-rowcount'), { timeout: 20_000 }).toBe('101')
    expect(await bygone.getByRole('link').count()).toBeLessThan(80)
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight))
    await bygone.getByRole('link', { name: /^C-\d{4}-002$/ }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('the weeks say what a waiting quote would do', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.getByText(/^Accepted today it would be done by .*, the day promised to the client\./).waitFor()
    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    await page.getByRole('link', { name: 'The weeks to come' }).click()
    const quote = page.getByRole('listitem').filter({ hasText: /Q-\d{4}-002 Ása Holt, £/ })
    await quote.getByText(/^It would take \d+ h( \d+)? of work\./).waitFor()
    await quote.getByText(/: in time for .*, the day promised to the client\./).waitFor()
    await quote.getByRole('link', { name: /^Q-\d{4}-002$/ }).click()
    await page.getByRole('button', { name: 'The client declines' }).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('an order called off after cutting owes what is missing of the deposit, as the workroom has it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id, revision } = await openWorkroom(planner)
    await page.getByRole('link', { name: 'Workroom', exact: true }).click()
    const keep = page.getByRole('checkbox', { name: /^Keep the deposit when an order is called off/ })
    expect(await keep.isChecked()).toBe(true)
    await page.locator('.tick', { hasText: 'Keep the deposit' }).click()
    await page.getByRole('button', { name: 'Keep these settings' }).click()
    await expect
      .poll(() => granted(planner, 'settings.get'))
      .toMatchObject({ settings: { keepDepositOnceCut: false } })
    // The quote was made before that, and stands as it was made.
    await granted(planner, 'invoice.make', { commissionId: id })
    await granted(planner, 'commission.cancel', { id, revision })
    await toTheCommission(page)
    await page.getByText(/^£[\d.]+ of the deposit is still owed\.$/).waitFor()
    await page.locator('.sums').getByText('Due now').waitFor()
    const asksForAll = page.getByText(/^The order was called off, and invoice I-\d{4}-001 still asks for all/)
    await asksForAll.waitFor()
    expect(await page.getByRole('button', { name: /^(Log time|Start the timer)/ }).count()).toBe(0)
    await page.getByRole('button', { name: /^Cancel it/ }).click()
    await page.getByLabel('Why it is cancelled').fill('called off')
    await page.getByRole('button', { name: 'Cancel the invoice' }).click()
    await page.getByText(/cancelled by I-\d{4}-002$/).waitFor()
    await asksForAll.waitFor({ state: 'detached' })
    expect(await page.getByRole('button', { name: 'Make the invoice' }).count()).toBe(0)
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
