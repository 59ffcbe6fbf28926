import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { documentPath } from '../../core/workroom.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Flag = { measure: string; kind: string; sentence: string; suggestion?: string; sure: boolean }
type Checked = { grown: boolean; flags: Flag[] }
type Estimate = { measure: string; mm: number; sd: number; text: string }
const CLOTH = {
  ...{ name: 'White linen', width: '150 cm' },
  pricePerMetre: { minor: 1650, currency: 'GBP' },
}

async function measured(measures: object = WOMAN, more: object = {}) {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Ysolt Brand' })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures, unit: 'mm', ...more },
  })
  return { ...room, client, set: measurementSet }
}

async function quoted(measures: object) {
  const room = await measured(measures)
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', CLOTH)
  const { quote } = await room.done<{ quote: Id }>('quote.save', {
    customerId: room.client.id,
    lines: [
      {
        ...{ wearerId: room.client.id, measurementSetId: room.set.id },
        ...{ construction: 'goredUndertunic', clothId: cloth.id },
      },
    ],
  })
  return { ...room, quote }
}

describe('a set of measures that is looked over', () => {
  test('says in a sentence what is in doubt and what it may rather be', async () => {
    const { done } = workroom()
    const { flags } = await done<Checked>('measures.check', {
      measures: {
        stature: '65',
        bustGirth: '37 1/2',
        waistGirth: '12 1/4',
        hipGirth: '40',
        calfGirth: '14 1/4',
      },
      ...{ unit: 'in', of: 'women' },
    })
    expect(flags.map(({ measure, kind }) => [measure, kind])).toEqual([['waistGirth', 'unit']])
    expect(flags[0]!.sentence).toMatch(/^waist girth: 12¼ in looks like inches written as centimetres/)
    expect(flags[0]!.suggestion).toBe('31⅛ in')
  })

  test('is refused for nothing but what cannot be read', async () => {
    const { done, refusal } = workroom()
    const { flags } = await done<Checked>('measures.check', { measures: { waistGirth: 90_000 } })
    expect(flags).toMatchObject([{ measure: 'waistGirth', kind: 'range', sure: true }])
    const refused = await refusal('measures.check', { measures: { waistGirth: 'wide' } })
    expect(refused.field).toBe('measures.waistGirth')
  })

  test('of a child is not held against grown people', async () => {
    const { done } = workroom()
    const child = { stature: 1220, bustGirth: 620, waistGirth: 580, hipGirth: 660, headGirth: 525 }
    expect(await done<Checked>('measures.check', { measures: child })).toEqual({ grown: false, flags: [] })
    const tall = { ...WOMAN, calfGirth: 462 }
    const asked = { measures: tall, birthDay: '2014-05-01' }
    expect(await done<Checked>('measures.check', asked)).toEqual({ grown: false, flags: [] })
    expect((await done<Checked>('measures.check', { measures: tall })).flags).toHaveLength(1)
  })

  test('lets what is missing be estimated, but not of a child', async () => {
    const { done, refusal } = workroom()
    const few = { stature: 1650, bustGirth: 952, waistGirth: 782, hipGirth: 1014 }
    const { estimates } = await done<{ estimates: Estimate[] }>('measures.estimate', {
      ...{ measures: few, of: 'women', unit: 'cm', wanted: ['upperArmGirth', 'elbowGirth'] },
    })
    expect(estimates.map(({ measure }) => measure)).toEqual(['upperArmGirth'])
    expect(estimates[0]!.text).toMatch(/^\d+(\.\d)? cm ± \d+(\.\d)? cm$/)
    const refused = await refusal('measures.estimate', { measures: { stature: 1100 } })
    expect(refused.code).toBe('refusal.measure.child')
    const tall = await refusal('measures.estimate', { measures: few, birthDay: '2014-05-01' })
    expect(tall.code).toBe('refusal.measure.child')
  })
})

