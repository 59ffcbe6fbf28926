import { depthIn, type NoFit, type NoFits } from './nofit.ts'
import type { Outline } from './outline.ts'
import { fixedReach, leastX, mostX, type Part, type Strip } from './strip.ts'

/** Inside a no-fit polygon by less than this still counts as touching, mm. */
const TOUCH = 1e-6

/** Crossings of no-fit polygons are looked at only while no more than this many parts lie on the cloth. */
const CROWD = 40

type Wall = { fit: NoFit; x: number; y: number }
/** A part in its place. */
export type Put = { part: number; way: number; outline: Outline; x: number; y: number }

/**
 * Lays the parts in the order given, each where its far end comes nearest to the cut end and, of such
 * places, nearest to the near selvedge, in the best of the ways it may lie. Places are exact: corners and
 * crossings of the no-fit polygons and the borders of the cloth. Fixed parts stay where they are.
 *
 * @param limit no part may reach beyond it
 * @param beyond what becomes of a part that would: it ends the attempt, or is left out
 * @returns what was laid, and the length; undefined when the attempt was ended
 */
export function bottomLeft(
  order: readonly number[],
  strip: Strip,
  fits: NoFits,
  limit: number,
  beyond: 'end' | 'skip' = 'end',
): { puts: Put[]; length: number } | undefined {
  const fixed = strip.parts.flatMap(({ fixed }, part) =>
    fixed === undefined ? [] : [{ ...fixed, part, outline: strip.outlines[fixed.way]! }],
  )
  const puts: Put[] = []
  const lying: Put[] = [...fixed]
  let length = fixedReach(strip)
  for (const part of order) {
    let best: (Put & { top: number; side: number }) | undefined
    for (const way of strip.parts[part]!.ways) {
      const outline = strip.outlines[way]!
      const under = best?.top ?? limit
      const place = lowestPlace(strip, strip.parts[part]!, outline, lying, fits, under)
      if (place === undefined) continue
      const [top, side] = [place.y + outline.high, place.x + outline.left]
      if (
        best === undefined ||
        top < best.top - TOUCH ||
        (top < best.top + TOUCH && side < best.side - TOUCH)
      ) {
        best = { part, way, outline, ...place, top, side }
      }
    }
    if (best === undefined) {
      if (beyond === 'skip') continue
      return undefined
    }
    length = Math.max(length, best.top)
    puts.push(best)
    lying.push(best)
  }
  return { puts, length }
}

function lowestPlace(
  strip: Strip,
  part: Part,
  outline: Outline,
  puts: readonly Put[],
  fits: NoFits,
  limit: number,
): { x: number; y: number } | undefined {
  const [least, most] = [leastX(strip, part, outline), mostX(strip, outline)]
  const leastY = -outline.low
  const mostY = limit - outline.high
  const walls: Wall[] = []
  for (const put of puts) {
    const fit = fits.between(put.outline, outline)
    if (put.y + fit.low <= mostY + TOUCH) walls.push({ fit, x: put.x, y: put.y })
  }
  let [bestX, bestY] = [Infinity, mostY + TOUCH]
  let blocker: Wall | undefined
  const offer = (x: number, y: number) => {
    if (x < least - TOUCH || x > most + TOUCH || y < leastY - TOUCH) return
    if (y > bestY + TOUCH || (y > bestY - TOUCH && x >= bestX - TOUCH)) return
    // What stood in the way of the last place most likely stands in the way of this one.
    if (blocker !== undefined && inside(blocker, x, y)) return
    for (const wall of walls) {
      if (inside(wall, x, y)) {
        blocker = wall
        return
      }
    }
    bestX = Math.min(most, Math.max(least, x))
    bestY = Math.max(leastY, y)
  }
  offer(least, leastY)
  offer(most, leastY)
  for (const wall of walls) {
    offerCorners(wall, offer)
    offerBorders(wall, least, most, leastY, offer)
  }
  if (walls.length > CROWD) return bestX === Infinity ? undefined : { x: bestX, y: bestY }
  for (let i = 0; i < walls.length; i++) {
    for (let j = i + 1; j < walls.length; j++) offerCrossings(walls[i]!, walls[j]!, bestY, offer)
  }
  return bestX === Infinity ? undefined : { x: bestX, y: bestY }
}

type Offer = (x: number, y: number) => void

function offerCorners({ fit: { sides }, x, y }: Wall, offer: Offer): void {
  for (let i = 0; i < sides.length; i += 4) offer(sides[i]! + x, sides[i + 1]! + y)
}

/** Where a no-fit polygon crosses the cut end and the two selvedges. */
function offerBorders(
  { fit: { sides }, x, y }: Wall,
  least: number,
  most: number,
  leastY: number,
  offer: Offer,
): void {
  for (let i = 0; i < sides.length; i += 4) {
    const px = sides[i]! + x
    const py = sides[i + 1]! + y
    const qx = sides[i + 2]! + x
    const qy = sides[i + 3]! + y
    if (px < least !== qx < least) offer(least, py + ((least - px) * (qy - py)) / (qx - px))
    if (px < most !== qx < most) offer(most, py + ((most - px) * (qy - py)) / (qx - px))
    if ((py - leastY) * (qy - leastY) < 0) offer(px + ((leastY - py) * (qx - px)) / (qy - py), leastY)
  }
}

function offerCrossings(a: Wall, b: Wall, bestY: number, offer: Offer): void {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const [af, bf] = [a.fit, b.fit]
  if (bf.left + dx > af.right || bf.right + dx < af.left || bf.low + dy > af.high || bf.high + dy < af.low)
    return
  const [p, q] = [af.sides, bf.sides]
  for (let i = 0; i < p.length; i += 4) {
    const px = p[i]!
    const py = p[i + 1]!
    const rx = p[i + 2]! - px
    const ry = p[i + 3]! - py
    const low = ry < 0 ? py + ry : py
    const left = rx < 0 ? px + rx : px
    if (low + a.y > bestY || left > bf.right + dx || left + Math.abs(rx) < bf.left + dx) continue
    if (low > bf.high + dy || low + Math.abs(ry) < bf.low + dy) continue
    for (let j = 0; j < q.length; j += 4) {
      const sx = q[j + 2]! - q[j]!
      const sy = q[j + 3]! - q[j + 1]!
      const cross = rx * sy - ry * sx
      if (cross > -1e-12 && cross < 1e-12) continue
      const ox = q[j]! + dx - px
      const oy = q[j + 1]! + dy - py
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
  return depthIn(fit, px, py) > TOUCH
}
