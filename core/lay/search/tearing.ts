import type { NoFits } from '../nofit.ts'
import { movable, type Places, type Strip } from '../strip.ts'
import { tornPlaces } from '../torn.ts'
import { SEARCH } from './parameters.ts'
import { randomFrom } from './random.ts'
import type { Budget, Hooks, Search } from './search.ts'

/**
 * Shortens a torn lay: its parts are laid in bands over and over in other orders, each made from the best by
 * moving a few of them, for as long as the budget lasts.
 */
export function searchTorn(
  strip: Strip,
  fits: NoFits,
  start: Places,
  budget: Budget,
  seed: number,
  { found }: Hooks,
): Search {
  const random = randomFrom(seed)
  const far = (part: number) => start.y[part]! + strip.outlines[start.way[part]!]!.low
  let order = movable(strip).sort((a, b) => far(a) - far(b))
  let best = start
  let now = Infinity
  let sweeps = 0
  for (; budget.spent(sweeps) < 1; sweeps++) {
    const tried = [...order]
    const moves = sweeps === 0 ? 0 : 1 + random.below(SEARCH.torn.moves)
    for (let k = 0; k < moves; k++) {
      const [part] = tried.splice(random.below(tried.length), 1)
      tried.splice(random.below(tried.length + 1), 0, part!)
    }
    const places = tornPlaces(tried, strip, fits)
    if (places.length > now * (1 + SEARCH.torn.worse * random.part() ** 8)) continue
    ;[now, order] = [places.length, tried]
    if (places.length >= best.length - SEARCH.dust * strip.width) continue
    best = places
    found(best)
  }
  return { places: best, sweeps, evaluations: sweeps * order.length }
}
