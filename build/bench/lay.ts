import { availableParallelism } from 'node:os'
import { parseArgs } from 'node:util'
import { faultsOfLay } from '../../core/lay/check.ts'
import { firstPlaces } from '../../core/lay/first-lay.ts'
import { layOf } from '../../core/lay/lay-of.ts'
import { layableOf } from '../../core/lay/layable.ts'
import { DEFAULT_BUYING } from '../../core/lay/parameters.ts'
import { PLAIN_ORDER } from '../../core/lay/types.ts'
import { searchInThreads } from '../../electron/lay-host.ts'
import { readInstance } from './instances.ts'

/** `npm run --silent bench:lay -- --seconds N [--seed S] FILE...`: one line of JSON for each problem. */

const { values, positionals } = parseArgs({
  options: { seconds: { type: 'string', default: '10' }, seed: { type: 'string', default: '1' } },
  allowPositionals: true,
})
const [seconds, seed] = [Number(values.seconds), Number(values.seed)]
if (!(seconds > 0) || !Number.isInteger(seed) || positionals.length === 0) {
  console.error('Give a number of seconds above 0, a whole seed, and at least one file.')
  process.exit(1)
}
for (const path of positionals) {
  const began = performance.now()
  const { name, pieces, cloth, scale, stripWidth, area, bestKnownDensity } = readInstance(path)
  const layable = layableOf(pieces, cloth, DEFAULT_BUYING, PLAIN_ORDER)
  const start = firstPlaces(layable.strip, layable.manner)
  const { places, sweeps, evaluations } = await searchInThreads(layable, start, {
    threads: availableParallelism(),
    seed,
    limit: { seconds: Math.max(0.1, seconds - (performance.now() - began) / 1000) },
    signal: new AbortController().signal,
  })
  const took = (performance.now() - began) / 1000
  const length = places.length / scale
  const density = area / (length * stripWidth)
  const lay = layOf(pieces, layable, places)
  console.log(
    JSON.stringify({
      ...{ name, length, density, ofBestKnown: density / bestKnownDensity },
      ...{ valid: faultsOfLay(lay, pieces, cloth).length === 0, seconds: Math.round(took * 10) / 10 },
      ...{ sweepsPerSecond: Math.round(sweeps / took), evaluationsPerSecond: Math.round(evaluations / took) },
      // All threads together, at their most.
      megabytes: Math.round(process.resourceUsage().maxRSS / 1024),
      firstOfBestKnown: area / ((start.length / scale) * stripWidth) / bestKnownDensity,
    }),
  )
}
