import { expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Cloth = Id & { revision: number; name: string }
const NEW = { width: '150 cm', pricePerMetre: { minor: 1650, currency: 'GBP' } }

async function begun() {
  const room = workroom()
  const cloth = async (name: string) =>
    (await room.done<{ cloth: Cloth }>('cloth.add', { ...NEW, name })).cloth
  const names = async () =>
    (await room.done<{ cloths: Cloth[] }>('cloths.list')).cloths.map(({ name }) => name)
  const found = async (text: string) =>
    (await room.done<{ hits: Id[] }>('search.find', { text })).hits.map(({ id }) => id)
  const back = ({ id, revision }: Cloth) => room.ask('cloth.takeBack', { id, revision })
  return { ...room, cloth, names, found, back }
}

test('a cloth entered by mistake is taken out of the book, is not found any more, and can be put back', async () => {
  const { cloth, names, found, done } = await begun()
  const { id, revision } = await cloth('White linen')
  const { cloth: gone } = await done<{ cloth: Cloth }>('cloth.takeBack', { id, revision })
  expect([await names(), await found('linen')]).toEqual([[], []])
  await done('cloth.putBack', { id, revision: gone.revision })
  expect([await names(), await found('linen')]).toEqual([['White linen'], [id]])
})

test('a cloth that is used stays: by a length in the house, by a quote, and by the lining of one', async () => {
  const { cloth, names, back, done } = await begun()
  const [stocked, outer, lining] = [await cloth('Stocked'), await cloth('Outer'), await cloth('Lining')]
  await done('stock.add', { clothId: stocked.id, length: '4 m' })
  const { client } = await done<{ client: Id }>('client.add', { name: 'Ása' })
  const { measurementSet } = await done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const line = { wearerId: client.id, measurementSetId: measurementSet.id, construction: 'hood' }
  await done('quote.save', {
    customerId: client.id,
    lines: [{ ...line, clothId: outer.id, choices: { lined: true }, otherClothIds: { lining: lining.id } }],
  })
  for (const used of [stocked, outer, lining])
    expect(await back(used)).toMatchObject({
      ok: false,
      error: { code: 'refusal.cloth.used', message: expect.stringContaining(used.name) },
    })
  expect(await names()).toEqual(['Lining', 'Outer', 'Stocked'])
})
