/** A polygon to be laid in one of the ways it may lie: anticlockwise about its own origin, x and y alternating, mm. */
export type Outline = {
  /** Outlines with the same number in `base` are the same one but for quarter turns. */
  base: number
  /** Quarter turns anticlockwise from the base. */
  quarters: 0 | 1 | 2 | 3
  points: Float64Array
  convex: boolean
  left: number
  right: number
  low: number
  high: number
  area: number
  hullArea: number
}

/** @param hull the convex hull of the points, anticlockwise */
export function outlineOf(
  base: number,
  quarters: Outline['quarters'],
  points: Float64Array,
  hull: Float64Array,
): Outline {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]!)
    right = Math.max(right, points[i]!)
    low = Math.min(low, points[i + 1]!)
    high = Math.max(high, points[i + 1]!)
  }
  const [area, hullArea] = [areaOf(points), areaOf(hull)]
  return { base, quarters, points, convex: isConvex(points), left, right, low, high, area, hullArea }
}

/** Area of a polygon, positive when anticlockwise. */
export function areaOf(points: Float64Array): number {
  let twice = 0
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length
    twice += points[i]! * points[j + 1]! - points[j]! * points[i + 1]!
  }
  return twice / 2
}

/** Quarter turns anticlockwise about the origin, exact. */
export function turnedBy(points: Float64Array, quarters: number): Float64Array {
  const turned = new Float64Array(points.length)
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [points[i]!, points[i + 1]!]
    turned[i] = quarters === 0 ? x : quarters === 1 ? -y : quarters === 2 ? -x : y
    turned[i + 1] = quarters === 0 ? y : quarters === 1 ? x : quarters === 2 ? -y : -x
  }
  return turned
}

/** Whether every corner turns left, or goes straight on. */
export function isConvex(points: Float64Array): boolean {
  const n = points.length
  for (let i = 0; i < n; i += 2) {
    const [j, k] = [(i + 2) % n, (i + 4) % n]
    const cross =
      (points[j]! - points[i]!) * (points[k + 1]! - points[j + 1]!) -
      (points[j + 1]! - points[i + 1]!) * (points[k]! - points[j]!)
    if (cross < -1e-9) return false
  }
  return true
}