describe('measurement sets', () => {
  test('keep sides, notes, remarks and whose proportions they are held against', async () => {
    const { done, set } = await measured(
      { ...WOMAN, armLength: 'L 570 R 575' },
      {
        ...{ proportionsOf: 'women', notes: { waistGirth: 'laces tightly' } },
        remarks: { shoulders: 'right one lower' },
      },
    )
    const { measurementSet } = await done<{ measurementSet: Record<string, unknown> }>('measurementSet.get', {
      id: set.id,
    })
    expect(measurementSet).toMatchObject({
      ...{ proportionsOf: 'women', notes: { waistGirth: 'laces tightly' } },
      remarks: { shoulders: 'right one lower' },
      measures: { armLength: { mm: 575, source: 'taken', sides: { left: 570, right: 575 } } },
    })
  })

  test('are compared, and put aside without being lost, even when a quote rests on them', async () => {
    const { done, client, set, quote } = await quoted(WOMAN)
    expect(quote.id).toBeTruthy()
    const { measurementSet: later } = await done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: client.id, supersedes: set.id, measures: { ...WOMAN, waistGirth: 802 } },
    })
    expect(await done('measurementSets.compare', { before: set.id, after: later.id })).toEqual({
      differences: [{ measure: 'waistGirth', before: 782, after: 802, by: 20 }],
    })
    await done('measurementSet.retire', { id: set.id })
    const sets = async () =>
      (await done<{ measurementSets: (Id & { retired: boolean })[] }>('client.get', { id: client.id }))
        .measurementSets
    expect((await sets()).map(({ retired }) => retired)).toEqual([true, false])
    await done('measurementSet.restore', { id: set.id })
    expect((await sets()).map(({ retired }) => retired)).toEqual([false, false])
  })
})

describe('a garment drafted by estimates', () => {
  const GUESSED = { ...WOMAN, upperArmGirth: { length: 296, source: 'estimated', sd: 17 } }

  test('is quoted, but marked cut only when that is meant', async () => {
    const { done, refusal, quote } = await quoted(GUESSED)
    const { commission } = await done<{
      commission: { garments: (Id & { steps: (Id & { stage: string })[] })[] }
    }>('quote.accept', { id: quote.id })
    const [garment] = commission.garments
    const cutting = garment!.steps.find(({ stage }) => stage === 'cut')!
    for (const refused of [
      await refusal('stage.tick', {
        garmentId: garment!.id,
        stage: 'cut',
        anyway: ['unwashed', 'unmeasured'],
      }),
      await refusal('step.tick', { id: cutting.id, anyway: ['unwashed', 'unmeasured'] }),
    ]) {
      expect(refused).toMatchObject({ code: 'refusal.plan.estimated', field: 'anyway.estimated' })
      expect(refused.message).toContain('upper arm girth')
    }
    await done('stage.tick', { garmentId: garment!.id, stage: 'prepare' })
    await done('stage.tick', {
      garmentId: garment!.id,
      stage: 'cut',
      anyway: ['unwashed', 'unmeasured', 'estimated'],
    })
  })
})

describe('a garment for a child', () => {
  type Draft = { cautions: { code: string }[] }
  const cautions = async (client: object, measures: object) => {
    const { done } = workroom()
    const { client: added } = await done<{ client: Id }>('client.add', { name: 'Wat', ...client })
    const { measurementSet } = await done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: added.id, measures, unit: 'mm' },
    })
    const asked = { construction: 'goredUndertunic', measurementSetId: measurementSet.id }
    const draft = await done<Draft>('garment.draft', asked)
    return draft.cautions.map(({ code }) => code).filter((code) => code.includes('cords'))
  }

  test('carries the rules on cords, by the birth day and else by the stature (EN 14682)', async () => {
    expect(await cautions({ birthDay: '2021-05-01' }, WOMAN)).toEqual(['draft.caution.cordsSmall'])
    expect(await cautions({ birthDay: '2014-05-01' }, WOMAN)).toEqual(['draft.caution.cordsChild'])
    expect(await cautions({ birthDay: '1990-05-01' }, WOMAN)).toEqual([])
    expect(await cautions({}, WOMAN)).toEqual([])
    const scaled = Object.fromEntries(Object.entries(WOMAN).map(([id, mm]) => [id, mm * 0.8]))
    expect(await cautions({}, scaled)).toEqual(['draft.caution.cordsSmall'])
  })
})

