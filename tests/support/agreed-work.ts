import { WOMAN } from './bodies.ts'
import { newStore, workroom } from './store.ts'

type Id = { id: string }
export type Amount = { minor: number; currency: string }
export type FollowedStep = Id & { key: string; stage: string; doneAt: string | null; revision: number }
export type FollowedCommission = Id & {
  revision: number
  number: string
  state: string
  agreed: Amount
  garments: (Id & { cut: boolean; steps: FollowedStep[] })[]
}

export const gbp = (minor: number): Amount => ({ minor, currency: 'GBP' })

/** A workroom with one client, her measures, and washed-before linen of the book; quotes are made and accepted in it. */
export async function agreedWork(cloth: object = {}, measures: object = WOMAN, store = newStore()) {
  const room = workroom(store)
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Ása Holt' })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures },
  })
  const kept = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm', pricePerMetre: gbp(1650) },
    ...{ supplier: 'Weir Mill', leadDays: 10, ...cloth },
  })
  const line = {
    ...{ wearerId: client.id, measurementSetId: measurementSet.id, clothId: kept.cloth.id },
    construction: 'goredUndertunic',
  }
  const accepted = async (more: object = {}, lines: object[] = [line]) => {
    const { quote } = await room.done<{ quote: Id }>('quote.save', { customerId: client.id, lines })
    return (await room.done<{ commission: FollowedCommission }>('quote.accept', { id: quote.id, ...more }))
      .commission
  }
  return { ...room, client, measurementSet, cloth: kept.cloth, line, accepted }
}
