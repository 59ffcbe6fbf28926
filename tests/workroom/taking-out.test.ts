import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { LISTS, type ListName } from '../../core/workroom/taking-out-lists.ts'
import { documentFile } from '../../core/workroom.ts'
import { gbp } from '../support/agreed-work.ts'
import { scratch, workroom } from '../support/store.ts'
import { fullWorkroom } from '../support/taken-out.ts'

type Exported = { file: { id: string; name: string; path: string; bytes: number }; missing: number }
type Room = Awaited<ReturnType<typeof fullWorkroom>>

/** Sends a file in parts of so many bytes. */
async function sent(room: Pick<Room, 'done'>, bytes: Buffer, atOnce: number) {
  for (let at = 0; at < bytes.length; at += atOnce)
    await room.done('file.send', { at, data: bytes.subarray(at, at + atOnce).toString('base64') })
}

/** A list as rows of cells (RFC 4180). */
function cellsOf(csv: string): string[][] {
  const cells = [...csv.slice(1).matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)]
  const rows: string[][] = [[]]
  for (const [, inQuotes, bare, end] of cells) {
    rows.at(-1)!.push(inQuotes?.replaceAll('""', '"') ?? bare!)
    if (end === '\r\n') rows.push([])
  }
  return rows.slice(0, -1)
}

const listOf = async (room: Pick<Room, 'done'>, list: ListName) => {
  const { name, csv } = await room.done<{ name: string; csv: string }>('lists.csv', { list })
  expect(name).toBe(`ellwand-${list}.csv`)
  expect(csv.startsWith('\uFEFF')).toBe(true)
  const [head, ...rows] = cellsOf(csv)
  for (const row of rows) expect(row).toHaveLength(head!.length)
  return rows.map((row) => Object.fromEntries(head!.map((heading, i) => [heading, row[i]!])))
}

describe('the workroom taken along', () => {
  test('is one file that shells hand over, in the place of the one before', async () => {
    const room = await fullWorkroom()
    const first = await room.done<Exported>('store.export')
    const { file, missing } = await room.done<Exported>('store.export')
    expect(missing).toBe(0)
    expect(readFileSync(file.path)).toHaveLength(file.bytes)
    expect(readdirSync(join(room.folder, 'taken-out'))).toEqual([file.name])
    expect(documentFile(room.context, file.id)).toEqual({ path: file.path, name: file.name })
    expect(() => documentFile(room.context, first.file.id)).toThrow('refusal.store.notFound')
    expect(() => documentFile(room.context, `../taken-out/${file.name}`)).toThrow('refusal.store.notFound')
    expect(() => documentFile(room.context, '../workroom.ellwand')).toThrow('refusal.store.notFound')
  })

  test('comes back from parts that were sent, and nothing of them stays', async () => {
    const room = await fullWorkroom()
    const { file } = await room.done<Exported>('store.export')
    const other = workroom()
    await sent(other, readFileSync(file.path), 50_000)
    await other.done('store.import')
    for (const list of LISTS) expect(await listOf(other, list)).toEqual(await listOf(room, list))
    const find = async (one: Pick<Room, 'done'>) =>
      (await one.done<{ hits: object[] }>('search.find', { text: 'lucja' })).hits.length
    expect(await find(other)).toBe(await find(room))
    expect(await find(other)).toBeGreaterThan(0)
    expect(readdirSync(join(other.store.path, '..')).filter((name) => name.includes('.part'))).toEqual([])
    await other.done('file.send', { at: 0, data: 'AAAA' })
    expect((await other.refusal('store.import')).code).toBe('refusal.archive.notEmpty')
  })

  test('is asked for anew when a part is missing, too large, or the file is another', async () => {
    const { refusal, done, store } = workroom()
    expect((await refusal('store.import')).code).toBe('refusal.archive.notSent')
    await done('file.send', { at: 0, data: 'AAAA' })
    expect((await refusal('file.send', { at: 6, data: 'AAAA' })).code).toBe('refusal.archive.order')
    expect(await done('file.send', { at: 3, data: 'AAAA' })).toEqual({ bytes: 6 })
    for (const data of ['!', 'AAA', 'A'.repeat(1_048_580), '']) await refusal('file.send', { at: 0, data })
    expect((await refusal('store.import')).code).toBe('refusal.archive.other')
    expect(existsSync(`${store.path}.sent.part`)).toBe(false)
    const path = join(scratch(), 'none.zip')
    expect((await refusal('store.import', { path })).code).toBe('refusal.archive.missing')
    expect((await refusal('store.import', { path: scratch() })).code).toBe('refusal.archive.missing')
  })
})

