import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { documentPath, requests } from '../../core/workroom.ts'
import { WOMAN } from '../support/bodies.ts'
import { newStore, scratch, workroom } from '../support/store.ts'

type Made = {
  quotes: string[]
  garment: string
  commission: string
  clients: string[]
  cloths: string[]
  measurementSets: string[]
}

describe('the request table', () => {
  test('names each request once and says what it does in a sentence', () => {
    expect(new Set(requests.map(({ name }) => name)).size).toBe(requests.length)
    for (const { name, about } of requests) {
      expect(name).toMatch(/^[a-zA-Z]+\.[a-zA-Z]+$/)
      expect(about).toMatch(/^[A-Z].*\.$/)
    }
  })

  test('refuses what is no request, and inputs of the wrong kind, in a sentence with the field', async () => {
    const { refusal } = workroom()
    expect(await refusal('client.remove')).toMatchObject({
      code: 'refusal.request.unknown',
      field: 'request',
    })
    expect(await refusal('client.add', { name: 5 })).toMatchObject({
      code: 'refusal.request.type',
      field: 'name',
    })
    expect(await refusal('client.add', {})).toMatchObject({ field: 'name' })
    expect(await refusal('client.add', { name: '' })).toMatchObject({
      code: 'refusal.request.invalid',
      field: 'name',
    })
    expect(await refusal('client.add', { name: 'Ada', age: 3 })).toMatchObject({
      code: 'refusal.request.unknownField',
      field: 'age',
    })
    expect(await refusal('client.add', 'Ada')).toMatchObject({ code: 'refusal.request.type' })
    expect(await refusal('client.add', null)).toMatchObject({ code: 'refusal.request.type' })
    expect(await refusal('client.add', { name: 'Ada', birthDay: '2020-02-30' })).toMatchObject({
      field: 'birthDay',
    })
    expect(await refusal('stage.tick', { garmentId: 'x', stage: 'dye' })).toMatchObject({
      code: 'refusal.request.value',
      field: 'stage',
    })
    const odd = JSON.parse('{"name":"Ada","__proto__":{"note":"x"}}')
    expect(await refusal('client.add', odd)).toMatchObject({ code: 'refusal.request.unknownField' })
    expect(await refusal('client.get', { id: 'nobody' })).toMatchObject({
      code: 'refusal.store.notFound',
      field: 'id',
    })
  })

  test('answers every query on a new store, and the sample only there', async () => {
    const { done, refusal } = workroom()
    expect(await done('workroom.describe')).toMatchObject({ kind: 'new', clients: 0 })
    for (const name of [
      'measures.list',
      'constructions.list',
      'finishPlans.list',
      'clients.list',
      'cloths.list',
      'quotes.list',
      'commissions.list',
      'settings.get',
    ]) {
      await done(name)
    }
    await done('client.add', { name: 'Ada' })
    expect((await refusal('workroom.sample')).message).toContain('never mixed with real work')
  })
})

