import type { Outline } from './outline.ts'

/** A piece to be laid and the ways it may lie, as numbers of outlines. */
export type Part = {
  ways: readonly number[]
  /** Lies there and is never moved: a piece already cut, one locked by hand, a flaw in the cloth. */
  fixed?: { way: number; x: number; y: number }
  /** Ground that no piece may cover, and that need not be bought. */
  flaw?: true
  /** Lies with its box against the far border: half a piece, on the fold of doubled cloth. */
  onFold?: true
}

/** Pieces for one strip of cloth; x runs across it, y along it, mm. */
export type Strip = { width: number; outlines: readonly Outline[]; parts: readonly Part[] }

/** Where every part lies: its way and its origin. `length` reaches the furthest part but the flaws. */
export type Places = {
  length: number
  way: Int32Array
  x: Float64Array
  y: Float64Array
  /** Where the cloth is torn across, in a torn lay. */
  tears?: number[] | undefined
}

/** Places of all parts: the fixed ones where they are, the others where they were put. */
export function placesOf(
  { parts }: Strip,
  puts: readonly { part: number; way: number; x: number; y: number }[],
  length: number,
): Places {
  const count = parts.length
  const [way, x, y] = [new Int32Array(count), new Float64Array(count), new Float64Array(count)]
  const fixed = parts.flatMap((part, i) => (part.fixed === undefined ? [] : [{ part: i, ...part.fixed }]))
  for (const put of [...fixed, ...puts]) {
    way[put.part] = put.way
    x[put.part] = put.x
    y[put.part] = put.y
  }
  return { length, way, x, y }
}

/** The least and the most x that a part's origin may have in an outline. */
export const leastX = (strip: Strip, { onFold }: Part, { left, right }: Outline): number =>
  onFold === true ? strip.width - right : -left
export const mostX = (strip: Strip, { left, right }: Outline): number => Math.max(-left, strip.width - right)

/** No lay is shorter than its longest part, or than what is already in its place. */
export const shortestPossible = (strip: Strip): number =>
  movable(strip).reduce((most, part) => {
    const heights = strip.parts[part]!.ways.map((way) => strip.outlines[way]!.high - strip.outlines[way]!.low)
    return Math.max(most, Math.min(...heights))
  }, fixedReach(strip))

/** Parts that may be moved. */
export const movable = ({ parts }: Strip): number[] =>
  parts.flatMap(({ fixed }, i) => (fixed === undefined ? [i] : []))

/** No lay is shorter than what is already in its place. */
export const fixedReach = ({ parts, outlines }: Strip): number =>
  parts.reduce(
    (reach, { fixed, flaw }) =>
      fixed === undefined || flaw === true ? reach : Math.max(reach, fixed.y + outlines[fixed.way]!.high),
    0,
  )
