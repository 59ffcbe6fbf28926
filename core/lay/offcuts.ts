import type { Rectangle } from '../geometry/types.ts'

/** The smallest side of a rectangle worth keeping, and how many are told, mm (common practice). */
const SMALLEST = 100
const MOST = 5

/**
 * The largest rectangles left between the pieces, biggest first and none over another. Pieces count by the
 * boxes of narrow strips cut through them along the cloth, so a rectangle never reaches into a piece.
 *
 * @param hulls of the pieces as they lie, x and y alternating
 */
export function offcuts(hulls: readonly Float64Array[], usable: number, length: number): Rectangle[] {
  const taken = hulls.flatMap(strips)
  const found: Rectangle[] = []
  while (found.length < MOST) {
    const largest = largestEmpty([...taken, ...found], usable, length)
    if (largest === undefined) break
    found.push(largest)
  }
  return found
}

/** Strips per piece: rectangles are one strip, slanting pieces are followed by several. */
const STRIPS = 6

function strips(hull: Float64Array): Rectangle[] {
  const ys = hull.filter((_, i) => i % 2 === 1)
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const count = hull.length === 8 && new Set(ys).size === 2 ? 1 : STRIPS
  const step = (high - low) / count
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [low + i * step, low + (i + 1) * step]
    const [left, right] = reach(hull, from, to)
    return { x: left, y: from, width: right - left, height: to - from }
  })
}

/** Leftmost and rightmost of a convex hull between two heights. */
function reach(hull: Float64Array, from: number, to: number): [left: number, right: number] {
  let [left, right] = [Infinity, -Infinity]
  const take = (x: number) => {
    left = Math.min(left, x)
    right = Math.max(right, x)
  }
  for (let i = 0; i < hull.length; i += 2) {
    const j = (i + 2) % hull.length
    const [px, py, qx, qy] = [hull[i]!, hull[i + 1]!, hull[j]!, hull[j + 1]!]
    if (py >= from && py <= to) take(px)
    for (const at of [from, to]) if ((py - at) * (qy - at) < 0) take(px + ((at - py) * (qx - px)) / (qy - py))
  }
  return [left, right]
}

/**
 * The largest rectangle between two of the heights at which something begins or ends: from every height
 * upwards, slab by slab, what each slab's pieces leave of the stretches still open below it.
 */
function largestEmpty(taken: readonly Rectangle[], usable: number, length: number): Rectangle | undefined {
  const heights = [...new Set([0, length, ...taken.flatMap(({ y, height }) => [y, y + height])])]
    .filter((y) => y >= 0 && y <= length)
    .sort((a, b) => a - b)
  const slabs = heights.slice(1).map((top, i) => {
    const middle = (heights[i]! + top) / 2
    return taken.filter((r) => r.y < middle && r.y + r.height > middle)
  })
  let best: Rectangle | undefined
  for (let i = 0; i < slabs.length; i++) {
    let open: Stretch[] = [{ from: 0, to: usable }]
    for (let j = i; j < slabs.length && open.length > 0; j++) {
      for (const { x, width } of slabs[j]!) open = open.flatMap((stretch) => without(stretch, x, x + width))
      const [y, height] = [heights[i]!, heights[j + 1]! - heights[i]!]
      if (height < SMALLEST) continue
      for (const { from, to } of open) {
        if ((to - from) * height > area(best)) best = { x: from, y, width: to - from, height }
      }
    }
  }
  return best
}

/** Part of the cloth's width. */
type Stretch = { from: number; to: number }

const area = (r: Rectangle | undefined): number => (r === undefined ? 0 : r.width * r.height)

/** What is left of a stretch beside a piece, where it is still wide enough to keep. */
function without(stretch: Stretch, left: number, right: number): Stretch[] {
  if (right <= stretch.from || left >= stretch.to) return [stretch]
  return [
    { from: stretch.from, to: left },
    { from: right, to: stretch.to },
  ].filter(({ from, to }) => to - from >= SMALLEST)
}
