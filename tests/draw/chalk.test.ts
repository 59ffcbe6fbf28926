import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chalkFigures, chalkWriting, wholeMillimetres } from '../../core/draw/chalk.ts'
import { corners, placePath } from '../../core/draw/placed.ts'
import { polygon } from '../../core/geometry/path.ts'
import { arc, line } from '../../core/geometry/segment.ts'

const box = (x: number, y: number, width: number, height: number) =>
  polygon([
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ])

/** Lengths with hundredths, as shrinkage and seam allowances leave them. */
const size = fc.integer({ min: 400, max: 60_000 }).map((hundredths) => hundredths / 100)

describe('chalk figures', () => {
  it('are written to the millimetre: in centimetres at a bench that measures so, else in millimetres', () => {
    const written = (unit: 'mm' | 'cm' | 'in', locale: string) => {
      const { unit: said, figure } = chalkWriting({ unit, locale })
      return [said, figure(1138), figure(-0), figure(999.6)]
    }
    expect(written('cm', 'en-GB')).toEqual(['cm', '113.8', '0', '100'])
    expect(written('cm', 'de-DE')).toEqual(['cm', '113,8', '0', '100'])
    expect(written('mm', 'en-GB')).toEqual(['mm', '1138', '0', '1000'])
    expect(written('in', 'en-US')).toEqual(['mm', '1138', '0', '1000'])
  })

  it('are whole millimetres, rounded outward when the piece lies alone', () => {
    const [figures] = chalkFigures([box(10.4, 20.6, 100.2, 50.1)], 1400)
    expect(figures!.map(({ fromSelvedge, fromCutEnd }) => [fromSelvedge, fromCutEnd])).toEqual([
      [10, 20],
      [111, 20],
      [111, 71],
      [10, 71],
    ])
  })

  it('take the same line where two pieces meet in the middle of a millimetre', () => {
    const [left, right] = chalkFigures([box(0, 0, 100.4, 50), box(100.4, 0, 80, 50)], 1400)
    expect(Math.max(...left!.map((c) => c.fromSelvedge))).toBe(100)
    expect(Math.min(...right!.map((c) => c.fromSelvedge))).toBe(100)
  })

  it('leave whole millimetres alone, even with the dust of a calculation on them', () => {
    expect(
      wholeMillimetres([
        { value: 584.0000000001, outward: 1 },
        { value: 25.9999999999, outward: -1 },
      ]),
    ).toEqual([584, 26])
  })

  it('never lie beyond the usable width', () => {
    const [figures] = chalkFigures([box(1000, 0, 435.6, 10)], 1435.6)
    expect(Math.max(...figures!.map((c) => c.fromSelvedge))).toBe(1435)
  })

  it('of pieces side by side never overlap, whatever their widths; no piece loses more than a millimetre', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(size, fc.constantFrom(0, 0, 0.3, 2.5)), { minLength: 1, maxLength: 12 }),
        (parts) => {
          let x = 0
          const outlines = parts.map(([width, gap]) => {
            const one = box(x + gap, 0, width, 10)
            x += gap + width
            return one
          })
          const figures = chalkFigures(outlines, x + 1)
          let end = 0
          figures.forEach((piece, i) => {
            const across = piece.map((corner) => corner.fromSelvedge)
            const [from, to] = [Math.min(...across), Math.max(...across)]
            expect(from).toBeGreaterThanOrEqual(end)
            expect(to - from).toBeGreaterThan(parts[i]![0] - 1 - 1e-9)
            end = to
          })
        },
      ),
    )
  })

  it('keep their order where two pieces meet at half a millimetre and dust lies between them', () => {
    expect(
      wholeMillimetres([
        { value: 2922.5, outward: 1 },
        { value: 2922.4999999999995, outward: -1 },
      ]),
    ).toEqual([2923, 2923])
  })

  it('keep the order of all marks along the cloth where neighbours meet', () => {
    const mark = fc.record({ value: size, outward: fc.constantFrom(1 as const, -1 as const) })
    fc.assert(
      fc.property(fc.array(mark, { minLength: 2, maxLength: 20 }), (marks) => {
        const whole = wholeMillimetres(marks)
        for (const [i, end] of marks.entries()) {
          for (const [j, start] of marks.entries()) {
            if (end.outward === 1 && start.outward === -1 && end.value <= start.value) {
              expect(whole[i]!).toBeLessThanOrEqual(whole[j]!)
            }
          }
        }
      }),
    )
  })
})

describe('corners', () => {
  it('are where the direction breaks or a line becomes an arc, not where a straight edge is merely parted', () => {
    const path = [
      line({ x: 0, y: 0 }, { x: 50, y: 0 }),
      line({ x: 50, y: 0 }, { x: 100, y: 0 }),
      line({ x: 100, y: 0 }, { x: 100, y: 60 }),
      arc({ x: 100, y: 60 }, { x: 50, y: 60 }, Math.PI),
      line({ x: 0, y: 60 }, { x: 0, y: 0 }),
    ]
    expect(corners(path).map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [100, 0],
      [100, 60],
      [0, 60],
    ])
  })
})

describe('a placed path', () => {
  it('is flipped, then turned anticlockwise, then moved: the matrices of plane geometry', () => {
    const at = fc.record({
      x: fc.double({ min: -500, max: 500, noNaN: true }),
      y: fc.double({ min: -500, max: 500, noNaN: true }),
    })
    fc.assert(
      fc.property(
        at,
        at,
        fc.constantFrom(0 as const, 90 as const, 180 as const, 270 as const),
        fc.boolean(),
        (p, move, angle, flipped) => {
          const [placed] = placePath([line(p, { x: p.x + 1, y: p.y })], { ...move, angle, flipped })
          const radians = (angle * Math.PI) / 180
          const x = flipped ? -p.x : p.x
          expect(placed!.from.x).toBeCloseTo(x * Math.cos(radians) - p.y * Math.sin(radians) + move.x, 6)
          expect(placed!.from.y).toBeCloseTo(x * Math.sin(radians) + p.y * Math.cos(radians) + move.y, 6)
        },
      ),
    )
  })

  it('keeps every point of an arc on the circle about the placed centre', () => {
    const [placed] = placePath([arc({ x: 10, y: 0 }, { x: 0, y: 0 }, 1)], {
      x: 5,
      y: 7,
      angle: 90,
      flipped: true,
    })
    if (placed?.kind !== 'arc') throw new Error('an arc was placed')
    expect(placed.centre).toEqual({ x: 5, y: 7 })
    expect(placed.sweep).toBe(-1)
    const angle = Math.atan2(placed.from.y - 7, placed.from.x - 5) + placed.sweep
    expect(placed.to.x).toBeCloseTo(5 + 10 * Math.cos(angle), 9)
    expect(placed.to.y).toBeCloseTo(7 + 10 * Math.sin(angle), 9)
  })
})
