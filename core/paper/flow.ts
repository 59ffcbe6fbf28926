import { type Block, layBlocks } from './block.ts'
import { breakLines, shortened } from './lines.ts'
import { type Mark, PAPERS, type Page, type PaperDocument, type PaperSize } from './page.ts'
import { type Strip, shifted, silent, Tagger } from './strip.ts'
import { FOOT, LOOKS, MARGIN } from './style.ts'
import { baseline, lineMarks } from './words.ts'

/** What stands at the foot of every page: on the left the same words, on the right its number. */
export type Foot = { left: string; page: (page: number, pages: number) => string }

/** The part of a page that blocks are laid in. */
export function frameOf(paper: PaperSize): { x: number; y: number; width: number; height: number } {
  const { width, height } = PAPERS[paper]
  return {
    x: MARGIN.left,
    y: MARGIN.top,
    width: width - MARGIN.left - MARGIN.right,
    height: height - MARGIN.top - MARGIN.bottom,
  }
}

/**
 * Lays blocks on as many pages as they need, each with its foot line.
 * @param following pages that come after these, and are counted on them
 */
export function layPages(
  blocks: readonly Block[],
  paper: PaperSize,
  foot: Foot,
  { tagger = new Tagger(), following = 0 } = {},
): PaperDocument {
  const frame = frameOf(paper)
  const { strips, tags } = layBlocks(tagger, blocks, frame.width)
  const pages = paginated(strips, frame.height).map(
    (marks): Page => ({ marks: shifted(marks, frame.x, frame.y) }),
  )
  pages.forEach((page, i) => {
    page.marks.push(...footMarks(foot, paper, i + 1, pages.length + following))
  })
  return { paper, pages, tags }
}

/** Strips that must stay together, as far as a page holds them. */
function chunks(strips: readonly Strip[]): Strip[][] {
  const found: Strip[][] = []
  let open = false
  for (const strip of strips) {
    if (open) found.at(-1)!.push(strip)
    else found.push([strip])
    open = strip.keep
  }
  return found
}

function paginated(strips: readonly Strip[], height: number): Mark[][] {
  const pages: Mark[][] = [[]]
  let y = 0
  const turn = () => {
    pages.push([])
    y = 0
  }
  const place = (strip: Strip) => {
    if (y > 0) y += strip.before
    else if (pages.length > 1 && strip.head !== undefined) {
      pages.at(-1)!.push(...silent(strip.head).marks)
      y += strip.head.height
    }
    pages.at(-1)!.push(...shifted(strip.marks, 0, y))
    y += strip.height
  }
  for (const chunk of chunks(strips)) {
    const tall = chunk.reduce((sum, strip) => sum + strip.before + strip.height, 0)
    if (y > 0 && y + tall > height && tall <= height) turn()
    for (const strip of chunk) {
      if (y > 0 && y + strip.before + strip.height > height) turn()
      place(strip)
    }
  }
  return pages
}

function footMarks(foot: Foot, paper: PaperSize, page: number, pages: number): Mark[] {
  const { x, width } = frameOf(paper)
  const look = LOOKS.foot
  const number = breakLines(foot.page(page, pages), look, width / 3)[0]!
  const words = shortened(foot.left, look, width - number.width - 8)
  const top = PAPERS[paper].height - FOOT - baseline(look)
  return shifted(
    [...lineMarks(words, look, width, 'left', 0, null), ...lineMarks(number, look, width, 'right', 0, null)],
    x,
    top,
  )
}
