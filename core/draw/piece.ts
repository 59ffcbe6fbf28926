import { along, direction, distance } from '../geometry/point.ts'
import { line, pathBox } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import { printLengthBare } from '../words/length.ts'
import { type Phrase, phrase } from '../words/phrase.ts'
import { type Reader, say } from '../words/say.ts'
import { cornerNumbers } from './corner-numbers.ts'
import { dimension, doubleArrow, FIGURE_GAP } from './dimension.ts'
import type { DrawItem, Drawing, Lettering } from './drawing.ts'
import { guessedWidth, LETTERS } from './ink.ts'
import { around } from './letters.ts'
import { clearUpright } from './room.ts'

/** What of a piece is drawn: its lines, its edges with their finished lengths, and what is written by it. */
export type DrawnPiece = {
  name: Phrase
  copies: readonly { mirrored: boolean }[]
  outline: Path
  cut: Path
  openings: readonly { finished: Path; cut: Path }[]
  slits: readonly { apex: Point; open: Point }[]
  edges: readonly { on: string; path: Path; length: number; allowance: number }[]
  grain: 'straight' | 'bias'
}

/** The sheet space that a piece is fitted to when no scale is given, mm. */
const SPACE = { width: 90, height: 110 }
/** From the cut line to a dimension line, and to a figure along an edge, mm of the sheet. */
const DIMENSION_OFFSET = 4
const EDGE_GAP = 2.4
/** How much further out a dimension line goes to leave room for a figure along the edge. */
const FIGURE_ROOM = 3.4
/** Lengths nearer than this are the same size, mm. */
const SAME_SIZE = 0.5

/** The scale at which a piece and its figures fit the usual space. */
export function fittingScale({ cut }: { cut: Path }): number {
  const box = pathBox(cut)
  return Math.min((SPACE.width - 24) / box.width, (SPACE.height - 24) / box.height)
}

/**
 * One piece to scale, as finished (thin) and as cut (heavy), with its grain, its slits and openings, the
 * finished sizes a maker checks it by, and its name and count beneath. World mm of the piece, warp upward.
 *
 * @param first where the corners bear the numbers under which their chalk figures are told: which of them is number 1
 */
export function drawPiece(
  piece: DrawnPiece,
  reader: Reader,
  scale: number = fittingScale(piece),
  first?: number,
): Drawing {
  const caption = say(captionOf(piece), reader)
  const cut = pathBox(piece.cut)
  const figures = edgeFigures(piece, reader, scale)
  const lowered = figures.some(({ at }) => at.y < cut.y) ? FIGURE_ROOM : 0
  const items: DrawItem[] = [
    { kind: 'strokes', paths: [piece.cut, ...piece.openings.map((o) => o.cut)], line: 'cut', fill: 'cloth' },
    ...finishedLines(piece),
    ...piece.slits.map(
      ({ apex, open }): DrawItem => ({ kind: 'strokes', paths: [[line(open, apex)]], line: 'cut' }),
    ),
    grainArrow(piece, scale),
    ...overall(piece, reader, scale, lowered),
    ...figures,
  ]
  if (first !== undefined) items.push(...cornerNumbers(piece.cut, first, items, scale))
  const below = cut.y - (DIMENSION_OFFSET + lowered + FIGURE_GAP + LETTERS.figure.em + 1.6) / scale
  items.push({
    kind: 'lettering',
    at: { x: cut.x + cut.width / 2, y: below },
    text: caption,
    anchor: 'middle',
    angle: 0,
    size: 'name',
  })
  return {
    box: around(items, scale),
    scale,
    items,
    label: say(phrase('draw.piece.label', { piece: caption }), reader),
  }
}

/** A piece's name, how many are cut of it, and how many of them the other way round. */
export function captionOf({ name, copies }: DrawnPiece): Phrase {
  const mirrored = copies.filter((copy) => copy.mirrored).length
  const params = { name, count: copies.length, mirrored }
  return phrase(
    mirrored === 0 || mirrored === copies.length ? 'draw.piece.caption' : 'draw.piece.captionMirrored',
    params,
  )
}

