import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseLength, printLength, readLength } from '../../core/words/length.ts'
import { MM_PER } from '../../core/words/units.ts'
import { refused } from '../support/refused.ts'

describe('units', () => {
  // International yard and pound agreement, 1959: 1 yd = 0.9144 m, so 1 in = 25.4 mm.
  test('an inch is 25.4 mm and a yard 914.4 mm, exactly', () => {
    expect(MM_PER.in).toBe(25.4)
    expect(MM_PER.yd).toBe(914.4)
    expect(MM_PER.yd).toBeCloseTo(36 * MM_PER.in, 9)
    expect(MM_PER.ft).toBeCloseTo(12 * MM_PER.in, 9)
  })

  // The Workwoman's Guide (1838): 4 nails a quarter, 4 quarters a yard, 5 quarters an English ell.
  test('a nail is 57.15 mm, a sixteenth of a yard, and an English ell 45 in', () => {
    expect(MM_PER.nl).toBe(57.15)
    expect(16 * MM_PER.nl).toBeCloseTo(MM_PER.yd, 9)
    expect(4 * MM_PER.nl).toBeCloseTo(MM_PER.qr, 9)
    expect(MM_PER.ell).toBeCloseTo(5 * MM_PER.qr, 9)
    expect(MM_PER.ell).toBeCloseTo(45 * MM_PER.in, 9)
  })
})

describe('reading a length', () => {
  test.each([
    ['38 1/2', 'in', 977.9],
    ['38½"', 'cm', 977.9],
    ['38½', 'in', 977.9],
    ['38.5 in', 'cm', 977.9],
    ['97,8 cm', 'in', 978],
    ['97.8', 'cm', 978],
    ['978 mm', 'cm', 978],
    ['1 yd 4 nl', 'cm', 1143],
    ['1 ell', 'cm', 1143],
    ['5\' 6"', 'cm', 1676.4],
    ['5 ft 6 in', 'cm', 1676.4],
    ['1.2 m', 'cm', 1200],
    ['¾ in', 'cm', 19.05],
    ['3/4"', 'cm', 19.05],
    ['38 in.', 'cm', 965.2],
    ['  12   cm ', 'in', 120],
    ['1 m 20 cm', 'mm', 1200],
  ] as const)('“%s” in %s is %d mm', (text, unit, mm) => {
    expect(parseLength(text, unit)).toBeCloseTo(mm, 6)
  })

  test.each([
    ['', 'refusal.length.empty'],
    ['abc', 'refusal.length.unreadable'],
    ['NaN', 'refusal.length.unreadable'],
    ['12 cubits', 'refusal.length.unreadable'],
    ['1/0', 'refusal.length.unreadable'],
    ['constructor', 'refusal.length.unreadable'],
    ['1 constructor', 'refusal.length.unreadable'],
    ['-12', 'refusal.length.negative'],
    ['−12 cm', 'refusal.length.negative'],
    ['0', 'refusal.length.zero'],
    ['0 cm', 'refusal.length.zero'],
    ['1e9', 'refusal.length.unreadable'],
    ['1000000000 mm', 'refusal.length.absurd'],
    ['1,000', 'refusal.length.ambiguous'],
    ['1.234.5', 'refusal.length.ambiguous'],
    ['38.5 1/2', 'refusal.length.ambiguous'],
    ['5 ft 20 cm', 'refusal.length.mixed'],
    ['6 in 5 ft', 'refusal.length.order'],
    ['5 5 in', 'refusal.length.noUnit'],
    ['½5 in', 'refusal.length.noUnit'],
    ['1/20000006', 'refusal.length.zero'],
    ['0.00000001 mm', 'refusal.length.zero'],
  ])('“%s” is refused: %s', (text, code) => {
    const refusal = refused(() => parseLength(text, 'cm'))
    expect(refusal.code).toBe(code)
    expect(refusal.sentence).toMatch(/\.$/)
    expect(refusal.sentence).not.toContain('{')
  })

  test('numbers are millimetres, and must be lengths', () => {
    expect(readLength(978, 'in')).toBe(978)
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e9]) {
      expect(refused(() => readLength(bad, 'cm')).code).toMatch(/^refusal\.length\./)
    }
  })

  test('no text makes it fail in any other way than by a sentence', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789 ./,½"\'cmindyl-') })),
        (text) => {
          let mm: number
          try {
            mm = parseLength(text, 'cm')
          } catch {
            expect(refused(() => parseLength(text, 'cm')).sentence).not.toBe('')
            return
          }
          expect(mm).toBeGreaterThan(0)
          expect(Number.isFinite(mm)).toBe(true)
        },
      ),
      { numRuns: 3000 },
    )
  })
})

describe('printing a length', () => {
  test('goes to the millimetre, to the tenth of a centimetre, and to the eighth of an inch', () => {
    expect(printLength(977.9, 'mm', 'en-GB')).toBe('978 mm')
    expect(printLength(977.9, 'cm', 'en-GB')).toBe('97.8 cm')
    expect(printLength(977.9, 'cm', 'de-DE')).toBe('97,8 cm')
    expect(printLength(977.9, 'in', 'en-GB')).toBe('38½ in')
    expect(printLength(19.05, 'in', 'en-GB')).toBe('¾ in')
  })

  test('and reading it again gives the same length to what is printed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 900_000 }), fc.constantFrom('mm', 'cm', 'in'), (tenths, unit) => {
        const mm = tenths / 10
        const finest = { mm: 0.5, cm: 0.5, in: 25.4 / 16 }[unit]
        fc.pre(mm > finest)
        // Without thousands marks, which are refused as they can be read in two ways.
        const printed = printLength(mm, unit, 'en-GB').replace(/,/g, '')
        expect(Math.abs(parseLength(printed, unit) - mm)).toBeLessThanOrEqual(finest + 1e-6)
      }),
    )
  })
})
