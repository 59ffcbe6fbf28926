import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { ownConstruction } from '../../core/workroom/own-constructions.ts'
import { FROCK } from '../support/own.ts'
import { workroom } from '../support/store.ts'

type Kept = { construction: { family: string; version: number; definition: typeof FROCK } }
type Sample = { clients: string[]; measurementSets: string[]; cloths: string[] }

describe('constructions of the maker’s own', () => {
  test('are kept version by version, and quotes keep the version they were made with', async () => {
    const { done } = workroom()
    const { measurementSets, clients, cloths } = await done<Sample>('workroom.sample')
    const { construction } = await done<Kept>('ownConstruction.save', { definition: FROCK })
    const id = `own:${construction.family}`
    const line = {
      construction: id,
      measurementSetId: measurementSets[0],
      clothId: cloths[0],
      wearerId: clients[0],
    }
    const { quote } = await done<{
      quote: { id: string; snapshot: { lines: { construction: string; estimate: object }[] } }
    }>('quote.save', { customerId: clients[0], lines: [line] })
    expect(quote.snapshot.lines[0]!.construction).toBe(`${id}@1`)
    const longer = { ...FROCK, name: 'Long field frock' }
    const { construction: second } = await done<Kept>('ownConstruction.save', {
      ...{ definition: longer, family: construction.family },
    })
    expect(second.version).toBe(2)
    const { constructions } = await done<{ constructions: { id: string; name: string }[] }>(
      'constructions.list',
    )
    expect(constructions.filter((one) => one.id.startsWith('own:'))).toEqual([
      expect.objectContaining({ id, name: 'Long field frock' }),
    ])
    expect(
      (await done<Kept>('ownConstruction.get', { family: construction.family, version: 1 })).construction
        .definition,
    ).toEqual(FROCK)
    const again = await done<{ quote: { snapshot: object } }>('quote.get', { id: quote.id })
    expect(again.quote.snapshot).toEqual(quote.snapshot)
    const { commission } = await done<{ commission: { garments: { id: string }[] } }>('quote.accept', {
      id: quote.id,
    })
    const { document } = await done<{ document: { pages: number } }>('workOrder.print', {
      garmentId: commission.garments[0]!.id,
    })
    expect(document.pages).toBeGreaterThan(1)
  })

  test('go out as a file and come in again the same', async () => {
    const { done, refusal } = workroom()
    await done('workroom.sample')
    const { construction } = await done<Kept>('ownConstruction.save', { definition: FROCK })
    const { name, text } = await done<{ name: string; text: string }>('ownConstruction.write', {
      family: construction.family,
    })
    expect(name).toBe('field-frock.json')
    const { construction: read } = await done<Kept>('ownConstruction.read', { text })
    expect(read.definition).toEqual(FROCK)
    expect(read.family).not.toBe(construction.family)
    expect((await refusal('ownConstruction.read', { text: 'no' })).message).toContain('not JSON')
    const wrong = JSON.stringify({ ...FROCK, pieces: [{ ...FROCK.pieces[0], shape: 'star' }] })
    expect((await refusal('ownConstruction.read', { text: wrong })).message).toContain('pieces.0.shape')
  })

  test('are tried before they are kept, with every fault in a sentence', async () => {
    const { done } = workroom()
    const { measurementSets } = await done<Sample>('workroom.sample')
    const asked = { measurementSetId: measurementSets[0], definition: { ...FROCK, hems: [] } }
    const { faults } = await done<{ faults: string[] }>('ownConstruction.try', asked)
    expect(faults).toContain('Nothing is sewn to the lower edge of “skirt”. Put it in a seam or a hem.')
  })

  test('have a published schema that is the one they are read by', () => {
    const file = resolve(import.meta.dirname, '../../build/construction.schema.json')
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(z.toJSONSchema(ownConstruction, { io: 'input' }))
  })
})
