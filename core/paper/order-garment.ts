import type { ChoiceValue, Draft, FitCheck, Piece } from '../draft/types.ts'
import { drawPiece } from '../draw/piece.ts'
import { pathBox } from '../geometry/segment.ts'
import type { Path } from '../geometry/types.ts'
import type { QuoteLine } from '../quote/types.ts'
import { printLength, printLengthBare } from '../words/length.ts'
import { type Reader, say } from '../words/say.ts'
import type { Block } from './block.ts'
import type { Cell } from './cells.ts'
import { capital, nameOf } from './names.ts'
import { type GarmentSheet, tellerOf } from './sheet.ts'

/**
 * What was worn under the tape, then the measures the garment is drafted to, two to a row. Of those that were taken
 * one line says so; the others say how they are known, and estimated ones carry their doubt.
 */
export function measureBlocks(line: QuoteLine, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const { over = '' } = line.measurementSet
  const measures = Object.values(line.body.measures)
  const others = measures.some(({ source }) => source !== 'taken')
  const notes = [
    ...(over === '' ? [] : [tell('paper.measure.over', { over })]),
    ...(measures.every(({ source }) => source !== 'taken')
      ? []
      : [tell(others ? 'paper.measure.takenOthers' : 'paper.measure.takenAll')]),
  ]
  return [
    ...(notes.length === 0
      ? []
      : [
          { kind: 'paragraph' as const, words: notes.join(' · '), look: 'note' as const, keepWithNext: true },
        ]),
    measureTable(line, others, reader),
  ]
}

function measureTable(line: QuoteLine, others: boolean, reader: Reader): Block {
  const tell = tellerOf(reader)
  const rows = Object.entries(line.body.measures).map(([id, measure]): Cell[] => {
    const size = printLength(measure.mm, reader.unit, reader.locale)
    const name = capital(nameOf('measure', id, reader))
    if (measure.source === 'taken') return [name, { words: size, look: 'cellStrong' }, '']
    if (measure.source === 'carried')
      return [name, { words: size, look: 'cellStrong' }, tell('paper.measure.carried')]
    const doubt =
      measure.sd === undefined
        ? tell('paper.measure.estimatedBare')
        : tell('paper.measure.estimated', { sd: { mm: measure.sd } })
    return [name, { words: size, look: 'estimate' }, { words: doubt, look: 'estimate' }]
  })
  const columns = [
    tell('paper.measure.column.name'),
    tell('paper.measure.column.size'),
    tell('paper.measure.column.source'),
  ]
  const told = others ? columns.length : columns.length - 1
  return pairs(
    rows.map((row) => row.slice(0, told)),
    columns.slice(0, told),
  )
}

/** The finished sizes, then the choices they come from, two to a row. */
export function choiceTables({ line, lengthChoices = [] }: GarmentSheet, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const { choices, sizes } = line.estimate.draft
  const strong = (words: string): Cell => ({ words, look: 'cellStrong' })
  const table = (heading: string, rows: readonly Cell[][]): Block[] => [
    { kind: 'heading', level: 3, words: heading },
    { ...pairs(rows, ['', '']), headings: false, before: 1, pad: { above: 0.7, below: 0.7, gap: 3 } },
  ]
  return [
    ...table(
      tell('paper.order.sizes'),
      sizes.map(({ name, mm }) => [
        capital(say(name, reader)),
        strong(printLength(mm, reader.unit, reader.locale)),
      ]),
    ),
    ...table(
      tell('paper.order.choices'),
      // A felled seam takes allowances of its own, whatever was chosen for open ones.
      Object.entries(choices)
        .filter(([id]) => id !== 'seamAllowance' || choices.seamFinish !== 'felled')
        .map(([id, value]) => [
          capital(nameOf('choice', id, reader)),
          strong(choiceValue(value, lengthChoices.includes(id), reader)),
        ]),
    ),
  ]
}

