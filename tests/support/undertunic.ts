import type { Page } from 'playwright-core'
import { WOMAN } from './bodies.ts'
import type { Planner } from './browser.ts'

/** Asks for what must be granted. */
export async function granted<T>({ store }: Planner, name: string, payload: unknown = {}): Promise<T> {
  const answered = await store.ask(name, payload)
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
  return answered.result as T
}

type Made = { id: string }
type Step = { id: string; key: string; minutes: { mean: number } }
export type Commission = { id: string; revision: number; garments: { id: string; steps: Step[] }[] }

/** A workroom of one client, with an undertunic that is half made and no time logged. */
export async function openWorkroom(planner: Planner): Promise<Commission> {
  const ask = <T>(name: string, payload: unknown = {}) => granted<T>(planner, name, payload)
  // The page keeps its key before it shows anything; only then can it be opened again.
  await planner.page.getByRole('heading', { name: 'A new workroom' }).waitFor()
  await ask('settings.set', { revision: 0, changes: { letterhead: { name: 'Ropewalk Sewing' } } })
  const { client } = await ask<{ client: Made }>('client.add', { name: 'Ása Holt' })
  const { measurementSet } = await ask<{ measurementSet: Made }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await ask<{ cloth: Made }>('cloth.add', {
    ...{ name: 'White linen', width: 1500, pricePerMetre: { minor: 1650, currency: 'GBP' } },
  })
  const tunic = { construction: 'goredUndertunic', measurementSetId: measurementSet.id, clothId: cloth.id }
  const { quote } = await ask<{ quote: Made }>('quote.save', {
    ...{ customerId: client.id, lines: [{ ...tunic, wearerId: client.id }] },
  })
  const { commission } = await ask<{ commission: Commission }>('quote.accept', { id: quote.id })
  for (const { id, key } of commission.garments[0]!.steps)
    if (DONE.includes(key)) await ask('step.tick', { id })
  await planner.page.reload()
  await planner.page.locator('.bill').waitFor()
  return commission
}

const DONE = ['wash', 'cut', 'shoulders', 'gores', 'gussets']

export async function toTheCommission(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('link', { name: /^C-\d{4}-001$/ }).click()
  await page.getByRole('heading', { name: 'Times logged' }).waitFor()
}

export async function toYourTimes(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Workroom', exact: true }).click()
  await page.getByRole('link', { name: 'Your times' }).click()
  await page.getByRole('heading', { name: 'Your times', level: 1 }).waitFor()
}

export async function toWhatItCameTo(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('link', { name: 'What it came to' }).click()
  await page.getByRole('heading', { name: 'What it came to', level: 1 }).waitFor()
}

/** Writes down time at a step, and waits until it stands in the list. */
export async function log(page: Page, step: string, time: string): Promise<void> {
  const rows = page.locator('.times tbody tr')
  const before = await rows.count()
  await page.getByRole('button', { name: `Log time: ${step}` }).click()
  await page.getByLabel('Time spent').fill(time)
  await page.getByLabel('Time spent').press('Enter')
  await rows.nth(before).waitFor()
}

/** The steps of the garment that are ticked, each with a likely time. */
const LIKELY = [
  ['Wash and press the cloth', '20'],
  ['Lay out, chalk and cut', '1:10'],
  ['Sew the shoulder seams', '18 min'],
  ['Set the gores, each at the same level, bias edge to the body', '1 h 40'],
  ['Sew the gussets to the sleeves by one side', '22'],
] as const
export const logAll = async (page: Page) => {
  for (const [step, time] of LIKELY) await log(page, step, time)
}

/** Makes it to the end: every step ticked and timed, one of them far too long, and delivered. */
export async function deliver(planner: Planner, { id, revision, garments }: Commission): Promise<void> {
  const { steps } = garments[0]!
  for (const step of steps) {
    await granted(planner, 'step.tick', { id: step.id })
    const minutes = Math.max(1, Math.round(step.minutes.mean * 0.9))
    await granted(planner, 'time.log', { stepIds: [step.id], minutes })
  }
  await granted(planner, 'time.log', { stepIds: [steps[0]!.id], minutes: 900, note: 'left running' })
  await granted(planner, 'commission.deliver', { id, revision })
}