describe('drafting, laying and estimating', () => {
  const garment = { construction: 'goredUndertunic', measures: WOMAN }
  const cloth = { width: '150 cm', pricePerMetre: { minor: 1650, currency: 'GBP' } }

  test('need no saved client', async () => {
    const { done } = workroom()
    const draft = await done<{ pieces: unknown[] }>('garment.draft', garment)
    expect(draft.pieces.length).toBeGreaterThan(5)
    const { purchase } = await done<{ purchase: { toBuy: number } }>('garment.lay', {
      ...garment,
      cloth: { width: 1500 },
    })
    const estimate = await done<{ purchase: unknown; price: { total: { minor: number } } }>(
      'garment.estimate',
      { ...garment, cloth },
    )
    expect(estimate.purchase).toEqual(purchase)
    expect(estimate.price.total.minor).toBeGreaterThan(10_000)
    expect(await done('clients.list')).toEqual({ clients: [] })
  })

  test.each([
    [{ measures: { ...WOMAN, bustGirth: 0 } }, 'measures.bustGirth'],
    [{ measures: { ...WOMAN, bustGirth: -3 } }, 'measures.bustGirth'],
    [{ measures: { ...WOMAN, bustGirth: 1e9 } }, 'measures.bustGirth'],
    [{ measures: { ...WOMAN, bustGirth: 'plenty' } }, 'measures.bustGirth'],
    [{ measures: { ...WOMAN, waistHeight: 1500 } }, 'measures.waistHeight'],
    [{ choices: { length: '30 cm' } }, 'choices.length'],
    [{ measures: { ...WOMAN, hipGirth: undefined } }, 'measures.hipGirth'],
    [{ construction: 'toga' }, 'construction'],
    [{ measures: undefined }, 'measures'],
    [{ cloth: undefined }, 'cloth'],
    [{ cloth: { ...cloth, width: '25 cm' } }, 'cloth.width'],
    [{ cloth: { ...cloth, width: 0 } }, 'cloth.width'],
    [{ cloth: { ...cloth, warpShrinkage: 0.9 } }, 'cloth.warpShrinkage'],
    [{ cloth: { ...cloth, pricePerMetre: { minor: 1, currency: 'EUR' } } }, 'cloth.pricePerMetre'],
  ])('%j is refused in a sentence', async (bad, field) => {
    const { refusal } = workroom()
    const refused = await refusal('garment.estimate', { ...garment, cloth, ...bad })
    expect(refused.field).toBe(field)
    expect(refused.message).toMatch(/\.$/)
    expect(refused.message).not.toContain('{')
  })

  test('follow the workroom’s unit for bare numbers in text', async () => {
    const { done } = workroom()
    const chest = async (text: string) => {
      const draft = await done<{ sizes: { id: string; mm: number }[] }>('garment.draft', {
        ...garment,
        measures: { ...WOMAN, bustGirth: text },
      })
      return draft.sizes.find(({ id }) => id === 'chest')!.mm
    }
    expect(await chest('97.79')).toBeCloseTo(977.9 + 120, 6)
    await done('settings.set', { revision: 0, changes: { letterhead: { unit: 'in' } } })
    expect(await chest('38 1/2')).toBeCloseTo(977.9 + 120, 6)
    expect(await done('length.read', { text: '38½' })).toEqual({ mm: 977.9 })
    expect(await done('length.print', { mm: 977.9 })).toEqual({ text: '38½ in' })
  })

  test('describe a construction with what each choice works out to', async () => {
    const { done } = workroom()
    const described = await done<{ choices: { id: string; label: string; worksOutTo?: unknown }[] }>(
      'construction.describe',
      {
        id: 'goredUndertunic',
        measures: WOMAN,
      },
    )
    const gusset = described.choices.find(({ id }) => id === 'gusset')!
    expect(gusset).toMatchObject({ label: 'Gusset', worksOutTo: 100, kind: 'length', range: [40, 160] })
    expect(described.choices.every(({ label }) => !label.includes('.'))).toBe(true)
  })
})

describe('the sample workroom', () => {
  test('has four clients, three cloths, a quote that waits, a commission half done and the work of five months delivered', async () => {
    const { done, refusal } = workroom()
    const made = await done<Made>('workroom.sample')
    expect(await done('workroom.describe')).toMatchObject({
      kind: 'sample',
      name: 'Tenter Lane Workroom',
      clients: 4,
      cloths: 3,
      quotes: 7,
      commissions: 6,
    })
    const { quotes } = await done<{ quotes: { state: string }[] }>('quotes.list')
    expect(quotes.map(({ state }) => state)).toEqual([...Array(6).fill('accepted'), 'sent'])
    const { commissions } = await done<{ commissions: { garments: { cut: boolean; sewn: boolean }[] }[] }>(
      'commissions.list',
    )
    expect(commissions.at(-1)!.garments[0]).toMatchObject({ cut: true, sewn: false })
    expect((await refusal('workroom.sample')).code).toBe('refusal.workroom.notNew')
    await done('quote.accept', { id: made.quotes[1]! })
  })

  test('prints its papers, and the quote the same for good', async () => {
    const folder = scratch()
    const store = newStore(folder)
    const { done, context } = workroom(store)
    const made = await done<Made>('workroom.sample')
    const print = async (name: string, payload: object) => {
      const { document } = await done<{ document: { id: string; hash: string; pages: number } }>(
        name,
        payload,
      )
      const path = documentPath(context, document.hash)
      expect(readFileSync(path).subarray(0, 5).toString()).toBe('%PDF-')
      return { ...document, bytes: readFileSync(path) }
    }
    const quote = await print('quote.print', { id: made.quotes[0]! })
    for (const name of ['workOrder.print', 'cuttingSheet.print'])
      await print(name, { garmentId: made.garment })
    await done('settings.set', {
      revision: 1,
      changes: { letterhead: { name: 'Another Name', paper: 'Letter' } },
    })
    const again = await print('quote.print', { id: made.quotes[0]! })
    expect(again.id).toBe(quote.id)
    expect(again.bytes.equals(quote.bytes)).toBe(true)
    expect(existsSync(context.store.attachments)).toBe(true)
  })
})
