import { distance } from '../../geometry/point.ts'
import { boxOf, mirrorSegment, moveSegment, pathBox, pointAt, turnSegment } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'
import { flatSize } from '../flat.ts'
import type { Flat, Piece, Seam, Span } from '../types.ts'

type Laid = { outline: Path; edges: Map<string, Path> }

/** Two edges are laid against each other when they differ by no more than this, mm. */
const SAME = 1
/** Points along an outline that are tried for lying on another piece; so far inside that does not count, mm. */
const TRIED = 24
const WITHIN = 2

/**
 * The garment unfolded: its pieces side by side along the straight seams that join them, as far as they lie flat
 * without one upon the other; what is left stands by itself. Seams by which pieces meet are drawn thin.
 */
export function unfolded(pieces: readonly Piece[], seams: readonly Seam[]): Flat {
  const copies = pieces.flatMap((piece) =>
    piece.copies.map((copy) => ({ key: `${piece.id}/${copy.id}`, piece, copy })),
  )
  const laid = new Map<string, Laid>()
  const met: Path[] = []
  let right = 0
  for (const { key, piece, copy } of copies) {
    if (laid.has(key)) continue
    laid.set(key, aside(asDrafted(piece, copy.mirrored), right))
    // Outward from this piece, along every seam that leads to one not laid yet.
    for (let reached = [key]; reached.length > 0; ) {
      const [from, ...rest] = reached
      reached = rest
      for (const [one, other] of straightSeams(seams)) {
        const [near, far] = keyOf(one) === from ? [one, other] : keyOf(other) === from ? [other, one] : []
        if (near === undefined || far === undefined || laid.has(keyOf(far))) continue
        const next = copies.find((copyOf) => copyOf.key === keyOf(far))
        const there = laid.get(keyOf(near))!
        const against = there.edges.get(near.edge)
        if (next === undefined || against === undefined) continue
        const put = laidAgainst(asDrafted(next.piece, next.copy.mirrored), far.edge, there, against)
        if (put === undefined || [...laid.values()].some((other) => overlap(other, put))) continue
        laid.set(keyOf(far), put)
        met.push(against)
        reached.push(keyOf(far))
      }
    }
    right =
      Math.max(...[...laid.values()].map(({ outline }) => pathBox(outline).x + pathBox(outline).width)) +
      APART
  }
  const edges = [...laid.values()].map(({ outline }) => outline)
  const box = boxOf(edges.flatMap((path) => path.flatMap(({ from, to }) => [from, to])))
  const [low, high] = [
    { x: box.x, y: box.y },
    { x: box.x, y: box.y + box.height },
  ]
  return {
    ...{ view: 'unfolded', edges, seams: met, behind: [] },
    sizes: edges.length === 0 ? [] : [flatSize(high, low), flatSize(low, { x: box.x + box.width, y: box.y })],
  }
}

/** Between pieces that stand by themselves, mm. */
const APART = 60

const keyOf = ({ piece, copy }: Span): string => `${piece}/${copy}`

/** Seams of one whole straight edge to another of the same length. */
const straightSeams = (seams: readonly Seam[]): [Span, Span][] =>
  seams.flatMap(({ a, b }): [Span, Span][] => {
    const [one, other] = [a[0], b[0]]
    const single = a.length === 1 && b.length === 1 && one !== undefined && other !== undefined
    return single && Math.abs(one.to - other.to) <= SAME && keyOf(one) !== keyOf(other) ? [[one, other]] : []
  })

function asDrafted({ outline, edges }: Piece, mirrored: boolean): Laid {
  const hand = (path: Path): Path => (mirrored ? path.map(mirrorSegment) : path)
  return { outline: hand(outline), edges: new Map(edges.map(({ id, path }) => [id, hand(path)])) }
}

const moved = ({ outline, edges }: Laid, move: (path: Path) => Path): Laid => ({
  outline: move(outline),
  edges: new Map([...edges].map(([id, path]) => [id, move(path)])),
})

/** Beside what lies there already. */
function aside(piece: Laid, right: number): Laid {
  const { x, y } = pathBox(piece.outline)
  return moved(piece, (path) => path.map((s) => moveSegment(s, { x: right - x, y: -y })))
}

/** The piece turned and moved so that its edge lies along another, on that one's other side. */
function laidAgainst(piece: Laid, edge: string, neighbour: Laid, against: Path): Laid | undefined {
  const own = piece.edges.get(edge)
  const [mine, theirs] = [own?.[0], against[0]]
  if (mine === undefined || theirs === undefined || own!.length > 1 || against.length > 1) return undefined
  if (mine.kind !== 'line' || theirs.kind !== 'line') return undefined
  const neighbourAtLeft = atLeft(middleOf(neighbour), theirs.from, theirs.to)
  const ways: [Point, Point][] = [
    [theirs.to, theirs.from],
    [theirs.from, theirs.to],
  ]
  const put = ways.map(([from, to]) => {
    const angle = angleOf(from, to) - angleOf(mine.from, mine.to)
    const turned = moved(piece, (path) => path.map((s) => turnSegment(s, angle)))
    const start = turned.edges.get(edge)![0]!.from
    return moved(turned, (path) =>
      path.map((s) => moveSegment(s, { x: from.x - start.x, y: from.y - start.y })),
    )
  })
  // Of the two ways the one that lies beyond the edge, and not back over the piece it is sewn to.
  return put.find((one) => !atLeft(middleOf(one), theirs.from, theirs.to) === neighbourAtLeft)
}

const angleOf = (from: Point, to: Point): number => Math.atan2(to.y - from.y, to.x - from.x)

const middleOf = ({ outline }: Laid): Point => {
  const { x, y, width, height } = pathBox(outline)
  return { x: x + width / 2, y: y + height / 2 }
}

const atLeft = ({ x, y }: Point, from: Point, to: Point): boolean =>
  (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) > 0

/** Whether one piece lies on another: a point well within it, or much of its outline. */
function overlap(one: Laid, other: Laid): boolean {
  return inside(one.outline, other.outline) || inside(other.outline, one.outline)
}

function inside(outline: Path, within: Path): boolean {
  const polygon = pointsOf(within)
  const centre = middleOf({ outline, edges: new Map() })
  return [...pointsOf(outline), centre]
    .map((point) => towards(point, centre))
    .some((point) => holds(polygon, point))
}

/** A point drawn in a little from the outline, so that pieces that only touch do not overlap. */
function towards(point: Point, centre: Point): Point {
  const far = distance(point, centre)
  const part = far < 1e-9 ? 0 : Math.min(1, WITHIN / far)
  return { x: point.x + (centre.x - point.x) * part, y: point.y + (centre.y - point.y) * part }
}

const pointsOf = (path: Path): Point[] => {
  const steps = Math.max(2, Math.ceil(TRIED / path.length))
  return path.flatMap((s) => Array.from({ length: steps }, (_, i) => pointAt(s, i / steps)))
}

function holds(polygon: readonly Point[], { x, y }: Point): boolean {
  let odd = false
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd
  })
  return odd
}
