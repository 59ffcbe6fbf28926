import { availableParallelism } from 'node:os'
import { parseArgs } from 'node:util'
import { CONSTRUCTIONS } from '../../core/draft/constructions.ts'
import { signedArea } from '../../core/geometry/path.ts'
import { assertCuttable } from '../../core/lay/check.ts'
import { firstLay } from '../../core/lay/first-lay.ts'
import { layOf } from '../../core/lay/lay-of.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { PLAIN_ORDER } from '../../core/lay/types.ts'
import { searchStart } from '../../core/lay/wished-lay.ts'
import { searchInThreads } from '../../electron/lay-host.ts'
import { stratifiedBodies } from './bodies.ts'
import { summedUp } from './timing.ts'

/**
 * `npm run --silent bench:garments -- [--bodies N] [--seconds S]`: every construction on bodies of all sizes,
 * 1400 mm of usable cloth: what first and best lays use of it, and how long first lays take.
 */

const { values } = parseArgs({
  options: { bodies: { type: 'string', default: '6' }, seconds: { type: 'string', default: '5' } },
})
const [count, seconds] = [Number(values.bodies), Number(values.seconds)]
const cloth = {
  ...{ width: 1400, selvedge: 0, warpShrinkage: 0, weftShrinkage: 0, rightSide: false, nap: false },
  ...{ thickness: 0.4, increment: 100 },
}
const at = (sorted: readonly number[], part: number) =>
  sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!
const ascending = (values: readonly number[]) => [...values].sort((a, b) => a - b)

for (const construction of Object.values(CONSTRUCTIONS)) {
  const drafts = stratifiedBodies.slice(0, count).map((body) => construction.draft(body, {}, 'mm'))
  for (const { pieces } of drafts.slice(0, 10)) firstLay(pieces, cloth, DEFAULT_BUYING)
  const times: number[] = []
  const rows = []
  for (const { pieces } of drafts) {
    const began = performance.now()
    const first = firstLay(pieces, cloth, DEFAULT_BUYING)
    times.push(performance.now() - began)
    const { layable, start } = searchStart(pieces, cloth, DEFAULT_BUYING, PLAIN_ORDER)
    const { places } = await searchInThreads(layable, start, {
      ...{
        threads: availableParallelism(),
        seed: 1,
        limit: { seconds },
        signal: new AbortController().signal,
      },
    })
    const best = assertCuttable(layOf(pieces, layable, places), pieces, cloth)
    const area = pieces.reduce((sum, { cut, copies }) => sum + copies.length * signedArea(cut), 0)
    rows.push({ first: first.length, best: best.length, used: best.used, bound: area / cloth.width })
  }
  const [used, behind] = [rows.map((row) => row.used), rows.map((row) => row.first / row.best - 1)].map(
    ascending,
  )
  console.log(
    JSON.stringify({
      construction: construction.id,
      ...{ bodies: count, seconds },
      used: { least: used![0], median: at(used!, 0.5) },
      firstBehindBest: { p50: at(behind!, 0.5), p90: at(behind!, 0.9), most: behind!.at(-1) },
      firstLayMs: { p50: summedUp('', times).p50, p95: summedUp('', times).p95 },
      lengths: rows.map(({ first, best, bound }) => [first, best, bound].map(Math.round)),
    }),
  )
}