function choiceValue(value: ChoiceValue, isLength: boolean, reader: Reader): string {
  const tell = tellerOf(reader)
  if (typeof value === 'boolean') return tell(value ? 'paper.yes' : 'paper.no')
  if (typeof value === 'string') return nameOf('choiceValue', value, reader)
  return isLength ? printLength(value, reader.unit, reader.locale) : tell('paper.number', { number: value })
}

/** Rows of two or three cells set two by two across the sheet, filled downward. */
function pairs(rows: readonly Cell[][], headings: readonly string[]): Block & { kind: 'table' } {
  const half = Math.ceil(rows.length / 2)
  const shares = headings.length === 2 ? [50, 34] : [36, 20, 28]
  const columns = headings.map((heading, i) => ({ heading, share: shares[i]! }))
  const gap = { heading: '', share: 3 }
  const empty = headings.map(() => '')
  return {
    kind: 'table',
    columns: rows.length < 2 ? columns : [...columns, gap, ...columns],
    rows: rows.slice(0, half).map((row, i) => ({
      // A heading never stands over one row alone at the foot of a page.
      keep: i < 2 && i < half - 1,
      cells: rows.length < 2 ? row : [...row, '', ...(rows[half + i] ?? empty)],
    })),
  }
}

/** Every piece: how many, its size finished and cut, and what is left beyond its edges. */
export function pieceTable({ pieces }: Draft, reader: Reader): Block {
  const tell = tellerOf(reader)
  const { unit } = reader
  const box = (path: Path) => {
    const { width, height } = pathBox(path)
    return `${printLengthBare(width, unit, reader.locale)} × ${printLengthBare(height, unit, reader.locale)}`
  }
  return {
    kind: 'table',
    columns: [
      { heading: tell('paper.piece.column.name'), share: 34, look: 'cellStrong' },
      { heading: tell('paper.piece.column.count'), share: 26 },
      { heading: tell('paper.piece.column.finished', { unit }), share: 28 },
      { heading: tell('paper.piece.column.allowances', { unit }), share: 30 },
      { heading: tell('paper.piece.column.grain'), share: 18 },
      { heading: tell('paper.piece.column.cut', { unit }), share: 28 },
    ],
    rows: pieces.map((piece) => ({
      cells: [
        say(piece.name, reader),
        countOf(piece, reader),
        box(piece.outline),
        allowancesOf(piece, reader),
        tell(piece.grain === 'bias' ? 'paper.grain.bias' : 'paper.grain.straight'),
        box(piece.cut),
      ],
    })),
  }
}

function countOf({ copies }: Piece, reader: Reader): string {
  const mirrored = copies.filter((copy) => copy.mirrored).length
  const tell = tellerOf(reader)
  return mirrored === 0
    ? tell('paper.number', { number: copies.length })
    : tell('paper.piece.mirrored', { count: copies.length, mirrored })
}

/** The allowances of a piece's seams, then those of its hems, each once, the widest last. */
function allowancesOf({ edges, slits }: Piece, reader: Reader): string {
  const tell = tellerOf(reader)
  // A slit takes its allowance out of the piece itself; nothing is left beyond it.
  const beyond = edges.filter(({ on }) => !slits.some(({ id }) => id === on))
  const widths = (turned: boolean) =>
    [...new Set(beyond.filter((edge) => edge.turned === turned).map((edge) => edge.allowance))]
      .sort((a, b) => a - b)
      .map((mm) => (mm === 0 ? tell('paper.piece.fold') : printLengthBare(mm, reader.unit, reader.locale)))
      .join(', ')
  const [seams, hems] = [widths(false), widths(true)]
  return hems === ''
    ? seams
    : seams === ''
      ? tell('paper.piece.hemsOnly', { hems })
      : tell('paper.piece.withHems', { seams, hems })
}

/** Scales a maker can read off with a rule, mm on the sheet for one of cloth. */
const SCALES = [1 / 5, 1 / 8, 1 / 10, 1 / 15, 1 / 20, 1 / 25, 1 / 30, 1 / 40, 1 / 50]
/** The greatest height and width a piece's drawing may take on the order, mm. */
const DRAWN = { width: 48, height: 74 }

