import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { textOf } from '../paper/poppler.ts'
import { WOMAN } from '../support/bodies.ts'
import { hasBrowser, openPlanner, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { granted } from '../support/undertunic.ts'

type Money = { minor: number; currency: string }
type Quote = { id: string; number: string; state: string; snapshot: { total: Money } }
type MoneyOf = {
  paid: Money
  owed: Money
  due: Money
  payments: { amountMinor: number }[]
  invoices: { total: Money }[]
}
type Length = { length: number; used: number }
type Commission = { id: string; number: string; agreed: Money; garments: { id: string }[] }

const pounds = ({ minor }: Money) => `£${(minor / 100).toFixed(2)}`

/** Drafts a garment for a client at the desk, and saves it as a quote; its number is answered. */
async function quote(page: Page, wearer: string, garment: string, cloth: string): Promise<string> {
  await page.getByRole('link', { name: 'Quote desk', exact: true }).click()
  await page.getByRole('combobox', { name: 'For' }).fill(wearer)
  await page.getByRole('option', { name: wearer, exact: true }).click()
  await page.getByLabel('Garment', { exact: true }).selectOption({ label: garment })
  await page.getByLabel('Cloth', { exact: true }).selectOption({ label: cloth })
  await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
  await page.getByRole('button', { name: 'Save as a quote' }).click()
  const heading = page.getByRole('heading', { name: new RegExp(`^Quote Q-2026-\\d+ for ${wearer}$`) })
  return (await heading.textContent())!.split(' ')[1]!
}

/** The text of the paper that a button prints. */
async function paper({ page, store }: Planner, button: string): Promise<string> {
  const printed = new Promise<string>((resolve) => {
    const stop = store.listen((event) => {
      if (!('answer' in event) || !event.answer.ok) return
      stop()
      resolve((event.answer.result as { document: { id: string } }).document.id)
    })
  })
  const shown = page.context().waitForEvent('page')
  await page.getByRole('button', { name: button, exact: true }).click()
  await (await shown).close()
  const file = await store.paper(await printed)
  if (!file.ok) throw new Error(file.error.message)
  return textOf(await readFile(file.result.path))
}

const to = async (page: Page, room: string, heading: string | RegExp = room) => {
  await page.getByRole('link', { name: room, exact: true }).click()
  await page.getByRole('heading', { name: heading, level: 1 }).waitFor()
}

const toCommission = async (page: Page, number: string) => {
  await to(page, 'Commissions')
  await page.getByRole('link', { name: number, exact: true }).click()
  await page.getByRole('heading', { name: new RegExp(`^Commission ${number}`) }).waitFor()
}

const tick = async (page: Page, name: string | RegExp) => {
  await page.getByRole('checkbox', { name }).press('Space')
  await page.getByRole('checkbox', { name }).and(page.locator(':checked')).waitFor()
}

describe.runIf(hasBrowser)(`a month in the workroom${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('goes from three quotes to a garment delivered and paid, and its figures agree everywhere', async () => {
    const folder = scratch()
    const open = async (day: string, time = '09:00') => {
      const opened = await openPlanner(browser(), folder, {
        at: `${day}T${time}:00.000Z`,
        timezoneId: 'Europe/London',
      })
      opened.page.setDefaultTimeout(8000)
      return opened
    }
    const done = async (planner: Planner) => {
      expect(planner.errors).toEqual([])
      await planner.close()
    }

    // Monday: three clients ask, and three quotes go out.
    let planner = await open('2026-03-02')
    let { page } = planner
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    const letterhead = { name: 'Ropewalk Sewing', address: ['1 Ropewalk', 'Weirside'] }
    // With tax and without rounding, so that no two sums are alike by chance.
    const rates = { tax: { name: 'VAT', basisPoints: 2000 }, rounding: { step: 1, direction: 'nearest' } }
    await granted(planner, 'settings.set', { revision: 0, changes: { letterhead, rates } })
    for (const name of ['Ása Holt', 'Wenna Treece', 'Ib Falk']) {
      const { client } = await granted<{ client: { id: string } }>(planner, 'client.add', {
        ...{ name, address: ['2 Weir Lane', 'Weirside'] },
      })
      await granted(planner, 'measurementSet.add', { clientId: client.id, measures: WOMAN })
    }
    await granted(planner, 'cloth.add', {
      ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
      ...{ pricePerMetre: { minor: 1650, currency: 'GBP' }, supplier: 'Weir Mill', leadDays: 7 },
    })
    await page.reload()
    const first = await quote(page, 'Ása Holt', 'gored undertunic', 'White linen')
    const quoted = await page.locator('main strong').last().textContent()
    const second = await quote(page, 'Wenna Treece', 'apron', 'White linen')
    const third = await quote(page, 'Ib Falk', 'hood', 'White linen')
    await done(planner)

    // Wednesday: two say yes, one says no; the first pays her deposit, and the cloth is ordered.
    planner = await open('2026-03-04')
    page = planner.page
    const answer = async (number: string, button: string) => {
      await to(page, 'Commissions')
      await to(page, 'Quotes')
      await page.getByRole('link', { name: new RegExp(`^${number}`) }).click()
      await page.getByRole('button', { name: button }).click()
    }
    await answer(first, 'The client accepts')
    await page.getByRole('heading', { name: 'Commission C-2026-001 for Ása Holt' }).waitFor()
    await page.getByRole('button', { name: 'Add a payment' }).click()
    await page.getByLabel('How it was paid').selectOption('transfer')
    const deposit = await page.getByLabel('Amount, GBP').inputValue()
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByRole('cell', { name: 'R-2026-001', exact: true }).waitFor()
    await answer(second, 'The client accepts')
    await page.getByRole('heading', { name: 'Commission C-2026-002 for Wenna Treece' }).waitFor()
    await answer(third, 'The client declines')
    await page.locator('p.quiet', { hasText: '· declined' }).first().waitFor()
    await to(page, 'Cloth')
    await page.getByRole('button', { name: 'Add a length' }).click()
    await page.getByLabel('Length of it').fill('8 m')
    await page.getByLabel('How it comes').selectOption('ordered')
    await page.getByLabel('Expected on').fill('2026-03-11')
    await page.getByRole('button', { name: 'Keep this length' }).click()
    await page.getByText('expected on 11 March 2026').waitFor()
    await done(planner)

    // The cloth comes, is promised to the tunic, and goes through the wash overnight.
    planner = await open('2026-03-11')
    page = planner.page
    await to(page, 'Cloth')
    await page.getByRole('button', { name: /^It has arrived/ }).click()
    await page.getByLabel('Place', { exact: true }).fill('shelf 2')
    await page.getByRole('button', { name: 'It is here' }).click()
    await toCommission(page, 'C-2026-001')
    await page.getByRole('button', { name: /^Set it aside/ }).click()
    await page.getByText(/at shelf 2, is set aside for it$/).waitFor()
    await tick(page, /^Wash and press the cloth/)
    await done(planner)

    // Measured again, laid on what is there, and cut.
    planner = await open('2026-03-12')
    page = planner.page
    await toCommission(page, 'C-2026-001')
    await page.getByRole('checkbox', { name: /^Lay out, chalk and cut/ }).press('Space')
    await page.getByText('nobody has measured what is left of it').waitFor()
    await page.getByRole('button', { name: /^Measure the washed cloth/ }).click()
    await page.getByLabel('Width, washed').fill('144 cm')
    await page.getByLabel('Length, washed').fill('300 cm')
    await page.getByRole('button', { name: 'Lay it on this cloth' }).click()
    const measured = page.getByText(/^Measured after the wash: 144 cm wide, 300 cm long/)
    await measured.waitFor()
    const laid = /The lay takes ([\d.]+ cm)/.exec((await measured.textContent())!)![1]!
    expect(await paper(planner, 'Cutting sheet')).toContain(laid)
    await tick(page, /^Lay out, chalk and cut/)
    await page.getByText(/^[\d.]+ cm of White linen was cut for it$/).waitFor()
    await done(planner)

    // The timer runs while the planner is closed for dinner.
    planner = await open('2026-03-13', '10:00')
    page = planner.page
    await toCommission(page, 'C-2026-001')
    await page.getByRole('button', { name: 'Start the timer: Sew the shoulder seams' }).click()
    await page.getByRole('region', { name: 'Timer' }).getByText('Sew the shoulder seams').waitFor()
    await done(planner)
    planner = await open('2026-03-13', '11:10')
    page = planner.page
    await page.getByRole('region', { name: 'Timer' }).getByRole('button', { name: 'Stop and log' }).click()
    await page.getByRole('status').getByText('1 h 10 logged: Sew the shoulder seams').waitFor()
    await toCommission(page, 'C-2026-001')
    await page.getByRole('button', { name: 'Book a fitting' }).click()
    await page.getByLabel('Day of the fitting').fill('2026-03-18')
    await page.getByRole('button', { name: 'Book it' }).click()
    await page.getByText('18 March 2026').waitFor()
    await done(planner)

    // The fitting finds a sleeve to alter and a hem to be lower: half an hour more, and a new draft.
    planner = await open('2026-03-18')
    page = planner.page
    await toCommission(page, 'C-2026-001')
    await page.getByRole('button', { name: /^Write down what was found/ }).click()
    await page.getByRole('textbox', { name: 'What was found' }).fill('Hem to the ankle after all.')
    await page.getByLabel('Work it added').fill('30')
    await page.getByRole('button', { name: 'Keep what was found' }).click()
    const alter = page.getByRole('checkbox', { name: /^Alter what the fitting on 18 March 2026 found/ })
    await alter.waitFor()
    await page.getByRole('button', { name: /^Draft it again/ }).click()
    await page.getByLabel('Hem level', { exact: true }).selectOption('ankle')
    await page.getByRole('row', { name: /^gore × 4 .* cut: needs new cloth$/ }).waitFor()
    await page.getByRole('button', { name: 'Make it so' }).click()
    await page.getByRole('form', { name: 'Draft it again' }).waitFor({ state: 'detached' })
    await done(planner)

    // What changed is cut again, of cloth that nobody measured; then sewn, hemmed, handed over, invoiced and paid.
    planner = await open('2026-03-27')
    page = planner.page
    await toCommission(page, 'C-2026-001')
    const again = page.getByRole('checkbox', { name: /^Cut for the new draft: front; back; gore/ })
    await again.press('Space')
    await page.getByText('nobody has measured what is left of it').waitFor()
    await page.getByRole('button', { name: 'Cut all the same' }).click()
    await expect.poll(() => again.isChecked()).toBe(true)
    for (const stage of ['Sew: all of it', 'Hem: all of it']) await tick(page, stage)
    const unticked = page.getByRole('checkbox', { checked: false })
    for (let left = await unticked.count(); left > 0; left = await unticked.count()) {
      await unticked.first().press('Space')
      await expect.poll(() => unticked.count()).toBeLessThan(left)
    }
    await page.getByRole('button', { name: 'Delivered' }).click()
    await page.getByText(/^£.* is not paid\.$/).waitFor()
    await page.getByRole('button', { name: 'Handed over all the same' }).click()
    await page.getByText('delivered on 27 March 2026').waitFor()
    await page.getByRole('button', { name: 'Make the invoice' }).click()
    await page.getByRole('button', { name: 'Make it' }).click()
    await page.getByText('Invoice I-2026-001 is made.').waitFor()
    await page.getByRole('button', { name: 'Add a payment' }).click()
    const payment = page.getByRole('form', { name: 'Add a payment' })
    const rest = await payment.getByLabel('Amount, GBP').inputValue()
    await payment.getByRole('button', { name: 'Write it down' }).click()
    await page.getByRole('cell', { name: 'R-2026-002', exact: true }).waitFor()

    // Agreed: on the quote's screen and paper, in the commission, on the invoice, in the parts that were paid, in the books.
    const agreed = quoted!
    const { quotes } = await granted<{ quotes: Quote[] }>(planner, 'quotes.list')
    const { id: quoteId } = quotes.find(({ number }) => number === first)!
    const { quote: kept } = await granted<{ quote: Quote }>(planner, 'quote.get', { id: quoteId })
    expect(pounds(kept.snapshot.total)).toBe(agreed)
    const { commissions } = await granted<{ commissions: Commission[] }>(planner, 'commissions.list')
    const commission = commissions.find(({ number }) => number === 'C-2026-001')!
    expect(pounds(commission.agreed)).toBe(agreed)
    const money = await granted<MoneyOf>(planner, 'money.of', { commissionId: commission.id })
    expect(money.payments.map(({ amountMinor }) => (amountMinor / 100).toFixed(2))).toEqual([deposit, rest])
    expect([pounds(money.paid), money.owed.minor, money.due.minor]).toEqual([agreed, 0, 0])
    expect(pounds(money.invoices[0]!.total)).toBe(agreed)
    const sums = page.locator('.sums div')
    expect(await sums.filter({ hasText: 'Paid' }).locator('dd').first().textContent()).toBe(agreed)
    expect(await sums.filter({ hasText: 'Left in all' }).locator('dd').first().textContent()).toBe('£0.00')

    // Cloth: the length in the house is shorter by what was cut.
    const { lengths } = await granted<{ lengths: Length[] }>(planner, 'stock.list')
    expect(lengths[0]!.length + lengths[0]!.used).toBeCloseTo(8000, 0)
    expect(await page.getByText(/of White linen was cut for it$/).textContent()).toContain(
      `${(lengths[0]!.used / 10).toFixed(1).replace(/\.0$/, '')} cm`,
    )

    // Time: the timer's is the only one logged, on the screen and in the account.
    await page.getByText('In all 1 h 10.').waitFor()
    const { times } = await granted<{ times: { minutes: number }[] }>(planner, 'times.list', {
      commissionId: commission.id,
    })
    expect(times).toHaveLength(1)
    expect(times[0]!.minutes).toBeCloseTo(70, 0)

    // The books, on the screen and as a table.
    await to(page, 'Commissions')
    await to(page, 'Quotes')
    await page.getByRole('link', { name: new RegExp(`^${first}`) }).click()
    expect(await paper(planner, 'Print the quote')).toContain(agreed)
    await to(page, 'Commissions')
    await page.getByRole('link', { name: 'Books' }).click()
    await page
      .getByRole('row', { name: /I-2026-001/ })
      .getByText(agreed)
      .first()
      .waitFor()
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a table (CSV)' }).click()
    const rows = (await readFile(await (await download).path(), 'utf8')).trim().split('\r\n')
    const cells = rows.map((row) => row.split(','))
    const column = (name: string) => cells[0]!.findIndex((cell) => cell.toLowerCase().includes(name))
    const row = (number: string) => cells.find((one) => one[1] === number)!
    expect(`£${row('I-2026-001')[column('total')]}`).toBe(agreed)
    expect([row('R-2026-001')[column('paid')], row('R-2026-002')[column('paid')]]).toEqual([deposit, rest])

    // The second commission is still open, and says so at a glance.
    await to(page, 'Commissions')
    const other = page.getByRole('row', { name: /C-2026-002/ })
    expect(await other.getByText('✓ done').count()).toBe(0)
    await page
      .getByRole('row', { name: /C-2026-001/ })
      .getByText('delivered')
      .waitFor()
    await done(planner)
  }, 240_000)
})
