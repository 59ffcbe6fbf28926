import { boxOf, pointAt } from '../geometry/segment.ts'
import type { Path, Point, Rectangle } from '../geometry/types.ts'
import type { Lettering } from './drawing.ts'
import { boxesCross, lettersCorners } from './letters.ts'

/** Angle in radians between the points that stand for an arc when room is sought. */
const ARC_STEP = 0.15
/** Free space at both ends of a word, mm of the sheet. */
const AIR = 0.7
/** Places tried along each side of a shape. */
const TRIES = 12

/** How far from its corner a figure may stand, mm of the sheet, and to which sides of it. */
const INSETS = [
  [2.2, 3.2],
  [3.4, 4.4],
  [4.8, 5],
  [6.4, 6.4],
] as const
const QUARTERS = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const

/** The space inside a shape, less what is already written or cut out there. World mm. */
export class Room {
  readonly #shape: Point[]
  readonly #taken: Rectangle[]

  constructor(outline: Path, taken: readonly Path[]) {
    this.#shape = pointsOf(outline)
    // The end too: a slit is a line, and not closed.
    this.#taken = taken.map((path) => boxOf([...pointsOf(path), path.at(-1)!.to]))
  }

  /** Keeps to the part of the shape between two uprights. */
  within(left: number, right: number): this {
    for (const [edge, sense] of [
      [left, 1],
      [right, -1],
    ] as const) {
      const kept = cutOff(this.#shape, edge, sense)
      this.#shape.splice(0, this.#shape.length, ...kept)
    }
    return this
  }

  /** Keeps to the part of the shape between two levels. */
  between(bottom: number, top: number): this {
    const turned = this.#shape.map(({ x, y }) => ({ x: y, y: x }))
    const kept = cutOff(cutOff(turned, bottom, 1), top, -1).map(({ x, y }) => ({ x: y, y: x }))
    this.#shape.splice(0, this.#shape.length, ...kept)
    return this
  }

  get empty(): boolean {
    return this.#shape.length < 3
  }

  /** The middle of the room: the mean of its outline's points. */
  get middle(): Point {
    const box = boxOf(this.#shape)
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  }

  /** Writes the first of the words that fits, as near to the middle as it can; undefined if none does. */
  write(words: readonly Lettering[], scale: number): Lettering | undefined {
    if (this.empty) return undefined
    const places = this.#places()
    for (const word of words) {
      const place = places.find((at) => this.fits({ ...word, at }, scale))
      if (place !== undefined) return this.take({ ...word, at: place }, scale)
    }
    return undefined
  }

  /** Writes a word as near to a corner of the shape as it fits; undefined where it does not. */
  writeBy(corner: Point, word: Lettering, scale: number): Lettering | undefined {
    const places = INSETS.flatMap(([x, y]) =>
      QUARTERS.map(
        ([right, up]): Lettering => ({
          ...word,
          at: { x: corner.x + (right * x) / scale, y: corner.y + (up * y) / scale },
          anchor: right === 1 ? 'start' : 'end',
        }),
      ),
    )
    const place = places.find((one) => this.fits(one, scale))
    return place === undefined ? undefined : this.take(place, scale)
  }

  fits(word: Lettering, scale: number): boolean {
    const corners = lettersCorners(word, scale, AIR)
    const box = boxOf(corners)
    const rim = corners.flatMap((a, i) => {
      const b = corners[(i + 1) % corners.length]!
      return [0, 0.25, 0.5, 0.75].map((t) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }))
    })
    return (
      rim.every((p) => inside(p, this.#shape)) &&
      !this.#taken.some((taken) => boxesCross(taken, box)) &&
      !this.#shape.some(
        (p) => p.x > box.x && p.x < box.x + box.width && p.y > box.y && p.y < box.y + box.height,
      )
    )
  }

  take(word: Lettering, scale: number): Lettering {
    this.#taken.push(boxOf(lettersCorners(word, scale)))
    return word
  }

  #places(): Point[] {
    const box = boxOf(this.#shape)
    const { x, y } = this.middle
    const steps = Array.from({ length: TRIES - 1 }, (_, i) => (i + 1) / TRIES)
    const places = steps.flatMap((u) =>
      steps.map((v) => ({ x: box.x + u * box.width, y: box.y + v * box.height })),
    )
    return places.sort((a, b) => Math.hypot(a.x - x, a.y - y) - Math.hypot(b.x - x, b.y - y))
  }
}

/** Points along a closed path, near enough to stand for it where room is sought. */
export function pointsOf(path: Path): Point[] {
  return path.flatMap((s) => {
    const parts = s.kind === 'line' ? 1 : Math.max(1, Math.ceil(Math.abs(s.sweep) / ARC_STEP))
    return Array.from({ length: parts }, (_, i) => pointAt(s, i / parts))
  })
}

/**
 * Where an upright from one level to another stands clear inside a shape: the middle of the widest clear
 * stretch, undefined when there is none.
 *
 * @param paths the outline and the openings in it
 */
export function clearUpright(paths: readonly Path[], from: number, to: number): number | undefined {
  const shapes = paths.map(pointsOf)
  const levels = [0, 0.25, 0.5, 0.75, 1].map((t) => from + (to - from) * t)
  const clear = levels.map((y) => stretches(shapes, y)).reduce(common)
  const widest = clear.reduce<Stretch | undefined>(
    (best, one) => (best === undefined || one[1] - one[0] > best[1] - best[0] ? one : best),
    undefined,
  )
  return widest === undefined ? undefined : (widest[0] + widest[1]) / 2
}

type Stretch = readonly [number, number]

/** What of a level line lies inside shapes, even-odd, from left to right. */
function stretches(shapes: readonly Point[][], y: number): Stretch[] {
  const crossings = shapes
    .flatMap((shape) =>
      shape.flatMap((a, i) => {
        const b = shape[(i + 1) % shape.length]!
        return a.y > y !== b.y > y ? [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)] : []
      }),
    )
    .sort((a, b) => a - b)
  return crossings.flatMap((x, i) => (i % 2 === 1 ? [[crossings[i - 1]!, x] as const] : []))
}

const common = (a: Stretch[], b: Stretch[]): Stretch[] =>
  a.flatMap(([from, to]) =>
    b
      .map(([start, end]) => [Math.max(from, start), Math.min(to, end)] as const)
      .filter(([start, end]) => end > start),
  )

/** The part of a polygon to the right (`sense` 1) or left (−1) of an upright. */
function cutOff(shape: readonly Point[], edge: number, sense: 1 | -1): Point[] {
  return shape.flatMap((a, i) => {
    const b = shape[(i + 1) % shape.length]!
    const [inA, inB] = [(a.x - edge) * sense >= 0, (b.x - edge) * sense >= 0]
    const kept = inA ? [a] : []
    if (inA === inB) return kept
    const t = (edge - a.x) / (b.x - a.x)
    return [...kept, { x: edge, y: a.y + (b.y - a.y) * t }]
  })
}

/** Whether a point lies in a polygon: an upright from it crosses an odd number of sides. */
export function inside({ x, y }: Point, shape: readonly Point[]): boolean {
  return shape.reduce((odd, a, i) => {
    const b = shape[(i + 1) % shape.length]!
    return a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) ? !odd : odd
  }, false)
}
