import { faultsOfLay } from '../core/lay/check.ts'
import { firstPlaces } from '../core/lay/first-lay.ts'
import { layOf } from '../core/lay/lay-of.ts'
import { layableOf } from '../core/lay/layable.ts'
import { NoFits } from '../core/lay/nofit.ts'
import { DEFAULT_BUYING } from '../core/lay/parameters.ts'
import { search } from '../core/lay/search/search.ts'
import { settle } from '../core/lay/search/settle.ts'
import { PLAIN_ORDER } from '../core/lay/types.ts'
import { readInstance } from './bench/instances.ts'

const { pieces, cloth } = readInstance(process.argv[2]!)
const layable = layableOf(pieces, cloth, DEFAULT_BUYING, PLAIN_ORDER)
const start = firstPlaces(layable.strip, 'single')
console.log('first', faultsOfLay(layOf(pieces, layable, start), pieces, cloth))
const t = performance.now()
const fits = new NoFits()
const r = search(layable.strip, fits, start, { spent: () => (performance.now() - t) / 12000 }, 5, {
  found: () => {},
})
console.log(r.places.length, faultsOfLay(layOf(pieces, layable, r.places), pieces, cloth))
const s = settle(layable.strip, fits, r.places)
console.log(s.length, faultsOfLay(layOf(pieces, layable, s), pieces, cloth))
