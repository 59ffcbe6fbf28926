import { line } from '../geometry/segment.ts'
import type { Path, Point, Rectangle } from '../geometry/types.ts'
import { printLengthBare } from '../words/length.ts'
import { type PhraseCode, phrase } from '../words/phrase.ts'
import { type Reader, say } from '../words/say.ts'
import { chalkWriting } from './chalk.ts'
import { dimension, doubleArrow } from './dimension.ts'
import type { DrawItem, Drawing, Lettering } from './drawing.ts'
import { guessedWidth } from './ink.ts'
import { type LaidCopy, type LaidOut, type LaidPiece, laidCopies } from './laid.ts'
import { around } from './letters.ts'
import { onTheTable } from './placed.ts'
import { Room } from './room.ts'

/** A lay to draw: all of it, or the stretch of cloth between two distances from the cut end (mm). */
export type DrawnLay = { lay: LaidOut; pieces: readonly LaidPiece[]; window?: { from: number; to: number } }

/** A lay is drawn at a tenth unless told otherwise: a name is then still legible on a small gusset. */
const TENTH = 0.1

/**
 * The cloth to scale, its length from left to right: the cut end at the left, the near selvedge below.
 * Every copy lies in its place with its number in the order of cutting and its name; at its corners, where
 * there is room, stand their distances from the near selvedge and from the cut end.
 *
 * World mm: x from the cut end, y from the near selvedge. Seen so, the cloth lies wrong side up: lay
 * coordinates are those of its right side.
 */
export function drawLay({ lay, pieces, window }: DrawnLay, reader: Reader, scale: number = TENTH): Drawing {
  const { from, to } = window ?? { from: 0, to: lay.length }
  const copies = laidCopies(lay, pieces)
  const shown = copies.filter(({ box }) => box.y < to && box.y + box.height > from)
  const clip = { x: from, y: 0, width: to - from, height: lay.usableWidth }
  const items: DrawItem[] = [
    { kind: 'strokes', paths: [rectangle(clip)], line: null, fill: 'cloth' },
    ...shown.flatMap(shapes),
    ...handled(lay, from, to),
    ...flawed(lay, from, to),
    ...frame(lay, from, to, scale),
    ...ruler(from, to, chalkWriting(reader).figure, scale),
    ...dimension(
      { x: from, y: lay.usableWidth },
      { x: from, y: 0 },
      4,
      printLengthBare(lay.usableWidth, reader.unit, reader.locale),
      scale,
    ),
    ...margins(lay, from, to, reader, scale),
    ...shown.flatMap((copy) => words(copy, foldOf(lay, from, to), from, to, reader, scale)),
  ]
  const label = say(
    phrase('draw.lay.label', {
      from: { mm: from },
      to: { mm: to },
      width: { mm: lay.usableWidth },
      pieces: shown.map(({ number, name }) => `${number} ${say(name, reader)}`).join(', '),
    }),
    reader,
  )
  return { box: around(items, scale, clip), scale, clip, items, label }
}

const rectangle = ({ x, y, width, height }: Rectangle): Path => {
  const [a, b] = [
    { x, y },
    { x: x + width, y },
  ]
  const [c, d] = [
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]
  return [line(a, b), line(b, c), line(c, d), line(d, a)]
}

function shapes({ cut, finished, openings, slits }: LaidCopy): DrawItem[] {
  const drawn = (paths: readonly Path[]) => paths.map(onTheTable)
  const items: DrawItem[] = [
    {
      kind: 'strokes',
      paths: drawn([finished, ...openings.map((o) => o.finished)]),
      line: 'sew',
      clipped: true,
    },
    { kind: 'strokes', paths: drawn(slits), line: 'cut', clipped: true },
  ]
  return [
    {
      kind: 'strokes',
      paths: drawn([cut, ...openings.map((o) => o.cut)]),
      line: 'cut',
      fill: 'ground',
      clipped: true,
    },
    ...items.filter((item) => item.kind === 'strokes' && item.paths.length > 0),
  ]
}

/** A selvedge is drawn this far beside the edge of the usable cloth, mm of the sheet. */
const SELVEDGE = 0.7

/** Selvedges, the cut end, the end of the lay, and dashed uprights where the drawing breaks off. */
function frame({ usableWidth, length }: LaidOut, from: number, to: number, scale: number): DrawItem[] {
  const along = (y: number) => [line({ x: from, y }, { x: to, y })]
  const across = (x: number) => [line({ x, y: 0 }, { x, y: usableWidth })]
  return [
    {
      kind: 'strokes',
      paths: [along(-SELVEDGE / scale), along(usableWidth + SELVEDGE / scale)],
      line: 'selvedge',
    },
    { kind: 'strokes', paths: [across(from)], line: from === 0 ? 'cut' : 'hidden' },
    { kind: 'strokes', paths: [across(to)], line: to >= length ? 'fold' : 'hidden' },
  ]
}

/** Where the cloth is folded along its length, or torn across. */
function handled(lay: LaidOut, from: number, to: number): DrawItem[] {
  const { usableWidth, length, tears = [] } = lay
  const fold = foldOf(lay, from, to)
  const torn = tears
    .filter((at) => at > from && at < to && at < length - 1)
    .map((at) => [line({ x: at, y: 0 }, { x: at, y: usableWidth })])
  const paths = [...fold, ...torn]
  return paths.length === 0 ? [] : [{ kind: 'strokes', paths, line: 'fold' }]
}

