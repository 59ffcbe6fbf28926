import { pathBox } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import { printLengthBare } from '../words/length.ts'
import type { Reader } from '../words/say.ts'
import type { WorkroomUnit } from '../words/units.ts'
import { corners } from './placed.ts'

/**
 * How chalk figures are written for a reader: the unit, and a figure of whole mm in it. It is the bench's unit, but for inches,
 * whose eighths cannot say whole millimetres.
 */
export function chalkWriting({ unit, locale }: Pick<Reader, 'unit' | 'locale'>): {
  unit: WorkroomUnit
  figure: (mm: number) => string
} {
  const written = unit === 'in' ? 'mm' : unit
  return { unit: written, figure: (mm) => printLengthBare(Math.round(mm), written, locale) }
}

/** A corner where it is and as it is chalked, in whole mm from the near selvedge and from the cut end. */
export type ChalkedCorner = { at: Point; fromSelvedge: number; fromCutEnd: number }

type Mark = { value: number; outward: 1 | -1 }

/** Nearer to a whole millimetre than this, a figure is that millimetre (rounding dust). */
const DUST = 1e-6
/** What the checker of a lay lets two pieces overlap; they still count as neighbours. */
const TOUCHING = 0.1

/**
 * The corners of every outline of a lay with their chalk figures. A figure is rounded outward, away from
 * the middle of its piece, so that no piece is cut too small. Where two pieces meet within the same
 * millimetre that would make them overlap: there both take the nearest one. No figure lies beyond the
 * usable width.
 *
 * @param outlines cut outlines in lay coordinates: x from the near selvedge, y from the cut end
 */
export function chalkFigures(outlines: readonly Path[], usableWidth: number): ChalkedCorner[][] {
  const found = outlines.map((outline) => {
    const box = pathBox(outline)
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
    return corners(outline).map((at) => ({ at, x: mark(at.x, middle.x), y: mark(at.y, middle.y) }))
  })
  const across = wholeMillimetres(found.flat().map(({ x }) => x))
  const down = wholeMillimetres(found.flat().map(({ y }) => y))
  let next = 0
  return found.map((piece) =>
    piece.map(({ at }) => {
      const index = next++
      return {
        at,
        fromSelvedge: Math.min(across[index]!, Math.floor(usableWidth + DUST)),
        fromCutEnd: down[index]!,
      }
    }),
  )
}

const mark = (value: number, middle: number): Mark => ({ value, outward: value >= middle ? 1 : -1 })

/** Whole millimetres that keep the order of the marks: outward, or nearest where neighbours meet. */
export function wholeMillimetres(marks: readonly Mark[]): number[] {
  const meeting = new Set<number>()
  const below = new Map<number, number>()
  for (const { value, outward } of marks) {
    if (outward === 1) below.set(Math.floor(value), Math.min(value, below.get(Math.floor(value)) ?? value))
  }
  for (const { value, outward } of marks) {
    const end = below.get(Math.floor(value))
    if (outward === -1 && end !== undefined && end <= value + TOUCHING) meeting.add(Math.floor(value))
  }
  return marks.map(({ value, outward }) => {
    const nearest = Math.round(value)
    if (Math.abs(value - nearest) < DUST) return nearest
    if (meeting.has(Math.floor(value))) {
      // Dust on either side of a half must not send two pieces that meet past each other.
      return outward === 1 ? nearest : Math.max(nearest, Math.round(below.get(Math.floor(value)) ?? nearest))
    }
    return outward === 1 ? Math.ceil(value) : Math.floor(value)
  })
}
