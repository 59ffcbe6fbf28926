import { describe, expect, test } from 'vitest'
import { idMaker } from '../../core/store/ids.ts'
import { madeAt } from '../../core/words/id.ts'
import { NOON, workroom } from '../support/store.ts'

const random = (bytes: number) => new Uint8Array(bytes)

describe('ids', () => {
  test('are made by the clock, and sort as they were made within a millisecond', () => {
    const { store } = workroom()
    const noon = Date.parse(NOON)
    const newId = idMaker(store.db, () => noon, random)
    const ids = Array.from({ length: 50 }, newId)
    expect(ids.toSorted()).toEqual(ids)
    expect(new Set(ids).size).toBe(50)
    expect(madeAt(ids[0]!)).toBe(noon)
  })

  test('sort after all that is in the store when the planner starts again with its clock put back', async () => {
    const { store, done } = workroom()
    const { client } = await done<{ client: { id: string } }>('client.add', { name: 'Ann' })
    const yearBefore = Date.parse(NOON) - 366 * 86_400_000
    const next = idMaker(store.db, () => yearBefore, random)()
    expect(next > client.id).toBe(true)
  })
})
