import { bottomLeft, type Put } from './bottom-left.ts'
import type { NoFits } from './nofit.ts'
import { type Places, placesOf, type Strip } from './strip.ts'

/**
 * Lays parts in bands that can be torn off across the cloth one after the other: each band as long as its
 * first part, and filled with what still finds room in it.
 *
 * @param order every part that may be moved
 */
export function tornPlaces(order: readonly number[], strip: Strip, fits: NoFits): Places {
  const puts: Put[] = []
  const tears: number[] = []
  let length = 0
  for (let rest = [...order]; rest.length > 0; ) {
    const band = nextBand(rest, strip, fits, length)
    const laid = new Set(band.puts.map(({ part }) => part))
    for (const put of band.puts) puts.push({ ...put, y: put.y + length })
    rest = rest.filter((part) => !laid.has(part))
    length += band.length
    tears.push(length)
  }
  return { ...placesOf(strip, puts, length), tears }
}

/** A band from `at` on, as long as the first part needs, with all that fits in beside it. */
function nextBand(rest: readonly number[], strip: Strip, fits: NoFits, at: number) {
  const parts = strip.parts.map((part) =>
    part.fixed === undefined ? part : { ...part, fixed: { ...part.fixed, y: part.fixed.y - at } },
  )
  const from = { ...strip, parts }
  const { length } = bottomLeft([rest[0]!], from, fits, Infinity)!
  return bottomLeft(rest, from, fits, length, 'skip')!
}
