import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { addDays } from '../../core/words/dates.ts'
import { hasBrowser, openPlanner, type Planner, usingBrowser, withoutBrowser } from '../support/browser.ts'
import { screensAreSound } from '../support/screen-checks.ts'
import { scratch } from '../support/store.ts'
import { type Commission, granted, openWorkroom, toTheCommission } from '../support/undertunic.ts'

type Plan = { day: string; commissions: { finish: string; p80: string; late: number | null }[] }

async function toToday(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Today', exact: true }).click()
  await page.getByRole('heading', { name: 'Today', level: 1 }).waitFor()
}

async function toThePlan(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('link', { name: 'The weeks to come' }).click()
  await page.getByRole('heading', { name: 'The weeks to come', level: 1 }).waitFor()
  await page.locator('.plan-table').waitFor()
}

const toTheWorkroom = async (page: Page) => {
  await page.getByRole('link', { name: 'Workroom', exact: true }).click()
  await page.getByRole('heading', { name: 'Who works here' }).waitFor()
}

/** The same undertunic once more, to be done yesterday: a commission that cannot be in time. */
async function acceptLate(planner: Planner): Promise<Commission> {
  const { day } = await granted<{ day: string }>(planner, 'today.show')
  const { clients } = await granted<{ clients: { id: string }[] }>(planner, 'clients.list')
  const { measurementSets } = await granted<{ measurementSets: { id: string }[] }>(planner, 'client.get', {
    id: clients[0]!.id,
  })
  const { cloths } = await granted<{ cloths: { id: string }[] }>(planner, 'cloths.list')
  const line = {
    ...{ construction: 'goredUndertunic', wearerId: clients[0]!.id },
    ...{ measurementSetId: measurementSets[0]!.id, clothId: cloths[0]!.id },
  }
  const saved = await granted<{ quote: { id: string } }>(planner, 'quote.save', {
    ...{ customerId: clients[0]!.id, lines: [line] },
  })
  const asked = { id: saved.quote.id, dueDay: addDays(day, -1) }
  return (await granted<{ commission: Commission }>(planner, 'quote.accept', asked)).commission
}