/** All pieces at one scale, the largest of the plain scales at which the biggest of them is still small. */
export function pieceDrawings({ pieces }: Draft, reader: Reader): { scale: number; block: Block } {
  const fits = (scale: number) =>
    pieces.every(({ cut }) => {
      const { width, height } = pathBox(cut)
      return width * scale <= DRAWN.width && height * scale <= DRAWN.height
    })
  const scale = SCALES.find(fits) ?? SCALES.at(-1)!
  return {
    scale,
    block: { kind: 'figures', drawings: pieces.map((piece) => drawPiece(piece, reader, scale)) },
  }
}

/** What fails, loudly; undefined when nothing does. */
export function failingChecks({ fit }: Draft, reader: Reader): Block | undefined {
  const tell = tellerOf(reader)
  const failing = fit.filter(({ status }) => status === 'fails')
  if (failing.length === 0) return undefined
  return {
    kind: 'panel',
    bar: 'madder',
    blocks: [
      { kind: 'paragraph', words: tell('paper.fit.fails'), look: 'care', before: 0, keepWithNext: true },
      ...failing.map((check): Block => {
        const mend = check.mend === undefined ? '' : ` ${say(check.mend, reader)}`
        return { kind: 'paragraph', words: `${figures(check, reader)}${mend}`, look: 'cellStrong', before: 1 }
      }),
    ],
  }
}

function figures({ name, garment, needs, bound }: FitCheck, reader: Reader): string {
  const tell = tellerOf(reader)
  if (garment === undefined || needs === undefined) return tell('paper.fit.bare', { name })
  const code = bound === 'least' ? 'paper.fit.tooSmall' : 'paper.fit.tooLarge'
  return tell(code, { name, garment: { mm: garment }, needs: { mm: needs } })
}

/** The fit report: what fails and what could not be checked, line by line, and in a sentence what holds. */
export function fitBlocks({ fit }: Draft, reader: Reader): Block[] {
  const tell = tellerOf(reader)
  const order = ['fails', 'unchecked', 'good']
  const size = (mm: number | undefined) =>
    mm === undefined ? '–' : printLengthBare(mm, reader.unit, reader.locale)
  const held = fit.filter(({ status }) => status === 'good').map(({ name }) => say(name, reader))
  const others = fit.filter(({ status }) => status !== 'good')
  const table: Block = {
    kind: 'table',
    columns: [
      { heading: tell('paper.fit.column.check'), share: 62 },
      { heading: tell('paper.fit.column.garment', { unit: reader.unit }), share: 26 },
      { heading: tell('paper.fit.column.needs', { unit: reader.unit }), share: 34 },
      { heading: tell('paper.fit.column.result'), share: 52 },
    ],
    rows: others
      .sort((a, b) => order.indexOf(a.status) - order.indexOf(b.status))
      .map((check) => ({
        cells: [
          say(check.name, reader),
          size(check.garment),
          check.needs === undefined
            ? '–'
            : tell(check.bound === 'least' ? 'paper.fit.atLeast' : 'paper.fit.atMost', {
                size: size(check.needs),
              }),
          result(check, reader),
        ],
      })),
  }
  return [
    ...(others.length === 0 ? [] : [table]),
    ...(held.length === 0
      ? []
      : [{ kind: 'paragraph' as const, words: tell('paper.fit.held', { checks: held.join(', ') }) }]),
  ]
}

function result({ status, missing = [] }: FitCheck, reader: Reader): Cell {
  const tell = tellerOf(reader)
  if (status === 'fails') return { words: tell('paper.fit.failing'), look: 'care' }
  if (missing.length === 0) return { words: tell('paper.fit.unchecked'), look: 'estimate' }
  const measures = missing.map((id) => nameOf('measure', id, reader)).join(', ')
  return { words: tell('paper.fit.missing', { measures }), look: 'estimate' }
}
