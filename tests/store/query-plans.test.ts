import { expect, test } from 'vitest'
import { workroom } from '../support/store.ts'

type Sample = { clients: string[]; commission: string; garment: string }

/** Tables that grow with every year of work: no screen may go through one of them from end to end. */
const GROWING = [
  'step',
  'time_entry',
  'time_entry_step',
  'garment',
  'change',
  'stock_move',
  'payment',
  'commission_note',
  'picture',
  'fitting',
]

/** One white dot: the smallest PNG there is. */
const DOT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg=='

/** Something of every kind that can be put back is taken off, so that all of them are looked up. */
async function takeOffOneOfEach(
  { done }: ReturnType<typeof workroom>,
  commissionId: string,
  garmentId: string,
) {
  type Made = Record<string, { id: string; revision: number }>
  const off = async (kind: string, name: string, made: object) => {
    const { [kind]: one } = await done<Made>(name, made)
    const { id, revision } = one!
    await done(`${kind}.remove`, kind === 'picture' ? { id } : { id, revision })
  }
  await off('note', 'note.add', { commissionId, text: 'closer at the neck' })
  await off('fitting', 'fitting.add', { commissionId, day: '2026-03-20' })
  await off('picture', 'picture.add', { commissionId, name: 'sketch', data: DOT })
  await off('time', 'time.log', { garmentId, stage: 'sew', minutes: 20 })
}

test('what screens ask for goes by an index through every table that grows', async () => {
  const room = workroom()
  const { clients, commission, garment } = await room.done<Sample>('workroom.sample')
  await takeOffOneOfEach(room, commission, garment)
  const client = room.store.db.$client
  const asked = new Set<string>()
  const prepare = client.prepare.bind(client)
  client.prepare = ((sql: string) => {
    asked.add(sql)
    return prepare(sql)
  }) as typeof client.prepare
  const screens: [string, object][] = [
    ['today.show', {}],
    ['plan.show', {}],
    ['commissions.list', {}],
    ['commissions.list', { state: 'open' }],
    ['commission.get', { id: commission }],
    ['commission.account', { id: commission }],
    ['money.of', { commissionId: commission }],
    ['times.list', { commissionId: commission }],
    ['notes.list', { commissionId: commission }],
    ['fittings.list', { commissionId: commission }],
    ['pieces.list', { garmentId: garment }],
    ['client.get', { id: clients[0] }],
    ['rates.list', {}],
    ['shopping.list', {}],
    ['history.list', { id: commission }],
    ['bin.list', {}],
    ['recent.list', {}],
    ['money.notInvoiced', {}],
    ['accounts.list', { from: '2026-01-01', to: '2026-12-31' }],
  ]
  for (const [name, payload] of screens) await room.done(name, payload)
  client.prepare = prepare
  const reads = [...asked].filter((sql) => /^select/i.test(sql))
  expect(reads.length).toBeGreaterThan(20)
  const scans = reads.flatMap((sql) => {
    const parameters = Array.from({ length: (sql.match(/\?/g) ?? []).length }, () => 1)
    const plan = prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...parameters) as { detail: string }[]
    return (
      plan
        .filter(({ detail }) => GROWING.some((table) => new RegExp(`^SCAN ${table}( |$)`).test(detail)))
        // Going through an index in its order and stopping early is no scan of the table.
        .filter(({ detail }) => !detail.includes('USING INDEX'))
        .map(({ detail }) => `${detail}: ${sql}`)
    )
  })
  expect(scans).toEqual([])
})
