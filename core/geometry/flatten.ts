import { arcRadius, pointAt } from './segment.ts'
import { FLATTEN } from './tolerance.ts'
import type { Arc, Path, Point } from './types.ts'

/**
 * A closed anticlockwise path as a polygon that contains it: arcs that bulge outward become tangents
 * around them, arcs that bulge inward become their chords. No point of it lies further than `tolerance` mm
 * from the path, or from the path with its outward arcs grown by `gap` mm.
 */
export function flattenOutward(path: Path, tolerance: number = FLATTEN, gap = 0): Point[] {
  return path.flatMap((s) =>
    s.kind === 'line' ? [s.from] : s.sweep > 0 ? tangents(s, tolerance, gap) : chords(s, tolerance),
  )
}

/** Angle of an arc of `radius` whose chord or tangents stay within `tolerance` of it. */
const stepFor = (radius: number, tolerance: number): number =>
  2 * Math.acos(Math.max(0, 1 - tolerance / (radius + tolerance)))

function tangents(a: Arc, tolerance: number, gap: number): Point[] {
  const radius = arcRadius(a) + gap
  const steps = Math.max(1, Math.ceil(a.sweep / stepFor(radius, tolerance)))
  const half = a.sweep / steps / 2
  const out = radius / Math.cos(half) / arcRadius(a)
  const grown = radius / arcRadius(a)
  const from = (t: number, by: number): Point => {
    const p = pointAt(a, t)
    return { x: a.centre.x + (p.x - a.centre.x) * by, y: a.centre.y + (p.y - a.centre.y) * by }
  }
  const corners = Array.from({ length: steps }, (_, i) => from((i + 0.5) / steps, out))
  return [a.from, from(0, grown), ...corners, from(1, grown)]
}

function chords(a: Arc, tolerance: number): Point[] {
  const steps = Math.max(1, Math.ceil(-a.sweep / stepFor(arcRadius(a), tolerance)))
  return Array.from({ length: steps }, (_, i) => pointAt(a, i / steps))
}
