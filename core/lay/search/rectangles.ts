import { type Places, placesOf, type Strip } from '../strip.ts'
import { SEARCH } from './parameters.ts'
import { type Random, randomFrom } from './random.ts'
import { rehearse } from './rehearse.ts'
import type { Budget, Hooks, Search } from './search.ts'

/** One way a rectangle may lie: its size, and the outline's number. */
type Way = { way: number; wide: number; tall: number }
/** A level stretch of the edge of what is laid. */
type Level = { x: number; width: number; y: number }

/** Sizes nearer than this part of the cloth's width are the same. */
const SAME = 1e-7

/** Whether every part is a rectangle that may be moved. */
export const allRectangles = ({ outlines, parts }: Strip): boolean =>
  parts.every(
    ({ ways, fixed }) =>
      fixed === undefined &&
      ways.every((way) => {
        const { points, area, left, right, low, high } = outlines[way]!
        return points.length === 8 && Math.abs(area - (right - left) * (high - low)) <= SAME * area
      }),
  )

/**
 * Shortens a lay of rectangles as a maker does who cuts by the dozen: always the hollow nearest the cut end,
 * filled with what goes across it without waste, level with its neighbour where it can be; and over again
 * with other preferences among the pieces for as long as the budget lasts. Every touch is exact.
 */
export function searchRectangles(
  strip: Strip,
  start: Places,
  budget: Budget,
  seed: number,
  { found }: Hooks,
): Search {
  const random = randomFrom(seed)
  const filler = new Filler(strip)
  const { places, sweeps } = rehearse<Float64Array>(
    start,
    {
      first: new Float64Array(strip.parts.length),
      changed: (liking) => changed(liking, random),
      lay: (liking) => filler.fill(liking, random),
      worse: SEARCH.rectangles.worse,
      bound: filler.bound,
    },
    budget,
    random,
    found,
  )
  return { places, sweeps, evaluations: sweeps * strip.parts.length }
}

/** The same preferences, a few of them drawn anew. */
function changed(liking: Float64Array, random: Random): Float64Array {
  const tried = liking.slice()
  const count = 1 + random.below(SEARCH.rectangles.changes)
  for (let k = 0; k < count; k++) tried[random.below(tried.length)] = random.part()
  return tried
}

/** Lays rectangles hollow by hollow. */
class Filler {
  /** No lay can be shorter: the area over the width. */
  readonly bound: number
  readonly #strip: Strip
  readonly #ways: Way[][]
  /** Parts that may lie in the very same ways share a kind. */
  readonly #kind: Int32Array
  readonly #kinds: number
  readonly #same: number
  /** Part of a width, by steps, that no combination of the pieces' widths can fill. */
  readonly #unfilled: Float64Array

