import { WOMAN } from './bodies.ts'
import { workroom } from './store.ts'

type Id = { id: string }
type Held = { garmentId: string; mm: number }
export type Length = Id & {
  clothId: string
  revision: number
  length: number
  free: number
  reserved: number
  used: number
  width: number
  reservedFor: Held[]
  usedBy: Held[]
  orderedDay: string | null
  expectedDay: string | null
  arrivedDay: string | null
}
type Item = {
  article: Id & { kind: string }
  missing: number
  buy: number
  orderBy: string | null
  neededBy: string | null
  garments: { garmentId: string; missing: number; number: string; wearer: string }[]
}
export type Shopping = {
  day: string
  suppliers: { supplier: string | null; orderBy: string | null; items: Item[] }[]
  fromStock: { lengthId: string; garmentId: string; mm: number; here: boolean; cloth: string }[]
}
export type Supply = Id & { counted: boolean; left: number; soldBy: string }

/** A workroom with one client and one cloth that takes ten days to come, and undertunics of it as they are accepted. */
export async function stockRoom() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Ōrme' })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await room.done<{ cloth: Id & { revision: number } }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
    ...{ pricePerMetre: { minor: 1650, currency: 'GBP' }, supplier: 'Weir Mill', leadDays: 10 },
  })
  const tunic = {
    ...{ wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id },
    construction: 'goredUndertunic',
  }
  /** A commission of one undertunic, accepted, and the id of the garment. */
  const accepted = async (more: object = {}) => {
    const { quote } = await room.done<{ quote: Id }>('quote.save', {
      ...{ customerId: client.id, lines: [{ ...tunic, ...more }] },
    })
    type Made = Id & { revision: number; garments: Id[] }
    const { commission } = await room.done<{ commission: Made }>('quote.accept', { id: quote.id })
    return { commission, garmentId: commission.garments[0]!.id }
  }
  const lengths = async () => (await room.done<{ lengths: Length[] }>('stock.list', { used: true })).lengths
  const shopping = () => room.done<Shopping>('shopping.list')
  /** The line of the list for a thing, if it has one. */
  const listed = async (article: string) =>
    (await shopping()).suppliers.flatMap(({ items }) => items).find((one) => one.article.id === article)
  const drawer = async (id: string) =>
    (await room.done<{ supplies: Supply[] }>('supplies.list')).supplies.find((one) => one.id === id)!
  const stage = (garmentId: string, name: string, done = true) =>
    room.done(done ? 'stage.tick' : 'stage.untick', {
      ...{ garmentId, stage: name },
      ...(done && name === 'cut' ? { anyway: ['unwashed', 'unmeasured'] } : {}),
    })
  return { ...room, client, cloth, tunic, accepted, lengths, shopping, listed, drawer, stage }
}
