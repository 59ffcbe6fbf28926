import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { dayAt } from '../../core/words/dates.ts'
import { settingsOf } from '../../core/workroom/settings.ts'
import { documentFile } from '../../core/workroom.ts'
import { hasPoppler, imagesOf, taggedText, textOf } from '../paper/poppler.ts'
import { agreedWork } from '../support/agreed-work.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Printed = { document: Id & { kind: string; name: string; pages: number; bytes: number } }

async function begun() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', {
    name: 'שרה לוי',
    address: ['2 Weir Lane'],
  })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
    pricePerMetre: { minor: 1650, currency: 'GBP' },
  })
  const line = { wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id }
  const { quote } = await room.done<{ quote: Id }>('quote.save', {
    customerId: client.id,
    lines: [
      { ...line, construction: 'goredUndertunic' },
      { ...line, construction: 'veil' },
    ],
  })
  const { commission } = await room.done<{
    commission: Id & { number: string; revision: number; garments: Id[] }
  }>('quote.accept', { id: quote.id })
  const file = ({ document }: Printed) => documentFile(room.context, document.id)
  const read = (printed: Printed) => readFileSync(file(printed).path)
  return { ...room, commission, garmentId: commission.garments[0]!.id, file, read }
}

describe('the cloth on a work order and a cutting sheet', () => {
  test.skipIf(!hasPoppler)('is to be bought, then set aside, then as it was measured', async () => {
    const room = await agreedWork()
    const { garments } = await room.accepted()
    const garmentId = garments[0]!.id
    const words = async (sheet = 'cuttingSheet.print') => {
      const { document } = await room.done<Printed>(sheet, { garmentId })
      return taggedText(readFileSync(documentFile(room.context, document.id).path)).replace(/\s+/g, ' ')
    }
    expect(await words()).toMatch(/Buy [\d.]+ cm of cloth 150 cm wide/)
    const { length } = await room.done<{ length: Id & { revision: number } }>('stock.add', {
      ...{ clothId: room.cloth.id, length: '5 m', orderedDay: '2026-03-02', expectedDay: '2026-03-12' },
    })
    await room.done('stock.reserve', { id: length.id, garmentId })
    const waiting = await words('workOrder.print')
    expect(waiting).toMatch(/Set aside: [\d.]+ cm, on its way until 12 March 2026\. Nothing to buy/)
    expect(waiting).not.toContain('To buy')
    expect(await room.done('garment.printed', { garmentId })).toMatchObject({ stale: false })
    room.context.now = () => '2026-03-13T09:00:00.000Z'
    const { laid } = await room.done<{ laid: { layLength: number } }>('garment.washed', {
      ...{ garmentId, width: '144 cm', length: '4 m' },
    })
    expect(await room.done('garment.printed', { garmentId })).toMatchObject({ stale: true })
    const cut = await words()
    expect(cut).toContain('Washed, and measured on 13 March 2026: 144 cm wide, 400 cm long')
    expect(cut).toContain(`This lay takes ${Math.round(laid.layLength) / 10} cm of it.`)
    expect(cut).not.toContain('Nothing to buy')
    expect(cut).not.toMatch(/\bBuy\b/)
  })
})

