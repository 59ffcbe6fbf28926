import { expect, test } from 'vitest'
import { boxesCross, lettersCorners } from '../../core/draw/letters.ts'
import { Room } from '../../core/draw/room.ts'
import { polygon } from '../../core/geometry/path.ts'
import { boxOf, line } from '../../core/geometry/segment.ts'

test('a word in a piece is written beside its slit and never across it', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 200, y: 0 },
    { x: 200, y: 200 },
    { x: 0, y: 200 },
  ]
  const slit = [line({ x: 200, y: 100 }, { x: 40, y: 100 })]
  const word = {
    kind: 'lettering',
    at: { x: 0, y: 0 },
    text: '12',
    anchor: 'middle',
    angle: 0,
    size: 'name',
  } as const
  const written = new Room(polygon(corners), [slit]).write([word], 0.065)!
  const box = boxOf(lettersCorners(written, 0.065))
  expect(boxesCross(box, { x: 40, y: 100, width: 160, height: 0 })).toBe(false)
  expect(written.at.y).not.toBe(100)
  // Without the slit the middle is free.
  expect(new Room(polygon(corners), []).write([word], 0.065)!.at).toEqual({ x: 100, y: 100 })
})
