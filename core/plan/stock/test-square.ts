import { readLength } from '../../words/length.ts'
import { type Phrase, phrase } from '../../words/phrase.ts'
import { Refusal, refusingAt } from '../../words/refusal.ts'
import type { Shrinkage } from './types.ts'

/** The distance between two marks on a test square before and after washing, mm. */
export type Marks = { before: number; after: number }

/** Marks nearer to each other than this are not those of ISO 3759, on which ISO 5077 rests, mm. */
const APART = 350
/** Change beyond which a number is a slip: felting wool loses less than half its length. Parts of one. */
const MOST = 0.5

/** ISO 5077: 100 × (after − before) ÷ before, %. Less than nothing where the cloth has shrunk. */
export const changePercent = ({ before, after }: Marks): number => (100 * (after - before)) / before

const WAYS = ['warp', 'weft'] as const

/** What a test square says of a cloth, warp and weft apart. */
export type TestSquare = {
  /** Average change, %, the sign kept. */
  change: Shrinkage
  /** What must be bought for: nothing where the cloth grows. Parts of one. */
  shrinkage: Shrinkage
  /** What there is to say of it. */
  told: Phrase[]
}

/**
 * What washing does to a cloth by the marks on its test square, warp and weft apart: the average of the changes of all
 * pairs of marks.
 *
 * @throws Refusal when a way has no marks, or a change that no cloth makes
 */
export function testSquare(marks: Readonly<Record<'warp' | 'weft', readonly Marks[]>>): TestSquare {
  const ways = WAYS.map((way) => {
    const pairs = marks[way].map((pair, i) => read(pair, `${way}.${i}`))
    if (pairs.length === 0) throw new Refusal(phrase(`refusal.stock.square.${way}`), way)
    const change = pairs.reduce((sum, pair) => sum + changePercent(pair), 0) / pairs.length
    return { way, change, near: pairs.some(({ before }) => before < APART) }
  })
  const of = <T>(pick: (change: number) => T) => {
    const [warp, weft] = ways.map(({ change }) => pick(change))
    return { warp: warp!, weft: weft! }
  }
  return {
    change: of((change) => change),
    shrinkage: of((change) => Math.max(0, -change) / 100),
    told: [
      ...ways
        .filter(({ change }) => change > 0)
        .map(({ way, change }) => phrase(`stock.square.grows.${way}`, { percent: change })),
      ...(ways.some(({ near }) => near) ? [phrase('stock.square.near', { apart: { mm: APART } })] : []),
    ],
  }
}

function read({ before, after }: Marks, field: string): Marks {
  const pair = {
    before: refusingAt(`${field}.before`, () => readLength(before, 'mm')),
    after: refusingAt(`${field}.after`, () => readLength(after, 'mm')),
  }
  if (Math.abs(changePercent(pair)) >= 100 * MOST) {
    const params = { before: { mm: before }, after: { mm: after } }
    throw new Refusal(phrase('refusal.stock.square.absurd', params), field)
  }
  return pair
}
