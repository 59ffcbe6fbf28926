import { convexHull } from '../geometry/hull.ts'
import type { NoFits } from './nofit.ts'
import { type Outline, outlineOf } from './outline.ts'
import { movable, type Part, type Places, type Strip } from './strip.ts'

/** Parts that fill less than this of their box lie better head to tail with another of their kind. */
const SLANTED = 0.7
/** Ways of lying together that are tried for a pair, of each kind. */
const TOGETHER = 2

/** Two parts lying together: the second's way and place from the first's origin. */
type Together = { ways: [number, number]; x: number; y: number }

/** A strip in which slanted parts lie in pairs, and the way back to the parts themselves. */
export type Paired = { strip: Strip; apart: (places: Places) => Places }

/**
 * Puts slanted parts of one kind together two by two, head to tail, as close as their boxes allow: two gores
 * make nearly a rectangle, which finds its place more easily than either.
 *
 * @returns undefined when there is nothing to pair
 */
export function paired(strip: Strip, fits: NoFits): Paired | undefined {
  const outlines = [...strip.outlines]
  const pairs = pairsOf(strip)
  if (pairs.length === 0) return undefined
  const known = new Map<string, number[]>()
  const together: (Together | undefined)[] = strip.outlines.map(() => undefined)
  const parts: Part[] = []
  /** Part of the plain strip, or two of them. */
  const made: number[][] = []
  const taken = new Set(pairs.flat())
  strip.parts.forEach((part, i) => {
    if (taken.has(i)) return
    parts.push(part)
    made.push([i])
  })
  for (const [a, b] of pairs) {
    const [one, two] = [strip.parts[a]!.ways, strip.parts[b]!.ways]
    const key = `${one.join()} ${two.join()}`
    let ways = known.get(key)
    if (ways === undefined) {
      ways = closest(strip, fits, one, two).map((found) => {
        together.push(found)
        return outlines.push(outlineOfPair(strip.outlines, found, outlines.length)) - 1
      })
      known.set(key, ways)
    }
    if (ways.length === 0) {
      parts.push(strip.parts[a]!, strip.parts[b]!)
      made.push([a], [b])
    } else {
      parts.push({ ways })
      made.push([a, b])
    }
  }
  return { strip: { ...strip, outlines, parts }, apart: (places) => apart(strip, places, made, together) }
}

/** Slanted parts two by two, those of the same ways or of the same size together. */
function pairsOf(strip: Strip): [number, number][] {
  const open = new Map<string, number>()
  return movable(strip).flatMap((part): [number, number][] => {
    const { area, left, right, low, high } = strip.outlines[strip.parts[part]!.ways[0]!]!
    const [wide, tall] = [right - left, high - low]
    if (area > SLANTED * wide * tall || strip.parts[part]!.onFold === true) return []
    const kind = [area, wide, tall].map(Math.round).join()
    const other = open.get(kind)
    if (other === undefined) {
      open.set(kind, part)
      return []
    }
    open.delete(kind)
    return [[other, part]]
  })
}

/** The closest ways to lie together: touching, in a small box, a small and narrow one, a small and short one. */
function closest(strip: Strip, fits: NoFits, one: readonly number[], two: readonly number[]): Together[] {
  const all = one.flatMap((a) =>
    two.flatMap((b) => {
      const [fixed, moving] = [strip.outlines[a]!, strip.outlines[b]!]
      return touches(fixed, moving, fits).map(([x, y]) => {
        const wide = Math.max(fixed.right, moving.right + x) - Math.min(fixed.left, moving.left + x)
        const tall = Math.max(fixed.high, moving.high + y) - Math.min(fixed.low, moving.low + y)
        return { ways: [a, b] as [number, number], x, y, wide, tall }
      })
    }),
  )
  const fitting = all.filter(({ wide }) => wide <= strip.width)
  const sizes: ((of: { wide: number; tall: number }) => number)[] = [
    ({ wide, tall }) => wide * tall,
    ({ wide, tall }) => wide * wide * tall,
    ({ wide, tall }) => wide * tall * tall,
  ]
  return sizes.flatMap((size) => {
    const least = Math.min(...fitting.map(size))
    return fitting.filter((found) => size(found) <= least * (1 + 1e-6)).slice(0, TOGETHER)
  })
}

/** Places that touch: corners of the no-fit polygon, and where on its sides the two boxes come into line. */
function touches(fixed: Outline, moving: Outline, fits: NoFits): [x: number, y: number][] {
  const { sides } = fits.between(fixed, moving)
  const xs = [fixed.left - moving.left, fixed.right - moving.right]
  const ys = [fixed.low - moving.low, fixed.high - moving.high]
  const out: [number, number][] = []
  for (let i = 0; i < sides.length; i += 4) {
    const [px, py, qx, qy] = [sides[i]!, sides[i + 1]!, sides[i + 2]!, sides[i + 3]!]
    out.push([px, py])
    for (const x of xs) if ((px - x) * (qx - x) < 0) out.push([x, py + ((x - px) * (qy - py)) / (qx - px)])
    for (const y of ys) if ((py - y) * (qy - y) < 0) out.push([px + ((y - py) * (qx - px)) / (qy - py), y])
  }
  return out
}

function outlineOfPair(outlines: readonly Outline[], { ways, x, y }: Together, number: number): Outline {
  const corners = ways.flatMap((way, k) => {
    const { points } = outlines[way]!
    return Array.from({ length: points.length / 2 }, (_, i) => ({
      x: points[2 * i]! + (k === 0 ? 0 : x),
      y: points[2 * i + 1]! + (k === 0 ? 0 : y),
    }))
  })
  const hull = Float64Array.from(convexHull(corners).flatMap((p) => [p.x, p.y]))
  // No quarter turn of another outline: a base of its own, beyond those of the strip.
  return outlineOf(PAIRS + number, 0, hull, hull)
}

/** Bases of pairs begin here. */
const PAIRS = 512

function apart(
  strip: Strip,
  { way, x, y, ...rest }: Places,
  made: readonly number[][],
  together: readonly (Together | undefined)[],
): Places {
  const count = strip.parts.length
  const places: Places = {
    ...rest,
    ...{ way: new Int32Array(count), x: new Float64Array(count), y: new Float64Array(count) },
  }
  made.forEach((parts, i) => {
    const pair = parts.length === 2 ? together[way[i]!] : undefined
    parts.forEach((part, k) => {
      places.way[part] = pair === undefined ? way[i]! : pair.ways[k]!
      places.x[part] = x[i]! + (k === 0 ? 0 : pair!.x)
      places.y[part] = y[i]! + (k === 0 ? 0 : pair!.y)
    })
  })
  return places
}