describe('a client who is to be forgotten', () => {
  test('is given all that is kept of her, and leaves nothing when there are no quotes', async () => {
    const { done, refusal, store, context, client, set } = await measured()
    const { document } = await done<{ document: { id: string; hash: string } }>('measuringSheet.print', {
      clientId: client.id,
    })
    // Entered later, but of an earlier day: it names a set that comes after it.
    await done('measurementSet.add', {
      ...{ clientId: client.id, supersedes: set.id, day: '2020-01-01', measures: WOMAN },
    })
    const exported = await done<{ measurementSets: Id[]; history: unknown[] }>('client.export', {
      id: client.id,
    })
    expect(exported.measurementSets.map(({ id }) => id)).toContain(set.id)
    expect(exported.history.length).toBeGreaterThan(1)
    expect((await refusal('client.forget', { id: client.id, name: 'Ysolt' })).field).toBe('name')
    expect(existsSync(documentPath(context, document.hash))).toBe(true)
    expect(await done('client.forget', { id: client.id, name: 'Ysolt Brand' })).toEqual({
      ...{ files: 1, quotesKept: [] },
    })
    expect(existsSync(documentPath(context, document.hash))).toBe(false)
    const tables = store.db.$client
      .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")
      .pluck()
      .all() as string[]
    for (const table of tables) {
      const rows = JSON.stringify(store.db.$client.prepare(`SELECT * FROM "${table}"`).all())
      expect(rows, table).not.toContain('Ysolt')
      expect(rows, table).not.toContain('bustGirth')
    }
    // Nor in the free pages of the file.
    const path = store.db.$client.name
    store.close()
    const bytes = readFileSync(path, 'latin1')
    expect(bytes).not.toContain('Ysolt')
    expect(bytes).not.toContain('bustGirth')
  })

  test('stays nameless behind the quotes that books must keep, and her body does not', async () => {
    const { done, refusal, store, context, client, quote } = await quoted(WOMAN)
    const { commission } = await done<{ commission: { garments: Id[] } }>('quote.accept', { id: quote.id })
    const { document } = await done<{ document: { id: string; hash: string } }>('workOrder.print', {
      garmentId: commission.garments[0]!.id,
    })
    type Kept = {
      quote: {
        snapshot: { customer: { name: string }; total: unknown; lines: { body: { measures: object } }[] }
      }
    }
    const before = await done<Kept>('quote.get', { id: quote.id })
    const { quotesKept } = await done<{ quotesKept: string[] }>('client.forget', {
      ...{ id: client.id, name: 'Ysolt Brand' },
    })
    expect(quotesKept).toEqual(['Q-2026-001'])
    const { client: left, measurementSets } = await done<{
      client: { name: string; address: string[] }
      measurementSets: { measures: object }[]
    }>('client.get', { id: client.id })
    expect(left).toMatchObject({ name: '—', address: [] })
    expect(measurementSets.map(({ measures }) => measures)).toEqual([{}])
    const kept = await done<Kept>('quote.get', { id: quote.id })
    expect(kept.quote.snapshot.customer.name).toBe('Ysolt Brand')
    expect(kept.quote.snapshot.total).toEqual(before.quote.snapshot.total)
    expect(kept.quote.snapshot.lines.map(({ body }) => body.measures)).toEqual([{}])
    expect(existsSync(documentPath(context, document.hash))).toBe(false)
    // The work goes on: its papers can be printed, without her measures. And what is kept is frozen again.
    await done('workOrder.print', { garmentId: commission.garments[0]!.id })
    expect(() => store.db.$client.prepare("UPDATE quote SET number = 'X'").run()).toThrow('frozen: quote')
    expect((await refusal('client.forget', { id: client.id, name: 'Ysolt Brand' })).field).toBe('name')
  })
})
