import { describe, expect, test } from 'vitest'
import { polygon } from '../../core/geometry/path.ts'
import { fitsWithin } from '../../core/plan/redraft.ts'
import { WOMAN } from '../support/bodies.ts'
import { workroom } from '../support/store.ts'

type Id = { id: string }
type Step = Id & {
  key: string
  stage: string
  doneAt: string | null
  minutes: { mean: number }
  name: { code: string }
}
type Garment = Id & { cut: boolean; steps: Step[]; left: { mean: number } }
type Commission = Id & { agreed: { minor: number }; revision: number; garments: Garment[] }
type Change = {
  begun: boolean
  changed: { id: string; fitsWithin: boolean; cut: boolean; before: Size; after: Size }[]
  added: Id[]
  gone: Id[]
  cloth: { before: number; after: number }
  minutes: { before: number; after: number }
}
type Size = { width: number; height: number }
type Made = { construction: string; choices: Record<string, unknown>; measurementSet: Id; again: object[] }

async function begun() {
  const room = workroom()
  const { client } = await room.done<{ client: Id }>('client.add', { name: 'Łucja Ōrme' })
  const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
    ...{ clientId: client.id, measures: WOMAN },
  })
  const { cloth } = await room.done<{ cloth: Id }>('cloth.add', {
    ...{ name: 'White linen', fibre: 'linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
    pricePerMetre: { minor: 1650, currency: 'GBP' },
  })
  const line = {
    ...{ wearerId: client.id, measurementSetId: measurementSet.id, clothId: cloth.id },
    construction: 'goredUndertunic',
  }
  const { quote } = await room.done<{ quote: Id }>('quote.save', { customerId: client.id, lines: [line] })
  const { commission } = await room.done<{ commission: Commission }>('quote.accept', { id: quote.id })
  const garmentId = commission.garments[0]!.id
  const now = async () =>
    (await room.done<{ commission: Commission }>('commission.get', { id: commission.id })).commission
  const garment = async () => (await now()).garments[0]!
  const wider = async () => {
    const { measurementSet: set } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: client.id, measures: { ...WOMAN, bustGirth: WOMAN.bustGirth + 60 } },
    })
    return set.id
  }
  const hold = async (given: object) => {
    const { fitting } = await room.done<{ fitting: Id & { revision: number } }>('fitting.add', {
      ...{ commissionId: commission.id, garmentId, day: '2026-03-09' },
    })
    const { fitting: held } = await room.done<{ fitting: Id & { revision: number } }>('fitting.hold', {
      ...{ id: fitting.id, revision: fitting.revision, ...given },
    })
    return held
  }
  return { ...room, client, measurementSet, commission, garmentId, now, garment, wider, hold }
}

