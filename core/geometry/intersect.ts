import { along, cross, direction, distance, dot, subtract, turnLeft } from './point.ts'
import { arcRadius } from './segment.ts'
import type { Point, Segment } from './types.ts'

/**
 * Where two segments meet when both are carried on beyond their ends (lines without end, arcs to full
 * circles). Of two meeting points the one nearer to `near` is taken; undefined when they never meet.
 */
export function meet(a: Segment, b: Segment, near: Point): Point | undefined {
  const found = meetings(a, b)
  return found.reduce<Point | undefined>(
    (best, p) => (best === undefined || distance(p, near) < distance(best, near) ? p : best),
    undefined,
  )
}

function meetings(a: Segment, b: Segment): Point[] {
  if (a.kind === 'line')
    return b.kind === 'line'
      ? lineLine(a.from, a.to, b.from, b.to)
      : lineCircle(a.from, a.to, b.centre, arcRadius(b))
  if (b.kind === 'line') return lineCircle(b.from, b.to, a.centre, arcRadius(a))
  return circleCircle(a.centre, arcRadius(a), b.centre, arcRadius(b))
}

/** Sine of the angle below which two lines are taken as parallel. */
const PARALLEL = 1e-9

function lineLine(a: Point, b: Point, c: Point, d: Point): Point[] {
  const ab = direction(a, b)
  const cd = direction(c, d)
  const sine = cross(ab, cd)
  if (Math.abs(sine) < PARALLEL) return []
  return [along(a, ab, cross(subtract(c, a), cd) / sine)]
}

function lineCircle(a: Point, b: Point, centre: Point, radius: number): Point[] {
  const way = direction(a, b)
  const foot = dot(subtract(centre, a), way)
  const nearest = along(a, way, foot)
  const half = radius * radius - distance(nearest, centre) ** 2
  if (half < 0) return []
  return [along(nearest, way, -Math.sqrt(half)), along(nearest, way, Math.sqrt(half))]
}

function circleCircle(c: Point, r: number, d: Point, q: number): Point[] {
  const apart = distance(c, d)
  if (apart < PARALLEL || apart > r + q || apart < Math.abs(r - q)) return []
  const way = direction(c, d)
  const foot = (apart * apart + r * r - q * q) / (2 * apart)
  const half = Math.sqrt(Math.max(0, r * r - foot * foot))
  const nearest = along(c, way, foot)
  return [along(nearest, turnLeft(way), half), along(nearest, turnLeft(way), -half)]
}
