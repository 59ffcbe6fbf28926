import {
  areaD,
  EndType,
  FillRule,
  inflatePathsD,
  intersectD,
  JoinType,
  type PathD,
  type PathsD,
} from 'clipper2-ts'
import type { Piece } from '../draft/types.ts'
import { pointAt } from '../geometry/segment.ts'
import { LAY_OVERLAP } from '../geometry/tolerance.ts'
import type { Path, Rectangle } from '../geometry/types.ts'
import { type Cloth, type Lay, type LayOrder, PLAIN_ORDER, type Placement } from './types.ts'

/** What makes a lay one that cannot be cut. `copy` is piece/copy. */
export type Fault =
  | { kind: 'overlap'; copy: string; other: string; area: number }
  | { kind: 'offCloth'; copy: string; by: number }
  | { kind: 'angle'; copy: string; angle: number }
  | { kind: 'hand'; copy: string }
  | { kind: 'count'; copy: string; expected: number; found: number }
  | { kind: 'flaw'; copy: string; flaw: number; area: number }
  | { kind: 'torn'; copy: string; tear: number }
  | { kind: 'length'; stated: number; found: number }

/** Chords to a full circle when outlines are compared: within 0.005 mm of an arc of a metre. */
const CHORDS = 1000
/** Decimals of a millimetre that the comparison works in. */
const DECIMALS = 4

/**
 * Looks at a finished lay with nothing but the pieces' own outlines and a general polygon library, sharing
 * no code with the search that made it: every copy there, in a way it may lie, within the cloth, and none
 * over another by more than `LAY_OVERLAP`.
 */
export function faultsOfLay(
  lay: Lay,
  pieces: readonly Piece[],
  cloth: Cloth,
  { quantity, flaws }: Pick<LayOrder, 'quantity' | 'flaws'> = PLAIN_ORDER,
): Fault[] {
  const placed = lay.placements.flatMap((placement) => {
    const piece = pieces.find(({ id }) => id === placement.piece)
    return piece === undefined
      ? []
      : [
          {
            placement,
            piece,
            name: `${placement.piece}/${placement.copy}`,
            outline: placedOutline(piece.cut, placement),
          },
        ]
  })
  const faults: Fault[] = [...countFaults(lay, pieces, quantity)]
  for (const { placement, piece, name, outline } of placed) {
    const angles = piece.grain === 'bias' ? piece.turn.map((turn) => turn + 45) : piece.turn
    if (!angles.some((angle) => angle === placement.angle && (!cloth.nap || angle < 90))) {
      faults.push({ kind: 'angle', copy: name, angle: placement.angle })
    }
    const mirrored = piece.copies.find(({ id }) => id === placement.copy.split('@')[0])?.mirrored ?? false
    if (cloth.rightSide && placement.flipped !== mirrored) faults.push({ kind: 'hand', copy: name })
    const by = Math.max(...outline.map(({ x, y }) => Math.max(-x, x - lay.usableWidth, -y, y - lay.length)))
    if (by > LAY_OVERLAP) faults.push({ kind: 'offCloth', copy: name, by })
  }
  const far = Math.max(0, ...placed.flatMap(({ outline }) => outline.map(({ y }) => y)))
  if (Math.abs(far - lay.length) > LAY_OVERLAP + GAP_AT_END)
    faults.push({ kind: 'length', stated: lay.length, found: far })
  return [...faults, ...overlaps(placed), ...onFlaws(placed, flaws), ...acrossTears(placed, lay.tears ?? [])]
}

/** A lay may end this far beyond its last piece: the shears' gap round a curve, mm. */
const GAP_AT_END = 10

/** @throws Error naming the faults: a fault of the program, never of the maker */
export function assertCuttable(
  lay: Lay,
  pieces: readonly Piece[],
  cloth: Cloth,
  order: Pick<LayOrder, 'quantity' | 'flaws'> = PLAIN_ORDER,
): Lay {
  const faults = faultsOfLay(lay, pieces, cloth, order)
  if (faults.length > 0) throw new Error(`this lay cannot be cut: ${JSON.stringify(faults.slice(0, 5))}`)
  return lay
}