describe('papers besides the quote, the work order and the cutting sheet', () => {
  test('the pattern is printed on sheets, on one sheet, and drawn; each is named after what it is of', async () => {
    const room = await begun()
    const asked = { garmentId: room.garmentId }
    const tiled = await room.done<Printed>('pattern.print', { ...asked, paper: 'A4' })
    expect(tiled.document.pages).toBeGreaterThan(3)
    expect(room.file(tiled).name).toBe(`${room.commission.number}-1-pattern.pdf`)
    const one = await room.done<Printed>('pattern.print', { ...asked, paper: 'oneSheet' })
    expect(one.document.pages).toBe(1)
    const drawn = await room.done<Printed>('pattern.draw', asked)
    expect(room.file(drawn).name).toMatch(/-1-pattern\.svg$/)
    const svg = room.read(drawn).toString()
    expect(svg).toMatch(/^<svg [^>]*width="[\d.]+mm" height="[\d.]+mm">/)
    expect(svg).toMatch(/A65\.\d+ 65\.\d+ 0 1 1 /)
    // What is chalked from its measures has none.
    const veil = await room.refusal('pattern.print', { garmentId: room.commission.garments[1]!.id })
    expect(veil.code).toBe('refusal.pattern.none')
  })

  test('the work order and the cutting sheet are remembered with the day they were last printed', async () => {
    const room = await begun()
    const [{ id: garmentId }, other] = room.commission.garments as [Id, Id]
    const printed = (of: Id) => room.done('garment.printed', { garmentId: of.id })
    expect(await printed({ id: garmentId })).toEqual({ workOrder: null, cuttingSheet: null, stale: false })
    const day = dayAt(room.context.now(), settingsOf(room.context).timeZone)
    await room.done('workOrder.print', { garmentId })
    expect(await printed({ id: garmentId })).toEqual({ workOrder: day, cuttingSheet: null, stale: false })
    await room.done('cuttingSheet.print', { garmentId })
    expect(await printed({ id: garmentId })).toEqual({ workOrder: day, cuttingSheet: day, stale: false })
    // The other garment of the commission has not been printed.
    expect(await printed(other)).toEqual({ workOrder: null, cuttingSheet: null, stale: false })
  })

  test('say which draft they are of once a garment was drafted again', async () => {
    const room = await begun()
    await room.done('garment.draftAgain', { garmentId: room.garmentId, choices: { hemLevel: 'ankle' } })
    const sheet = await room.done<Printed>('cuttingSheet.print', { garmentId: room.garmentId })
    expect(sheet.document.name).toMatch(/-cutting-sheet-draft-2$/)
    if (hasPoppler) expect(textOf(room.read(sheet))).toContain('Draft 2 · ')
  })

  test('labels are of all that is cut; the care sheet of one garment', async () => {
    const room = await begun()
    const labels = await room.done<Printed>('labels.print', { commissionId: room.commission.id })
    const care = await room.done<Printed>('careSheet.print', { garmentId: room.garmentId })
    expect([labels.document.pages, care.document.pages]).toEqual([1, 1])
    if (!hasPoppler) return
    expect(textOf(room.read(labels))).toContain('Gore')
    expect(textOf(room.read(care))).toContain('200 °C at most')
  })

  test('money is reminded of, received and invoiced; the invoice is printed as it was issued', async () => {
    const room = await begun()
    const { id: commissionId } = room.commission
    const amount = { minor: 1000, currency: 'GBP' }
    const reminder = await room.done<Printed>('reminder.print', { commissionId })
    expect(reminder.document.name).toBe(`${room.commission.number}-reminder-2026-03-02`)
    const { payment } = await room.done<{ payment: Id }>('payment.add', { commissionId, amount })
    const receipt = await room.done<Printed>('receipt.print', { id: payment.id })
    expect(receipt.document.name).toBe('R-2026-001')
    const { invoice } = await room.done<{ invoice: Id }>('invoice.make', { commissionId })
    const first = await room.done<Printed>('invoice.print', { id: invoice.id })
    expect(first.document.name).toBe('I-2026-001')
    const { revision } = await room.done<{ revision: number }>('settings.get')
    await room.done('settings.set', { revision, changes: { letterhead: { name: 'Another Name' } } })
    const again = await room.done<Printed>('invoice.print', { id: invoice.id })
    if (!hasPoppler) return
    expect(textOf(room.read(receipt))).toContain('£10.00')
    expect(textOf(room.read(again))).not.toContain('Another Name')
  })
})

describe('what is noted for the bench', () => {
  test('stands on the work order with its days and hours, and on nothing that goes to the client', async () => {
    const room = await agreedWork()
    type Client = { client: { id: string; revision: number; name: string } }
    const { client } = await room.done<Client>('client.get', { id: room.client.id })
    const note = 'Allergic to lanolin'
    await room.done('client.change', {
      id: client.id,
      revision: client.revision,
      client: { name: client.name, note },
    })
    const { id, garments } = await room.accepted({ dueDay: '2026-05-04', note: 'Sew it double' })
    const read = async (name: string, payload: object) => {
      const { document } = await room.done<Printed>(name, payload)
      return textOf(readFileSync(documentFile(room.context, document.id).path)).replace(/\s+/g, ' ')
    }
    if (!hasPoppler) return
    const order = await read('workOrder.print', { garmentId: garments[0]!.id })
    for (const words of [
      /Noted of Ása Holt: Allergic to lanolin/,
      /Noted of this order: Sew it double/,
      /Due on .{0,20}4 May 2026/,
      /are reckoned in the price\./,
    ])
      expect(words.test(order), words.source).toBe(true)
    // It is read before the cloth is cut.
    expect(order.indexOf('lanolin')).toBeLessThan(order.indexOf('Making'))
    const { quotes } = await room.done<{ quotes: Id[] }>('quotes.list')
    const { invoice } = await room.done<{ invoice: Id }>('invoice.make', { commissionId: id })
    for (const [name, payload] of [
      ['quote.print', { id: quotes[0]!.id }],
      ['invoice.print', { id: invoice.id }],
      ['careSheet.print', { garmentId: garments[0]!.id }],
      ['labels.print', { commissionId: id }],
    ] as const)
      expect(/lanolin|Sew it double/.test(await read(name, payload)), name).toBe(false)
  })
})

