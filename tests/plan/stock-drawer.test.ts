import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  putBack,
  recount,
  type SmallMove,
  type SmallThing,
  smallBalanceOf,
  takeForSewn,
  takeIn,
} from '../../core/plan/stock/small-things.ts'

const day = '2026-11-02'
const SILK: SmallThing = { id: 'silk', kind: 'thread', soldBy: 'reel', pack: 100 }
const tunic = { day, garmentId: 'tunic' }

/** What a drawer that was counted once becomes by some acts; those that come to nothing are left out. */
const drawer = (...acts: ((moves: readonly SmallMove[]) => SmallMove | undefined)[]): SmallMove[] => {
  const moves: SmallMove[] = [recount(SILK, { day, amount: 100 })]
  for (const act of acts) moves.push(...[act(moves)].filter((move) => move !== undefined))
  return moves
}
const sewn =
  (amount: number, garmentId = 'tunic') =>
  (moves: readonly SmallMove[]) =>
    takeForSewn(SILK, moves, { day, amount, garmentId })
const unsewn = (moves: readonly SmallMove[]) => putBack(moves, tunic)
const counted = (amount: number) => () => recount(SILK, { day, amount })
const left = (moves: readonly SmallMove[]) => smallBalanceOf(moves).left

describe('the drawer', () => {
  test('gives a sewn garment its thread once, and has it back when the garment is not sewn after all', () => {
    expect(left(drawer(sewn(30)))).toBe(70)
    expect(left(drawer(sewn(30), sewn(30)))).toBe(70)
    expect(left(drawer(sewn(30), sewn(30, 'hood')))).toBe(40)
    expect(drawer(sewn(30), unsewn)).toHaveLength(3)
    expect(smallBalanceOf(drawer(sewn(30), unsewn))).toEqual({ came: 0, used: 0, changed: 100, left: 100 })
    expect(left(drawer(sewn(30), unsewn, unsewn))).toBe(100)
    expect(left(drawer(sewn(30), unsewn, sewn(25)))).toBe(75)
    expect(drawer(unsewn)).toHaveLength(1)
  })

  test('gives what there is, and nothing of what was never counted', () => {
    expect(left(drawer(sewn(130)))).toBe(0)
    expect(left(drawer(sewn(130), unsewn))).toBe(100)
    expect(takeForSewn(SILK, [], { ...tunic, amount: 30 })).toBeUndefined()
    expect(drawer(sewn(0))).toHaveLength(1)
  })

  test('that was counted since holds what was counted', () => {
    expect(left(drawer(sewn(30), counted(100), unsewn))).toBe(100)
    expect(left(drawer(sewn(30), counted(64), unsewn, sewn(30)))).toBe(34)
  })

  test('holds just what a list kept by hand says, whatever is sewn, undone, bought and counted', () => {
    const act = fc.record({
      kind: fc.constantFrom('sewn', 'sewn', 'unsewn', 'came', 'counted'),
      garmentId: fc.constantFrom('tunic', 'hood'),
      amount: fc.integer({ min: 1, max: 9000 }).map((count) => count / 100),
    })
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40, size: 'max' }), (acts) => {
        const moves = drawer()
        let there = 10_000
        // What each garment has taken since the last count; taken before it, it is nothing that could come back.
        const taken = new Map<string, number>()
        for (const { kind, garmentId, amount } of acts) {
          const count = Math.round(amount * 100)
          if (kind === 'sewn' && !taken.has(garmentId) && there > 0) {
            taken.set(garmentId, Math.min(count, there))
            there -= taken.get(garmentId)!
          }
          if (kind === 'unsewn') {
            there += taken.get(garmentId) ?? 0
            taken.delete(garmentId)
          }
          if (kind === 'came') there += count
          if (kind === 'counted') {
            there = count
            for (const garment of taken.keys()) taken.set(garment, 0)
          }
          const move =
            kind === 'sewn'
              ? takeForSewn(SILK, moves, { day, amount, garmentId })
              : kind === 'unsewn'
                ? putBack(moves, { day, garmentId })
                : kind === 'came'
                  ? takeIn(SILK, { day, amount })
                  : recount(SILK, { day, amount })
          if (move !== undefined) moves.push(move)
          const { came, used, changed, left: now } = smallBalanceOf(moves)
          expect(Math.round(now * 100)).toBe(there)
          expect(came + changed).toBeCloseTo(used + now, 6)
        }
      }),
      { numRuns: 1500 },
    )
  })
})
