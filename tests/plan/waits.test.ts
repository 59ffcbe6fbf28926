import { describe, expect, test } from 'vitest'
import { STAGES, type Stage } from '../../core/draft/types.ts'
import { type ClothState, type Standing, waitsFor } from '../../core/plan/waits.ts'

const gbp = (minor: number) => ({ minor, currency: 'GBP' })
const calm: Standing = {
  ...{ deposit: gbp(0), cloth: { at: 'here' }, estimated: 0, fitting: null, today: '2026-03-02' },
}
const step = (stage: Stage, key: string = stage) => ({ key, stage, doneAt: null })
const whole = [step('prepare', 'wash'), step('cut'), step('sew'), step('fit'), step('hem')]
const kinds = (open: typeof whole, begun: boolean, more: Partial<Standing> = {}) =>
  waitsFor(open, begun, { ...calm, ...more }).map((wait) => wait.for)

describe('what a garment waits for', () => {
  test('is nothing once every step is done, whatever else is missing', () => {
    expect(kinds([], true, { deposit: gbp(500), cloth: null, estimated: 3 })).toEqual([])
  })

  test('before it is cut: the deposit, then its cloth, its wash and its measures', () => {
    expect(kinds(whole, false)).toEqual(['wash'])
    expect(kinds(whole.slice(1), false)).toEqual([])
    expect(kinds(whole.slice(1), false, { deposit: gbp(1) })).toEqual(['deposit'])
    expect(kinds(whole, false, { deposit: gbp(1), estimated: 2 })).toEqual(['deposit', 'wash', 'measures'])
  })

  test('cloth that is not here is not asked to be washed', () => {
    const away: [ClothState, string][] = [
      [{ at: 'coming', day: null }, 'coming'],
      [{ at: 'unpromised' }, 'unpromised'],
      [{ at: 'toBuy', mm: 3200, days: 7 }, 'toBuy'],
    ]
    for (const [cloth, kind] of away) expect(kinds(whole, false, { cloth })).toEqual([kind])
    expect(kinds(whole, false, { cloth: null })).toEqual(['wash'])
  })

  test('says the day cloth comes and what is to be bought', () => {
    const said = (cloth: ClothState) => waitsFor(whole, false, { ...calm, cloth })
    expect(said({ at: 'coming', day: '2026-03-09' })).toEqual([{ for: 'coming', day: '2026-03-09' }])
    expect(said({ at: 'toBuy', mm: 3200, days: 7 })).toEqual([{ for: 'toBuy', mm: 3200 }])
  })

  test('once cutting is begun, no money and no cloth holds it up any more', () => {
    const missing = { deposit: gbp(500), cloth: { at: 'toBuy', mm: 100, days: 7 } as const, estimated: 1 }
    expect(kinds(whole.slice(1), true, missing)).toEqual([])
    expect(kinds(whole.slice(2), true, missing)).toEqual([])
  })

  test('work that has nothing to be cut waits for no cloth', () => {
    expect(kinds([step('sew')], false, { deposit: gbp(500), cloth: { at: 'unpromised' } })).toEqual([])
  })

  test('a fitting only when it is next: on its day, past its day, or not booked', () => {
    const fit = whole.slice(3)
    expect(kinds(fit, true)).toEqual(['fittingNotBooked'])
    expect(kinds(fit, true, { fitting: '2026-03-02' })).toEqual(['fitting'])
    expect(kinds(fit, true, { fitting: '2026-03-01' })).toEqual(['fittingNotWritten'])
    expect(kinds(whole.slice(2), true, { fitting: '2026-03-09' })).toEqual([])
    // What a fitting led to is altered before the next one.
    expect(kinds([step('fit', 'alter:f'), ...fit], true)).toEqual([])
  })

  test('whatever it is, it is told once', () => {
    for (const from of STAGES.keys())
      for (const begun of [true, false]) {
        const open = STAGES.slice(from).map((stage) => step(stage))
        const said = kinds(open, begun, { deposit: gbp(9), cloth: { at: 'unpromised' }, estimated: 2 })
        expect(new Set(said).size).toBe(said.length)
      }
  })
})
