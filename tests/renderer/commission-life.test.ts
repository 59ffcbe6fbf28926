import { readFile } from 'node:fs/promises'
import { describe, expect, test } from 'vitest'
import { chooseFile, hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { openUncut, toTheUncut } from '../support/uncut.ts'
import { granted } from '../support/undertunic.ts'

describe.runIf(hasBrowser)(`the life of a commission on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('its days and its note are kept, and it is called off once she says so', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { commission } = await openUncut(planner)
    await toTheUncut(page)
    const days = page.getByRole('form', { name: 'Days and note' })
    await days.getByLabel('Due on').fill('2027-03-01')
    await days.getByLabel('Worn on').fill('2027-03-14')
    await days.getByLabel('About it, in a line').fill('for the spring market')
    await days.getByRole('button', { name: 'Keep these' }).click()
    await expect
      .poll(() => granted(planner, 'commission.get', { id: commission.id }))
      .toMatchObject({
        commission: { dueDay: '2027-03-01', eventDay: '2027-03-14', note: 'for the spring market' },
      })
    await page.reload()
    expect(await days.getByLabel('Worn on').inputValue()).toBe('14/03/2027')

    await page.getByRole('button', { name: 'Call it off' }).click()
    await page.getByText('Nothing has been paid, and nothing is owed.').waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Add a payment' }).click()
    await page.getByLabel('Amount, GBP').fill('50')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByRole('cell', { name: /^R-\d{4}-0*1$/ }).waitFor()
    await page.getByRole('button', { name: 'Call it off' }).click()
    await page.getByText('£0.00 is kept, and £50.00 goes back to the customer.').waitFor()
    await page.getByRole('button', { name: 'Yes, call it off' }).click()
    await page.getByText(/called off on \d/).waitFor()
    expect(await page.getByRole('checkbox', { name: /^Try on/ }).isDisabled()).toBe(true)
    await page.getByRole('button', { name: 'Give money back' }).click()
    const back = page.getByRole('form', { name: 'Give money back' })
    await back.getByLabel('Amount, GBP').fill('50')
    await back.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('Nothing has been paid, and nothing is owed.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('a fitting is booked, moved and held', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { commission } = await openUncut(planner)
    await toTheUncut(page)
    const section = page.locator('section', { has: page.getByRole('heading', { name: 'Fittings' }) })
    await section.getByRole('button', { name: 'Book a fitting' }).click()
    await section.getByLabel('Day of the fitting').fill('2027-02-01')
    await section.getByLabel('Time of day').fill('14:30')
    await section.getByLabel('To look at').fill('the neck')
    await section.getByRole('button', { name: 'Book it' }).click()
    await section.getByText('1 February 2027 at 14:30').waitFor()
    await section.getByRole('button', { name: /^Put it on another day/ }).click()
    await section.getByLabel('Day of the fitting').fill('2027-02-03')
    await section.getByRole('button', { name: 'Move it' }).click()
    await section.getByRole('button', { name: /^Write down what was found: 3 February 2027/ }).click()
    const form = section.getByRole('form')
    await form.getByLabel('What was found').fill('Sleeves a finger too long.')
    await form.getByLabel('Work it added').fill('1 h 20')
    await form.getByLabel('Measures it led to').selectOption({ label: 'Ása Holt, taken on 5 January 2026' })
    await form.locator('.tick').first().click()
    await form.getByRole('button', { name: 'Keep what was found' }).click()
    await section.getByText('✓ held').waitFor()
    await section
      .getByText(/^1 h 20 more work · to cut again: .+ · led to another set of measures$/)
      .waitFor()
    const { fittings } = await granted<{ fittings: object[] }>(planner, 'fittings.list', {
      commissionId: commission.id,
    })
    expect(fittings).toMatchObject([{ minutesAdded: 80, found: 'Sleeves a finger too long.' }])
    await section.getByRole('button', { name: /^Take it off/ }).click()
    await section.getByRole('form').getByRole('button', { name: 'Take it off' }).click()
    await section.getByText('No fitting is booked.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('notes and pictures are kept, changed and taken off', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    await page.getByRole('button', { name: 'Write a note' }).click()
    await page.getByLabel('Its words').fill('She will bring her own belt.')
    await page.getByLabel('What it is').selectOption('message')
    await page.getByLabel('Day it was written').fill('2026-04-02')
    await page.getByRole('button', { name: 'Keep the note' }).click()
    await page.getByText('2 April 2026 · message to the client').waitFor()
    await page.getByRole('button', { name: /^Change it: 2 April 2026/ }).click()
    await page.getByLabel('Its words').fill('She brings belt and shoes.')
    await page.getByRole('button', { name: 'Keep the note' }).click()
    await page.getByText('She brings belt and shoes.').waitFor()

    const picture = await page.screenshot()
    await chooseFile(page, 'Add pictures', { name: 'effigy.png', mimeType: 'image/png', buffer: picture })
    const small = page.locator('.thumbnail img')
    await small.waitFor()
    const sizeOf = (image: typeof small) =>
      image.evaluate((element: HTMLImageElement) => element.decode().then(() => element.naturalWidth))
    expect(await sizeOf(small)).toBe(320)
    await page.getByRole('button', { name: 'effigy.png: show it large' }).click()
    expect(await sizeOf(page.getByRole('img', { name: 'effigy.png' }))).toBe(1280)
    await page.getByRole('button', { name: 'Take it off: effigy.png' }).click()
    await page.locator('figure form').getByRole('button', { name: 'Take it off' }).click()
    await small.waitFor({ state: 'detached' })
    await chooseFile(page, 'Add pictures', {
      name: 'list.png',
      mimeType: 'image/png',
      buffer: Buffer.from('no'),
    })
    await page.getByText('list.png is no picture that can be kept.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('money comes in part by part, the invoice is made and cancelled, and the books have it all', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openUncut(planner)
    await toTheUncut(page)
    const sums = page.locator('.sums')
    await sums.getByText(/^since acceptance on/).waitFor()
    await page.getByRole('button', { name: 'Add a payment' }).click()
    await page.getByLabel('Amount, GBP').fill('much')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.locator('.act .refusal').waitFor()
    await page.getByLabel('Amount, GBP').fill('20,50')
    await page.getByLabel('How it was paid').selectOption('cash')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByRole('row', { name: /R-\d{4}-0*1 .* payment £20.50 cash acceptance/ }).waitFor()
    await sums.getByText('£20.50').waitFor()

    await page.getByRole('button', { name: 'Make the invoice' }).click()
    await page.getByRole('button', { name: 'Make it' }).click()
    await page.getByText(/^Invoice I-\d{4}-0*1 is made\. The customer’s address is not on it\.$/).waitFor()
    await page.getByRole('button', { name: /^Cancel it: I-/ }).click()
    await page.getByLabel('Why it is cancelled').fill('wrong address')
    await page.getByRole('button', { name: 'Cancel the invoice' }).click()
    await page.getByText(/cancelled by I-\d{4}-0*2$/).waitFor()

    await page.getByRole('link', { name: 'Commissions', exact: true }).click()
    await page.getByRole('link', { name: 'Books' }).click()
    await page.getByRole('row', { name: /credit note Ása Holt/ }).waitFor()
    const year = await page.getByLabel('Year').inputValue()
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a table (CSV)' }).click()
    const file = await download
    expect(file.suggestedFilename()).toBe(`ellwand-${year}.csv`)
    const lines = (await readFile(await file.path(), 'utf8')).trim().split('\r\n')
    expect(lines).toHaveLength(4)
    await page.getByLabel('Year').selectOption(String(Number(year) - 1))
    await page.getByText(`No invoice and no payment in ${Number(year) - 1}.`).waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