describe('a list as a table', () => {
  test('has every client, quote and commission, and their figures plain', async () => {
    const room = await fullWorkroom()
    const clients = await listOf(room, 'clients')
    // Four of the sample; whoever was forgotten altogether is gone, and whose quotes are kept is nobody in particular.
    expect(clients).toHaveLength(4)
    expect(clients.map(({ Name }) => Name)).toContain('—')
    const commissions = await listOf(room, 'commissions')
    expect(commissions.map(({ State }) => State)).toEqual([...Array(5).fill('delivered'), 'open'])
    type Agreed = { commission: { agreed: { minor: number } } }
    const { commission } = await room.done<Agreed>('commission.get', { id: room.commission })
    expect(commissions.at(-1)!.Agreed).toBe((commission.agreed.minor / 100).toFixed(2))
    expect(commissions.at(-1)!.Currency).toBe('GBP')
    const payment = (await listOf(room, 'payments')).find(({ Amount }) => Amount === '50.00')
    expect(payment).toMatchObject({
      Amount: '50.00',
      Commission: commissions.at(-1)!.Number,
      Method: 'bank transfer',
    })
    const [invoice] = await listOf(room, 'invoices')
    expect(Number(invoice!.Total)).toBeCloseTo(Number(invoice!['Before tax']) + Number(invoice!.Tax))
    expect((await listOf(room, 'quotes')).map(({ State }) => State)).toHaveLength(7)
    const steps = await listOf(room, 'steps')
    expect(steps.filter(({ Done }) => Done !== '').length).toBeGreaterThan(5)
    expect((await listOf(room, 'times')).every(({ Minutes }) => Number(Minutes) > 0)).toBe(true)
    const linen = (await listOf(room, 'supplies')).find(({ Left }) => Left !== '')
    expect(linen).toMatchObject({ Left: '40.5', 'Counted in': 'metres' })
    expect((await listOf(room, 'lengths')).length).toBeGreaterThan(0)
    const measures = await listOf(room, 'measures')
    expect(measures.every((row) => Number(row['Size (mm)']) > 0)).toBe(true)
    expect((await listOf(room, 'cloths')).map((row) => row['Width (mm)'])).toContain('1500')
  })

  test('lets no name be a formula, whatever column it stands in, and keeps the minus of money', async () => {
    const room = await fullWorkroom()
    const evil = '=HYPERLINK("http://x","y")'
    const { client } = await room.done<{ client: { id: string } }>('client.add', {
      ...{ name: evil, address: ['@SUM(1)', '-1'], email: '+1', phone: '+44 20', note: '\t=1\r\n=2,"3"' },
    })
    await room.done('measurementSet.add', {
      clientId: client.id,
      measures: { waistGirth: 800 },
      takenBy: '=1',
      over: '-x',
    })
    await room.done('cloth.add', {
      name: evil,
      fibre: '@x',
      width: 1500,
      pricePerMetre: gbp(100),
      supplier: '+x',
    })
    await room.done('note.add', { commissionId: room.commission, text: evil })
    await room.done('payment.add', {
      commissionId: room.commission,
      kind: 'refund',
      amount: gbp(100),
      note: evil,
    })
    for (const list of LISTS)
      for (const row of await listOf(room, list))
        for (const cell of Object.values(row))
          expect(cell).not.toMatch(/^(?:[=+@\t\r＝＋－＠]|-(?!\d+\.\d\d$))/)
    const [{ Address: address }] = (await listOf(room, 'clients')).filter(
      ({ Name }) => Name === `'${evil}`,
    ) as [{ Address: string }]
    expect(address).toBe("'@SUM(1)\n-1")
    expect((await listOf(room, 'payments')).at(-1)).toMatchObject({ Amount: '-1.00', Note: `'${evil}` })
  })
})
