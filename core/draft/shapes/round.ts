import { arc, line } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'

const at = (x: number, y: number): Point => ({ x, y })

/** Half a circle, its straight edge upright at the left: the curve, upward, and the straight, down. */
export function halfCircle(radius: number): { curve: Path; straight: Path } {
  const centre = at(0, radius)
  const low = arc(at(0, 0), centre, Math.PI / 2)
  const high = arc(low.to, centre, Math.PI / 2)
  return { curve: [low, high], straight: [line(high.to, at(0, 0))] }
}

/** A whole circle in quarters, begun at its lowest point. */
export function wholeCircle(radius: number): Path {
  const centre = at(radius, radius)
  const quarters: Path = []
  return [0, 1, 2, 3].reduce<Path>(
    (path) => [...path, arc(path.at(-1)?.to ?? at(radius, 0), centre, Math.PI / 2)],
    quarters,
  )
}

/** A quarter of a ring about (0, 0): out along the weft, round, in along the warp, and back round the neck. */
export function quarterRing(inner: number, outer: number): Record<'weft' | 'hem' | 'warp' | 'neck', Path> {
  const hem = arc(at(outer, 0), at(0, 0), Math.PI / 2)
  const neck = arc(at(0, inner), at(0, 0), -Math.PI / 2)
  return {
    weft: [line(at(inner, 0), at(outer, 0))],
    hem: [hem],
    warp: [line(hem.to, neck.from)],
    neck: [{ ...neck, to: at(inner, 0) }],
  }
}
