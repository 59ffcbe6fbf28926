import { depthIn, type NoFits } from '../nofit.ts'
import { fixedReach, leastX, movable, type Places, type Strip } from '../strip.ts'
import { SEARCH } from './parameters.ts'

/** Rounds of drawing everything together, and the least draw worth another one, in parts of the width. */
const ROUNDS = 20
const WORTH = 1e-7

/**
 * Draws every part along the cloth towards the cut end and then across it to the near selvedge until it
 * touches, so that pieces meant to share a cut do share it. Never makes a lay longer.
 */
export function settle(strip: Strip, fits: NoFits, places: Places): Places {
  const [way, x, y] = [places.way.slice(), places.x.slice(), places.y.slice()]
  const parts = movable(strip)
  const outline = (i: number) => strip.outlines[way[i]!]!
  for (let round = 0; round < ROUNDS; round++) {
    let drawn = 0
    parts.sort((a, b) => y[a]! + outline(a).low - y[b]! - outline(b).low)
    for (const i of parts) {
      for (const axis of ['y', 'x'] as const) {
        const room = free(strip, fits, { way, x, y }, i, axis)
        const along = axis === 'y' ? y : x
        const from = along[i]!
        along[i] = from - room
        // A part that dips into another by a hair may not see the side it has just passed.
        if (room > 0 && !clear(strip, fits, { way, x, y }, i)) along[i] = from
        else drawn = Math.max(drawn, room)
      }
    }
    if (drawn < WORTH * strip.width) break
  }
  const length = parts.reduce((reach, i) => Math.max(reach, y[i]! + outline(i).high), fixedReach(strip))
  return { length, way, x, y }
}

/** Whether a part lies in no other one by more than rounding dust. */
function clear(
  strip: Strip,
  fits: NoFits,
  { way, x, y }: Pick<Places, 'way' | 'x' | 'y'>,
  part: number,
): boolean {
  const own = strip.outlines[way[part]!]!
  return strip.parts.every((_, j) => {
    if (j === part) return true
    const fit = fits.between(strip.outlines[way[j]!]!, own)
    const [dx, dy] = [x[part]! - x[j]!, y[part]! - y[j]!]
    if (dx <= fit.left || dx >= fit.right || dy <= fit.low || dy >= fit.high) return true
    return depthIn(fit, dx, dy) <= SEARCH.dust * strip.width
  })
}

/** How far a part can go straight back along an axis before it touches another one or the border. */
function free(
  strip: Strip,
  fits: NoFits,
  { way, x, y }: Pick<Places, 'way' | 'x' | 'y'>,
  part: number,
  axis: 'x' | 'y',
): number {
  const own = strip.outlines[way[part]!]!
  let room = axis === 'y' ? y[part]! + own.low : x[part]! - leastX(strip, strip.parts[part]!, own)
  for (let j = 0; j < strip.parts.length && room > 0; j++) {
    if (j === part) continue
    const fit = fits.between(strip.outlines[way[j]!]!, own)
    const [dx, dy] = [x[part]! - x[j]!, y[part]! - y[j]!]
    const [across, along] = axis === 'y' ? [dx, dy] : [dy, dx]
    const [low, high] = axis === 'y' ? [fit.left, fit.right] : [fit.low, fit.high]
    if (across <= low || across >= high) continue
    // Sides as (across, along) pairs whichever way the part is drawn.
    const [first, second] = axis === 'y' ? [0, 1] : [1, 0]
    const { sides } = fit
    for (let k = 0; k < sides.length; k += 4) {
      const [a, b] = [sides[k + first]!, sides[k + 2 + first]!]
      if (a > across === b > across) continue
      const from = sides[k + second]!
      const at = from + ((across - a) * (sides[k + 2 + second]! - from)) / (b - a)
      const gap = along - at
      // A side a hair above the part is one it already touches.
      if (gap > -WORTH * strip.width) room = Math.min(room, Math.max(0, gap))
    }
  }
  return Math.max(0, room)
}
