import type { NoFit, NoFits } from './nofit.ts'
import type { Laid, Shape } from './shapes.ts'

/** A shape in its place: the corner of its box nearest to selvedge and cut end. */
export type Put = { laid: Laid; shape: Shape; x: number; y: number }

/** Inside a no-fit polygon by less than this still counts as touching, mm. */
const TOUCH = 1e-6

type Wall = { fit: NoFit; x: number; y: number }

/**
 * Lays the copies in the order given, each where its far end comes nearest to the cut end and, of such
 * places, nearest to the near selvedge, in the best of the ways it may lie. Places are exact: corners and
 * crossings of the no-fit polygons and the borders of the cloth.
 *
 * @returns the places and the length used, or undefined as soon as the length is not under `limit`
 */
export function bottomLeft(
  order: readonly Laid[],
  usable: number,
  fits: NoFits,
  limit: number,
): { puts: Put[]; length: number } | undefined {
  const puts: Put[] = []
  let length = 0
  for (const laid of order) {
    let best: (Put & { top: number }) | undefined
    for (const shape of laid.shapes) {
      const place = lowestPlace(shape, puts, usable, fits, best?.top ?? limit)
      if (place === undefined) continue
      const top = place.y + shape.high - shape.low
      if (
        best === undefined ||
        top < best.top - TOUCH ||
        (top < best.top + TOUCH && place.x < best.x - TOUCH)
      ) {
        best = { laid, shape, ...place, top }
      }
    }
    if (best === undefined) return undefined
    length = Math.max(length, best.top)
    if (length >= limit) return undefined
    puts.push(best)
  }
  return { puts, length }
}

function lowestPlace(
  shape: Shape,
  puts: readonly Put[],
  usable: number,
  fits: NoFits,
  limit: number,
): { x: number; y: number } | undefined {
  const most = Math.max(0, usable - (shape.right - shape.left))
  const highest = limit - (shape.high - shape.low)
  const walls: Wall[] = []
  for (const put of puts) {
    const fit = fits.between(put.shape, shape)
    if (put.y + fit.low <= highest + TOUCH) walls.push({ fit, x: put.x, y: put.y })
  }
  let [bestX, bestY] = [Infinity, highest + TOUCH]
  let blocker: Wall | undefined
  const offer = (x: number, y: number) => {
    if (x < -TOUCH || x > most + TOUCH || y < -TOUCH) return
    if (y > bestY + TOUCH || (y > bestY - TOUCH && x >= bestX - TOUCH)) return
    // What stood in the way of the last place most likely stands in the way of this one.
    if (blocker !== undefined && inside(blocker, x, y)) return
    for (const wall of walls) {
      if (inside(wall, x, y)) {
        blocker = wall
        return
      }
    }
    bestX = Math.min(most, Math.max(0, x))
    bestY = Math.max(0, y)
  }
  offer(0, 0)
  offer(most, 0)
  for (const wall of walls) {
    offerCorners(wall, offer)
    offerBorders(wall, most, offer)
  }
  for (let i = 0; i < walls.length; i++) {
    for (let j = i + 1; j < walls.length; j++) offerCrossings(walls[i]!, walls[j]!, bestY, offer)
  }
  return bestX === Infinity ? undefined : { x: bestX, y: bestY }
}

type Offer = (x: number, y: number) => void

function offerCorners({ fit, x, y }: Wall, offer: Offer): void {
  const { points } = fit
  for (let i = 0; i < points.length; i += 2) offer(points[i]! + x, points[i + 1]! + y)
}

/** Where a no-fit polygon crosses the cut end and the two selvedges. */
function offerBorders({ fit, x, y }: Wall, most: number, offer: Offer): void {
  const { points } = fit
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length
    const [px, py, qx, qy] = [points[i]! + x, points[i + 1]! + y, points[j]! + x, points[j + 1]! + y]
    for (const at of [0, most]) {
      if ((px - at) * (qx - at) < 0) offer(at, py + ((at - px) * (qy - py)) / (qx - px))
    }
    if (py * qy < 0) offer(px - (py * (qx - px)) / (qy - py), 0)
  }
}

function offerCrossings(a: Wall, b: Wall, bestY: number, offer: Offer): void {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const [af, bf] = [a.fit, b.fit]
  if (bf.left + dx > af.right || bf.right + dx < af.left || bf.low + dy > af.high || bf.high + dy < af.low)
    return
  const [p, q] = [af.points, bf.points]
  for (let i = 0; i < p.length; i += 2) {
    const k = (i + 2) % p.length
    const [px, py, rx, ry] = [p[i]!, p[i + 1]!, p[k]! - p[i]!, p[k + 1]! - p[i + 1]!]
    if (Math.min(py, py + ry) + a.y > bestY) continue
    for (let j = 0; j < q.length; j += 2) {
      const l = (j + 2) % q.length
      const [sx, sy] = [q[l]! - q[j]!, q[l + 1]! - q[j + 1]!]
      const cross = rx * sy - ry * sx
      if (cross > -1e-12 && cross < 1e-12) continue
      const [ox, oy] = [q[j]! + dx - px, q[j + 1]! + dy - py]
      const t = (ox * sy - oy * sx) / cross
      if (t < 0 || t > 1) continue
      const u = (ox * ry - oy * rx) / cross
      if (u >= 0 && u <= 1) offer(px + t * rx + a.x, py + t * ry + a.y)
    }
  }
}

/** Whether a point lies inside a no-fit polygon by more than a touch. */
function inside({ fit, x, y }: Wall, atX: number, atY: number): boolean {
  const [px, py] = [atX - x, atY - y]
  if (px <= fit.left + TOUCH || px >= fit.right - TOUCH || py <= fit.low + TOUCH || py >= fit.high - TOUCH)
    return false
  const { points } = fit
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length
    const [ex, ey] = [points[j]! - points[i]!, points[j + 1]! - points[i + 1]!]
    const left = ex * (py - points[i + 1]!) - ey * (px - points[i]!)
    if (left <= TOUCH * (Math.abs(ex) + Math.abs(ey))) return false
  }
  return true
}
