import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { meet } from './intersect.ts'
import { along, cross, direction, distance, dot, reflect, samePoint, turnLeft, turnRight } from './point.ts'
import { arcRadius, directionAt, line, segmentLength } from './segment.ts'
import type { Path, Point, Segment } from './types.ts'

/** One finished side with the cloth to leave beyond it. `turned`: the allowance folds back along the side. */
export type Side = { path: Path; allowance: number; turned: boolean }

type Border = { finished: Segment; offset: Segment; allowance: number; turned: boolean }

/** A mitre may stand out from its corner by this many allowances; a sharper corner is squared. */
const MITRE_LIMIT = 2

/**
 * The line to cut along: the closed finished outline moved outward (to the right of travel) side by side
 * by each side's own allowance. Lines stay lines, arcs stay arcs about the same centre.
 *
 * Corners are made so that the work can be sewn: two seams meet in a mitre; a corner too sharp for one,
 * such as a gore's point, is cut square one allowance beyond the point; and where a seam runs into a hem,
 * the cut is the seam's cut line mirrored in the fold, so that the turned part lies flat on the cloth it
 * is sewn to.
 *
 * @throws Refusal when an allowance is wider than the shape it belongs to
 */
export function cutLine(sides: readonly Side[]): Path {
  const borders = sides.flatMap((side) => side.path.map((finished) => border(finished, side)))
  const corners = borders.map((b, i) => corner(b, borders[(i + 1) % borders.length]!))
  return borders.flatMap((b, i) => {
    const before = corners[(i + borders.length - 1) % borders.length]!
    const after = corners[i]!
    const own = trim(b.offset, before.at(-1)!, after[0]!)
    const joins = after.slice(1).map((to, k) => line(after[k]!, to))
    return [own, ...joins].filter((s) => !samePoint(s.from, s.to))
  })
}

function border(finished: Segment, { allowance, turned }: Side): Border {
  if (finished.kind === 'line') {
    const out = turnRight(direction(finished.from, finished.to))
    const offset = line(along(finished.from, out, allowance), along(finished.to, out, allowance))
    return { finished, offset, allowance, turned }
  }
  const radius = arcRadius(finished) + Math.sign(finished.sweep) * allowance
  if (radius <= 0) throw tooWide(allowance)
  const onto = (p: Point) => along(finished.centre, direction(finished.centre, p), radius)
  return {
    finished,
    offset: { ...finished, from: onto(finished.from), to: onto(finished.to) },
    allowance,
    turned,
  }
}

/** The points of the cut line at the corner where `a` ends and `b` begins, in order. */
function corner(a: Border, b: Border): Point[] {
  const point = a.finished.to
  const ahead = directionAt(a.finished, 1)
  const next = directionAt(b.finished, 0)
  const straightOn = Math.abs(cross(ahead, next)) < 1e-6 && dot(ahead, next) > 0
  if (straightOn) return samePoint(a.offset.to, b.offset.from) ? [a.offset.to] : [a.offset.to, b.offset.from]
  if (a.turned && !b.turned) return mirroredInFold(b, a, next, -1).reverse()
  if (b.turned && !a.turned) return mirroredInFold(a, b, ahead, 1)
  const mitre = meet(a.offset, b.offset, point)
  const widest = Math.max(a.allowance, b.allowance)
  if (mitre !== undefined && distance(mitre, point) <= MITRE_LIMIT * widest + 1e-9) return [mitre]
  // Two unequal allowances on a side that hardly turns would meet far away: the cut steps from one to the other.
  if (dot(ahead, next) > 0) return [a.offset.to, b.offset.from]
  // In a sharp inward corner the two cut lines cross within the cloth, however far from the point.
  if (cross(ahead, next) < 0 && mitre !== undefined) return [mitre]
  return squared(a, b, point, widest)
}

/**
 * The corner between the seam border `seam` and the hem border `hem`: where the seam's cut line crosses
 * the fold, then its mirror image down to the hem's raw edge. `sense` is +1 where the seam runs into the
 * hem and −1 where it comes out of it.
 */
function mirroredInFold(seam: Border, hem: Border, seamDirection: Point, sense: 1 | -1): Point[] {
  const point = sense === 1 ? seam.finished.to : seam.finished.from
  const fold = meet(seam.offset, hem.finished, point)
  if (fold === undefined) throw tooWide(hem.allowance)
  const outward = { x: seamDirection.x * sense, y: seamDirection.y * sense }
  const back = reflect(outward, foldDirection(hem.finished, fold))
  const down = { x: -back.x, y: -back.y }
  const raw = meet(line(fold, along(fold, down, 1)), hem.offset, along(fold, down, hem.allowance))
  if (raw === undefined) throw tooWide(hem.allowance)
  return [fold, raw]
}

function foldDirection(hem: Segment, at: Point): Point {
  return hem.kind === 'line' ? direction(hem.from, hem.to) : turnLeft(direction(hem.centre, at))
}

/** A sharp corner cut square to its middle line, one allowance beyond the point. */
function squared(a: Border, b: Border, point: Point, allowance: number): Point[] {
  const arriving = directionAt(a.finished, 1)
  const leaving = directionAt(b.finished, 0)
  const out = direction({ x: 0, y: 0 }, { x: arriving.x - leaving.x, y: arriving.y - leaving.y })
  const middle = along(point, out, allowance)
  const across = line(middle, along(middle, turnLeft(out), 1))
  const first = meet(a.offset, across, middle)
  const second = meet(b.offset, across, middle)
  if (first === undefined || second === undefined) throw tooWide(allowance)
  return [first, second]
}

/** The offset segment between its two corners. Refuses one that the corners have eaten up. */
function trim(s: Segment, from: Point, to: Point): Segment {
  if (s.kind === 'line') {
    if (dot(direction(s.from, s.to), { x: to.x - from.x, y: to.y - from.y }) < -1e-9)
      throw tooWide(segmentLength(s))
    return line(from, to)
  }
  const sweep = s.sweep + turned(s.centre, s.to, to) - turned(s.centre, s.from, from)
  if (sweep * s.sweep < 0 || Math.abs(sweep) > 2 * Math.PI) throw tooWide(segmentLength(s))
  return { ...s, from, to, sweep }
}

/** Signed angle at `centre` from `a` to `b`, between −π and π. */
function turned(centre: Point, a: Point, b: Point): number {
  const u = { x: a.x - centre.x, y: a.y - centre.y }
  const v = { x: b.x - centre.x, y: b.y - centre.y }
  return Math.atan2(cross(u, v), dot(u, v))
}

const tooWide = (allowance: number): Refusal =>
  new Refusal(phrase('refusal.draft.allowance', { allowance: { mm: allowance } }))