function countFaults(lay: Lay, pieces: readonly Piece[], quantity: number): Fault[] {
  const found = new Map<string, number>()
  for (const { piece, copy } of lay.placements)
    found.set(`${piece}/${copy}`, (found.get(`${piece}/${copy}`) ?? 0) + 1)
  const wanted = pieces.flatMap(({ id, copies }) =>
    copies.flatMap((copy) =>
      Array.from({ length: quantity }, (_, k) => `${id}/${copy.id}${k === 0 ? '' : `@${k + 1}`}`),
    ),
  )
  const missing = wanted.flatMap((copy): Fault[] => {
    const times = found.get(copy) ?? 0
    found.delete(copy)
    return times === 1 ? [] : [{ kind: 'count', copy, expected: 1, found: times }]
  })
  return [
    ...missing,
    ...[...found].map(([copy, times]): Fault => ({ kind: 'count', copy, expected: 0, found: times })),
  ]
}

/** The outline as it lies: flipped, turned by sine and cosine, moved. */
function placedOutline(path: Path, { x, y, angle, flipped }: Placement): PathD {
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)]
  return path
    .flatMap((s) => {
      const steps =
        s.kind === 'line' ? 1 : Math.max(2, Math.ceil((Math.abs(s.sweep) / (2 * Math.PI)) * CHORDS))
      return Array.from({ length: steps }, (_, i) => pointAt(s, i / steps))
    })
    .map((p) => {
      const px = flipped ? -p.x : p.x
      return { x: px * cos - p.y * sin + x, y: px * sin + p.y * cos + y }
    })
}

type Outlined = { name: string; outline: PathD }

/** Pairs whose outlines, each drawn in by half the tolerance, still cover a common area. */
function overlaps(placed: readonly Outlined[]): Fault[] {
  const shrunk = placed.map(({ name, outline }) => ({ name, paths: drawnIn(outline), box: boxOf(outline) }))
  return shrunk.flatMap(({ name, paths, box }, i) =>
    shrunk.slice(i + 1).flatMap((other): Fault[] => {
      if (apart(box, other.box)) return []
      const area = Math.abs(areaOf(intersectD(paths, other.paths, FillRule.NonZero, DECIMALS)))
      return area > 1e-3 ? [{ kind: 'overlap', copy: name, other: other.name, area }] : []
    }),
  )
}

/** Pieces that cover a flaw. */
function onFlaws(placed: readonly Outlined[], flaws: readonly Rectangle[]): Fault[] {
  return flaws.flatMap(({ x, y, width, height }, flaw) => {
    const ground: PathD = [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ]
    return placed.flatMap(({ name, outline }): Fault[] => {
      const area = Math.abs(areaOf(intersectD(drawnIn(outline), [ground], FillRule.NonZero, DECIMALS)))
      return area > 1e-3 ? [{ kind: 'flaw', copy: name, flaw, area }] : []
    })
  })
}

/** Pieces that lie on both sides of a tear. */
function acrossTears(placed: readonly Outlined[], tears: readonly number[]): Fault[] {
  return placed.flatMap(({ name, outline }) => {
    const { low, high } = boxOf(outline)
    return tears
      .filter((tear) => low < tear - LAY_OVERLAP && high > tear + LAY_OVERLAP)
      .map((tear): Fault => ({ kind: 'torn', copy: name, tear }))
  })
}

const drawnIn = (outline: PathD): PathsD =>
  inflatePathsD([outline], -LAY_OVERLAP / 2, JoinType.Miter, EndType.Polygon, 2, DECIMALS)
const areaOf = (paths: PathsD): number => paths.reduce((sum, path) => sum + areaD(path), 0)

type Box = { left: number; right: number; low: number; high: number }
function boxOf(outline: PathD): Box {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const { x, y } of outline) {
    left = Math.min(left, x)
    right = Math.max(right, x)
    low = Math.min(low, y)
    high = Math.max(high, y)
  }
  return { left, right, low, high }
}
const apart = (a: Box, b: Box): boolean =>
  a.right <= b.left || b.right <= a.left || a.high <= b.low || b.high <= a.low
