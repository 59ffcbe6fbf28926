import { describe, expect, test } from 'vitest'
import { newStore, workroom } from '../support/store.ts'

type Cloth = { id: string; revision: number; warpShrinkage: number; weftShrinkage: number }
type Square = { shrinkage: { warp: number; weft: number }; told: { code: string }[] }

async function withCloth() {
  const room = workroom(newStore())
  const { cloth } = await room.done<{ cloth: Cloth }>('cloth.add', {
    ...{ name: 'White linen', width: '150 cm', warpShrinkage: 0.05, weftShrinkage: 0.03 },
    ...{ pricePerMetre: { minor: 1650, currency: 'GBP' }, supplier: 'Weir Mill', leadDays: 10 },
  })
  const get = async () => (await room.done<{ cloth: Cloth }>('cloth.get', { id: cloth.id })).cloth
  return { ...room, cloth, get }
}

// ISO 5077: 100 × (336 − 350) ÷ 350 = −4 %; 100 × (343 − 350) ÷ 350 = −2 %.
const MARKS = {
  warp: [
    { before: '35 cm', after: '33.6 cm' },
    { before: 400, after: 384 },
  ],
  weft: [{ before: '35', after: '34.3' }],
}

describe('the test square of a cloth', () => {
  test('is read in the workroom’s unit, and nothing is kept of it', async () => {
    const { done, cloth, get } = await withCloth()
    const { square } = await done<{ square: Square }>('testSquare.read', MARKS)
    expect(square.shrinkage.warp).toBeCloseTo(0.04, 12)
    expect(square.shrinkage.weft).toBeCloseTo(0.02, 12)
    expect(await get()).toEqual(cloth)
  })

  test('becomes the shrinkage of the cloth, and all else of it stays', async () => {
    const { done, cloth, get } = await withCloth()
    await done('cloth.testSquare', { id: cloth.id, revision: cloth.revision, ...MARKS })
    const { warpShrinkage, weftShrinkage, revision, ...after } = await get()
    expect(warpShrinkage).toBeCloseTo(0.04, 12)
    expect(weftShrinkage).toBeCloseTo(0.02, 12)
    expect(revision).toBe(cloth.revision + 1)
    expect(cloth).toMatchObject(after)
    const { changes } = await done<{ changes: { request: string; before: unknown; after: unknown }[] }>(
      'history.list',
      { id: cloth.id },
    )
    expect(changes.at(-1)).toMatchObject({
      request: 'cloth.testSquare',
      before: { warpShrinkage: 0.05, weftShrinkage: 0.03 },
      after: { square: { warp: [{ before: 350, after: 336 }, { before: 400 }] } },
    })
  })

  test('that cannot be, or of a cloth that was changed meanwhile, changes nothing', async () => {
    const { done, refusal, cloth, get } = await withCloth()
    const seen = { id: cloth.id, revision: cloth.revision }
    const wrong = { ...MARKS, warp: [{ before: 'long', after: '33' }] }
    expect((await refusal('cloth.testSquare', { ...seen, ...wrong })).field).toBe('warp.0.before')
    expect((await refusal('cloth.testSquare', { ...seen, ...MARKS, weft: [] })).code).toBe(
      'refusal.stock.square.weft',
    )
    expect(await get()).toEqual(cloth)
    await done('cloth.testSquare', { ...seen, ...MARKS })
    expect((await refusal('cloth.testSquare', { ...seen, ...MARKS })).code).toBe('refusal.store.stale')
  })
})
