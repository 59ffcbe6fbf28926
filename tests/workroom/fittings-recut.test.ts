import { readFile } from 'node:fs/promises'
import { describe, expect, test } from 'vitest'
import { documentFile } from '../../core/workroom.ts'
import { hasPoppler, textOf } from '../paper/poppler.ts'
import { agreedWork, type FollowedCommission } from '../support/agreed-work.ts'

type Piece = { id: string; fitsWithin: boolean; after: { height: number } }
type Change = { begun: boolean; changed: Piece[]; propose: string[]; cloth: { after: number } }
type Step = { id: string; key: string; stage: string; position: number; doneAt: string | null }
type Copies = { pieces: { piece: string; cut: boolean }[] }

/** An undertunic in work, and all of it cut. */
async function cutAlready() {
  const room = await agreedWork()
  const commission = await room.accepted()
  const garmentId = commission.garments[0]!.id
  await room.done('stage.tick', { garmentId, stage: 'prepare' })
  await room.done('stage.tick', { garmentId, stage: 'cut' })
  const garment = async () => {
    const asked = { id: commission.id }
    const now = await room.done<{ commission: FollowedCommission }>('commission.get', asked)
    return now.commission.garments[0]! as unknown as { cut: boolean; steps: Step[]; left: { mean: number } }
  }
  const tried = async (choices: object) =>
    (await room.done<{ change: Change }>('garment.tryDraft', { garmentId, choices })).change
  const again = (more: object) =>
    room.done<{ change: Change; number: number }>('garment.draftAgain', { garmentId, ...more })
  const toCut = async () => (await garment()).steps.filter(({ key }) => key.startsWith('recut:'))
  return { ...room, garmentId, garment, tried, again, toCut }
}

