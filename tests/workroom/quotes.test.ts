import { describe, expect, test } from 'vitest'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Quote = Id & { number: string; state: string; snapshot: QuoteSnapshot }
type Garment = Id & {
  cut: boolean
  sewn: boolean
  hemmed: boolean
  next: string | null
  left: { mean: number }
  steps: (Id & { key: string; stage: string; doneAt: string | null })[]
}
type Commission = Id & { number: string; garments: Garment[]; left: { mean: number } }

const LINEN = {
  ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
  pricePerMetre: { minor: 1650, currency: 'GBP' },
}

async function begun() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', {
    name: 'Þórunn Vale',
    address: ['2 Ferry Steps'],
  })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    clientId: client.id,
    measures: WOMAN,
  })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', LINEN)
  const line = {
    wearerId: client.id,
    measurementSetId: measurementSet.id,
    construction: 'goredUndertunic',
    clothId: cloth.id,
  }
  const quote = async (choices = {}, more = {}) =>
    (
      await room.done<{ quote: Quote }>('quote.save', {
        customerId: client.id,
        lines: [{ ...line, choices }],
        ...more,
      })
    ).quote
  return { ...room, client, measurementSet, cloth, line, quote }
}

describe('the main job', () => {
  test('a client is recorded once, and two quotes use the same measurement set', async () => {
    const room = await begun()
    const [one, two] = [await room.quote(), await room.quote({ gores: 6 })]
    expect([one.number, two.number]).toEqual(['Q-2026-001', 'Q-2026-002'])
    expect(one.snapshot.lines[0]!.measurementSet.id).toBe(two.snapshot.lines[0]!.measurementSet.id)
    expect(two.snapshot.total.minor).toBeGreaterThan(one.snapshot.total.minor)
    const { clients } = await room.done<{ clients: Id[] }>('clients.list')
    expect(clients).toHaveLength(1)
  })

  test('a set that supersedes another leaves the first quote as it was', async () => {
    const room = await begun()
    const first = await room.quote()
    const wider = { ...WOMAN, bustGirth: 1090 }
    const { measurementSet: later } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: room.client.id, supersedes: room.measurementSet.id, measures: wider },
    })
    await room.done('client.change', { id: room.client.id, revision: 1, client: { name: 'Someone Else' } })
    await room.done('cloth.change', {
      id: room.cloth.id,
      revision: 1,
      cloth: { ...LINEN, pricePerMetre: { minor: 9900, currency: 'GBP' } },
    })
    await room.done('settings.set', {
      revision: 0,
      changes: { rates: { overheadPerHour: { minor: 5000, currency: 'GBP' } } },
    })
    const again = await room.done<{ quote: Quote }>('quote.get', { id: first.id })
    expect(again.quote.snapshot).toEqual(first.snapshot)
    const refused = await room.refusal('measurementSet.change', {
      id: room.measurementSet.id,
      revision: 2,
      measures: wider,
    })
    expect(refused.message).toContain('stand behind a quote')
    const second = await room.done<{ quote: Quote }>('quote.save', {
      customerId: room.client.id,
      lines: [{ ...room.line, measurementSetId: later.id }],
    })
    const chest = (quote: Quote) =>
      quote.snapshot.lines[0]!.estimate.draft.sizes.find(({ id }) => id === 'chest')!.mm
    expect(chest(second.quote) - chest(first)).toBeCloseTo(1090 - WOMAN.bustGirth, 6)
  })

  test('an accepted quote becomes a commission whose steps are ticked cut, sewn, hemmed', async () => {
    const room = await begun()
    const quote = await room.quote()
    const { commission } = await room.done<{ commission: Commission }>('quote.accept', {
      id: quote.id,
      dueDay: '2026-04-20',
    })
    expect(commission.number).toBe('C-2026-001')
    const [garment] = commission.garments
    expect(garment).toMatchObject({ cut: false, sewn: false, hemmed: false })
    expect(commission.left.mean).toBeCloseTo(quote.snapshot.lines[0]!.estimate.sewing.total.mean, 6)
    const at = async (name: string, payload: object) =>
      (await room.done<{ commission: Commission }>(name, payload)).commission.garments[0]!
    const cut = await at('stage.tick', {
      garmentId: garment!.id,
      stage: 'cut',
      anyway: ['unwashed', 'unmeasured'],
    })
    expect(cut).toMatchObject({ cut: true, sewn: false, hemmed: false })
    expect(cut.next).toBe(garment!.steps.find(({ key }) => key === 'wash')!.id)
    let sewn = cut
    for (const step of garment!.steps.filter(({ stage }) => stage === 'sew')) {
      expect(sewn.sewn).toBe(false)
      sewn = await at('step.tick', { id: step.id })
    }
    expect(sewn).toMatchObject({ cut: true, sewn: true, hemmed: false })
    const hemmed = await at('stage.tick', { garmentId: garment!.id, stage: 'hem' })
    expect(hemmed).toMatchObject({ cut: true, sewn: true, hemmed: true })
    for (const stage of ['prepare', 'fit', 'finish'])
      await room.done('stage.tick', { garmentId: garment!.id, stage })
    const { commissions } = await room.done<{ commissions: Commission[] }>('commissions.list')
    expect(commissions[0]).toMatchObject({ left: { mean: 0 } })
    const back = await at('step.untick', { id: garment!.steps.find(({ key }) => key === 'bottom')!.id })
    expect(back.hemmed).toBe(false)
    const { changes } = await room.done<{ changes: { request: string }[] }>('history.list', {
      id: garment!.steps.find(({ key }) => key === 'bottom')!.id,
    })
    expect(changes.map(({ request }) => request)).toEqual(['stage.tick', 'step.untick'])
  })

  test('a quantity becomes that many garments', async () => {
    const room = await begun()
    const { quote } = await room.done<{ quote: Quote }>('quote.save', {
      customerId: room.client.id,
      lines: [{ ...room.line, quantity: 3 }],
    })
    const [line] = quote.snapshot.lines
    expect(line!.net.minor).toBe(3 * line!.estimate.price.net.minor)
    const { commission } = await room.done<{ commission: Commission }>('quote.accept', { id: quote.id })
    expect(commission.garments.map((one) => (one as unknown as { copy: number }).copy)).toEqual([1, 2, 3])
  })

  test('the sums of a taxed quote are the sums of its lines', async () => {
    const room = await begun()
    await room.done('settings.set', {
      revision: 0,
      changes: { rates: { tax: { name: 'VAT', basisPoints: 1975 }, rounding: { step: 1, direction: 'up' } } },
    })
    const lines = Array.from({ length: 3 }, (_, i) => ({ ...room.line, quantity: i + 1 }))
    const { quote } = await room.done<{ quote: Quote }>('quote.save', { customerId: room.client.id, lines })
    const { snapshot } = quote
    const sum = (of: 'net' | 'tax' | 'total') => snapshot.lines.reduce((all, line) => all + line[of].minor, 0)
    expect([snapshot.net.minor, snapshot.tax.amount.minor, snapshot.total.minor]).toEqual([
      sum('net'),
      sum('tax'),
      sum('total'),
    ])
    expect(snapshot.net.minor + snapshot.tax.amount.minor).toBe(snapshot.total.minor)
  })
})

