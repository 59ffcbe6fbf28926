import { type FullSize, fullSizeParts } from '../draw/full-size.ts'
import { sheetSvg } from '../draw/svg.ts'
import { printLength } from '../words/length.ts'
import { phrase } from '../words/phrase.ts'
import { Refusal } from '../words/refusal.ts'
import { type Reader, say } from '../words/say.ts'
import type { Block } from './block.ts'
import { layPages } from './flow.ts'
import { capital } from './names.ts'
import { PAPERS, type PaperDocument, type SheetSize } from './page.ts'
import { drawSquares } from './pattern/checks.ts'
import { pageMap } from './pattern/map.ts'
import { boxOf, tilePage, wholePage } from './pattern/sheets.ts'
import { cross, type Tiling, tilesOn, widthOf } from './pattern/tiles.ts'
import { inkOf, type WholePattern, wholePattern } from './pattern/whole.ts'
import {
  type GarmentSheet,
  garmentFoot,
  garmentHead,
  listed,
  readerOf,
  refuseUnprintable,
  tellerOf,
} from './sheet.ts'
import { Tagger } from './strip.ts'

/** What a pattern is printed on: sheets of a common size to put together, or one sheet that holds it all. */
export const PATTERN_PAPERS = ['A4', 'A3', 'Letter', 'oneSheet'] as const satisfies (SheetSize | 'oneSheet')[]
export type PatternPaper = (typeof PATTERN_PAPERS)[number]

/**
 * The full-size pattern of what cannot be chalked from measures alone.
 *
 * @throws Refusal when all of the garment can be; or at the field that holds a character no font has
 */
export function patternSheets(sheet: GarmentSheet, paper: PatternPaper): PaperDocument {
  refuseUnprintable(sheet.snapshot)
  return paper === 'oneSheet' ? onOneSheet(sheet) : tiled(sheet, paper)
}

/** What of a garment is drawn full size. */
function partsOf({ line }: GarmentSheet): FullSize[] {
  const parts = fullSizeParts(line.estimate.draft.pieces)
  if (parts.length === 0) throw new Refusal(phrase('refusal.pattern.none'))
  return parts
}

/** All parts of a garment's pattern in their places on one sheet. */
export const patternOf = (sheet: GarmentSheet): WholePattern =>
  wholePattern(partsOf(sheet), readerOf(sheet.snapshot))

/** The most sheets beside each other that are tried. */
const BESIDE = 5

/** The parts laid out so that they take the fewest sheets, upright or across. */
function fewestSheets(
  parts: readonly FullSize[],
  reader: Reader,
  paper: SheetSize,
): { whole: WholePattern; tiling: Tiling } {
  const { width, height } = PAPERS[paper]
  const tried = [
    { width, height },
    { width: height, height: width },
  ].flatMap((sheet) =>
    Array.from({ length: BESIDE }, (_, i) => {
      const whole = wholePattern(parts, reader, { most: widthOf(i + 1, sheet), edge: 0 })
      return { whole, tiling: tilesOn(sheet, whole, whole.parts.flatMap(inkOf)) }
    }),
  )
  return tried.reduce((best, one) => (one.tiling.tiles.length < best.tiling.tiles.length ? one : best))
}

const aboutOf = ({ snapshot, line, commissionNumber, day }: GarmentSheet): string =>
  tellerOf(readerOf(snapshot))('paper.pattern.foot', {
    ...{ number: commissionNumber, day: { date: day }, title: line.title, wearer: line.wearer.name },
  })

function onOneSheet(sheet: GarmentSheet): PaperDocument {
  const whole = patternOf(sheet)
  const tell = tellerOf(readerOf(sheet.snapshot))
  const tag = new Tagger().tag('Figure', [], {
    alt: whole.parts.map(({ drawing }) => drawing.label).join(' '),
  })
  const said = { tell, about: aboutOf(sheet), page: () => '' }
  return { paper: sheet.snapshot.letterhead.paper, pages: [wholePage(whole, said, tag.id)], tags: [tag] }
}

/** The pattern on one sheet as an SVG document at its true size: curves are arcs, and both squares stand under it. */
export function patternDrawing(sheet: GarmentSheet): string {
  refuseUnprintable(sheet.snapshot)
  const whole = patternOf(sheet)
  const squares = drawSquares(tellerOf(readerOf(sheet.snapshot)))
  const under = { drawing: squares, x: 0, y: whole.height }
  return sheetSvg(
    { width: Math.max(whole.width, squares.box.width), height: whole.height + squares.box.height },
    [...whole.parts, under],
    aboutOf(sheet),
  )
}

/** Room for the map on the sheet that tells how the others lie, mm. */
const MAP = { width: 150, height: 72 }

function tiled(sheet: GarmentSheet, paper: SheetSize): PaperDocument {
  const reader = readerOf(sheet.snapshot)
  const tell = tellerOf(reader)
  const { whole, tiling } = fewestSheets(partsOf(sheet), reader, paper)
  const { tiles } = tiling
  const names = tiles.map(({ name }) => name).join(', ')
  const map = pageMap(whole, tiling, tell('paper.pattern.map.label', { count: tiles.length, names }), MAP)
  const size = (mm: number) => printLength(mm, reader.unit, reader.locale)
  const blocks: Block[] = [
    ...garmentHead(tell, tell('paper.pattern.title'), sheet),
    { kind: 'heading', level: 2, words: tell('paper.pattern.how') },
    listed(
      [
        ...(['scale', 'trim', 'lines'] as const),
        ...(whole.parts.some(({ part }) => !part.whole) ? (['part'] as const) : []),
        'washed' as const,
      ].map((id) => tell(`paper.pattern.how.${id}`)),
    ),
    { kind: 'heading', level: 2, words: tell('paper.pattern.parts') },
    {
      kind: 'table',
      columns: [
        { heading: tell('paper.pattern.column.piece'), share: 5, look: 'cellStrong', head: true },
        { heading: tell('paper.pattern.column.what'), share: 5 },
        { heading: tell('paper.pattern.column.size'), share: 4 },
      ],
      rows: whole.parts.map(({ part: { piece, window, whole: all } }) => ({
        cells: [
          capital(say(piece.name, reader)),
          tell(all ? 'paper.pattern.whole' : 'paper.pattern.curve'),
          `${size(window.width)} × ${size(window.height)}`,
        ],
      })),
    },
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, words: tell('paper.pattern.map') },
        { kind: 'figures', drawings: [map] },
      ],
    },
  ]
  const tagger = new Tagger()
  const about = aboutOf(sheet)
  const { paper: own, ...cover } = layPages(
    blocks,
    sheet.snapshot.letterhead.paper,
    garmentFoot(tell, about, sheet),
    {
      ...{ tagger, following: tiles.length },
    },
  )
  const count = cover.pages.length + tiles.length
  const page = (one: number) => tell('paper.foot.page', { page: String(one), pages: String(count) })
  const tags = tiles.map(({ name, window }) => {
    const here = whole.parts.filter((part) => cross(boxOf(part), window))
    const pieces = here.map(({ part }) => say(part.piece.name, reader)).join(', ')
    return tagger.tag('Figure', [], { alt: tell('paper.pattern.sheet', { name, pieces }) })
  })
  const sheets = tiles.map((tile, i) =>
    tilePage(whole, tiling, tile, cover.pages.length + i + 1, { tell, about, page }, tags[i]!.id),
  )
  return { paper: own, pages: [...cover.pages, ...sheets], tags: [...cover.tags, ...tags] }
}
