import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Estimate } from '../../core/price/estimate.types.ts'
import type { QuoteSnapshot } from '../../core/quote/types.ts'
import { documentPath } from '../../core/workroom.ts'
import { hasPoppler, textOf } from '../paper/poppler.ts'
import { workroom } from '../support/store.ts'

type Sample = { clients: string[]; measurementSets: string[]; cloths: string[] }
type Quoted = { quote: { id: string; snapshot: QuoteSnapshot } }
type Printed = { document: { id: string; hash: string; pages: number } }

async function begun() {
  const house = workroom()
  const { clients, measurementSets, cloths } = await house.done<Sample>('workroom.sample')
  const line = { wearerId: clients[0]!, measurementSetId: measurementSets[0]!, clothId: cloths[0]! }
  const quoted = (lines: object[]) =>
    house.done<Quoted>('quote.save', {
      customerId: clients[0],
      lines: lines.map((one) => ({ ...line, ...one })),
    })
  return { ...house, line, cloths, quoted }
}

describe('a lined garment', () => {
  test('has a lay, a length to buy and a price for the cloth of its lining', async () => {
    const { done, line, cloths } = await begun()
    const { wearerId: _, ...garment } = line
    const asked = { ...garment, construction: 'hood', choices: { lined: true } }
    const alike = await done<Estimate>('garment.estimate', asked)
    expect(alike.others).toBeUndefined()
    expect(alike.lay.placements.some(({ piece }) => piece === 'lining-hoodSide')).toBe(true)
    const apart = await done<Estimate>('garment.estimate', { ...asked, otherClothIds: { lining: cloths[1] } })
    expect(apart.lay.placements.every(({ piece }) => !piece.startsWith('lining'))).toBe(true)
    expect(apart.others).toHaveLength(1)
    expect(apart.others![0]!.lay.placements.map(({ piece }) => piece).sort()).toEqual(
      ['lining-capeGore', 'lining-capeGore', 'lining-hoodSide', 'lining-hoodSide'].sort(),
    )
    expect(apart.price.lines.filter(({ kind }) => kind === 'cloth')).toHaveLength(2)
    expect(apart.purchase.toBuy).toBeLessThan(alike.purchase.toBuy)
  })
})

describe('several garments on one quote', () => {
  test('are laid together on one length where that saves some, and pay for all of it between them', async () => {
    const { quoted, done, context } = await begun()
    const { quote } = await quoted([
      { construction: 'goredUndertunic' },
      { construction: 'coif' },
      { construction: 'kerchief' },
      { construction: 'hood' },
    ])
    const { shared = [], lines } = quote.snapshot
    expect(shared).toHaveLength(1)
    const [group] = shared
    expect(group!.saves).toBeGreaterThan(0)
    const paid = lines.map(({ estimate }) => estimate.price.lines.find(({ kind }) => kind === 'cloth')!)
    const lengths = paid.map(({ how }) => (how.params!.length as { mm: number }).mm)
    expect(lengths.reduce((sum, mm) => sum + mm, 0)).toBe(group!.purchase.toBuy)
    expect(lines.reduce((sum, { estimate }) => sum + estimate.purchase.toBuy, 0)).toBe(
      group!.purchase.toBuy + group!.saves,
    )
    const { commission } = await done<{ commission: { garments: { id: string }[] } }>('quote.accept', {
      id: quote.id,
    })
    const printed = async (name: string, garmentId: string) => {
      const { document } = await done<Printed>(name, { garmentId })
      expect(document.pages).toBeGreaterThan(1)
      return hasPoppler ? textOf(readFileSync(documentPath(context, document.hash))) : undefined
    }
    for (const { id } of commission.garments) {
      for (const name of ['cuttingSheet.print', 'workOrder.print']) {
        const text = await printed(name, id)
        if (text === undefined) continue
        // One length for all, never each garment's own.
        const buy = `Buy ${group!.purchase.toBuy / 10} cm`
        expect(text).toContain('4 garments from one length')
        expect(text.match(/Buy [\d.]+ cm/g)).toEqual([buy])
      }
    }
    expect((await done<Printed>('quote.print', { id: quote.id })).document.pages).toBeGreaterThan(0)
  })

  test('keep lengths of their own on different cloths', async () => {
    const { quoted, cloths } = await begun()
    const { quote } = await quoted([
      { construction: 'coif' },
      { construction: 'kerchief', clothId: cloths[1] },
    ])
    expect(quote.snapshot.shared).toBeUndefined()
  })
})

