import type { Step } from '../draft/types.ts'
import type { StitchId } from '../words/stitches.ts'
import { OPERATION } from './operations.ts'
import { LAYERS, WAXED_NEEDLEFUL } from './parameters.ts'
import { STITCH } from './stitches.ts'
import type { Row, ThreadRules, ThreadUse, Ways } from './types.ts'

/** Thread sewn in one go with one stitch, mm without tails or waste. */
export type ThreadRow = Pick<Row, 'stitch' | 'thread'>

/** The thread in buttonholes, eyelets and what else is worked by the piece: each begins with a thread of its own. */
export function handledThread(
  operations: Step['operations'],
  thickness: number,
  { density }: Pick<Ways, 'density'>,
): ThreadRow[] {
  return operations.flatMap(({ operation, quantity }) => {
    const { sewn, unit } = OPERATION[operation]
    if (sewn === undefined) return []
    const { stitch, mm } = sewn
    const ratio = STITCH[stitch].thread(
      10 / (density[stitch] ?? STITCH[stitch].density),
      thickness * LAYERS.join,
    )
    const pieces = unit === 'each' ? Math.round(quantity) : 1
    return Array.from({ length: pieces }, () => ({ stitch, thread: (mm * ratio * quantity) / pieces }))
  })
}

/**
 * Thread by hand and by machine, m. Every row by hand begins with a new needleful, and each needleful loses
 * its ends; a thread sewn double is all of it twice as long, and waxed thread comes in longer needlefuls. Every
 * row by machine loses its ends, and the whole its share of waste. Sorts not used are left out.
 */
export function threadUse(
  rows: readonly ThreadRow[],
  handled: readonly ThreadRow[],
  rules: ThreadRules,
): ThreadUse[] {
  return (['hand', 'machine'] as const).flatMap((work) => {
    const own = [...rows, ...handled].filter(({ stitch }) => STITCH[stitch].work === work)
    if (own.length === 0) return []
    const sewn = own.reduce((sum, row) => sum + row.thread * strandsOf(row.stitch, rules), 0)
    const used =
      work === 'hand'
        ? byHand(own, rules)
        : (sewn + own.length * 2 * rules.machineEnd) * (1 + rules.machineWaste)
    return [{ work, sewn: sewn / 1000, wasted: (used - sewn) / 1000, metres: used / 1000 }]
  })
}

const strandsOf = (stitch: StitchId, { doubled = [] }: ThreadRules): 1 | 2 =>
  STITCH[stitch].work === 'hand' && doubled.includes(stitch) ? 2 : 1

function byHand(rows: readonly ThreadRow[], rules: ThreadRules): number {
  const needleful = rules.needleful * (rules.waxed === true ? WAXED_NEEDLEFUL : 1)
  const usable = needleful - rules.needlefulLost
  return rows.reduce(
    (sum, { stitch, thread }) =>
      sum + strandsOf(stitch, rules) * (thread + Math.ceil(thread / usable) * rules.needlefulLost),
    0,
  )
}
