import { describe, expect, test } from 'vitest'
import { cancel, comeIn, correct, cut, measure, release, reserve, uncut } from '../../core/plan/stock/acts.ts'
import { balanceOf, clothLength } from '../../core/plan/stock/balance.ts'
import { giveBack, offcutOf } from '../../core/plan/stock/offcut.ts'
import type { Move } from '../../core/plan/stock/types.ts'
import { stockValue } from '../../core/plan/stock/value.ts'
import { money } from '../../core/words/money.ts'
import { refused } from '../support/refused.ts'

const day = '2026-11-02'
const bolt = (mm = 5000, washed = false): Move[] => [comeIn([], { day, mm, width: 1500, washed })]
const written = (moves: Move[], ...acts: ((moves: readonly Move[]) => Move)[]): Move[] => {
  const all = [...moves]
  for (const act of acts) all.push(act(all))
  return all
}
const reserving = (garmentId: string, mm: number) => (moves: readonly Move[]) =>
  reserve(moves, { day, garmentId, mm })
const cutting = (garmentId: string, mm: number) => (moves: readonly Move[]) =>
  cut(moves, { day, garmentId, mm })
const code = (work: () => unknown) => refused(work).code.replace('refusal.stock.', '')

describe('a length of cloth', () => {
  test('is promised, cut and let go, and what is left is what is left', () => {
    const moves = written(bolt(), reserving('tunic', 2600), reserving('hood', 900), cutting('tunic', 2550))
    expect(balanceOf(moves)).toMatchObject({
      ...{ length: 2450, reserved: 950, free: 1500, came: 5000, used: 2550, changed: 0 },
      reservedFor: [
        { garmentId: 'tunic', mm: 50 },
        { garmentId: 'hood', mm: 900 },
      ],
    })
    const letGo = written(moves, (all) => cancel(all, { day, garmentId: 'tunic' })!)
    expect(balanceOf(letGo)).toMatchObject({ reserved: 900, free: 1550 })
    expect(cancel(letGo, { day, garmentId: 'tunic' })).toBeUndefined()
  })

  test('is not promised twice, nor cut or let go beyond what is promised', () => {
    const moves = written(bolt(), reserving('tunic', 4000))
    const ask = (garmentId: string, mm: number) => ({ day, garmentId, mm })
    expect(code(() => reserve(moves, ask('hood', 1000.01)))).toBe('notFree')
    expect(code(() => cut(moves, ask('hood', 1)))).toBe('cutUnreserved')
    expect(code(() => cut(moves, ask('tunic', 4000.01)))).toBe('cutTooMuch')
    expect(code(() => release(moves, ask('tunic', 4001)))).toBe('releaseTooMuch')
    expect(code(() => release(moves, ask('hood', 1)))).toBe('notReserved')
    expect(code(() => comeIn(moves, { day, mm: 1, width: 1, washed: true }))).toBe('alreadyIn')
    expect(code(() => reserve([], ask('tunic', 1)))).toBe('notIn')
    expect(refused(() => reserve(moves, ask('hood', 1200))).sentence).toBe(
      '120 cm cannot be set aside: only 100 cm of this length is free. Take less, or another length.',
    )
  })

  test('that was cut by mistake lies there again, promised as it was', () => {
    const before = written(bolt(), reserving('tunic', 2600), reserving('hood', 900))
    const after = written(before, cutting('tunic', 2600))
    const again = [...after, ...uncut(after, { day, garmentId: 'tunic' })]
    const { reservedFor: held, ...stood } = balanceOf(before)
    const { reservedFor, ...stands } = balanceOf(again)
    expect(stands).toEqual(stood)
    expect(reservedFor.toReversed()).toEqual(held)
    expect(uncut(again, { day, garmentId: 'tunic' })).toEqual([])
    expect(uncut(again, { day, garmentId: 'gown' })).toEqual([])
  })

  test('that was counted since the cut is as long as it was counted', () => {
    const cutBy = written(bolt(), reserving('tunic', 2600), reserving('hood', 900), cutting('tunic', 2600))
    const counted = (mm: number) => written(cutBy, (all) => correct(all, { day, mm }))
    const taken = (moves: Move[]) => balanceOf([...moves, ...uncut(moves, { day, garmentId: 'tunic' })])
    expect(taken(counted(5000))).toMatchObject({ length: 5000, reserved: 3500, used: 0, changed: 0 })
    // Of what was found 1.5 m is free, and no more can be promised.
    expect(taken(counted(2400))).toMatchObject({ length: 2400, reserved: 2400, changed: -2600 })
    expect(taken(counted(900))).toMatchObject({
      length: 900,
      reservedFor: [{ garmentId: 'hood', mm: 900 }],
    })
  })

  test('of which offcuts were kept was cut, whatever is said later', () => {
    const after = written(bolt(), reserving('tunic', 2600), cutting('tunic', 2600), (all) =>
      giveBack(all, { day, garmentId: 'tunic', mm: 300, width: 1500, lengthId: 'rest' }),
    )
    expect(code(() => uncut(after, { day, garmentId: 'tunic' }))).toBe('offcutsKept')
  })

  test('takes no amount, width or day that is none', () => {
    for (const mm of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 0.004])
      expect(refused(() => reserve(bolt(), { day, garmentId: 'hood', mm })).field).toBe('mm')
    expect(code(() => comeIn([], { day, mm: 1000, width: 6001, washed: false }))).toBe('width')
    expect(refused(() => correct(bolt(), { day: '2026-02-30', mm: 1 })).field).toBe('day')
  })

  // 5 m that shrink by 6 % are 4.70 m (AATCC 135, ISO 5077: change on the length before washing).
  test('shortens what is promised when it is washed for the first time', () => {
    const washed = written(bolt(), reserving('tunic', 2000), reserving('hood', 3000), (moves) =>
      measure(moves, { day, mm: 4700, width: 1455, washed: true }),
    )
    expect(balanceOf(washed)).toMatchObject({
      ...{ length: 4700, width: 1455, washed: true, free: 0, changed: -300 },
      reservedFor: [
        { garmentId: 'tunic', mm: 1880 },
        { garmentId: 'hood', mm: 2820 },
      ],
    })
    const grown = written(bolt(), reserving('tunic', 5000), (moves) =>
      measure(moves, { day, mm: 5050, width: 1500, washed: true }),
    )
    expect(balanceOf(grown)).toMatchObject({ reserved: 5000, free: 50, changed: 50 })
  })

  test('that is found shorter than is promised asks first who goes without', () => {
    const moves = written(bolt(5000, true), reserving('tunic', 4000))
    const again = { day, mm: 3999, width: 1500, washed: true }
    expect(code(() => correct(moves, again))).toBe('promised')
    expect(code(() => measure(moves, again))).toBe('promised')
    expect(code(() => measure(moves, { ...again, mm: 5000, washed: false }))).toBe('staysWashed')
    expect(balanceOf(written(moves, (all) => correct(all, { day, mm: 4000 })))).toMatchObject({ free: 0 })
    const gone = written(bolt(), (all) => correct(all, { day, mm: 0 }))
    expect(balanceOf(gone)).toMatchObject({ length: 0, changed: -5000 })
    expect(code(() => measure(gone, again))).toBe('usedUp')
  })

  test('gives back an offcut as a length of its own, which is no more than was cut', () => {
    const moves = written(bolt(5000, true), reserving('cloak', 3000), cutting('cloak', 3000))
    const offcut = { day, garmentId: 'cloak', mm: 1000, width: 500, lengthId: 'b' }
    const kept = written(moves, (all) => giveBack(all, offcut))
    const known = { id: 'a', clothId: 'linen', pricePerMetre: money(1200, 'GBP') }
    const given = kept.at(-1)!
    if (given.kind !== 'gaveBack') throw new Error('not what came back')
    const { known: piece, came } = offcutOf(known, kept, given)
    expect(piece).toEqual({ id: 'b', clothId: 'linen', parent: 'a', pricePerMetre: money(400, 'GBP') })
    expect(balanceOf([came])).toMatchObject({
      length: 1000,
      width: 500,
      washed: true,
      came: 0,
      returned: 1000,
    })
    expect(balanceOf(kept)).toMatchObject({ length: 2000, used: 3000, came: 5000 })

    expect(code(() => giveBack(moves, { ...offcut, garmentId: 'hood' }))).toBe('notCut')
    expect(code(() => giveBack(moves, { ...offcut, mm: 3001 }))).toBe('offcutLong')
    expect(code(() => giveBack(moves, { ...offcut, width: 1501 }))).toBe('offcutWide')
    expect(code(() => giveBack(kept, { ...offcut, mm: 3000, width: 1400, lengthId: 'c' }))).toBe('offcutMuch')
    expect(code(() => giveBack(kept, offcut))).toBe('offcutTwice')
  })

  test('of what was cut before washing gives back unwashed cloth', () => {
    const moves = written(bolt(), reserving('cloak', 3000), cutting('cloak', 3000), (all) =>
      measure(all, { day, mm: 1900, width: 1450, washed: true }),
    )
    const given = giveBack(moves, { day, garmentId: 'cloak', mm: 500, width: 1500, lengthId: 'b' })
    expect(offcutOf({ id: 'a', clothId: 'linen' }, moves, given).came.washed).toBe(false)
  })

  test('whose ledger was not written by these acts is a fault', () => {
    expect(() => balanceOf([...bolt(), ...bolt()])).toThrow('does not add up')
    expect(() => balanceOf([...bolt(), { kind: 'cut', day, garmentId: 'hood', mm: 1 }])).toThrow(
      'does not add up',
    )
  })
})

describe('the value of the stock', () => {
  test('is that of each length at its price, to the minor unit', () => {
    const linen = { clothId: 'linen', pricePerMetre: money(1650, 'GBP') }
    const lengths = [
      clothLength({ id: 'a', ...linen }, written(bolt(3333), reserving('hood', 1000))),
      clothLength({ id: 'b', ...linen }, bolt(1)),
      clothLength({ id: 'c', clothId: 'theirs' }, bolt()),
    ]
    // 3.333 m at 16.50 are 54.9945, and 1 mm is 1.65 pence.
    expect(stockValue(lengths, 'GBP')).toEqual({
      total: money(5501, 'GBP'),
      each: [
        { lengthId: 'a', value: money(5499, 'GBP') },
        { lengthId: 'b', value: money(2, 'GBP') },
      ],
      unpriced: ['c'],
    })
  })
})
