import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { english } from '../../core/words/catalogue/english.ts'
import { addDays, dayAt, printDate, readDay } from '../../core/words/dates.ts'
import { uuidV7 } from '../../core/words/id.ts'
import { phrase } from '../../core/words/phrase.ts'
import { say } from '../../core/words/say.ts'
import { printMinutes } from '../../core/words/time.ts'
import { refused } from '../support/refused.ts'

describe('days', () => {
  test('are of the calendar, or refused', () => {
    expect(readDay('2028-02-29')).toBe('2028-02-29')
    for (const bad of ['2027-02-29', '2026-13-01', '26-11-2026', '2026-11-31', 'soon', '2026-11-25T00:00']) {
      expect(refused(() => readDay(bad)).sentence).toContain('not a day of the calendar')
    }
  })

  test('add up as the calendar does, whatever the clocks do', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40_000 }),
        fc.integer({ min: -2000, max: 2000 }),
        (from, days) => {
          const day = (n: number) => new Date(n * 86_400_000).toISOString().slice(0, 10)
          expect(addDays(day(from), days)).toBe(day(from + days))
        },
      ),
    )
  })

  test('depend on the zone', () => {
    expect(dayAt('2026-11-25T23:30:00Z', 'Europe/London')).toBe('2026-11-25')
    expect(dayAt('2026-11-25T23:30:00Z', 'Europe/Warsaw')).toBe('2026-11-26')
    expect(dayAt('2026-11-25T03:00:00Z', 'America/New_York')).toBe('2026-11-24')
  })

  test('print in words', () => {
    expect(printDate('2026-11-25', 'en-GB')).toBe('25 November 2026')
    expect(printDate('2026-03-01', 'de-DE')).toBe('1. März 2026')
  })
})

describe('ids', () => {
  // RFC 9562, appendix A.6: time 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
  test('are UUIDs of version 7 as the standard’s own example', () => {
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])
    expect(uuidV7(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')
  })

  test('sort by the time they were made', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2 ** 46 }),
        fc.integer({ min: 1, max: 2 ** 30 }),
        fc.uint8Array({ minLength: 10, maxLength: 10 }),
        fc.uint8Array({ minLength: 10, maxLength: 10 }),
        (time, later, a, b) => {
          expect(uuidV7(time, a) < uuidV7(time + later, b)).toBe(true)
        },
      ),
    )
  })
})

describe('sentences', () => {
  test('are filled in the reader’s units', () => {
    const sentence = phrase('refusal.draft.allowance', { allowance: { mm: 12 } })
    expect(say(sentence)).toBe(
      'An allowance of 1.2 cm is wider than the piece it belongs to. Choose a smaller one.',
    )
  })

  test('that refuse something end as sentences do', () => {
    for (const [code, text] of Object.entries(english)) {
      if (code.startsWith('refusal.')) expect(text, code).toMatch(/[.}]$/)
    }
  })

  test('say a time as a maker does', () => {
    expect([0, 45, 59.6, 60, 200].map(printMinutes)).toEqual(['0 min', '45 min', '1 h', '1 h', '3 h 20'])
  })
})
