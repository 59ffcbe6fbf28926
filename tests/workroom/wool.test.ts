import { expect, test } from 'vitest'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
const WOOL = 'Wool may shrink again if it is washed hot.'

test('the term for wool stands on quotes of a garment that has wool in it, and on no other', async () => {
  const { done } = workroom()
  const { client } = await done<{ client: Id }>('client.add', { name: 'Þórunn Vale' })
  const { measurementSet } = await done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const cloth = async (name: string, fibre: string) =>
    (
      await done<{ cloth: Id }>('cloth.add', {
        ...{ name, fibre, width: '150 cm', pricePerMetre: { minor: 1650, currency: 'GBP' } },
      })
    ).cloth.id
  const terms = async (...cloths: string[]) => {
    const lines = cloths.map((clothId) => ({
      ...{
        wearerId: client.id,
        measurementSetId: measurementSet.id,
        construction: 'goredUndertunic',
        clothId,
      },
    }))
    const { quote } = await done<{ quote: { snapshot: QuoteSnapshot } }>('quote.save', {
      ...{ customerId: client.id, lines },
    })
    return quote.snapshot.terms
  }
  const linen = await cloth('White linen', 'linen')
  const cotton = await cloth('Weiße Baumwolle', '')
  const woollen = await cloth('Grey twill', 'worsted')
  const named = await cloth('Brown wool', '')
  expect(await terms(linen)).not.toContain(WOOL)
  expect(await terms(linen, cotton)).not.toContain(WOOL)
  expect(await terms(woollen)).toContain(WOOL)
  expect(await terms(named)).toContain(WOOL)
  expect(await terms(linen, woollen)).toContain(WOOL)
  await done('settings.set', { revision: 0, changes: { woolTerm: '' } })
  expect((await terms(woollen)).join(' ')).not.toMatch(/wool/i)
})
