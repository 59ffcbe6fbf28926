import { describe, expect, test } from 'vitest'
import { makePiece, straightSides } from '../../core/draft/pieces.ts'
import { signedArea } from '../../core/geometry/path.ts'
import { pathBox } from '../../core/geometry/segment.ts'
import { MM_PER } from '../../core/words/units.ts'

// The Workwoman's Guide (1838), gored night-gowns: a gore g wide is cut off each side of a breadth w, from the
// top, and sewn on again reversed: the top becomes w − 2g, the bottom w + 2g, and nothing is wasted.
describe.each([
  ['woman', 15, 1.75, 11.5, 18.5, 24],
  ['girl of 18', 14, 1.75, 10.5, 17.5, 20],
  ['girl of 14', 12, 2, 8, 16, 16],
])('the gored breadth of 1838 for a %s', (_, width, gore, top, bottom, length) => {
  const nl = MM_PER.nl
  const allowance = 0
  const shape = (id: string, points: [number, number][]) =>
    makePiece(
      {
        id,
        name: { code: 'draft.piece.gore' },
        copies: [],
        grain: 'straight',
        turn: [0, 180],
        cloth: 'main',
        sizes: [],
      },
      {
        sides: straightSides(
          points.map(([x, y]) => ({ x: x * nl, y: y * nl })),
          points.map((_point, i) => ({ id: `${i}`, allowance })),
        ),
      },
    )

  test('is w − 2g at the top and w + 2g at the bottom', () => {
    expect(top).toBe(width - 2 * gore)
    expect(bottom).toBe(width + 2 * gore)
  })

  test('has the area of the breadth it was cut from, its gores set in reversed', () => {
    // The middle tapers from w at the bottom to w − 2g at the top; a gore, g at its base, is sewn to each side
    // with its point up.
    const middle = shape('middle', [
      [0, 0],
      [width, 0],
      [width - gore, length],
      [gore, length],
    ])
    const one = shape('gore', [
      [0, 0],
      [gore, 0],
      [0, length],
    ])
    const whole = signedArea(middle.outline) + 2 * signedArea(one.outline)
    expect(whole).toBeCloseTo(width * length * nl * nl, 6)
    const around = pathBox(middle.outline).width + 2 * pathBox(one.outline).width
    expect(around / nl).toBeCloseTo(bottom, 9)
  })
})
