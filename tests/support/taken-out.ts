import { join } from 'node:path'
import type { Store } from '../../core/workroom.ts'
import { newStore, scratch, workroom } from './store.ts'

type Id = { id: string }
const DOT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='

/**
 * A workroom with something in most of its tables: the people of Tenter Lane as a maker's own, papers printed, a
 * picture, a note, a payment, an invoice, something counted, and a client who was forgotten.
 */
export async function fullWorkroom() {
  const folder = scratch()
  const room = workroom(newStore(folder))
  const made = await room.done<{
    clients: string[]
    cloths: string[]
    quotes: string[]
    commission: string
    delivered: string
  }>('workroom.sample')
  room.store.db.$client.exec("UPDATE workroom SET kind = 'own'")
  await room.done('quote.print', { id: made.quotes[0] })
  await room.done('measuringSheet.print', {})
  const { revision } = await room.done<{ revision: number }>('settings.get')
  await room.done('mark.set', { revision, data: DOT })
  const commissionId = made.commission
  await room.done('note.add', { commissionId, text: 'Ōrme: "=1+1", and\u2028more\ud83e\uddf5' })
  await room.done('picture.add', { commissionId, name: 'sketch', data: DOT })
  await room.done('payment.add', {
    ...{ commissionId, day: '2026-03-02', amount: { minor: 5000, currency: 'GBP' } },
  })
  await room.done('supply.count', { supply: 'thread:hand', amount: 40.5 })
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Nobody Long' })
  await room.done('client.forget', { id: client.id, name: 'Nobody Long' })
  await room.done('invoice.make', { commissionId: made.delivered })
  const { client: gone } = await room.done<{ client: Id & { name: string } }>('client.get', {
    id: made.clients[2],
  })
  await room.done('client.forget', { id: gone.id, name: gone.name })
  return { ...room, ...made, folder, forgotten: gone.name, archive: join(folder, 'out.zip') }
}

/** What the search can find. */
export const foundIn = ({ db }: Pick<Store, 'db'>): unknown[] =>
  db.$client.prepare('SELECT kind, entity_id, title, words FROM found ORDER BY kind, entity_id').all()