describe('a garment drafted again', () => {
  test('is tried first: pieces that change, cloth and hours, and nothing is kept', async () => {
    const room = await begun()
    const before = await room.garment()
    const { change } = await room.done<{ change: Change }>('garment.tryDraft', {
      ...{ garmentId: room.garmentId, measurementSetId: await room.wider() },
    })
    expect(change.begun).toBe(false)
    const front = change.changed.find(({ id }) => id === 'front')!
    expect(front.after.width).toBeGreaterThan(front.before.width)
    expect(front.fitsWithin).toBe(false)
    expect(change.cloth.after).toBeGreaterThan(0)
    expect(await room.garment()).toEqual(before)
    const { made } = await room.done<{ made: Made }>('garment.made', { garmentId: room.garmentId })
    expect(made.again).toEqual([])
  })

  test('changes nothing when nothing is asked otherwise', async () => {
    const room = await begun()
    const { change } = await room.done<{ change: Change }>('garment.tryDraft', { garmentId: room.garmentId })
    expect([change.changed, change.added, change.gone]).toEqual([[], [], []])
    expect(change.cloth.after).toBe(change.cloth.before)
    expect(change.minutes.after).toBeCloseTo(change.minutes.before, 6)
  })

  test('is the one that pieces, papers and steps follow; what is done stays, and so does the price', async () => {
    const room = await begun()
    const agreed = room.commission.agreed
    const wash = (await room.garment()).steps.find(({ key }) => key === 'wash')!
    await room.done('step.tick', { id: wash.id })
    const asked = {
      garmentId: room.garmentId,
      measurementSetId: await room.wider(),
      choices: { hemLevel: 'ankle' },
    }
    const { change, number } = await room.done<{ change: Change; number: number }>(
      'garment.draftAgain',
      asked,
    )
    expect(number).toBe(2)
    expect(change.changed.length).toBeGreaterThan(0)
    const after = await room.garment()
    expect(after.steps.find(({ key }) => key === 'wash')!.doneAt).not.toBeNull()
    expect((await room.now()).agreed).toEqual(agreed)
    const { made } = await room.done<{ made: Made }>('garment.made', { garmentId: room.garmentId })
    expect(made.measurementSet.id).toBe(asked.measurementSetId)
    expect(made.choices).toMatchObject({ hemLevel: 'ankle' })
    // Tried again with the same, it is already so.
    const { change: none } = await room.done<{ change: Change }>('garment.tryDraft', {
      garmentId: room.garmentId,
    })
    expect(none.changed).toEqual([])
    const { document } = await room.done<{ document: { pages: number } }>('cuttingSheet.print', {
      garmentId: room.garmentId,
    })
    expect(document.pages).toBeGreaterThan(0)
  })

  test('is laid anew on the length that was measured after the wash, and waits where that is too short', async () => {
    const room = await begun()
    const measured = () =>
      room.done<{ measured: { layLength: number } | null }>('garment.measured', { garmentId: room.garmentId })
    await room.done('garment.washed', { garmentId: room.garmentId, width: '144 cm', length: '4 m' })
    const first = (await measured()).measured!
    await room.done('garment.draftAgain', { garmentId: room.garmentId, measurementSetId: await room.wider() })
    const second = (await measured()).measured!
    expect(second.layLength).not.toBe(first.layLength)
    // With hardly more than this lay takes, the next one has to wait until the cloth is measured again.
    const length = Math.ceil(second.layLength + 60)
    await room.done('garment.washed', { garmentId: room.garmentId, width: '144 cm', length })
    await room.done('garment.draftAgain', { garmentId: room.garmentId, choices: { hemLevel: 'ankle' } })
    expect((await measured()).measured).toBeNull()
    await room.done('stage.tick', { garmentId: room.garmentId, stage: 'prepare' })
    const cut = { garmentId: room.garmentId, stage: 'cut' }
    expect((await room.refusal('stage.tick', cut)).field).toBe('anyway.unmeasured')
  })

  test('is refused for another body, and once it is delivered', async () => {
    const room = await begun()
    const { client } = await room.done<{ client: Id }>('client.add', { name: 'Another' })
    const { measurementSet } = await room.done<{ measurementSet: Id }>('measurementSet.add', {
      ...{ clientId: client.id, measures: WOMAN },
    })
    const other = { garmentId: room.garmentId, measurementSetId: measurementSet.id }
    expect((await room.refusal('garment.draftAgain', other)).code).toBe('refusal.quote.otherBody')
    await room.done('commission.deliver', { id: room.commission.id, revision: 1 })
    expect((await room.refusal('garment.draftAgain', { garmentId: room.garmentId })).code).toBe(
      'refusal.plan.closed',
    )
  })
})

