import type { Page } from 'playwright-core'
import { WOMAN } from './bodies.ts'
import type { Planner } from './browser.ts'
import { type Commission, granted } from './undertunic.ts'

export type Uncut = { client: string; cloth: string; commission: Commission }

/** A workroom with an undertunic that is washed and not cut yet, of cloth that shrinks and none of which is there. */
export async function openUncut(planner: Planner): Promise<Uncut> {
  const ask = <T>(name: string, payload: unknown = {}) => granted<T>(planner, name, payload)
  await planner.page.getByRole('heading', { name: 'A new workroom' }).waitFor()
  await ask('settings.set', {
    ...{ revision: 0, changes: { letterhead: { name: 'Ropewalk Sewing', address: ['1 Ropewalk'] } } },
  })
  const { client } = await ask<{ client: { id: string } }>('client.add', { name: 'Ása Holt' })
  const { measurementSet } = await ask<{ measurementSet: { id: string } }>('measurementSet.add', {
    ...{ clientId: client.id, day: '2026-01-05', measures: WOMAN },
  })
  const { cloth } = await ask<{ cloth: { id: string } }>('cloth.add', {
    ...{ name: 'White linen', width: 1500, warpShrinkage: 0.05, weftShrinkage: 0.03 },
    pricePerMetre: { minor: 1650, currency: 'GBP' },
  })
  const tunic = { construction: 'goredUndertunic', measurementSetId: measurementSet.id, clothId: cloth.id }
  const { quote } = await ask<{ quote: { id: string } }>('quote.save', {
    ...{ customerId: client.id, lines: [{ ...tunic, wearerId: client.id }] },
  })
  const { commission } = await ask<{ commission: Commission }>('quote.accept', { id: quote.id })
  await ask('step.tick', { id: commission.garments[0]!.steps.find(({ key }) => key === 'wash')!.id })
  await planner.page.reload()
  return { client: client.id, cloth: cloth.id, commission }
}

export async function toTheUncut(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Commissions', exact: true }).click()
  await page.getByRole('link', { name: /^C-\d{4}-001$/ }).click()
  await page.getByRole('heading', { name: 'Fittings' }).waitFor()
}

export async function toTheCloths(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Cloth', exact: true }).click()
  await page.getByRole('heading', { name: 'In the house and on its way' }).waitFor()
}
