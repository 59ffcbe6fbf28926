import { quoted } from '../words/csv.ts'
import { isMeasureId, MEASURE_IDS, type MeasureId } from './vocabulary.ts'

/** What a measure is called, by which everyday names besides, and how it is taken. */
export type Named = { id: MeasureId; name: string; also: string; how: string }

/** The measures that a form that came back has, as they were written, and the lines that made no sense. */
export type FormRead = { measures: Partial<Record<MeasureId, string>>; unread: string[] }

/**
 * A form to fill in with any text editor or spreadsheet: comma-separated values (RFC 4180), a line for each
 * measure, the size left empty.
 */
export function formOf(
  measures: readonly Named[],
  heads: { name: string; size: string; how: string },
): string {
  const rows = [
    ['measure', heads.name, heads.size, heads.how],
    ...measures.map(({ id, name, how }) => [id, name, '', how]),
  ]
  return `${rows.map((row) => row.map(quoted).join(',')).join('\r\n')}\r\n`
}

/**
 * Reads a form that came back: the comma-separated one, also as spreadsheets write it with semicolons or tabs;
 * or plain lines such as `waist: 78.5` under whichever name a measure is known by.
 */
export function readForm(text: string, known: readonly Named[]): FormRead {
  const measures: FormRead['measures'] = {}
  const unread: string[] = []
  for (const cells of linesOf(text)) {
    const [first = '', ...rest] = cells.map((cell) => cell.trim())
    if (first === '' || first === 'measure' || first.startsWith('#')) continue
    const [id, size] = isMeasureId(first) ? [first, rest[1] ?? ''] : spoken([first, ...rest].join(' '), known)
    if (id === undefined) unread.push(cells.join(' ').trim())
    else if (size !== '') measures[id] = size
  }
  return { measures, unread }
}

/** A line as people write it: the measure’s name, then perhaps a colon or equals sign, then its size. */
function spoken(line: string, known: readonly Named[]): [id: MeasureId | undefined, size: string] {
  const [, name = '', size = ''] = /^(.*?)\s*(?:[:=]|\s(?=(?:[LlRr]\s*)?[\d½¼¾]))\s*(.*)$/.exec(line) ?? []
  const sought = name.trim().toLocaleLowerCase()
  const found = known.find(({ name: own, also }) =>
    [own, ...also.split(',')].some((one) => one.trim().toLocaleLowerCase() === sought),
  )
  return [found?.id, size.trim()]
}

/** Lines cut into cells at the separator the file uses; quoted cells may hold separators and doubled quotes. */
function linesOf(text: string): string[][] {
  // Spreadsheets, and our own form, begin with a mark of the encoding.
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  const separator = ['\t', ';', ','].find((one) => lines[0]!.startsWith(`measure${one}`))
  if (separator === undefined) return lines.map((line) => [line])
  return lines.map((line) => cellsOf(line, separator))
}

function cellsOf(line: string, separator: string): string[] {
  const cells = ['']
  let within = false
  for (let i = 0; i < line.length; i++) {
    const sign = line[i]!
    if (sign === '"' && within && line[i + 1] === '"') {
      cells[cells.length - 1] += '"'
      i++
    } else if (sign === '"') within = !within
    else if (sign === separator && !within) cells.push('')
    else cells[cells.length - 1] += sign
  }
  return cells
}

/** Those of a body's dimensions that are asked for, in the order one takes them. */
export const inOrder = (wanted: readonly MeasureId[]): MeasureId[] =>
  MEASURE_IDS.filter((id) => wanted.includes(id))
