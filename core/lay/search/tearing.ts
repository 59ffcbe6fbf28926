import type { NoFits } from '../nofit.ts'
import { movable, type Places, type Strip, shortestPossible } from '../strip.ts'
import { tornPlaces } from '../torn.ts'
import { SEARCH } from './parameters.ts'
import { type Random, randomFrom } from './random.ts'
import { rehearse } from './rehearse.ts'
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
  const { places, sweeps } = rehearse(
    start,
    {
      first: movable(strip).sort((a, b) => far(a) - far(b)),
      changed: (order) => reordered(order, random),
      lay: (order) => tornPlaces(order, strip, fits),
      worse: SEARCH.torn.worse,
      bound: shortestPossible(strip),
    },
    budget,
    random,
    found,
  )
  return { places, sweeps, evaluations: sweeps * strip.parts.length }
}

/** The same order, a few parts of it in other places. */
function reordered(order: readonly number[], random: Random): number[] {
  const tried = [...order]
  const moves = 1 + random.below(SEARCH.torn.moves)
  for (let k = 0; k < moves; k++) {
    const [part] = tried.splice(random.below(tried.length), 1)
    tried.splice(random.below(tried.length + 1), 0, part!)
  }
  return tried
}