describe('a quote', () => {
  test('is replaced by another, which names it, and can then not be accepted', async () => {
    const room = await begun()
    const first = await room.quote()
    const second = await room.quote({ hemLevel: 'ankle' }, { supersedes: first.id })
    expect(second.snapshot.supersedes).toBe(first.number)
    const refused = await room.refusal('quote.accept', { id: first.id })
    expect(refused.message).toBe(
      'Quote Q-2026-001 is replaced by another. Only a quote that still waits for an answer can be accepted, declined or replaced.',
    )
    await room.done('quote.accept', { id: second.id })
    expect((await room.refusal('quote.accept', { id: second.id })).code).toBe('refusal.quote.notSent')
    expect((await room.refusal('quote.decline', { id: second.id })).code).toBe('refusal.quote.notSent')
  })

  test('that is refused leaves no trace and takes no number', async () => {
    const room = await begun()
    const lines = [room.line, { ...room.line, choices: { length: '30 cm' } }]
    const refused = await room.refusal('quote.save', { customerId: room.client.id, lines })
    expect(refused).toMatchObject({
      code: 'refusal.draft.shorterThanArmhole',
      field: 'lines.1.choices.length',
    })
    const { changes } = await room.done<{ changes: unknown[] }>('history.list', {
      id: room.measurementSet.id,
    })
    expect(changes).toHaveLength(1)
    const { measurementSet } = await room.done<{ measurementSet: { usedAt: string | null } }>(
      'measurementSet.get',
      { id: room.measurementSet.id },
    )
    expect(measurementSet.usedAt).toBeNull()
    expect((await room.quote()).number).toBe('Q-2026-001')
  })

  test('takes measures of its wearer only', async () => {
    const room = await begun()
    const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Orme' })
    const refused = await room.refusal('quote.save', {
      customerId: client.id,
      lines: [{ ...room.line, wearerId: client.id }],
    })
    expect(refused).toMatchObject({ code: 'refusal.quote.otherBody', field: 'lines.0.measurementSetId' })
  })

  test('keeps its price when it is read from the store again', async () => {
    const room = await begun()
    const quote = await room.quote()
    const { price } = quote.snapshot.lines[0]!.estimate
    expect(price.lines.reduce((sum, { amount }) => sum + amount.minor, 0)).toBe(price.total.minor)
  })
})
