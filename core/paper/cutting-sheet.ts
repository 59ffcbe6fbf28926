import type { Piece } from '../draft/types.ts'
import { chalkWriting } from '../draw/chalk.ts'
import { type LaidCopy, type LaidPiece, laidCopies, takenWidth } from '../draw/laid.ts'
import { drawLay } from '../draw/lay.ts'
import { samePoint } from '../geometry/point.ts'
import { arcRadius, pointAt } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import type { Lay } from '../lay/types.ts'
import { sharedBy, sharedPieces } from '../quote/shared.ts'
import type { QuoteSnapshot } from '../quote/types.ts'
import { numberFormat } from '../words/formats.ts'
import { printLengthBare, roundedUp } from '../words/length.ts'
import { type Reader, say } from '../words/say.ts'
import type { Block } from './block.ts'
import type { Cell } from './cells.ts'
import { frameOf, layPages } from './flow.ts'
import { clothBlocks } from './order-cloth.ts'
import type { PaperDocument, PaperSize } from './page.ts'
import {
  type GarmentSheet,
  garmentFoot,
  garmentHead,
  listed,
  readerOf,
  refuseUnprintable,
  type Teller,
  tellerOf,
} from './sheet.ts'

/**
 * What is needed at the cutting table: the cloth and its washing, the lay to scale over as many pages as
 * it takes to be legible, and every corner's distances from the near selvedge and from the cut end.
 *
 * @throws Refusal at the field that holds a character no font has
 */
export function cuttingSheet(sheet: GarmentSheet): PaperDocument {
  const { snapshot, line } = sheet
  refuseUnprintable(snapshot)
  const reader = readerOf(snapshot)
  const tell = tellerOf(reader)
  const { lay: own, others = [] } = line.estimate
  const shared = sharedBy(snapshot, line)
  const lay = shared?.lay ?? own
  const pieces = line.estimate.draft.pieces
  const beside = snapshot.lines.filter(({ id }) => shared?.lines.includes(id) === true)
  const { paper } = snapshot.letterhead
  const blocks: Block[] = [
    ...garmentHead(tell, tell('paper.cutting.title'), sheet),
    before(lay, shared === undefined ? pieces : sharedPieces(beside), line.cloth.rightSide, reader),
    ...clothBlocks(sheet, reader),
    { kind: 'space', height: 3 },
    cautions(tell),
    ...(shared === undefined
      ? layBlocks(tell('paper.cutting.lay'), { lay, pieces }, snapshot, reader)
      : layBlocks(tell('paper.cutting.sharedLay'), { lay, pieces: sharedPieces(beside) }, snapshot, reader)),
    ...others.flatMap((other) => {
      const role = tell(`paper.cutting.role.${other.role}`)
      return layBlocks(tell('paper.cutting.otherLay', { role }), { lay: other.lay, pieces }, snapshot, reader)
    }),
  ]
  const foot = tell('paper.cutting.foot', {
    number: sheet.commissionNumber,
    title: line.title,
    wearer: line.wearer.name,
    day: { date: sheet.day },
  })
  return layPages(blocks, paper, garmentFoot(tell, foot, sheet))
}

/** One lay: drawn to scale, every corner to chalk, and what is likely to be left over. */
function layBlocks(
  title: string,
  { lay, pieces }: { lay: Lay; pieces: readonly Piece[] },
  { letterhead }: QuoteSnapshot,
  reader: Reader,
): Block[] {
  const tell = tellerOf(reader)
  if (lay.placements.length === 0) return [{ kind: 'paragraph', words: tell('paper.cutting.nothing') }]
  const { scale, windows } = stretches(lay, letterhead.paper)
  const { unit } = chalkWriting(reader)
  const heading = (words: string): Block => ({ kind: 'heading', level: 2, words })
  return [
    heading(title),
    {
      kind: 'paragraph',
      words: tell('paper.cutting.drawn', {
        scale: `1 : ${Math.round(1 / scale)}`,
        length: { mm: lay.length },
        width: { mm: lay.usableWidth },
        used: percent(lay.used, reader),
        unit,
      }),
      look: 'note',
      keepWithNext: true,
    },
    ...(lay.flaws === undefined
      ? []
      : [{ kind: 'paragraph' as const, words: tell('paper.cutting.flaws'), keepWithNext: true }]),
    ...windows.map(
      (window): Block => ({ kind: 'figures', drawings: [drawLay({ lay, pieces, window }, reader, scale)] }),
    ),
    heading(tell('paper.cutting.order')),
    {
      kind: 'paragraph',
      words: `${tell('paper.cutting.orderHow', { unit })} ${tell('paper.cutting.asDrafted')}`,
      look: 'note',
      keepWithNext: true,
    },
    cornerTable(laidCopies(lay, pieces), reader),
    heading(tell('paper.cutting.offcuts')),
    offcuts(lay, reader),
  ]
}

