import type { Piece } from '../draft/types.ts'
import { signedArea } from '../geometry/path.ts'
import { unfolded } from './fold.ts'
import type { Layable } from './layable.ts'
import { offcuts } from './offcuts.ts'
import type { Places } from './strip.ts'
import type { Lay } from './types.ts'

/** The lay that places of a strip's parts make, with what is used of it and what is left over. */
export function layOf(
  pieces: readonly Piece[],
  { strip, copies, ways, width, manner, flaws }: Layable,
  { length, way, x, y, tears }: Places,
): Lay {
  const placements = copies.flatMap((cut, i) => unfolded(cut, ways[way[i]!]!, x[i]!, y[i]!, width))
  const areas = new Map(pieces.map(({ id, cut }) => [id, signedArea(cut)]))
  const covered = placements.reduce((sum, { piece }) => sum + areas.get(piece)!, 0)
  const ground = strip.parts.flatMap((_, i) => {
    const { points } = strip.outlines[way[i]!]!
    const lies = points.map((value, k) => value + (k % 2 === 0 ? x[i]! : y[i]!))
    return manner === 'doubled' && copies[i]?.kind !== 'one' ? [lies, acrossFold(lies, width)] : [lies]
  })
  return {
    usableWidth: width,
    length,
    placements,
    used: length === 0 ? 0 : covered / (width * length),
    offcuts: offcuts(ground, width, length),
    ...(manner === 'single' ? {} : { manner }),
    ...(tears === undefined ? {} : { tears }),
    ...(flaws.length === 0 ? {} : { flaws: [...flaws] }),
  }
}

/** What lies the same on the upper layer of folded cloth, anticlockwise. */
function acrossFold(points: Float64Array, width: number): Float64Array {
  const out = new Float64Array(points.length)
  for (let i = 0; i < points.length; i += 2) {
    out[points.length - 2 - i] = width - points[i]!
    out[points.length - 1 - i] = points[i + 1]!
  }
  return out
}
