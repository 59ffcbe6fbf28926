import { describe, expect, test } from 'vitest'
import { changePercent, testSquare } from '../../core/plan/stock/test-square.ts'
import { say } from '../../core/words/say.ts'
import { refused } from '../support/refused.ts'

describe('a test square', () => {
  const marks = (before: number, after: number) => ({ before, after })

  // ISO 5077: dimensional change, %, = 100 × (Xt − Xo) ÷ Xo; ISO 3759: marks at least 350 mm apart.
  test('of 350 mm that measures 336 mm has changed by −4.0 %', () => {
    expect(changePercent(marks(350, 336))).toBe(-4)
    const square = testSquare({ warp: [marks(350, 336)], weft: [marks(350, 350)] })
    expect(square).toEqual({ change: { warp: -4, weft: 0 }, shrinkage: { warp: 0.04, weft: 0 }, told: [] })
  })

  test('is the average of its marks, warp and weft apart', () => {
    const { change, shrinkage } = testSquare({
      warp: [marks(350, 329), marks(350, 330.75), marks(400, 380)],
      weft: [marks(350, 343), marks(350, 346.5)],
    })
    expect(change.warp).toBeCloseTo(-(6 + 5.5 + 5) / 3, 9)
    expect(change.weft).toBeCloseTo(-1.5, 9)
    expect(shrinkage).toEqual({ warp: -change.warp / 100, weft: -change.weft / 100 })
  })

  test('of cloth that grows is told, and buys no less', () => {
    const { change, shrinkage, told } = testSquare({ warp: [marks(300, 294)], weft: [marks(350, 353.5)] })
    expect(change.weft).toBeCloseTo(1, 9)
    expect(shrinkage).toEqual({ warp: 0.02, weft: 0 })
    expect(told.map((phrase) => say(phrase))).toEqual([
      'Across, this cloth grew by 1 %. It is laid as if it kept its width.',
      'Some marks are less than 35 cm from each other. ISO 3759 asks for that much, for a slip of the tape counts less then.',
    ])
  })

  test('without marks, or with a change that no cloth makes, is refused', () => {
    const good = [marks(350, 340)]
    expect(refused(() => testSquare({ warp: good, weft: [] })).code).toBe('refusal.stock.square.weft')
    expect(refused(() => testSquare({ warp: [marks(350, 170)], weft: good })).field).toBe('warp.0')
    expect(refused(() => testSquare({ warp: good, weft: [marks(0, 340)] })).field).toBe('weft.0.before')
  })
})
