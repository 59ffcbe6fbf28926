import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Bounds, keepState, LEAST, placedOn, readState } from '../../electron/window-state.ts'
import { scratch } from '../support/store.ts'

const none = { bounds: undefined, maximized: false }

describe('the window as it was left', () => {
  test('is read as it was kept', () => {
    const file = join(scratch(), 'window.json')
    const state = { bounds: { x: -1900, y: 30, width: 1200, height: 800 }, maximized: true }
    keepState(file, state)
    expect(readState(file)).toEqual(state)
  })

  test.each([
    ['nothing', ''],
    ['half a file', '{"bounds":{"x":1,'],
    ['something else', '"window"'],
    ['nothing at all', 'null'],
    ['a list', '[1,2,3,4]'],
    ['words for numbers', '{"bounds":{"x":"1","y":2,"width":900,"height":600},"maximized":false}'],
    ['no size', '{"bounds":{"x":1,"y":2,"width":0,"height":600},"maximized":false}'],
    ['sizes beyond all screens', '{"bounds":{"x":1,"y":2,"width":1e300,"height":600}}'],
    ['bytes', '\u0000\u0001\ufffd'],
  ])('counts for nothing when its file holds %s', (_, text) => {
    const file = join(scratch(), 'window.json')
    writeFileSync(file, text)
    expect(readState(file)).toEqual(none)
  })

  test('counts for nothing without its file, and need not be kept', () => {
    const folder = scratch()
    expect(readState(join(folder, 'window.json'))).toEqual(none)
    mkdirSync(join(folder, 'taken'))
    keepState(join(folder, 'taken'), none)
    keepState(join(folder, 'no', 'where.json'), none)
    expect(readState(join(folder, 'taken'))).toEqual(none)
  })

  test('is kept whole: an older state stands until the newer is written', () => {
    const file = join(scratch(), 'window.json')
    keepState(file, none)
    mkdirSync(`${file}.part`)
    keepState(file, { ...none, maximized: true })
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({ maximized: false })
  })
})

const screenAt = fc.record({
  x: fc.integer({ min: -4000, max: 4000 }),
  y: fc.integer({ min: -2500, max: 2500 }),
  width: fc.integer({ min: 640, max: 5120 }),
  height: fc.integer({ min: 480, max: 2880 }),
})
const anywhere = fc.record({
  x: fc.integer({ min: -99_000, max: 99_000 }),
  y: fc.integer({ min: -99_000, max: 99_000 }),
  width: fc.integer({ min: 1, max: 99_000 }),
  height: fc.integer({ min: 1, max: 99_000 }),
})
const inside = (one: Bounds, screen: Bounds): boolean =>
  one.x >= screen.x &&
  one.y >= screen.y &&
  one.x + one.width <= screen.x + screen.width &&
  one.y + one.height <= screen.y + screen.height

describe('a place for the window', () => {
  test('lies wholly on a screen that is there, whatever was kept', () => {
    const cases = fc.tuple(fc.array(screenAt, { minLength: 1, maxLength: 3 }), anywhere)
    fc.assert(
      fc.property(cases, ([screens, before]) => {
        const { x, y, width = 0, height = 0 } = placedOn(screens, before)
        const at = screens.map((screen) => ({ x: x ?? screen.x, y: y ?? screen.y, width, height }))
        expect(screens.some((screen, i) => inside(at[i]!, screen))).toBe(true)
      }),
      { numRuns: 500 },
    )
  })

  test('is the very one it was left at, where that can be', () => {
    const screens = [
      { x: 0, y: 0, width: 1920, height: 1040 },
      { x: 1920, y: 0, width: 2560, height: 1400 },
    ]
    for (const before of [
      { x: 0, y: 0, width: LEAST.width, height: LEAST.height },
      { x: 2000, y: 100, width: 2000, height: 1200 },
    ])
      expect(placedOn(screens, before)).toEqual(before)
  })

  test('is left to the system when the screen is gone, and its size is kept', () => {
    const before = { x: 2000, y: 100, width: 1500, height: 900 }
    expect(placedOn([{ x: 0, y: 0, width: 1920, height: 1040 }], before)).toEqual({
      width: 1500,
      height: 900,
    })
  })
})
