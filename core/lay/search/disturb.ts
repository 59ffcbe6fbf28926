import { leastX, mostX, movable } from '../strip.ts'
import { SEARCH } from './parameters.ts'
import type { Random } from './random.ts'
import type { Spread } from './spread.ts'

/** Changes a lay that would not part: by a swap of two large parts, or by throwing a few anywhere. */
export function disturb(spread: Spread, random: Random): void {
  if (random.part() < SEARCH.throwing) throwAbout(spread, random)
  else swapLarge(spread, random)
}

/** Throws a few parts anywhere on the cloth. */
function throwAbout(spread: Spread, random: Random): void {
  const { strip } = spread
  const parts = movable(strip)
  const count = Math.max(2, Math.round(parts.length * SEARCH.thrown * random.part()))
  for (let k = 0; k < count; k++) {
    const i = parts[random.below(parts.length)]!
    const part = strip.parts[i]!
    const way = part.ways[random.below(part.ways.length)]!
    const outline = strip.outlines[way]!
    const least = leastX(strip, part, outline)
    const x = least + random.part() * (mostX(strip, outline) - least)
    spread.put(i, way, x, random.part() * (spread.length - outline.high + outline.low) - outline.low)
  }
  spread.reckon()
}

/** Swaps two large parts of different outline; small ones lying within the ground of either go along with it. */
function swapLarge(spread: Spread, random: Random): void {
  const large = largeParts(spread)
  if (large.length < 2) return
  for (let tries = 0; tries < TRIES; tries++) {
    const [a, b] = [large[random.below(large.length)]!, large[random.below(large.length)]!]
    const alike = spread.way[a] === spread.way[b]
    // Swapping two of the same outline changes only what lies within their ground: better than nothing.
    if (a === b || (alike && tries < TRIES - 1)) continue
    swap(spread, a, b)
    return
  }
}

/** Draws of a pair to swap. */
const TRIES = 50

/** Movable parts, largest first, that together make up the share of the area that counts as large. */
function largeParts(spread: Spread): number[] {
  const parts = movable(spread.strip).sort((a, b) => spread.outline(b).hullArea - spread.outline(a).hullArea)
  const all = parts.reduce((sum, i) => sum + spread.outline(i).hullArea, 0)
  let sum = 0
  return parts.filter((i) => {
    const within = sum < SEARCH.large * all
    sum += spread.outline(i).hullArea
    return within
  })
}

type Box = { left: number; right: number; low: number; high: number }
const boxOf = (spread: Spread, i: number): Box => {
  const { left, right, low, high } = spread.outline(i)
  const [x, y] = [spread.x[i]!, spread.y[i]!]
  return { left: left + x, right: right + x, low: low + y, high: high + y }
}
const middle = ({ left, right, low, high }: Box) => ({ x: (left + right) / 2, y: (low + high) / 2 })

function swap(spread: Spread, a: number, b: number): void {
  const [boxA, boxB] = [boxOf(spread, a), boxOf(spread, b)]
  const [from, to] = [middle(boxA), middle(boxB)]
  const shift = { x: to.x - from.x, y: to.y - from.y }
  const within = (i: number, box: Box): boolean => {
    const { x, y } = middle(boxOf(spread, i))
    return (
      i !== a &&
      i !== b &&
      !spread.strip.parts[i]!.fixed &&
      x > box.left &&
      x < box.right &&
      y > box.low &&
      y < box.high
    )
  }
  const small = (i: number, than: number) => spread.outline(i).hullArea < spread.outline(than).hullArea / 2
  const all = Array.from({ length: spread.count }, (_, i) => i)
  const withA = all.filter((i) => within(i, boxA) && small(i, a))
  const withB = all.filter((i) => within(i, boxB) && small(i, b) && !withA.includes(i))
  const shifted = (i: number, x: number, y: number) => {
    const outline = spread.outline(i)
    const least = leastX(spread.strip, spread.strip.parts[i]!, outline)
    spread.put(
      i,
      spread.way[i]!,
      Math.max(least, Math.min(mostX(spread.strip, outline), spread.x[i]! + x)),
      Math.max(-outline.low, Math.min(spread.length - outline.high, spread.y[i]! + y)),
    )
  }
  for (const i of [a, ...withA]) shifted(i, shift.x, shift.y)
  for (const i of [b, ...withB]) shifted(i, -shift.x, -shift.y)
  spread.reckon()
}