describe('a garment that is cut, drafted again', () => {
  test('proposes the pieces that changed, and says which can be cut from the old ones', async () => {
    const { tried } = await cutAlready()
    const longer = await tried({ hemLevel: 'ankle' })
    expect(longer.begun).toBe(true)
    expect(longer.changed.map(({ id }) => id)).toContain('front')
    expect(longer.changed.map(({ id }) => id)).not.toContain('sleeve')
    expect(longer.propose).toEqual(longer.changed.map(({ id }) => id))
    expect(longer.changed.find(({ id }) => id === 'front')!.fitsWithin).toBe(false)
    const shorter = await tried({ hemLevel: 'knee' })
    expect(shorter.changed.find(({ id }) => id === 'front')!.fitsWithin).toBe(true)
  })

  test('has them on the list of work, before what is still to be sewn; what is left to do grows by it', async () => {
    const { garment, again, toCut } = await cutAlready()
    expect((await garment()).cut).toBe(true)
    await again({ choices: { hemLevel: 'ankle' } })
    const after = await garment()
    expect(after.cut).toBe(false)
    const [step] = await toCut()
    expect(step).toMatchObject({ stage: 'cut', doneAt: null })
    expect(after.steps.find(({ doneAt }) => doneAt === null)!.id).toBe(step!.id)
  })

  test('has only those cut that she says, and of a piece that it has not nothing is changed', async () => {
    const { garmentId, refusal, again, garment, toCut } = await cutAlready()
    const before = await garment()
    const asked = { garmentId, choices: { hemLevel: 'ankle' } }
    const refused = await refusal('garment.draftAgain', { ...asked, recut: ['hood'] })
    expect(refused).toMatchObject({ code: 'refusal.redraft.noPiece', field: 'recut' })
    expect(await garment()).toEqual(before)
    await again({ ...asked, recut: [] })
    expect(await toCut()).toEqual([])
    expect((await garment()).cut).toBe(true)
  })

  test('a third time still has to be cut what the second wanted, in one step, until that is done', async () => {
    const { tried, again, done, toCut } = await cutAlready()
    const { change: second } = await again({ choices: { hemLevel: 'ankle' } })
    const { propose } = await tried({ sleeve: 'elbow' })
    expect(propose).toEqual(expect.arrayContaining(second.propose))
    expect(propose).toContain('sleeve')
    await again({ choices: { sleeve: 'elbow' } })
    const steps = await toCut()
    expect(steps).toHaveLength(1)
    await done('step.tick', { id: steps[0]!.id })
    expect((await tried({ hemLevel: 'knee' })).propose).not.toContain('sleeve')
    await again({ choices: { hemLevel: 'knee' } })
    expect((await toCut()).map(({ doneAt }) => doneAt === null)).toEqual([false, true])
  })

  test('is refused when nothing would be otherwise', async () => {
    const { garmentId, refusal } = await cutAlready()
    expect((await refusal('garment.draftAgain', { garmentId })).code).toBe('refusal.redraft.same')
  })

  test('has no piece left marked as cut that fell away, and unticks those to be cut anew', async () => {
    const { garmentId, done, again, store } = await cutAlready()
    const { pieces } = await done<Copies & { pieces: { copy: string }[] }>('pieces.list', { garmentId })
    for (const { piece, copy } of pieces) await done('piece.cut', { garmentId, piece, copy })
    const { change } = await again({ choices: { gores: 2 } })
    const now = await done<Copies>('pieces.list', { garmentId })
    for (const one of now.pieces)
      expect([one.piece, one.cut]).toEqual([one.piece, !change.propose.includes(one.piece)])
    const { rows } = store.db.$client.prepare('SELECT count(*) AS rows FROM cut_piece').get() as {
      rows: number
    }
    expect(rows).toBe(now.pieces.filter(({ cut }) => cut).length)
  })

  test('keeps every draft as it was', async () => {
    const { again, store } = await cutAlready()
    await again({ choices: { hemLevel: 'ankle' } })
    const run = (sql: string) => () => store.db.$client.exec(sql)
    expect(run('UPDATE garment_draft SET number = 9')).toThrow('frozen: garment_draft')
    expect(run('DELETE FROM garment_draft')).toThrow('frozen: garment_draft')
  })

  test('needs cloth for what is cut anew, and no longer for all of it', async () => {
    const { garmentId, done, again, toCut } = await cutAlready()
    type Offer = { offered: { buy?: { needed: number } } }
    const offered = async () => (await done<Offer>('stock.offer', { garmentId })).offered.buy?.needed
    type Shop = { suppliers: { items: { article: { kind: string }; missing: number }[] }[] }
    const listed = async () =>
      (await done<Shop>('shopping.list')).suppliers.flatMap(({ items }) =>
        items.filter(({ article }) => article.kind === 'cloth').map(({ missing }) => missing),
      )
    expect([await offered(), await listed()]).toEqual([undefined, []])
    const { change } = await again({ choices: { sleeve: 'elbow' }, recut: ['sleeve'] })
    const some = (await offered())!
    expect(some).toBeGreaterThan(change.changed.find(({ id }) => id === 'sleeve')!.after.height)
    expect(some).toBeLessThan(change.cloth.after / 2)
    expect(await listed()).toEqual([some])
    await done('step.tick', { id: (await toCut())[0]!.id })
    expect([await offered(), await listed()]).toEqual([undefined, []])
  })

  test.runIf(hasPoppler)('has on its work order what came up, with the time it takes', async () => {
    const { garmentId, done, again, context } = await cutAlready()
    const order = async () => {
      const { document } = await done<{ document: { id: string } }>('workOrder.print', { garmentId })
      return textOf(await readFile(documentFile(context, document.id).path))
    }
    expect(await order()).not.toContain('Came up in the making')
    await again({ choices: { sleeve: 'elbow' }, recut: ['sleeve'] })
    expect(await order()).toMatch(
      /Came up in the making\s+Work\s+Time\s+Took\s+Cut for the new draft: left sleeve; right sleeve\s+9 min/,
    )
  })
})
