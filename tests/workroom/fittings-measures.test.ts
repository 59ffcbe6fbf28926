import { expect, test } from 'vitest'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Named = Id & { day: string; told?: string[] }

async function agreed() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Ōrme' })
  const taken = async (given: object) => {
    const asked = { clientId: client.id, measures: WOMAN, ...given }
    return (await room.done<{ measurementSet: Id }>('measurementSet.add', asked)).measurementSet.id
  }
  const first = await taken({ day: '2026-01-05', note: 'one shoulder lower' })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', width: '150 cm', pricePerMetre: { minor: 1650, currency: 'GBP' } },
  })
  const line = { wearerId: client.id, measurementSetId: first, clothId: cloth.id }
  const { quote } = await room.done<{ quote: Id }>('quote.save', {
    ...{ customerId: client.id, lines: [{ ...line, construction: 'goredUndertunic' }] },
  })
  const { commission } = await room.done<{ commission: Id & { garments: Id[] } }>('quote.accept', {
    id: quote.id,
  })
  return { ...room, taken, first, commissionId: commission.id, garmentId: commission.garments[0]!.id }
}

test('a garment drafted again goes by the day and the words of the set it was drafted from', async () => {
  const { taken, first, garmentId, ...room } = await agreed()
  const named = async () =>
    (await room.done<{ made: { measurementSet: Named } }>('garment.made', { garmentId })).made.measurementSet

  // Only the hem changes: it is still made by the measures that were taken in January.
  await room.done('garment.draftAgain', { garmentId, choices: { hemLevel: 'ankle' } })
  expect(await named()).toEqual({ id: first, day: '2026-01-05', told: ['one shoulder lower'] })

  const second = await taken({
    ...{ day: '2026-02-20', note: 'stands straight now' },
    measures: { ...WOMAN, bustGirth: WOMAN.bustGirth + 60 },
  })
  await room.done('garment.draftAgain', { garmentId, measurementSetId: second })
  expect(await named()).toEqual({ id: second, day: '2026-02-20', told: ['stands straight now'] })
})

test('measures that come to mind later at the same fitting go with those taken before', async () => {
  const { first, garmentId, commissionId, ...room } = await agreed()
  const booked = { commissionId, garmentId, day: '2026-03-02' }
  const { fitting } = await room.done<{ fitting: Id }>('fitting.add', booked)
  type Set = { measurementSet: { measures: Record<string, { mm: number }>; supersedes: string } & Id }
  const measure = async (measures: object) =>
    (await room.done<Set>('fitting.measure', { id: fitting.id, garmentId, measures })).measurementSet
  const one = await measure({ bustGirth: '100 cm' })
  expect(one.supersedes).toBe(first)
  const two = await measure({ hipGirth: '110 cm' })
  expect([two.measures.bustGirth?.mm, two.measures.hipGirth?.mm]).toEqual([1000, 1100])
  expect(two.supersedes).toBe(one.id)
})
