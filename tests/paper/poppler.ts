import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Whether poppler's tools, which know nothing of how the file was made, can read the sheets back. */
export const hasPoppler = spawnSync('pdftotext', ['-v']).error === undefined

function run(tool: string, options: readonly string[], pdf: Uint8Array, last: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'sheet-'))
  try {
    const file = join(folder, 'sheet.pdf')
    writeFileSync(file, pdf)
    const { stdout, stderr, status } = spawnSync(tool, [...options, file, ...last], { encoding: 'utf8' })
    if (status !== 0) throw new Error(`${tool}: ${stderr}`)
    return stdout
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The text of a file with every run of white space as one space. */
export const textOf = (pdf: Uint8Array): string =>
  run('pdftotext', ['-layout'], pdf, ['-']).replace(/\s+/g, ' ')

/** The text in the order of the tags, line by line. */
export const taggedText = (pdf: Uint8Array): string => run('pdfinfo', ['-struct-text'], pdf, [])

export const infoOf = (pdf: Uint8Array): string => run('pdfinfo', [], pdf, [])

export const fontsOf = (pdf: Uint8Array): string => run('pdffonts', [], pdf, [])

/** How many pictures a file shows. */
export const imagesOf = (pdf: Uint8Array): number =>
  run('pdfimages', ['-list'], pdf, []).trim().split('\n').length - 2

/** Every word with its place, mm from the top left corner, as poppler finds it; page by page. */
export function wordsOf(
  pdf: Uint8Array,
): { page: number; word: string; x: number; y: number; right: number; bottom: number }[] {
  const pages = run('pdftotext', ['-bbox'], pdf, ['-']).split('<page ').slice(1)
  return pages.flatMap((text, i) =>
    [
      ...text.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g),
    ].map(([, x, y, right, bottom, word]) => {
      const mm = (points: string | undefined) => (Number(points) * 25.4) / 72
      return { page: i + 1, word: word!, x: mm(x), y: mm(y), right: mm(right), bottom: mm(bottom) }
    }),
  )
}

/** A line drawn on a page as the file has it: its colour, and where it goes, mm from the top left corner. */
export type Drawn = { rgb: string; points: { x: number; y: number }[]; curved: boolean }

/**
 * The lines of one page, in the order they are drawn. Poppler's SVG carries the file's own coordinates, in points to a
 * 256th, and beside them a matrix that fits the page to whole points, which is passed over.
 */
export function linesOf(pdf: Uint8Array, page: number): Drawn[] {
  const svg = run('pdftocairo', ['-svg', '-f', String(page), '-l', String(page)], pdf, ['-'])
  return [...svg.matchAll(/<path style="([^"]*stroke-width[^"]*)" d="([^"]*)"/g)].map(([, style, data]) => {
    const [r, g, b] = /stroke:rgb\(([\d.]+)%,([\d.]+)%,([\d.]+)%\)/.exec(style!)!.slice(1, 4)
    const hex = [r, g, b]
      .map((part) =>
        Math.round(Number(part) * 2.55)
          .toString(16)
          .padStart(2, '0'),
      )
      .join('')
    const figures = data!.match(/-?[\d.]+/g)!.map((one) => (Number(one) * 25.4) / 72)
    const points = Array.from({ length: figures.length / 2 }, (_, i) => ({
      ...{ x: figures[2 * i]!, y: figures[2 * i + 1]! },
    }))
    return { rgb: `#${hex}`, points, curved: data!.includes('C') }
  })
}
