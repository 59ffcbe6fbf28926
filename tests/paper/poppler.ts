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
