import { line, pathBox, segmentBox } from '../geometry/segment.ts'
import type { Path, Rectangle } from '../geometry/types.ts'
import { phrase } from '../words/phrase.ts'
import { type Reader, say } from '../words/say.ts'
import type { DrawItem, Drawing, Lettering } from './drawing.ts'
import { LETTERS } from './ink.ts'
import { boxesCross } from './letters.ts'
import { captionOf, type DrawnPiece, finishedLines, grainArrow } from './piece.ts'
import { corners } from './placed.ts'
import { Room } from './room.ts'

/** A piece, and what of it is drawn full size: all of it, or the part round its curves. World mm of the piece. */
export type FullSize = { piece: DrawnPiece; window: Rectangle; whole: boolean }

/** A part is drawn this far beyond its curves, so that it can be laid to the piece's edges. */
const BEYOND = 40
/** No sheet of paper is set up for anything longer: such a curve is struck with chalk on a cord. */
const LONGEST_CURVE = 800
/** A piece no larger than this may be drawn whole, mm. */
const SMALL = { width: 620, height: 820 }
/** A piece whose curves and what is round them are more of it than this is drawn whole. */
const MOST = 0.5

/**
 * What of a garment's pieces is worth a full-size pattern. Four straight edges are chalked from their measures, and so
 * is what has straight edges only and is large. Of a piece with curves the parts round them are drawn, or all of it where they are
 * most of it; a small piece without any is drawn whole.
 */
export function fullSizeParts(pieces: readonly DrawnPiece[]): FullSize[] {
  return pieces.flatMap((piece): FullSize[] => {
    const box = pathBox(piece.cut)
    const parts = curvedParts(piece, box)
    const drawn = parts.reduce((sum, part) => sum + area(part), 0)
    if (parts.length === 0 && corners(piece.outline).length <= 4) return []
    const small = box.width <= SMALL.width && box.height <= SMALL.height
    if (small && (drawn === 0 || drawn > MOST * area(box))) return [{ piece, window: box, whole: true }]
    return parts.map((window) => ({ piece, window, whole: false }))
  })
}

const area = ({ width, height }: Rectangle): number => width * height

/** The parts of a large piece round its openings and curves, those that meet joined. */
function curvedParts({ cut, openings }: DrawnPiece, box: Rectangle): Rectangle[] {
  const curves = [
    ...cut.filter(({ kind }) => kind === 'arc').map(segmentBox),
    ...openings.map((one) => pathBox(one.cut)),
  ].filter(({ width, height }) => Math.max(width, height) <= LONGEST_CURVE)
  const parts = curves.map((one) => common(grown(one, BEYOND), box))
  for (let i = 0; i < parts.length; i++) {
    const other = parts.findIndex((part, j) => j > i && boxesCross(part, parts[i]!))
    if (other === -1) continue
    parts[i] = around(parts[i]!, parts[other]!)
    parts.splice(other, 1)
    i = -1
  }
  return parts
}

const grown = ({ x, y, width, height }: Rectangle, by: number): Rectangle => ({
  ...{ x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by },
})

const between = (left: number, bottom: number, right: number, top: number): Rectangle => ({
  ...{ x: left, y: bottom, width: right - left, height: top - bottom },
})

const common = (a: Rectangle, b: Rectangle): Rectangle =>
  between(
    Math.max(a.x, b.x),
    Math.max(a.y, b.y),
    Math.min(a.x + a.width, b.x + b.width),
    Math.min(a.y + a.height, b.y + b.height),
  )

const around = (a: Rectangle, b: Rectangle): Rectangle =>
  between(
    Math.min(a.x, b.x),
    Math.min(a.y, b.y),
    Math.max(a.x + a.width, b.x + b.width),
    Math.max(a.y + a.height, b.y + b.height),
  )

/**
 * A part at its true size, without ground: heavy where it is cut, thin where it is finished, its middle dashed, with its
 * name, how many are cut, and the grain.
 */
export function drawFullSize({ piece, window, whole }: FullSize, reader: Reader): Drawing {
  const { cut, openings, slits } = piece
  const clip = grown(window, 1)
  const down = middleOf(piece, window)
  const drawn: DrawItem[] = [
    { kind: 'strokes', paths: [cut, ...openings.map((one) => one.cut)], line: 'cut' },
    ...finishedLines(piece),
    ...slits.map(
      ({ apex, open }): DrawItem => ({ kind: 'strokes', paths: [[line(open, apex)]], line: 'cut' }),
    ),
    ...down.map((path): DrawItem => ({ kind: 'strokes', paths: [path], line: 'hidden' })),
    ...(whole ? [grainArrow(piece, 1)] : []),
  ]
  const lines = drawn.map((item) => (item.kind === 'strokes' ? { ...item, clipped: true } : item))
  return {
    ...{ box: clip, scale: 1, clip },
    items: [...lines, ...named({ piece, window, whole }, down, reader)],
    label: say(phrase('draw.pattern.label', { piece: captionOf(piece) }), reader),
  }
}

/** Points nearer than this mirror each other, mm. */
const ALIKE = 0.5

/** The line down the middle of a piece that is alike on both sides, by which a part is laid in its place. */
function middleOf({ outline }: DrawnPiece, window: Rectangle): Path[] {
  const box = pathBox(outline)
  const x = box.x + box.width / 2
  if (x <= window.x || x >= window.x + window.width) return []
  const points = corners(outline)
  const alike = points.every((p) =>
    points.some((q) => Math.abs(p.x + q.x - 2 * x) < ALIKE && Math.abs(p.y - q.y) < ALIKE),
  )
  return alike ? [[line({ x, y: box.y }, { x, y: box.y + box.height })]] : []
}

/** The name where it has room within the finished lines, and under it that this is a part. */
function named({ piece, window, whole }: FullSize, down: readonly Path[], reader: Reader): Lettering[] {
  const taken = [
    ...piece.openings.map((one) => one.cut),
    ...piece.slits.map(({ apex, open }) => [line(open, apex)]),
  ]
  const room = new Room(piece.outline, [...taken, ...down])
    .within(window.x, window.x + window.width)
    .between(window.y, window.y + window.height)
  if (room.empty) return []
  const word = (text: string, size: Lettering['size']): Lettering => ({
    ...{ kind: 'lettering', at: room.middle, text, anchor: 'middle', angle: 0, size },
  })
  const name = room.write(
    [word(say(captionOf(piece), reader), 'name'), word(say(piece.name, reader), 'name')],
    1,
  )
  if (name === undefined) return []
  const note = { ...word(say(phrase('draw.pattern.part'), reader), 'note'), at: under(name) }
  return !whole && room.fits(note, 1) ? [name, note] : [name]
}

const under = ({ at: { x, y } }: Lettering) => ({ x, y: y - LETTERS.name.em * 1.6 })
