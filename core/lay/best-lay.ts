import { NoFits } from './nofit.ts'
import { allRectangles, searchRectangles } from './search/rectangles.ts'
import { type Budget, type Hooks, type Search, search } from './search/search.ts'
import { settle } from './search/settle.ts'
import { searchTorn } from './search/tearing.ts'
import type { Places, Strip } from './strip.ts'
import type { Manner } from './types.ts'

/**
 * The shortest lay that the budget allows, from one that can already be cut. The same strip, start, seed and
 * budget of sweeps give the same lay; a budget by the clock does not promise that.
 */
export function bestPlaces(
  strip: Strip,
  manner: Manner,
  start: Places,
  budget: Budget,
  seed: number,
  hooks: Hooks,
): Search {
  if (allRectangles(strip)) return searchRectangles(strip, start, budget, seed, hooks)
  const fits = new NoFits()
  if (manner === 'torn') return searchTorn(strip, fits, start, budget, seed, hooks)
  const found = search(strip, fits, start, budget, seed, hooks)
  const settled = settle(strip, fits, found.places)
  return { ...found, places: settled.length <= found.places.length ? settled : found.places }
}
