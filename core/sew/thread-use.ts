import { STITCH } from './stitches.ts'
import type { Row, ThreadRules, ThreadUse } from './types.ts'

/**
 * Thread by hand and by machine, m. Every row by hand begins with a new needleful, and each needleful loses
 * its ends; every row by machine loses its ends, and the whole its share of waste. Sorts not used are
 * left out.
 */
export function threadUse(rows: readonly Row[], rules: ThreadRules): ThreadUse[] {
  return (['hand', 'machine'] as const).flatMap((work) => {
    const own = rows.filter(({ stitch }) => STITCH[stitch].work === work)
    if (own.length === 0) return []
    const sewn = own.reduce((sum, row) => sum + row.thread, 0)
    const used =
      work === 'hand'
        ? byHand(own, rules)
        : (sewn + own.length * 2 * rules.machineEnd) * (1 + rules.machineWaste)
    return [{ work, sewn: sewn / 1000, wasted: (used - sewn) / 1000, metres: used / 1000 }]
  })
}

const byHand = (rows: readonly Row[], { needleful, needlefulLost }: ThreadRules): number =>
  rows.reduce(
    (sum, { thread }) => sum + thread + Math.ceil(thread / (needleful - needlefulLost)) * needlefulLost,
    0,
  )
