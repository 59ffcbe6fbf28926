import type { Page } from 'playwright-core'
import { type Effort, Hand } from './keystrokes.ts'

/** A full set of measures as a maker with a tape in centimetres writes them, by the names that the form has. */
const MEASURES: Record<string, string> = {
  ...{ stature: '165', 'cervical height': '141.2', 'head girth': '56.2', 'neck base girth': '38.2' },
  ...{ 'shoulder length': '12.2', 'bust girth': '95.2', 'waist girth': '78.2', 'hip girth': '101.4' },
  ...{ 'arm length': '57.5', 'upper arm girth': '29.5', 'elbow girth': '26.4', 'forearm girth': '24.8' },
  ...{ 'hand girth': '18.7', 'waist height': '102', 'hip height': '83', 'inside leg height': '75' },
  ...{ 'knee height': '45.5', 'calf girth': '36.2' },
}

/** What a quote took, and the heading of the page it ended on. */
export type Quoted = Effort & { heading: string }

/**
 * From any page to a saved, printed quote for a linen undertunic to the ankle with six gores,
 * sewn by hand, for somebody who is measured.
 */
export async function quoteForReturning(page: Page, name: string): Promise<Quoted> {
  const hand = new Hand(page)
  await hand.press(page.getByRole('link', { name: 'Quote desk', exact: true }))
  await reckoned(page)
  await hand.pick(page.getByRole('combobox', { name: 'For' }), name)
  return quoted(hand)
}

/** The same for somebody who is not in the book yet and is measured first, with every measure the form asks for. */
export async function quoteForNew(page: Page, name: string): Promise<Quoted> {
  const hand = new Hand(page)
  await hand.press(page.getByRole('link', { name: 'Clients', exact: true }))
  await hand.enter(page.getByLabel('New client'), name)
  await hand.press(page.getByRole('button', { name: 'Enter in the book' }))
  await page.getByRole('heading', { name: 'First measures' }).waitFor()
  for (const [measure, text] of Object.entries(MEASURES))
    await hand.enter(page.getByLabel(new RegExp(`^${measure}( \\(.*\\))?$`)), text)
  await hand.press(page.getByRole('button', { name: 'Keep these measures' }))
  await page.getByText('not used by a quote yet').waitFor()
  await hand.press(page.getByRole('link', { name: 'Quote a garment' }))
  return quoted(hand)
}

async function reckoned(page: Page): Promise<void> {
  await page.locator('.desk-results[aria-busy="false"] .bill').waitFor()
}

/** Sets the garment, looks at what comes of it, and saves and prints the quote. */
async function quoted(hand: Hand): Promise<Quoted> {
  const { page } = hand
  await reckoned(page)
  await hand.choose(page.getByLabel('Garment', { exact: true }), 'gored')
  await hand.choose(page.getByLabel('Cloth', { exact: true }), 'white')
  await hand.choose(page.getByLabel('Sewn', { exact: true }), 'by hand')
  await hand.choose(page.getByLabel('Hem level', { exact: true }), 'ankle')
  await hand.choose(page.getByLabel('Gores', { exact: true }), '6')
  await page.getByText('centre gore × 2', { exact: true }).waitFor()
  await reckoned(page)
  await hand.press(page.getByRole('button', { name: 'Save as a quote' }))
  const heading = page.getByRole('heading', { name: /^Quote Q-\d{4}-\d+ for / })
  await heading.waitFor()
  const paper = page.context().waitForEvent('page')
  await hand.press(page.getByRole('button', { name: 'Print the quote' }))
  await (await paper).close()
  return { ...hand.effort(), heading: (await heading.textContent()) ?? '' }
}
