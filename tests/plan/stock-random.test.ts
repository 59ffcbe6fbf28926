import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cancel, comeIn, correct, cut, measure, release, reserve, uncut } from '../../core/plan/stock/acts.ts'
import { balanceOf } from '../../core/plan/stock/balance.ts'
import { giveBack, offcutOf } from '../../core/plan/stock/offcut.ts'
import type { Balance, Held, Move } from '../../core/plan/stock/types.ts'
import { Refusal } from '../../core/words/refusal.ts'
import { count, KINDS, type Plain, plainly } from './plain-stock.ts'

const day = '2026-11-02'
const GARMENTS = ['tunic', 'hood']

/** An amount of so many parts of what there is, or one of those that are none. */
const part = fc.oneof(
  { arbitrary: fc.integer({ min: 1, max: 11_500 }).map((parts) => parts / 10_000), weight: 12 },
  { arbitrary: fc.constantFrom(0, -0.5, Number.NaN, 1, 1e9), weight: 1 },
)
const act = fc.record({
  kind: fc.constantFrom(...KINDS),
  on: fc.nat({ max: 5 }),
  garmentId: fc.constantFrom(...GARMENTS),
  part,
  across: part,
  washed: fc.boolean(),
})
type Act = typeof act extends fc.Arbitrary<infer T> ? T : never

/** The moves that an act writes; none where there is nothing to do. */
function really(
  moves: readonly Move[],
  { kind, garmentId, washed }: Act,
  mm: number,
  width: number,
  id: string,
): Move[] {
  const ask = { day, garmentId, mm }
  if (kind === 'reserve') return [reserve(moves, ask)]
  if (kind === 'release') return [release(moves, ask)]
  if (kind === 'cancel') return [cancel(moves, ask)].filter((one) => one !== undefined)
  if (kind === 'cut') return [cut(moves, ask)]
  if (kind === 'correct') return [correct(moves, ask)]
  if (kind === 'uncut') return uncut(moves, ask)
  if (kind === 'giveBack') return [giveBack(moves, { ...ask, width, lengthId: id })]
  return [measure(moves, { day, mm, width, washed })]
}

/** About what an act may ask for, so that most of them can be done, and many only just not. */
function roomFor({ kind, garmentId }: Act, { free, length, reservedFor, usedBy }: Balance): number {
  const of = (all: readonly Held[]) => all.find((one) => one.garmentId === garmentId)?.mm ?? length
  if (kind === 'reserve') return free
  if (kind === 'giveBack') return of(usedBy)
  return kind === 'release' || kind === 'cut' ? of(reservedFor) : length
}

const RUNS = 3000
const counted = { done: 0, refused: 0, offcuts: 0, uncut: 0 }

test('a stock never falls below nothing, promises nothing twice and always adds up', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 2_000_000 }), { minLength: 1, maxLength: 3 }),
      fc.array(act, { maxLength: 60, size: 'max' }),
      (lengths, acts) => {
        const stock = lengths.map((mm, i) => ({
          known: { id: `${i}`, clothId: 'linen' },
          moves: Object.freeze([comeIn([], { day, mm: mm / 100, width: 1500, washed: i === 1 })] as Move[]),
          plain: { left: mm, width: 150_000, washed: i === 1, held: {}, cut: [] } as Plain,
        }))
        for (const one of acts) {
          const at = stock[one.on % stock.length]!
          const before = balanceOf(at.moves)
          // What is measured or counted again is mostly about what was thought.
          const again = (one.kind === 'measure' || one.kind === 'correct') && one.part > 0 && one.part < 1.2
          const mm = (again ? 0.85 + one.part * 0.15 : one.part) * roomFor(one, before)
          const width = one.across * before.width
          const plain = plainly(at.plain, one, mm, width)
          let written: Move[] = []
          try {
            written = really(at.moves, one, mm, width, `${stock.length}`)
          } catch (error) {
            if (!(error instanceof Refusal)) throw error
          }
          // Refused exactly where the plain stock says that it cannot be.
          const [move] = written
          expect(move === undefined, `${one.kind} ${mm}`).toBe(plain === undefined)
          if (move === undefined || plain === undefined) {
            counted.refused++
            expect(balanceOf(at.moves)).toEqual(before)
            continue
          }
          counted.done++
          at.moves = Object.freeze([...at.moves, ...written.map((each) => Object.freeze(each))])
          at.plain = plain
          if (move.kind === 'uncut') counted.uncut++
          if (move.kind === 'gaveBack') {
            counted.offcuts++
            const { known, came } = offcutOf(at.known, at.moves, move)
            const { mm: long, width: wide, washed } = came
            stock.push({
              known: { ...known, clothId: 'linen' },
              moves: Object.freeze([came]),
              plain: { left: count(long), width: count(wide), washed, held: {}, cut: [] },
            })
            expect(known.parent).toBe(at.known.id)
          }
          for (const each of [at, stock.at(-1)!]) holds(each)
        }
        // The whole stock: what was bought, and what came back as offcuts, is what was used and what is left.
        const all = stock.map(({ moves }) => balanceOf(moves))
        const sum = (pick: 'came' | 'returned' | 'changed' | 'used' | 'length') =>
          all.reduce((sums, one) => sums + count(one[pick]), 0)
        expect(sum('came') + sum('returned') + sum('changed')).toBe(sum('used') + sum('length'))
        expect(sum('came')).toBe(lengths.reduce((sums, mm) => sums + mm, 0))
      },
    ),
    { numRuns: RUNS },
  )
  // Enough of everything was tried, or this says nothing.
  expect(counted.done).toBeGreaterThan(RUNS * 8)
  expect(counted.refused).toBeGreaterThan(RUNS * 5)
  expect(counted.offcuts).toBeGreaterThan(RUNS / 3)
  expect(counted.uncut).toBeGreaterThan(RUNS / 6)
})

function holds({ moves, plain }: { moves: readonly Move[]; plain: Plain }): void {
  const { length, reserved, free, reservedFor, usedBy, came, returned, used, changed, ...now } =
    balanceOf(moves)
  for (const mm of [length, reserved, free, used, ...reservedFor.map((held) => held.mm)])
    expect(mm).toBeGreaterThanOrEqual(0)
  expect(count(reserved) + count(free)).toBe(count(length))
  expect(reservedFor.reduce((sum, { mm }) => sum + count(mm), 0)).toBe(count(reserved))
  expect(usedBy.reduce((sum, { mm }) => sum + count(mm), 0)).toBe(count(used))
  for (const { area, back } of usedBy) expect(back).toBeLessThanOrEqual(area)
  expect(count(came) + count(returned) + count(changed)).toBe(count(used) + count(length))
  expect(count(length)).toBe(plain.left)
  expect({ width: count(now.width), washed: now.washed }).toEqual({
    width: plain.width,
    washed: plain.washed,
  })
  const held = Object.entries(plain.held).filter(([, mm]) => mm > 0)
  expect(Object.fromEntries(reservedFor.map(({ garmentId, mm }) => [garmentId, count(mm)]))).toEqual(
    Object.fromEntries(held),
  )
}
