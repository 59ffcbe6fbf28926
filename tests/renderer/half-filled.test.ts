import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { hasBrowser, openPlanner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { scratch } from '../support/store.ts'
import { granted, openWorkroom, toTheCommission } from '../support/undertunic.ts'

const open = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()

/** Every form that is left half filled: how one comes to it, what opens it, and a field of it. */
type Form = {
  name: string
  to: (page: Page) => Promise<unknown>
  opens?: (page: Page) => Promise<unknown>
  field: (page: Page) => Locator
  text: string
  /** Whether its opener has to be pressed again, because it is only folded away. */
  folded?: true
}
const place = (key: number) => (page: Page) => page.keyboard.press(`Control+${key}`)
const commission = (page: Page) => toTheCommission(page)
const times = async (page: Page) => {
  await page.keyboard.press('Control+6')
  await page.getByRole('link', { name: 'Your times' }).click()
}
const client = async (page: Page) => {
  await page.keyboard.press('Control+3')
  await page.locator('a.entry').first().click()
}

const FORMS: Form[] = [
  { name: 'new client', to: place(3), field: (page) => page.getByLabel('New client'), text: 'Marged' },
  {
    ...{ name: 'size for stock', to: place(3), field: (page) => page.getByLabel('Bust or chest') },
    opens: (page) => page.getByText('A size to make for stock').click(),
    text: '96',
  },
  {
    ...{ name: 'measures', to: client, opens: (page) => open(page, 'Take measures') },
    ...{ field: (page) => page.getByLabel('Taken by'), text: 'Ida' },
  },
  { name: 'cloth', to: place(4), field: (page) => page.getByLabel('Name').first(), text: 'Madder twill' },
  {
    ...{ name: 'change of a cloth', to: place(4), field: (page) => page.getByLabel('Name').nth(1) },
    ...{ opens: (page) => page.getByRole('button', { name: /^Change.*White linen/ }).click(), text: 'Linen' },
  },
  {
    name: 'days of a commission',
    to: commission,
    field: (page) => page.getByLabel('About it, in a line'),
    text: 'fair',
  },
  {
    ...{ name: 'note', to: commission, field: (page) => page.locator('.act textarea').first() },
    ...{ opens: (page) => open(page, 'Write a note'), text: 'wants the neck closer' },
  },
  {
    ...{ name: 'time at a step', to: commission, field: (page) => page.locator('.log-form input').first() },
    opens: (page) => page.getByRole('button', { name: 'Log time: Press the seams' }).click(),
    text: '35',
  },
  { name: 'settings', to: place(6), field: (page) => page.getByLabel('E-mail'), text: 'ask@example.org' },
  {
    ...{ name: 'person', to: place(6), field: (page) => page.getByLabel('What she or he is called') },
    ...{ opens: (page) => open(page, 'Add somebody'), text: 'Ida' },
  },
  { name: 'days off', to: place(6), field: (page) => page.getByLabel('What for'), text: 'the fair' },
  {
    ...{ name: 'standard time', to: times, field: (page) => page.locator('.standard input').first() },
    text: '77',
  },
  {
    ...{ name: 'quote desk', to: place(2), field: (page) => page.getByLabel('How many') },
    ...{ opens: (page) => page.getByText('Who pays, how many, and postage').click(), text: '3' },
    folded: true,
  },
]

describe.runIf(hasBrowser)(`what is half filled${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('is there again when she comes back to it, and gone once it is kept', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    for (const { name, to, opens, field, text } of FORMS) {
      await to(page)
      await opens?.(page)
      await field(page).fill(text)
      expect(await field(page).inputValue(), name).toBe(text)
    }
    await page.keyboard.press('Control+1')
    await page.getByRole('heading', { name: 'Today', level: 1 }).waitFor()
    for (const { name, to, opens, field, text, folded } of FORMS) {
      await to(page)
      if (folded) await opens!(page)
      await expect.poll(() => field(page).inputValue(), { message: name }).toBe(text)
    }

    await page.keyboard.press('Control+3')
    await page.getByLabel('New client').press('Control+s')
    await page.getByRole('heading', { name: 'Marged', level: 1 }).waitFor()
    await page.keyboard.press('Control+3')
    expect(await page.getByLabel('New client').inputValue()).toBe('')
    const { clients } = await granted<{ clients: { name: string }[] }>(planner, 'clients.list')
    expect(clients.map(({ name }) => name)).toContain('Marged')
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})