describe.runIf(hasBrowser)(`the day on screen${withoutBrowser}`, () => {
  const browser = usingBrowser()

  test('begins empty with how it fills, and then names the next step, with the timer on it', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await page.getByRole('heading', { name: 'A new workroom' }).waitFor()
    await granted(planner, 'settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane' } } })
    await page.reload()
    await toToday(page)
    await page.getByText('Nothing is in work yet.').waitFor()
    await page.getByRole('link', { name: 'To the desk, and quote a garment' }).waitFor()
    await planner.close()

    const other = await openPlanner(browser(), scratch())
    await openWorkroom(other)
    await toToday(other.page)
    const next = other.page.locator('.today-next li')
    await next.getByText('Sew the second side of each gusset and the sleeve seam in one go').waitFor()
    await next.getByText('gored undertunic for Ása Holt').waitFor()
    await next.getByRole('button', { name: /^Start the timer: Sew the second side .*C-\d{4}-001$/ }).click()
    await next.getByText('timer runs').waitFor()
    await next.getByRole('link', { name: /^C-\d{4}-001$/ }).click()
    await other.page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await other.page.getByRole('region', { name: 'Timer' }).waitFor()
    expect(other.errors).toEqual([])
    await other.close()
  })

  test('a timer started on a step outlives the planner, is refused beside another, and is stopped', async () => {
    const folder = scratch()
    const planner = await openPlanner(browser(), folder)
    await openWorkroom(planner)
    await toTheCommission(planner.page)
    await planner.page.getByRole('button', { name: 'Start the timer: Press the seams' }).click()
    const strip = planner.page.getByRole('region', { name: 'Timer' })
    await strip.getByText('Press the seams').waitFor()
    await strip.getByText(/^since \d/).waitFor()
    await planner.page.getByRole('button', { name: 'Start the timer: Hem the wrists' }).click()
    await planner.page.getByText(/^A timer is running already, on commission C-/).waitFor()
    await planner.close()

    const again = await openPlanner(browser(), folder)
    const { page } = again
    const running = page.getByRole('region', { name: 'Timer' })
    await running.getByText('Press the seams').waitFor()
    await toTheCommission(page)
    await running.getByRole('button', { name: 'Stop with another time' }).click()
    await running.getByLabel('Time it really took').fill('a while')
    await page.keyboard.press('Enter')
    await running.getByText('“a while” is no time that can be read.').waitFor()
    await running.getByLabel('Time it really took').fill('35')
    await page.keyboard.press('Enter')
    await running.waitFor({ state: 'detached' })
    await page.getByRole('status').getByText('35 min logged: Press the seams').waitFor()
    await page.locator('.tick', { hasText: 'Press the seams' }).getByText('took 35 min').waitFor()

    await page.getByRole('button', { name: 'Start the timer: Sew: all of it' }).click()
    await running.getByText(/and 6 more$/).waitFor()
    await running.getByRole('button', { name: 'Drop', exact: true }).click()
    await running.getByRole('button', { name: 'Let it run' }).click()
    await running.getByRole('button', { name: 'Drop', exact: true }).click()
    await running.getByRole('button', { name: 'Drop it' }).click()
    await page.getByRole('status').getByText('The timer was dropped.').waitFor()
    await page.getByText('In all 35 min.').waitFor()
    expect(again.errors).toEqual([])
    await again.close()
  })

  test('the plan shows a late commission and why, and so does the day', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await acceptLate(planner)
    await toThePlan(page)
    await page.getByRole('img', { name: /2 commissions are open, 1 of them late/ }).waitFor()
    const row = page.getByRole('row', { name: /^C-\d{4}-002 / })
    await row.locator('.under', { hasText: /^(a day|\d+ days)$/ }).waitFor()
    await page
      .locator('.plan-table')
      .getByText(/^Because its day has gone by/)
      .waitFor()
    expect(await page.locator('.plan-row.late').count()).toBe(1)
    await toToday(page)
    await page.getByText(/Ása Holt: (a day|\d+ days) late, because its day has gone by/).waitFor()
    await page.locator('.today-next li').first().getByRole('link', { name: /-002$/ }).waitFor()
    await page.getByRole('link', { name: 'The weeks to come' }).click()
    await page.locator('.plan-table').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('a holiday puts the finish off, and taken back it does not', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    const before = await granted<Plan>(planner, 'plan.show')
    await toThePlan(page)
    await page.getByText(/^By plan the accepted work is done by .* free from .* on\./).waitFor()
    await page.getByText(/^No day off is written down in these weeks/).waitFor()
    await page.getByRole('link', { name: 'Write days off down' }).click()
    await expect
      .poll(() =>
        page.evaluate(() => document.getElementById('settings-daysOff')?.getBoundingClientRect().top),
      )
      .toBeLessThan(800)
    const finish = async () => (await granted<Plan>(planner, 'plan.show')).commissions[0]!.finish
    const form = page.getByRole('form', { name: 'Write the days off down' })
    await form.getByLabel('First day off').fill(before.day)
    await form.getByLabel('Last day off').fill(addDays(before.day, -1))
    await form.getByRole('button', { name: 'Write the days off down' }).click()
    await form.getByText('The last day of a time off comes before its first.').waitFor()
    await form.getByLabel('Last day off').fill(addDays(before.day, 40))
    await form.getByLabel('What for').fill('the summer fair')
    await form.getByRole('button', { name: 'Write the days off down' }).click()
    await page.getByText('everyone · the summer fair').waitFor()
    expect((await finish()) > addDays(before.day, 40)).toBe(true)
    await toTheCommission(page)
    const dayOff = page.getByText(/ is a day off \(the summer fair\): nobody is there/)
    await page.getByLabel('Due on').fill(addDays(before.day, 40))
    await dayOff.waitFor()
    await page.getByLabel('Due on').fill(addDays(before.day, 41))
    await dayOff.waitFor({ state: 'detached' })
    await toThePlan(page)
    await page.getByText(/^41 days off are written down in these weeks, .* \(the summer fair\)\./).waitFor()
    await page.getByRole('link', { name: 'Write days off down' }).click()
    await page.getByRole('button', { name: /^Take back: / }).click()
    await page.getByText('everyone · the summer fair').waitFor({ state: 'detached' })
    expect(await finish()).toBe(before.commissions[0]!.finish)
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('people are added, changed and taken off; the maker stays when the first helper comes', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    await toTheWorkroom(page)
    const list = page.locator('.people')
    await list.getByText('25 h a week: Mon–Fri 5 h').waitFor()
    await page.getByRole('button', { name: 'Add somebody' }).click()
    const form = page.getByRole('form', { name: 'Somebody who works here' })
    await form.getByLabel('What she or he is called').fill('Ida')
    await form.getByLabel('Tuesday').fill('many')
    await form.getByRole('button', { name: 'Keep' }).click()
    await form.getByText('“many” is no number of hours.').waitFor()
    await form.getByLabel('Tuesday').fill('6')
    await form.getByLabel('Wednesday').fill('7:30')
    await form.getByLabel('Sewing by hand, at most, h a day').fill('4')
    await form.getByText('cutting', { exact: true }).click()
    await form.getByRole('button', { name: 'Keep' }).click()
    await list.getByText('13 h 30 a week: Tue 6 h, Wed 7 h 30').waitFor()
    await list.getByText('sews by hand 4 h a day at most').waitFor()
    const { people } = await granted<{ people: { name: string; skills: string[] }[] }>(planner, 'people.list')
    expect(people.map(({ name }) => name)).toEqual(['Ropewalk Sewing', 'Ida'])
    expect(people[1]!.skills).not.toContain('cutting')

    await page.getByRole('button', { name: 'Change: Ropewalk Sewing' }).click()
    const hers = page.getByRole('form', { name: 'Change Ropewalk Sewing' })
    expect(await hers.getByLabel('Monday').inputValue()).toBe('5')
    await hers.getByLabel('Friday').fill('')
    await hers.getByRole('button', { name: 'Keep' }).click()
    await list.getByText('20 h a week: Mon–Thu 5 h').waitFor()
    await page.getByRole('button', { name: 'Take off: Ida' }).click()
    await page.getByRole('button', { name: 'Take off Ida' }).click()
    await list.getByText('13 h 30 a week').waitFor({ state: 'detached' })
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('search finds a client without her accents, a commission by its note, all by keyboard', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    const { id } = await openWorkroom(planner)
    await granted(planner, 'note.add', { commissionId: id, text: 'wants the neck closer' })
    await page.keyboard.press('/')
    await page.keyboard.type('asa')
    const found = page.getByRole('list', { name: 'Found' })
    await found.getByRole('link', { name: /^Ása Holt client/ }).waitFor()
    await page.keyboard.press('Escape')
    await found.waitFor({ state: 'detached' })
    expect(await page.getByLabel('Find', { exact: true }).inputValue()).toBe('')
    expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true)

    await page.keyboard.press('/')
    await page.keyboard.type('ASA HOL')
    await found.getByRole('link', { name: /^Ása Holt client/ }).waitFor()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Ása Holt', level: 1 }).waitFor()

    await page.getByLabel('Find', { exact: true }).fill('neck closer')
    await found.getByRole('link', { name: /^C-\d{4}-001: wants the neck closer note/ }).waitFor()
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Times logged' }).waitFor()
    await page.getByLabel('Find', { exact: true }).fill('whalebone')
    await page.getByText('Nothing has “whalebone” in it.').waitFor()
    expect(planner.errors).toEqual([])
    await planner.close()
  })

  test('the desk and a sent quote say which day can be promised', async () => {
    const planner = await openPlanner(browser(), scratch())
    const { page } = planner
    await openWorkroom(planner)
    const promised = page.locator('.bill dl', { hasText: 'Can be promised for' })
    const day = promised.locator('dd', { hasText: /^\d+ \w+ \d{4}$/ })
    await day.waitFor()
    await page.locator('.bill dl.old').waitFor({ state: 'detached' })
    await page.getByRole('button', { name: 'Save as a quote' }).click()
    await page.getByText(/^Accepted today it would be done by \d+ \w+ \d{4}/).waitFor()
    await page.getByRole('button', { name: 'The client declines' }).click()
    await page.getByText(/^If it is accepted today/).waitFor({ state: 'detached' })
    expect(planner.errors).toEqual([])
    await planner.close()
  })
})

