import { expect, test } from 'vitest'
import { workroom } from '../support/store.ts'

type Got = {
  starting: boolean
  revision: number
  settings: { rates: { currency: string; depositBasisPoints: number; tax: object } }
}
const begun = async (locale: string) => {
  const house = workroom()
  await house.done('settings.set', { revision: 0, changes: { letterhead: { name: 'Weir Lane', locale } } })
  const get = () => house.done<Got>('settings.get')
  return { ...house, get }
}

test.each(['en-GB', 'en-US', 'de-DE', 'de-CH', 'sv-SE', 'en-ZA', 'pl-PL'])(
  'the rates that a workroom begins with in %s are known for what they are, until she sets one',
  async (locale) => {
    const { done, get } = await begun(locale)
    const { starting, settings, revision } = await get()
    expect(starting).toBe(true)
    await done('settings.set', { revision, changes: { letterhead: { phone: '01' } } })
    expect((await get()).starting).toBe(true)
    const { depositBasisPoints, ...rates } = settings.rates
    // What an hour is to earn makes no price.
    const targetPerHour = { minor: 4321, currency: settings.rates.currency }
    await done('settings.set', { revision: revision + 1, changes: { rates: { targetPerHour } } })
    expect((await get()).starting).toBe(true)
    await done('settings.set', {
      ...{ revision: revision + 2 },
      changes: { rates: { ...rates, depositBasisPoints: depositBasisPoints - 1 } },
    })
    expect((await get()).starting).toBe(false)
  },
)

test('a tax by another name is not a rate of her own, and the sample’s rates are not starting figures', async () => {
  const { done, get } = await begun('en-GB')
  const { settings } = await get()
  await done('settings.set', {
    ...{ revision: 1, changes: { rates: { tax: { ...settings.rates.tax, name: 'Sales tax' } } } },
  })
  expect((await get()).starting).toBe(true)
  const sample = workroom()
  await sample.done('workroom.sample')
  expect((await sample.done<Got>('settings.get')).starting).toBe(false)
})

test('what a workroom would begin with is what it then begins with', async () => {
  for (const locale of ['en-GB', 'en-US', 'de-CH']) {
    const { done, get } = await begun(locale)
    const told = await done<{ currency: string; paper: string; unit: string }>('settings.begun', { locale })
    const { settings } = await get()
    expect(told.currency).toBe(settings.rates.currency)
    expect(settings).toMatchObject({ letterhead: { paper: told.paper, unit: told.unit } })
    // The United States measure in inches (CLDR, measurement systems; from memory).
    expect(told.unit).toBe(locale === 'en-US' ? 'in' : 'cm')
  }
})

test('in another language the sentences and names nobody has written anew are said in it, and hers stay', async () => {
  type Said = {
    revision: number
    settings: {
      terms: string[]
      woolTerm: string
      threadStock: { hand: { name: string } }
      rates: { tax: { name: string } }
    }
  }
  const { done } = await begun('en-GB')
  const get = () => done<Said>('settings.get')
  const first = await get()
  const own = 'Alterations within a year are free.'
  const spoken = async (locale: string, more: object = {}) =>
    done('settings.set', {
      ...{ revision: (await get()).revision, changes: { letterhead: { locale }, ...more } },
    })
  await spoken('en-IE', { terms: [...first.settings.terms, own] })
  expect((await get()).settings.terms.slice(0, -1)).toEqual(first.settings.terms)
  await spoken('de-DE')
  const { settings: german } = await get()
  const fresh = (await (await begun('de-DE')).get()).settings as unknown as Said['settings']
  expect(german.terms).toEqual([...fresh.terms, own])
  expect(german.woolTerm).toBe(fresh.woolTerm)
  expect(german.threadStock.hand.name).toBe(fresh.threadStock.hand.name)
  expect(german.rates.tax.name).toBe(fresh.rates.tax.name)
  await spoken('en-GB')
  expect((await get()).settings.terms).toEqual([...first.settings.terms, own])
})