/** Where the cloth is torn apart before the pieces are cut from its bands. */
function tornAt(tell: Teller, { tears = [], length }: Lay, reader: Reader): string[] {
  const { unit, figure } = chalkWriting(reader)
  const at = tears.filter((tear) => tear > 0 && tear < length - 1).map(figure)
  return at.length === 0 ? [] : [tell('paper.cutting.tear', { places: at.join(', '), unit })]
}

const percent = (part: number, reader: Reader): string =>
  numberFormat(reader.locale, { style: 'percent', maximumFractionDigits: 0 }).format(part)

/** Where the pieces take all the width, how wide the cloth must be everywhere: rounded up. */
function tight(lay: Lay, pieces: readonly LaidPiece[], tell: Teller, reader: Reader): string[] {
  const taken = takenWidth(lay, pieces)
  return taken === undefined ? [] : [tell('lay.tight', { taken: { mm: roundedUp(taken, reader.unit) } })]
}

/** What is done before the shears are taken up. */
function before(lay: Lay, pieces: readonly LaidPiece[], rightSide: boolean, reader: Reader): Block {
  const tell = tellerOf(reader)
  return {
    kind: 'panel',
    bar: 'woad',
    blocks: [
      {
        kind: 'paragraph',
        words: tell('paper.cutting.before'),
        look: 'cellStrong',
        before: 0,
        keepWithNext: true,
      },
      listed([
        tell('paper.cutting.washFirst'),
        tell('paper.cutting.measureAgain'),
        tell(rightSide ? 'paper.cutting.wrongSideUp' : 'paper.cutting.eitherSide'),
        ...(lay.manner === 'doubled' ? [tell('paper.cutting.fold')] : []),
        ...tight(lay, pieces, tell, reader),
        ...tornAt(tell, lay, reader),
      ]),
    ],
  }
}

/** Scales a maker can read off with a rule. */
const SCALES = [1 / 5, 1 / 8, 1 / 10, 1 / 12.5, 1 / 15, 1 / 20]
/** Room beside and around the cloth for its dimension and the names of its edges, mm of the sheet. */
const AROUND = { width: 15, height: 19 }
/** Room for a heading above the first stretch, mm. */
const ABOVE = 24
/** The most sheets a lay is spread over before a smaller scale is taken. */
const SHEETS = 4

/** The scale of the lay and the stretches of cloth it is drawn in, all of one length. */
function stretches(lay: Lay, paper: PaperSize): { scale: number; windows: { from: number; to: number }[] } {
  const frame = frameOf(paper)
  const count = (scale: number) => Math.max(1, Math.ceil((lay.length * scale) / (frame.width - AROUND.width)))
  const sheets = (scale: number) =>
    count(scale) / Math.max(1, Math.floor(frame.height / (lay.usableWidth * scale + AROUND.height)))
  const scale =
    SCALES.find((s) => lay.usableWidth * s <= frame.height - AROUND.height - ABOVE && sheets(s) <= SHEETS) ??
    SCALES.at(-1)!
  const parts = count(scale)
  const windows = Array.from({ length: parts }, (_, i) => ({
    from: (lay.length * i) / parts,
    to: (lay.length * (i + 1)) / parts,
  }))
  return { scale, windows }
}