describe('what a fitting found', () => {
  test('makes a step of the work it added, which follows when it is said otherwise', async () => {
    const room = await begun()
    const left = (await room.garment()).left.mean
    const held = await room.hold({ found: 'two fingers wider', added: '45 min' })
    const step = async () => (await room.garment()).steps.find(({ key }) => key.startsWith('alter:'))
    expect((await step())!).toMatchObject({ stage: 'fit', minutes: { mean: 45 } })
    expect((await room.garment()).left.mean).toBeCloseTo(left + 45, 6)
    const again = { id: held.id, found: 'three fingers', added: '1 h' }
    const { fitting } = await room.done<{ fitting: { revision: number } }>('fitting.hold', {
      ...{ ...again, revision: held.revision },
    })
    expect((await step())!.minutes.mean).toBe(60)
    await room.done('fitting.hold', { id: held.id, revision: fitting.revision, found: 'nothing after all' })
    expect(await step()).toBeUndefined()
    expect((await room.garment()).left.mean).toBeCloseTo(left, 6)
  })

  test('may be measures: a new set of the wearer, the others carried over', async () => {
    const room = await begun()
    const held = await room.hold({ found: 'wider at the bust' })
    const asked = { id: held.id, garmentId: room.garmentId, measures: { bustGirth: '100 cm' } }
    type Taken = { measurementSet: Id & { measures: Record<string, { mm: number }> }; fitting: object }
    const { measurementSet: set, fitting } = await room.done<Taken>('fitting.measure', asked)
    expect(set.measures.bustGirth!.mm).toBe(1000)
    expect(set.measures.hipGirth!.mm).toBe(WOMAN.hipGirth)
    expect(fitting).toMatchObject({ measurementSetId: set.id })
    const wrong = { ...asked, measures: { bustGirth: '4 m' } }
    expect((await room.refusal('fitting.measure', wrong)).field).toBe('measures.bustGirth')
    expect((await room.refusal('fitting.measure', { ...asked, measures: {} })).code).toBe(
      'refusal.fitting.noMeasures',
    )
  })

  test('is forgotten with the wearer: her body is in no draft, and the work goes on', async () => {
    const room = await begun()
    const held = await room.hold({ found: 'wider at the bust' })
    const again = { garmentId: room.garmentId, measurementSetId: await room.wider(), fittingId: held.id }
    await room.done('garment.draftAgain', again)
    await room.done('client.forget', { id: room.client.id, name: 'Łucja Ōrme' })
    const rows = room.store.db.$client.prepare('SELECT body, estimate FROM garment_draft').all()
    expect(JSON.stringify(rows)).not.toContain('1012')
    expect(rows).toMatchObject([{ body: '{"measures":{}}' }])
    expect((await room.garment()).steps.length).toBeGreaterThan(0)
  })

  test('has pieces cut again: they are no longer cut, and a step says so', async () => {
    const room = await begun()
    const anyway = ['unwashed', 'unmeasured']
    type Pieces = { pieces: { piece: string; copy: string; copyName: { code: string }; cut: boolean }[] }
    const pieces = async () => (await room.done<Pieces>('pieces.list', { garmentId: room.garmentId })).pieces
    const sleeve = (await pieces()).find(({ piece }) => piece === 'sleeve')!
    await room.done('piece.cut', { garmentId: room.garmentId, piece: 'sleeve', copy: sleeve.copy, anyway })
    await room.done('stage.tick', { garmentId: room.garmentId, stage: 'prepare' })
    await room.done('stage.tick', { garmentId: room.garmentId, stage: 'cut', anyway })
    expect((await room.garment()).cut).toBe(true)
    const held = await room.hold({ found: 'too short', recut: ['left sleeve', 'right sleeve'] })
    const { cut, steps } = await room.garment()
    expect(cut).toBe(false)
    const again = steps.find(({ key }) => key === `recut:${held.id}`)!
    expect(again).toMatchObject({ stage: 'cut', doneAt: null })
    expect(again.minutes.mean).toBeCloseTo(9, 6)
    expect((await pieces()).filter((one) => one.cut)).toEqual([])
    await room.done('step.tick', { id: again.id, anyway })
    expect((await room.garment()).cut).toBe(true)
    // Taken off, what is done of it stays.
    await room.done('fitting.remove', { id: held.id, revision: held.revision })
    expect((await room.garment()).steps.some(({ key }) => key === `recut:${held.id}`)).toBe(true)
  })
})

describe('a piece within another', () => {
  const box = (width: number, height: number) =>
    polygon([
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ])
  const gore = (base: number, height: number) =>
    polygon([
      { x: 0, y: 0 },
      { x: base, y: 0 },
      { x: base / 2, y: height },
    ])

  test('can be cut from it when it is no larger anywhere', () => {
    expect(fitsWithin(box(100, 200), box(120, 200))).toBe(true)
    expect(fitsWithin(box(122, 200), box(120, 200))).toBe(true)
    expect(fitsWithin(box(124, 200), box(120, 200))).toBe(false)
    expect(fitsWithin(gore(100, 200), gore(120, 240))).toBe(true)
    expect(fitsWithin(gore(100, 200), box(100, 200))).toBe(true)
    expect(fitsWithin(box(100, 200), gore(120, 240))).toBe(false)
    expect(fitsWithin(gore(119, 240), gore(120, 200))).toBe(false)
  })
})
