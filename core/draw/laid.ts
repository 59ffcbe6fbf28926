import { pathBox } from '../geometry/segment.ts'
import type { Path, Point, Rectangle } from '../geometry/types.ts'
import type { Phrase } from '../words/phrase.ts'
import { type ChalkedCorner, chalkFigures } from './chalk.ts'
import { type Placed, placePath } from './placed.ts'

/** What of a piece is seen in a lay. */
export type LaidPiece = {
  id: string
  name: Phrase
  copies: readonly { id: string; name: Phrase; mirrored: boolean }[]
  outline: Path
  cut: Path
  openings: readonly { id: string; finished: Path; cut: Path }[]
  slits: readonly { apex: Point; open: Point }[]
}

/** A lay as it is drawn: where each copy lies, mm, x from the near selvedge and y from the cut end. */
export type LaidOut = {
  usableWidth: number
  length: number
  placements: readonly (Placed & { piece: string; copy: string })[]
  /** Folded along its length, or torn in bands at these distances from the cut end. */
  manner?: 'doubled' | 'torn'
  tears?: readonly number[]
  flaws?: readonly Rectangle[]
}

/** One copy in its place, with its number in the order of cutting. */
export type LaidCopy = {
  number: number
  /** Ids of the piece and of the copy of it. */
  of: { piece: string; copy: string }
  name: Phrase
  /** The piece's own name, without its hand. */
  piece: Phrase
  placement: Placed
  box: Rectangle
  cut: Path
  finished: Path
  openings: { finished: Path; cut: Path }[]
  slits: Path[]
  /** Round the cut line, from the one nearest the cut end; which of `corners` that is. */
  corners: ChalkedCorner[]
  firstCorner: number
}

/**
 * Every copy of a lay in its place, numbered in the order of cutting: from the cut end on, and from the
 * near selvedge where two begin at the same distance.
 */
export function laidCopies(lay: LaidOut, pieces: readonly LaidPiece[]): LaidCopy[] {
  const known = new Map(pieces.map((piece) => [piece.id, piece]))
  const copies = lay.placements.flatMap((placement) => {
    const piece = known.get(placement.piece)
    const copy = piece?.copies.find(({ id }) => id === placement.copy)
    if (piece === undefined || copy === undefined) return []
    const put = (path: Path) => placePath(path, placement)
    const cut = put(piece.cut)
    return {
      of: { piece: piece.id, copy: copy.id },
      name: copy.name,
      piece: piece.name,
      placement,
      box: pathBox(cut),
      cut,
      finished: put(piece.outline),
      openings: piece.openings.map((o) => ({ finished: put(o.finished), cut: put(o.cut) })),
      slits: piece.slits.map(({ open, apex }) => put([{ kind: 'line', from: open, to: apex }])),
    }
  })
  copies.sort((a, b) => (Math.abs(a.box.y - b.box.y) > 1 ? a.box.y - b.box.y : a.box.x - b.box.x))
  const corners = chalkFigures(
    copies.map(({ cut }) => cut),
    lay.usableWidth,
  )
  return copies.map((copy, i) => {
    const round = corners[i]!
    const firstCorner = nearestCutEnd(round)
    const fromCutEnd = [...round.slice(firstCorner), ...round.slice(0, firstCorner)]
    return { ...copy, number: i + 1, corners: fromCutEnd, firstCorner }
  })
}

/** Where the way round a piece begins for who chalks it: at the corner nearest the cut end, and of two such nearest the near selvedge. */
const nearestCutEnd = (round: readonly ChalkedCorner[]): number =>
  round.reduce((best, { fromCutEnd, fromSelvedge }, i) => {
    const now = round[best]!
    return fromCutEnd < now.fromCutEnd || (fromCutEnd === now.fromCutEnd && fromSelvedge < now.fromSelvedge)
      ? i
      : best
  }, 0)

/** A lay that leaves less of the width than this is said to take all of it, mm: cloth is not equally wide all along (common practice). */
const SPARE = 10

/**
 * What a lay takes of the width where it takes all but a little of it, mm; undefined where the cloth may be narrower. Doubled
 * cloth that is narrower folds nearer: there what lies through both layers counts twice from the selvedge, and what lies over
 * the fold by its own width; whether the two meet is not looked at.
 */
export function takenWidth(lay: LaidOut, pieces: readonly LaidPiece[]): number | undefined {
  const half = lay.usableWidth / 2
  const takes = ({ box: { x, width } }: LaidCopy): number =>
    lay.manner !== 'doubled' ? x + width : x < half && x + width > half + SPARE / 2 ? width : 2 * (x + width)
  const taken = Math.max(
    0,
    ...laidCopies(lay, pieces)
      .filter(({ box }) => lay.manner !== 'doubled' || box.x < half)
      .map(takes),
  )
  return taken > lay.usableWidth - SPARE ? taken : undefined
}