describe('what a client also asks for', () => {
  test('stands on the quote in words, and is in its cloth and price', async () => {
    const { quoted } = await begun()
    const extras = { growthTucks: { count: 2, depth: 15 }, inlay: 20, nursingSlits: true, trim: ['bottom'] }
    const { quote: plain } = await quoted([{ construction: 'shift' }])
    const { quote } = await quoted([{ construction: 'shift', extras }])
    expect(quote.snapshot.lines[0]!.description.map(({ code }) => code)).toEqual(
      expect.arrayContaining([
        'draft.extra.tucks',
        'draft.extra.inlay',
        'draft.extra.nursing',
        'draft.extra.trim',
      ]),
    )
    expect(quote.snapshot.total.minor).toBeGreaterThan(plain.snapshot.total.minor)
  })
})

describe('an alteration', () => {
  test('is a line of its own kind: priced by its work, with papers and no cloth to buy', async () => {
    const { quoted, done } = await begun()
    const { quote } = await quoted([
      { construction: 'alteration', choices: { unpicked: '120 cm', seamsResewn: '120 cm', buttonsSewn: 2 } },
    ])
    const [line] = quote.snapshot.lines
    expect(line!.estimate.purchase.toBuy).toBe(0)
    expect(line!.estimate.price.labour.minor).toBeGreaterThan(0)
    expect(line!.estimate.price.lines.find(({ kind }) => kind === 'notion')!.amount.minor).toBe(120)
    const { commission } = await done<{ commission: { garments: { id: string }[] } }>('quote.accept', {
      id: quote.id,
    })
    const { document } = await done<Printed>('workOrder.print', { garmentId: commission.garments[0]!.id })
    expect(document.pages).toBeGreaterThan(0)
    await done<Printed>('cuttingSheet.print', { garmentId: commission.garments[0]!.id })
  })
})

describe('a size for stock', () => {
  test('is a wearer with figures for every garment, whom nobody measured', async () => {
    const { done, refusal, cloths } = await begun()
    const asked = { of: 'women', chest: '96 cm', stature: '168 cm' }
    const { client, measurementSet } = await done<{
      client: { id: string; name: string }
      measurementSet: { id: string; measures: Record<string, { mm: number; source: string }> }
    }>('stockSize.add', asked)
    expect(client.name).toBe('Stock, women, bust 96 cm, 168 cm tall')
    expect(Object.values(measurementSet.measures).every(({ source }) => source === 'taken')).toBe(true)
    for (const construction of ['goredUndertunic', 'lacedKirtle', 'hose', 'shirt', 'drawers']) {
      const line = {
        construction,
        wearerId: client.id,
        measurementSetId: measurementSet.id,
        clothId: cloths[0],
      }
      await done('quote.save', { customerId: client.id, lines: [line] })
    }
    expect((await refusal('stockSize.add', { ...asked, stature: '9 cm' })).field).toBe('stature')
  })
})

describe('a garment that needs a toile', () => {
  test('is not cut before the toile is ticked', async () => {
    const { quoted, done, refusal } = await begun()
    const { quote } = await quoted([{ construction: 'lacedKirtle' }])
    type Kept = { commission: { garments: { id: string; steps: { id: string; key: string }[] }[] } }
    const { commission } = await done<Kept>('quote.accept', { id: quote.id })
    const [garment] = commission.garments
    const cut = { garmentId: garment!.id, stage: 'cut', anyway: ['unwashed', 'unmeasured'] }
    expect((await refusal('stage.tick', cut)).message).toContain('toile')
    await done('step.tick', { id: garment!.steps.find(({ key }) => key === 'toile')!.id })
    await done('stage.tick', cut)
  })
})

describe('a notion', () => {
  test('costs what the workroom says, and nothing once its price is taken away', async () => {
    const { done, line } = await begun()
    const { wearerId: _, ...garment } = line
    const hooks = async () => {
      const { price } = await done<Estimate>('garment.estimate', { ...garment, construction: 'smock' })
      return price.lines.filter(({ kind }) => kind === 'notion').map(({ amount }) => amount.minor)
    }
    const priced = async (hook: object | null) => {
      const { revision } = await done<{ revision: number }>('settings.get', {})
      await done('settings.set', { revision, changes: { notionStock: { hook } } })
    }
    await priced({ minor: 35, currency: 'GBP' })
    expect(await hooks()).toEqual([2 * 35])
    await priced(null)
    expect(await hooks()).toEqual([])
  })
})