  constructor(strip: Strip) {
    this.#strip = strip
    this.#same = SAME * strip.width
    const kinds = new Map<string, number>()
    this.#ways = strip.parts.map(({ ways }) =>
      ways.map((way) => {
        const { left, right, low, high } = strip.outlines[way]!
        return { way, wide: right - left, tall: high - low }
      }),
    )
    this.#kind = Int32Array.from(this.#ways, (ways) => {
      const print = ways.map(({ wide, tall }) => `${wide.toFixed(6)} ${tall.toFixed(6)}`).join()
      const kind = kinds.get(print) ?? kinds.size
      kinds.set(print, kind)
      return kind
    })
    this.#kinds = kinds.size
    const area = this.#ways.reduce((sum, [way]) => sum + way!.wide * way!.tall, 0)
    this.bound = area / strip.width
    this.#unfilled = unfilled(strip.width, this.#ways.flat())
  }

  /** The lay that these preferences make. */
  fill(liking: Float64Array, random: Random): Places {
    const puts: { part: number; way: number; x: number; y: number }[] = []
    const order = Array.from(liking, (_, i) => i).sort((a, b) => liking[b]! - liking[a]!)
    const queues = Array.from({ length: this.#kinds }, (): number[] => [])
    for (const part of order) queues[this.#kind[part]!]!.push(part)
    let levels: Level[] = [{ x: 0, width: this.#strip.width, y: 0 }]
    let length = 0
    for (let left = order.length; left > 0; ) {
      const at = lowest(levels)
      const hollow = levels[at]!
      const leftWall = at === 0 ? Infinity : levels[at - 1]!.y
      const rightWall = at === levels.length - 1 ? Infinity : levels[at + 1]!.y
      const chosen = this.#choose(hollow, Math.min(leftWall, rightWall), queues, liking, random)
      if (chosen === undefined) {
        levels = raised(levels, at, Math.min(leftWall, rightWall), this.#same)
        continue
      }
      const { kind, way } = chosen
      const part = queues[kind]!.shift()!
      // Against the higher neighbour, where the hollow is deepest.
      const x = leftWall >= rightWall ? hollow.x : hollow.x + hollow.width - way.wide
      const outline = this.#strip.outlines[way.way]!
      puts.push({ part, way: way.way, x: x - outline.left, y: hollow.y - outline.low })
      const top = hollow.y + way.tall
      length = Math.max(length, top)
      levels = covered(levels, at, x, way.wide, top, this.#same)
      left--
    }
    return placesOf(this.#strip, puts, length)
  }

  /** What fits the hollow best: least width lost for good, then level with the wall, then as preferred. */
  #choose(
    hollow: Level,
    wall: number,
    queues: readonly number[][],
    liking: Float64Array,
    random: Random,
  ): { kind: number; way: Way } | undefined {
    let best: { kind: number; way: Way } | undefined
    let most = -Infinity
    const { waste, level, size, chance } = SEARCH.rectangles
    const width = this.#strip.width
    for (let kind = 0; kind < queues.length; kind++) {
      const part = queues[kind]![0]
      if (part === undefined) continue
      for (const way of this.#ways[part]!) {
        const rest = hollow.width - way.wide
        if (rest < -this.#same) continue
        const lost = rest <= this.#same ? 0 : this.#unfilled[Math.round((rest / width) * STEPS)]! / width
        const even = Math.abs(hollow.y + way.tall - wall) <= this.#same ? 1 : 0
        const score =
          -waste * lost +
          level * even +
          (size * (way.wide * way.tall)) / width ** 2 +
          liking[part]! +
          chance * random.part()
        if (score > most) {
          most = score
          best = { kind, way }
        }
      }
    }
    return best
  }
}

/** Steps a width is reckoned in when asking what can fill it. */
const STEPS = 4000

/** For every part of a width, what of it stays empty however pieces are laid side by side across it. */
function unfilled(width: number, ways: readonly Way[]): Float64Array {
  const sizes = [...new Set(ways.map(({ wide }) => Math.round((wide / width) * STEPS)))]
  const rest = new Float64Array(STEPS + 1)
  for (let at = 0; at <= STEPS; at++) {
    let least = at
    for (const size of sizes)
      if (size > 0 && size <= at + 1) least = Math.min(least, rest[Math.max(0, at - size)]!)
    rest[at] = least
  }
  return rest.map((steps) => (steps <= 1 ? 0 : (steps / STEPS) * width))
}

function lowest(levels: readonly Level[]): number {
  let at = 0
  for (let i = 1; i < levels.length; i++) if (levels[i]!.y < levels[at]!.y) at = i
  return at
}

/** Nothing fits: the hollow is lost up to its lower wall. */
const raised = (levels: readonly Level[], at: number, y: number, same: number): Level[] =>
  joined(
    levels.map((level, i) => (i === at ? { ...level, y } : level)),
    same,
  )

/** The hollow with a rectangle on part of it. */
function covered(
  levels: readonly Level[],
  at: number,
  x: number,
  width: number,
  top: number,
  same: number,
): Level[] {
  const hollow = levels[at]!
  const before = { x: hollow.x, width: x - hollow.x, y: hollow.y }
  const after = { x: x + width, width: hollow.x + hollow.width - x - width, y: hollow.y }
  return joined(
    [...levels.slice(0, at), before, { x, width, y: top }, after, ...levels.slice(at + 1)].filter(
      (level) => level.width > same,
    ),
    same,
  )
}

/** Neighbours that are level are one. */
function joined(levels: readonly Level[], same: number): Level[] {
  const out: Level[] = []
  for (const level of levels) {
    const last = out.at(-1)
    if (last !== undefined && Math.abs(last.y - level.y) <= same) {
      last.width += level.width
      last.y = Math.max(last.y, level.y)
    } else out.push({ ...level })
  }
  return out
}
