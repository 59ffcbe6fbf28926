import { flattenOutward } from '../geometry/flatten.ts'
import { convexHull } from '../geometry/hull.ts'
import type { Path } from '../geometry/types.ts'
import { areaOf, isConvex, type Outline, outlineOf, turnedBy } from './outline.ts'
import type { Angle } from './types.ts'

/**
 * How finely outlines are followed: the hull stands for an outline where it is larger by less than `dent` of
 * it, and curves are followed within `chord` mm. Finely for a lay that is searched for long, roughly for one
 * that must be there at once.
 */
export type Fineness = { dent: number; chord: number }
export const FINE: Fineness = { dent: 1e-3, chord: 0.1 }
export const ROUGH: Fineness = { dent: 0.2, chord: 1 }

/** How a piece lies in an outline. */
export type Way = { angle: Angle; flipped: boolean }

/** The outlines of one strip, each kept once, with the way a piece lies in it. */
export class Outlines {
  readonly all: Outline[] = []
  readonly ways: Way[] = []
  readonly #bases = new Map<string, number>()
  readonly #known = new Map<string, number>()

  /**
   * The number of an outline turned by whole quarters.
   * @param points of the base, anticlockwise
   * @param way what it stands for
   */
  of(points: Float64Array, quarters: Outline['quarters'], way: Way): number {
    const print = points.join(' ')
    const base = this.#bases.get(print) ?? this.#bases.size
    this.#bases.set(print, base)
    const key = `${base} ${quarters} ${way.angle} ${way.flipped}`
    const found = this.#known.get(key)
    if (found !== undefined) return found
    const turned = turnedBy(points, quarters)
    this.#known.set(key, this.all.length)
    this.ways.push(way)
    return this.all.push(outlineOf(base, quarters, turned, hullOf(turned))) - 1
  }

  /** The ways that differ when their boxes lie on each other: a rectangle turned by half is the same one. */
  distinct(ways: readonly number[]): number[] {
    const seen = new Set<string>()
    return ways.filter((way) => {
      const print = boxPrint(this.all[way]!.points)
      if (seen.has(print)) return false
      seen.add(print)
      return true
    })
  }
}

/**
 * The polygon a path is laid as, about the piece's own origin, turned over first if `flipped`: never inside
 * the path, curves grown by `gap` mm.
 */
export function polygonOf(
  path: Path,
  gap: number,
  { dent, chord }: Fineness,
  flipped: boolean,
): Float64Array {
  const outline = flattenOutward(path, chord, gap)
  const turned = flipped ? outline.map(({ x, y }) => ({ x: -x, y })).reverse() : outline
  const points = Float64Array.from(turned.flatMap(({ x, y }) => [x, y]))
  if (isConvex(points)) return points
  const hull = hullOf(points)
  return areaOf(hull) - areaOf(points) < dent * areaOf(hull) ? hull : points
}

/** Turned anticlockwise by half a quarter: how a bias piece lies. */
export function onTheBias(points: Float64Array): Float64Array {
  const turned = new Float64Array(points.length)
  for (let i = 0; i < points.length; i += 2) {
    turned[i] = (points[i]! - points[i + 1]!) * Math.SQRT1_2
    turned[i + 1] = (points[i]! + points[i + 1]!) * Math.SQRT1_2
  }
  return turned
}

/** The corners from the corner of their box, in an order of their own. */
export function boxPrint(points: Float64Array): string {
  let [left, low] = [Infinity, Infinity]
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]!)
    low = Math.min(low, points[i + 1]!)
  }
  const corners = Array.from(
    { length: points.length / 2 },
    (_, i) => `${(points[2 * i]! - left).toFixed(3)},${(points[2 * i + 1]! - low).toFixed(3)}`,
  )
  return corners.sort().join(' ')
}

function hullOf(points: Float64Array): Float64Array {
  const corners = Array.from({ length: points.length / 2 }, (_, i) => ({
    x: points[2 * i]!,
    y: points[2 * i + 1]!,
  }))
  return Float64Array.from(convexHull(corners).flatMap(({ x, y }) => [x, y]))
}