/** Every copy in the order of cutting, with the chalk figures of its corners. */
function cornerTable(copies: readonly LaidCopy[], reader: Reader): Block {
  const tell = tellerOf(reader)
  return {
    kind: 'table',
    columns: [
      { heading: tell('paper.cutting.column.number'), share: 9, align: 'right', look: 'cellStrong' },
      { heading: tell('paper.cutting.column.piece'), share: 42, look: 'cellStrong' },
      { heading: tell('paper.cutting.column.turned'), share: 26 },
      { heading: tell('paper.cutting.column.corners', { unit: chalkWriting(reader).unit }), share: 97 },
    ],
    rows: copies.map((copy) => ({
      cells: [
        String(copy.number),
        say(copy.name, reader),
        turning(copy, tell),
        figures(copy, tell, chalkWriting(reader).figure),
      ],
    })),
  }
}

/** How a copy lies otherwise than its pattern was drafted; nothing where it lies as it was. */
function turning({ placement: { angle, flipped } }: LaidCopy, tell: Teller): string {
  const ways = [
    ...(angle === 0 ? [] : [tell('paper.cutting.turned', { angle })]),
    ...(flipped ? [tell('paper.cutting.faceDown')] : []),
  ]
  return ways.join(', ')
}

/** The corners round the cut line, from the one nearest the cut end; then what is cut out and slit. */
function figures(
  { corners, cut, openings, slits }: LaidCopy,
  tell: Teller,
  figure: (mm: number) => string,
): Cell {
  const pair = pairs(figure)
  const round = corners.map(
    ({ at, fromSelvedge, fromCutEnd }) =>
      `${pair(fromSelvedge, fromCutEnd)}${arcFrom(cut, at, tell, figure)}`,
  )
  const nearest = ({ x, y }: Point) => pair(x, y)
  const inner = [
    ...openings.map((opening) =>
      tell('paper.cutting.opening', {
        corners: opening.cut
          .map((s) => `${nearest(s.from)}${arcFrom(opening.cut, s.from, tell, figure)}`)
          .join(BETWEEN),
      }),
    ),
    ...slits.map((slit) =>
      tell('paper.cutting.slit', { from: nearest(slit[0]!.from), to: nearest(slit.at(-1)!.to) }),
    ),
  ]
  return {
    paragraphs: [{ words: round.join(BETWEEN) }, ...inner.map((words) => ({ words, look: 'note' as const }))],
  }
}

/** Stays at the end of a line when the line breaks there. */
const BETWEEN = '\u00a0· '

/** A pair of figures that is never broken over lines. */
const pairs =
  (figure: (mm: number) => string) =>
  (fromSelvedge: number, fromCutEnd: number): string =>
    `${figure(fromSelvedge)}\u00a0/\u00a0${figure(fromCutEnd)}`

/** Says that the line leaves a corner in an arc. */
function arcFrom(path: Path, at: Point, tell: Teller, figure: (mm: number) => string): string {
  const segment = path.find((s) => samePoint(s.from, at))
  if (segment?.kind !== 'arc') return ''
  // Two arcs of a radius go through two points: the middle says which.
  const { x, y } = pointAt(segment, 0.5)
  const arc = tell('paper.cutting.arc', {
    ...{ radius: figure(arcRadius(segment)), through: pairs(figure)(x, y) },
  })
  return ` ${arc}`.replaceAll(' ', '\u00a0')
}

/** What is likely to be left over: sizes rounded down, places to the nearest millimetre. */
function offcuts(lay: Lay, reader: Reader): Block {
  const tell = tellerOf(reader)
  if (lay.offcuts.length === 0) return { kind: 'paragraph', words: tell('paper.cutting.noOffcuts') }
  const { unit, locale } = reader
  const { unit: placeUnit, figure } = chalkWriting(reader)
  return listed(
    lay.offcuts.map(({ x, y, width, height }) =>
      tell('paper.cutting.offcut', {
        across: printLengthBare(Math.floor(width), unit, locale),
        along: printLengthBare(Math.floor(height), unit, locale),
        unit,
        ...{ place: pairs(figure)(x, y), placeUnit },
      }),
    ),
  )
}

function cautions(tell: Teller): Block {
  const panel: Block = {
    kind: 'panel',
    bar: 'madder',
    blocks: [
      { kind: 'paragraph', words: tell('caution.title'), look: 'care', before: 0, keepWithNext: true },
      listed([
        tell('draft.caution.blades'),
        tell('draft.caution.pinsInLine'),
        tell('draft.caution.dust'),
        tell('caution.localRules'),
      ]),
    ],
  }
  return { kind: 'together', blocks: [panel] }
}