/** Finished lines thin; an edge without allowance lies on a fold and is drawn as one. */
export function finishedLines({ edges, openings }: DrawnPiece): DrawItem[] {
  const outline = edges.filter((edge) => edge.on === 'outline')
  const of = (folded: boolean) =>
    outline.filter((edge) => (edge.allowance === 0) === folded).map((edge) => edge.path)
  const items: DrawItem[] = [
    { kind: 'strokes', paths: [...of(false), ...openings.map((o) => o.finished)], line: 'sew' },
    { kind: 'strokes', paths: of(true), line: 'fold' },
  ]
  return items.filter((item) => item.kind === 'strokes' && item.paths.length > 0)
}

/**
 * A line with two heads along the warp, where the piece is widest about the middle of its height and clear
 * of its openings; at 45° in the middle of a piece cut on the bias.
 */
export function grainArrow({ outline, openings, grain }: DrawnPiece, scale: number): DrawItem {
  const box = pathBox(outline)
  const level = box.y + 0.45 * box.height
  const reach = grain === 'bias' ? 0.2 * Math.min(box.width, box.height) : 0.2 * box.height
  const x = clearUpright([outline, ...openings.map((o) => o.cut)], level - reach, level + reach)
  const middle = { x: x ?? box.x + box.width / 2, y: level }
  const way = grain === 'bias' ? { x: Math.SQRT1_2, y: Math.SQRT1_2 } : { x: 0, y: 1 }
  return doubleArrow(along(middle, way, -reach), along(middle, way, reach), scale)
}

/** Width below and height at the left of the finished shape, over all. */
function overall({ outline, cut }: DrawnPiece, reader: Reader, scale: number, lowered: number): DrawItem[] {
  const box = pathBox(outline)
  const outer = pathBox(cut)
  const figure = (mm: number) => printLengthBare(mm, reader.unit, reader.locale)
  const bottom = { left: { x: box.x, y: outer.y }, right: { x: box.x + box.width, y: outer.y } }
  const side = { top: { x: outer.x, y: box.y + box.height }, bottom: { x: outer.x, y: box.y } }
  return [
    ...dimension(bottom.left, bottom.right, DIMENSION_OFFSET + lowered, figure(box.width), scale),
    ...dimension(side.top, side.bottom, DIMENSION_OFFSET, figure(box.height), scale),
  ]
}

/**
 * The finished lengths of the straight edges that the overall sizes do not tell, each size once, written
 * along the edge outside the cut line. An edge too short for its figure at this scale goes without.
 */
function edgeFigures({ edges, outline }: DrawnPiece, reader: Reader, scale: number): Lettering[] {
  const box = pathBox(outline)
  const told: number[] = []
  const straight = edges
    .filter(({ on, path }) => on === 'outline' && path.length === 1 && path[0]!.kind === 'line')
    .map(({ path, length, allowance }) => ({ from: path[0]!.from, to: path[0]!.to, length, allowance }))
    .sort((a, b) => b.from.x + b.to.x - (a.from.x + a.to.x))
  return straight.flatMap(({ from, to, length, allowance }): Lettering[] => {
    const ahead = direction(from, to)
    const whole =
      Math.abs(ahead.y) > 1 - 1e-9 ? box.height : Math.abs(ahead.x) > 1 - 1e-9 ? box.width : undefined
    if (whole !== undefined && Math.abs(whole - length) < SAME_SIZE) return []
    const text = printLengthBare(length, reader.unit, reader.locale)
    if (told.some((size) => Math.abs(size - length) < SAME_SIZE)) return []
    if (guessedWidth(text, 'figure') + 1 > distance(from, to) * scale) return []
    told.push(length)
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
    const at = along(middle, { x: ahead.y, y: -ahead.x }, allowance + EDGE_GAP / scale)
    return [{ kind: 'lettering', at, text, anchor: 'middle', angle: upright(ahead), size: 'figure' }]
  })
}

/** The angle of a word along a line, turned so that it is read from below or from the right. */
function upright({ x, y }: Point): number {
  const angle = (Math.atan2(y, x) * 180) / Math.PI
  return angle > 90 + 1e-9 ? angle - 180 : angle <= -90 + 1e-9 ? angle + 180 : angle
}
