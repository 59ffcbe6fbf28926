import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  packsIn,
  recount,
  type SmallMove,
  type SmallThing,
  smallBalanceOf,
  takeFrom,
  takeIn,
} from '../../core/plan/stock/small-things.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { refused } from '../support/refused.ts'

const day = '2026-11-02'
const SILK: SmallThing = { id: 'silk', kind: 'thread', soldBy: 'reel', pack: 100 }
const BUTTONS: SmallThing = { id: 'buttons', kind: 'notion', soldBy: 'piece', pack: 1 }
const TAPE: SmallThing = { id: 'tape', kind: 'notion', soldBy: 'metre', pack: 1000 }

describe('thread and notions', () => {
  test('come in by what they are sold by, and are taken from what is there', () => {
    const moves: SmallMove[] = [packsIn(SILK, { day, packs: 3 })]
    moves.push(takeFrom(SILK, moves, { day, amount: 85.5, garmentId: 'tunic' }))
    moves.push(recount(SILK, { day, amount: 200 }))
    expect(smallBalanceOf(moves)).toEqual({ came: 300, used: 85.5, changed: -14.5, left: 200 })
    expect(moves[1]).toEqual({ kind: 'used', day, amount: 85.5, garmentId: 'tunic' })
    expect(smallBalanceOf([packsIn(TAPE, { day, packs: 2.5 })]).left).toBe(2500)
  })

  test('are never taken beyond that, and pieces are whole', () => {
    const twelve = [takeIn(BUTTONS, { day, amount: 12 })]
    expect(refused(() => takeFrom(BUTTONS, twelve, { day, amount: 13 })).sentence).toBe(
      '13 cannot be taken: only 12 of these are there.',
    )
    expect(refused(() => takeIn(BUTTONS, { day, amount: 1.5 })).code).toBe('refusal.stock.small.whole')
    expect(refused(() => packsIn(SILK, { day, packs: 0 })).field).toBe('amount')
    for (const amount of [-1, Number.NaN, 1e7])
      expect(refused(() => recount(TAPE, { day, amount })).code).toBe('refusal.stock.small.amount')
    expect(smallBalanceOf([...twelve, recount(BUTTONS, { day, amount: 0 })]).left).toBe(0)
  })

  test('add up, whatever is done with them', () => {
    const act = fc.record({
      kind: fc.constantFrom('came', 'used', 'used', 'counted'),
      amount: fc.oneof(
        fc.integer({ min: -100, max: 40_000 }).map((count) => count / 100),
        fc.constant(Number.NaN),
      ),
    })
    fc.assert(
      fc.property(
        fc.constantFrom(SILK, BUTTONS, TAPE),
        fc.array(act, { maxLength: 60, size: 'max' }),
        (thing, acts) => {
          const moves: SmallMove[] = []
          for (const { kind, amount: any } of acts) {
            const amount = thing === BUTTONS ? Math.round(any) : any
            const { left } = smallBalanceOf(moves)
            const can = amount > 0 ? kind !== 'used' || amount <= left : amount === 0 && kind === 'counted'
            let move: SmallMove | undefined
            try {
              if (kind === 'came') move = takeIn(thing, { day, amount })
              else if (kind === 'used') move = takeFrom(thing, moves, { day, amount })
              else move = recount(thing, { day, amount })
            } catch (error) {
              if (!(error instanceof Refusal)) throw error
            }
            expect(move !== undefined).toBe(can)
            if (move !== undefined) moves.push(move)
            const now = smallBalanceOf(moves)
            expect(now.left).toBeGreaterThanOrEqual(0)
            expect(now.came + now.changed).toBeCloseTo(now.used + now.left, 6)
          }
        },
      ),
      { numRuns: 1000 },
    )
  })
})