async function takeNoteOff(planner: Planner): Promise<void> {
  const { commissions } = await granted<{ commissions: { id: string }[] }>(planner, 'commissions.list')
  const { note } = await granted<{ note: { id: string; revision: number } }>(planner, 'note.add', {
    ...{ commissionId: commissions[0]!.id, text: 'a belt and shoes' },
  })
  await granted(planner, 'note.remove', { id: note.id, revision: note.revision })
}

/** Goes through the screens of the day, with a timer running and all that opens opened. */
async function tour(planner: Planner, look: (screen: string) => Promise<void>): Promise<void> {
  const { page } = planner
  await openWorkroom(planner)
  const { garments } = await acceptLate(planner)
  await granted(planner, 'timer.start', { stepIds: [garments[0]!.steps[0]!.id] })
  await page.reload()
  await toToday(page)
  await page.locator('.today-next li').first().waitFor()
  await page.getByRole('button', { name: 'Stop with another time' }).click()
  await look('today, stopping with another time')
  await page.getByRole('button', { name: 'Drop', exact: true }).click()
  await page.keyboard.press('/')
  await page.keyboard.type('asa')
  await page.getByRole('list', { name: 'Found' }).waitFor()
  await look('today, dropping and finding')
  await page.keyboard.press('Escape')
  await page.keyboard.press('/')
  await page.getByRole('list', { name: 'Changed lately' }).waitFor()
  await look('today, with what was changed lately')
  await page.keyboard.press('Escape')
  await takeNoteOff(planner)
  await page.getByRole('link', { name: 'Taken off lately' }).click()
  await page.getByRole('button', { name: /^Put back: / }).waitFor()
  await look('what was taken off lately')
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('columnheader', { name: 'What is next' }).waitFor()
  await look('all commissions')
  await toThePlan(page)
  await look('the weeks to come')
  await toTheCommission(page)
  await page.locator('.tick', { hasText: 'Press the seams' }).click()
  await page.getByRole('button', { name: 'Undo: Press the seams' }).waitFor()
  await look('a commission, with a step ticked')
  await toTheWorkroom(page)
  await page.getByRole('button', { name: 'Add somebody' }).click()
  await look('people and days off')
}

describe.runIf(hasBrowser)(`the screens of the day${withoutBrowser}`, () => {
  const browser = usingBrowser()

  screensAreSound(browser, tour)
})