function foldOf({ usableWidth, manner }: LaidOut, from: number, to: number): Path[] {
  const middle = usableWidth / 2
  return manner === 'doubled' ? [[line({ x: from, y: middle }, { x: to, y: middle })]] : []
}

/** Flaws that the pieces were kept off, each a crossed rectangle. */
function flawed({ flaws = [], usableWidth }: LaidOut, from: number, to: number): DrawItem[] {
  const shown = flaws.filter(({ x, y, height }) => y < to && y + height > from && x < usableWidth)
  const paths = shown.flatMap((flaw) => {
    const [a, b, c, d] = rectangle(flaw).map((side) => ({ x: side.from.y, y: side.from.x }))
    return [onTheTable(rectangle(flaw)), [line(a!, c!)], [line(b!, d!)]]
  })
  return paths.length === 0 ? [] : [{ kind: 'strokes', paths, line: 'hidden', clipped: true }]
}

/** mm of cloth between two ticks, and between two figures, under the near selvedge. */
const TICK = 100
const FIGURE = 500

/** Ticks under the near selvedge, with their distance from the cut end. */
function ruler(from: number, to: number, figure: (mm: number) => string, scale: number): DrawItem[] {
  const first = Math.ceil(from / TICK)
  const ticks = Array.from(
    { length: Math.max(0, Math.floor(to / TICK) - first + 1) },
    (_, i) => (first + i) * TICK,
  )
  const tall = (x: number) => (x % FIGURE === 0 ? 2.2 : 1.1) / scale
  return [
    {
      kind: 'strokes',
      paths: ticks.map((x) => [line({ x, y: -1.3 / scale }, { x, y: -1.3 / scale - tall(x) })]),
      line: 'dimension',
    },
    ...ticks
      .filter((x) => x % FIGURE === 0)
      .map(
        (x): Lettering => ({
          kind: 'lettering',
          at: { x, y: -5.4 / scale },
          text: figure(x),
          anchor: 'middle',
          angle: 0,
          size: 'note',
        }),
      ),
  ]
}

/** A stretch of cloth shorter than this on the sheet has no room for the smaller notes, mm. */
const SHORT = 70

/** The names of the cloth's edges and the way of its grain, outside the cloth. */
function margins(
  { usableWidth, length }: LaidOut,
  from: number,
  to: number,
  reader: Reader,
  scale: number,
): DrawItem[] {
  const middle = (from + to) / 2
  const above = usableWidth + 3.4 / scale
  const below = -9.4 / scale
  const note = (at: Point, code: PhraseCode, angle: number, anchor: Lettering['anchor']): Lettering => ({
    kind: 'lettering',
    at,
    text: say(phrase(code), reader),
    anchor,
    angle,
    size: 'note',
  })
  const roomy = (to - from) * scale >= SHORT
  const grainWord = note({ x: to, y: below }, 'draw.lay.grain', 0, 'end')
  const right = { x: to - (guessedWidth(grainWord.text, 'note') + 1.5) / scale, y: below }
  const left = { x: right.x - 12 / scale, y: below }
  return [
    note({ x: middle, y: above }, 'draw.lay.farSelvedge', 0, 'middle'),
    note({ x: middle, y: below }, 'draw.lay.nearSelvedge', 0, 'middle'),
    ...(from === 0 && roomy ? [note({ x: 0, y: above }, 'draw.lay.cutEnd', 0, 'start')] : []),
    ...(to >= length
      ? [note({ x: to + 2.6 / scale, y: usableWidth / 2 }, 'draw.lay.layEnd', 90, 'middle')]
      : []),
    ...(roomy ? [grainWord, doubleArrow(left, right, scale)] : []),
  ]
}

/** A copy's number and name, as much of it as there is room for, and the figures at its corners. */
function words(
  copy: LaidCopy,
  fold: readonly Path[],
  from: number,
  to: number,
  reader: Reader,
  scale: number,
): Lettering[] {
  const taken = [...[...copy.openings.map((o) => o.cut), ...copy.slits].map(onTheTable), ...fold]
  const room = new Room(onTheTable(copy.finished), taken).within(from, to)
  const rim = new Room(onTheTable(copy.cut), taken).within(from, to)
  if (rim.empty) return []
  const word = (text: string, size: Lettering['size'], angle = 0): Lettering => ({
    kind: 'lettering',
    at: rim.middle,
    text,
    anchor: 'middle',
    angle,
    size,
  })
  const number = String(copy.number)
  const names = [
    `${number} ${say(copy.name, reader)}`,
    `${number} ${say(copy.piece, reader)}`,
    number,
  ].flatMap((text) => [word(text, 'name'), word(text, 'name', 90)])
  // The lesser part of a copy that the drawing breaks off may go without: the greater part has its name.
  const lesser = Math.min(to, copy.box.y + copy.box.height) - Math.max(from, copy.box.y) < copy.box.height / 2
  const within = room.write(names, scale)
  if (within === undefined && lesser) return []
  const small = [word(number, 'note'), word(number, 'note', 90)]
  const name = within ?? rim.write([...names, ...small], scale) ?? word(number, 'note')
  if (within === undefined) room.take(name, scale)
  const { figure: chalk } = chalkWriting(reader)
  const figures = copy.corners.flatMap(({ at, fromSelvedge, fromCutEnd }) => {
    const figure = word(`${chalk(fromSelvedge)} / ${chalk(fromCutEnd)}`, 'note')
    return room.writeBy({ x: at.y, y: at.x }, figure, scale) ?? []
  })
  return [name, ...figures]
}