describe('the day that a quote promises', () => {
  test('is reckoned from all accepted work, stands on the quote, and is the commission’s day once it is accepted', async () => {
    const room = await begun()
    const { quotes } = await room.done<{ quotes: Id[] }>('quotes.list')
    type Got = { quote: Id & { snapshot: { promised?: string; customer: Id; lines: Line[] } } }
    type Line = { wearer: Id; measurementSet: Id; cloth: Id; construction: string }
    const { quote: before } = await room.done<Got>('quote.get', { id: quotes[0]!.id })
    expect(before.snapshot.promised).toBeUndefined()
    const [line] = before.snapshot.lines
    const asked = {
      customerId: before.snapshot.customer.id,
      lines: [
        {
          ...{ wearerId: line!.wearer.id, measurementSetId: line!.measurementSet.id },
          ...{ clothId: line!.cloth.id, construction: line!.construction },
        },
      ],
    }
    const { quote } = await room.done<Got>('quote.save', { ...asked, promise: 'reckoned' })
    // Promised for a yes in a week; said at once, it would be done sooner.
    const { promise } = await room.done<{ promise: string }>('plan.whatIf', { quoteId: quote.id })
    expect(promise < quote.snapshot.promised!).toBe(true)
    const { commission } = await room.done<{ commission: { dueDay: string } }>('quote.accept', {
      id: quote.id,
    })
    expect(commission.dueDay).toBe(quote.snapshot.promised)
    const { quote: named } = await room.done<Got>('quote.save', { ...asked, promise: '2026-06-01' })
    const printed = await room.done<Printed>('quote.print', { id: named.id })
    if (hasPoppler) {
      expect(textOf(room.read(printed))).toContain('Ready by 1 June 2026')
      expect(textOf(room.read(printed)).replace(/\s+/g, ' ')).toContain('if you say yes by 9 March 2026')
    }
  })
})

describe('the mark of the workroom', () => {
  // Two pixels beside each other, red and blue, as any tool writes them.
  const MARK =
    'iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAADUlEQVR4nGP4zwAE/wEHAAH/4iOeWQAAAABJRU5ErkJggg=='

  test('stands at the head of a quote, in its own proportions; quotes already made keep theirs', async () => {
    const room = await begun()
    const { revision } = await room.done<{ revision: number }>('settings.get')
    const { settings } = await room.done<{ settings: { letterhead: object } }>('settings.set', {
      ...{ revision, changes: { letterhead: { name: 'Weir Lane' } } },
    })
    expect(settings.letterhead).not.toHaveProperty('mark')
    await room.done('mark.set', { revision: revision + 1, data: MARK })
    expect((await room.done<{ address: string }>('mark.get')).address).toBe(`data:image/png;base64,${MARK}`)
    const { quotes } = await room.done<{ quotes: Id[] }>('quotes.list')
    const old = await room.done<Printed>('quote.print', { id: quotes[0]!.id })
    const reminder = await room.done<Printed>('reminder.print', { commissionId: room.commission.id })
    if (hasPoppler) {
      expect(imagesOf(room.read(old))).toBe(0)
      expect(imagesOf(room.read(reminder))).toBe(1)
    }
    await room.done('mark.set', { revision: revision + 2, data: null })
    expect((await room.done<{ address: null }>('mark.get')).address).toBeNull()
    const jpeg = Buffer.from([0xff, 0xd8, 0xff, 0xe0]).toString('base64')
    expect((await room.refusal('mark.set', { revision: revision + 3, data: jpeg })).code).toBe(
      'refusal.mark.png',
    )
  })
})
