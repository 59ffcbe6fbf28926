import { mirroredPath, through } from '../geometry/path.ts'
import { along, direction } from '../geometry/point.ts'
import { arc, line, pathBox } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import { type Dip, neckEdge } from './shapes/neckline.ts'
import type { Flat } from './types.ts'

/** A line of the wearer's left half, and of the right half. */
export const bothHalves = (path: Path): Path[] => [path, mirroredPath(path)]

/** From corner to corner, for a mm length that is that distance. */
export const flatSize = (from: Point, to: Point): Flat['sizes'][number] => ({
  ...{ from, to },
  mm: Math.hypot(to.x - from.x, to.y - from.y),
})

/** Length down the left of everything drawn, and width beneath it. */
export function overallSizes(
  edges: readonly Path[],
  { top, bottom, half }: { top: number; bottom: number; half: number },
) {
  const left = Math.min(...edges.map((path) => pathBox(path).x))
  return [
    flatSize({ x: left, y: top }, { x: left, y: bottom }),
    flatSize({ x: -half, y: bottom }, { x: half, y: bottom }),
  ]
}

/** A garment that hangs from the shoulders, lying flat with its sleeves spread. All mm, y down from the shoulder. */
export type FlatBody = {
  /** Half the width of a panel. */
  half: number
  length: number
  /** Drop of the shoulder. */
  slope?: number
  neck: { width: number; front: Dip; back: Dip }
  slit?: number
  /** Depth of the armhole, and what hangs from it, folded along its middle. */
  armhole: number
  gusset?: number
  sleeve?: { wrist: number; length: number }
  /** Where it begins to widen; how: by gores of an angle, or by so much on each side in all. */
  skirt: { from: number } & ({ angle: number; middle?: boolean } | { by: number; seam?: number })
}

/** The front view of such a body, the gores folded in the side seam. */
export function flatBody(f: FlatBody): Flat {
  const { half, length, slope = 0, neck, slit = 0, armhole, gusset = 0, sleeve, skirt } = f
  const y = (down: number) => length - down
  const at = (x: number, down: number): Point => ({ x, y: y(down) })
  const [shoulder, pit] = [at(half, slope), at(half, slope + armhole)]
  const below = at(half, slope + armhole + gusset)
  const [end, inner] =
    sleeve === undefined
      ? [shoulder, pit]
      : [at(half + sleeve.length, slope), at(half + sleeve.length, slope + sleeve.wrist / 2)]
  const set = sleeve === undefined ? pit : along(pit, direction(pit, inner), gusset)
  const start = at(half, skirt.from)
  const hem: Path =
    'angle' in skirt
      ? goreHem(start, length - skirt.from, skirt.angle)
      : [line(at(half + skirt.by, length), at(half, length))]
  const corner = hem[0]!.from
  const outer: Path = [
    line(at(neck.width / 2, 0), shoulder),
    ...(sleeve === undefined ? [] : through([shoulder, end, inner, set, below])),
    ...through(sleeve === undefined ? [shoulder, start, corner] : [below, start, corner]),
    ...hem,
    line(at(half, length), at(0, length)),
  ]
  const front = neckEdge(neck.width, neck.front, length)
  const back = neckEdge(neck.width, neck.back, length)
  const seams: Path[] = [
    ...(sleeve === undefined ? [] : bothHalves([line(shoulder, pit)])),
    ...(gusset > 0 && sleeve !== undefined ? bothHalves(through([set, pit, below])) : []),
    ...('angle' in skirt ? bothHalves([line(start, at(half, length))]) : []),
    ...('seam' in skirt && skirt.seam !== undefined
      ? bothHalves([line(start, at(half + skirt.seam, length))])
      : []),
    ...('angle' in skirt && skirt.middle === true
      ? bothHalves([line(at(0, skirt.from), at((length - skirt.from) * Math.sin(skirt.angle / 2), length))])
      : []),
    ...(slit > 0 ? [[line(at(0, neck.front.depth), at(0, neck.front.depth + slit))]] : []),
  ]
  const edges = [...bothHalves(outer), front]
  return {
    ...{ edges, seams, behind: [back] },
    sizes: [
      ...overallSizes(edges, { top: length, bottom: 0, half: corner.x }),
      ...(sleeve === undefined ? [] : [flatSize(at(half + sleeve.length, slope), at(0, slope))]),
    ],
  }
}

/** The hem of a gore folded along its own middle line, from its outer corner to the body. */
function goreHem(point: Point, radius: number, angle: number): Path {
  const inner = { x: point.x, y: point.y - radius }
  const out = arc(inner, point, angle)
  return [arc(out.to, point, -angle)]
}

/** A skirt drawn together at the top: band above, cloth spread below. mm. */
export function flatSkirt(f: {
  band: number
  depth: number
  hem: number
  length: number
  slit?: number
}): Flat {
  const { band, depth, hem, length, slit = 0 } = f
  const at = (x: number, y: number): Point => ({ x, y })
  const outer = through([
    at(0, length + depth),
    at(band / 2, length + depth),
    at(band / 2, length),
    at(hem / 2, 0),
    at(0, 0),
  ])
  const folds = [0.25, 0.6, 0.9].map((part) =>
    through([at((part * band) / 2, length), at((part * (band + (hem - band) * 0.18)) / 2, length * 0.82)]),
  )
  const edges = bothHalves(outer)
  return {
    edges,
    seams: [
      ...(depth > 0 ? [[line(at(-band / 2, length), at(band / 2, length))]] : []),
      ...folds.flatMap(bothHalves),
    ],
    behind: slit > 0 ? [[line(at(0, length), at(0, length - slit))]] : [],
    sizes: overallSizes(edges, { top: length, bottom: 0, half: hem / 2 }),
  }
}

/** A single piece lying by itself. */
export function flatPiece(outline: Path, seams: Path[] = []): Flat {
  const { x, y, width, height } = pathBox(outline)
  return {
    ...{ view: 'spread', edges: [outline], seams, behind: [] },
    sizes: [flatSize({ x, y: y + height }, { x, y }), flatSize({ x, y }, { x: x + width, y })],
  }
}
