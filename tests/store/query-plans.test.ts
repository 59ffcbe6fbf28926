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
]

test('what screens ask for goes by an index through every table that grows', async () => {
  const room = workroom()
  const { clients, commission, garment } = await room.done<Sample>('workroom.sample')
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
