import { describe, expect, test } from 'vitest'
import { workroom } from '../support/store.ts'

type Remnant = { id: string; offcut: number; width: number; length: number; usedAt: string | null }
type Offered = { cut: boolean; offcuts: (Omit<Remnant, 'id' | 'usedAt'> & { kept: boolean })[] }

async function begun() {
  const room = workroom()
  const { garment, commission } = await room.done<{ garment: string; commission: string }>('workroom.sample')
  await room.done('stage.untick', { garmentId: garment, stage: 'cut' })
  const offered = () => room.done<Offered>('remnants.offered', { garmentId: garment })
  return { ...room, garmentId: garment, commission, offered }
}

describe('what cutting leaves', () => {
  test('is offered, and kept once the cloth is cut', async () => {
    const { garmentId, offered, done, refusal } = await begun()
    expect((await refusal('remnants.keep', { garmentId })).code).toBe('refusal.remnant.uncut')
    await done('stage.tick', { garmentId, stage: 'cut', anyway: ['unwashed', 'unmeasured'] })
    const before = await offered()
    expect(before.cut).toBe(true)
    expect(before.offcuts.length).toBeGreaterThan(0)
    expect(before.offcuts.every(({ kept }) => !kept)).toBe(true)
    const [first] = before.offcuts
    await done('remnants.keep', { garmentId, offcuts: [0] })
    // Asked again it is kept once, with the others.
    await done('remnants.keep', { garmentId })
    const { remnants } = await done<{ remnants: Remnant[] }>('remnants.list')
    expect(remnants.map(({ offcut }) => offcut).sort()).toEqual(before.offcuts.map(({ offcut }) => offcut))
    expect(remnants[0]).toMatchObject({ width: first!.width, length: first!.length, usedAt: null })
    expect((await offered()).offcuts.every(({ kept }) => kept)).toBe(true)
  })

  test('lies within the lay that was quoted, in whole millimetres', async () => {
    const { commission, offered, done } = await begun()
    type Lay = { usableWidth: number; length: number; used: number }
    const { commission: row } = await done<{ commission: { quoteId: string } }>('commission.get', {
      id: commission,
    })
    type Quote = { snapshot: { lines: { estimate: { lay: Lay } }[] } }
    const { quote } = await done<{ quote: Quote }>('quote.get', { id: row.quoteId })
    const { lay } = quote.snapshot.lines[0]!.estimate
    const { offcuts } = await offered()
    const area = offcuts.reduce((sum, { width, length }) => sum + width * length, 0)
    expect(area).toBeLessThanOrEqual(lay.usableWidth * lay.length * (1 - lay.used) + 1)
    for (const { width, length } of offcuts) expect([width % 1, length % 1]).toEqual([0, 0])
  })

  test('is taken off the shelf when used, and put back', async () => {
    const { garmentId, done, refusal } = await begun()
    await done('stage.tick', { garmentId, stage: 'cut', anyway: ['unwashed', 'unmeasured'] })
    const { remnants } = await done<{ remnants: Remnant[] }>('remnants.keep', { garmentId })
    const { id } = remnants[0]!
    const used = await done<{ remnant: Remnant }>('remnant.use', { id })
    expect(used.remnant.usedAt).not.toBeNull()
    const back = await done<{ remnant: Remnant }>('remnant.putBack', { id })
    expect(back.remnant.usedAt).toBeNull()
    const { changes } = await done<{ changes: { request: string }[] }>('history.list', { id })
    expect(changes.map(({ request }) => request)).toEqual(['remnants.keep', 'remnant.use', 'remnant.putBack'])
    expect(await refusal('remnants.keep', { garmentId, offcuts: [99] })).toMatchObject({
      code: 'refusal.remnant.none',
      field: 'offcuts',
    })
    expect((await refusal('remnant.use', { id: 'none' })).code).toBe('refusal.store.notFound')
  })
})
