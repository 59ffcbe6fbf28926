import { DYES } from '../draw/ink.ts'
import { escaped, pathData } from '../draw/svg.ts'
import type { Path, Rectangle } from '../geometry/types.ts'
import {
  type FaceId,
  type ImageMark,
  type Mark,
  PAPERS,
  type Page,
  type PaperDocument,
  type PathMark,
  type TextRun,
} from './page.ts'
import { POINT } from './style.ts'

/** A page to look at: its drawing, and its size in mm. */
export type ShownPage = { svg: string; width: number; height: number }

/**
 * The pages of a sheet as they will be printed, each as an SVG document: the same marks in the same places, words as wide
 * as they were measured, whatever font the screen has.
 *
 * @param images the bytes of a PNG by the hash of its file
 */
export function shownPages(
  { paper, pages }: Pick<PaperDocument, 'paper' | 'pages'>,
  images: (hash: string) => Uint8Array,
): ShownPage[] {
  return pages.map((page) => {
    const { width, height } = page.size ?? PAPERS[paper]
    return { svg: svgOf(page, width, height, images), width, height }
  })
}

function svgOf({ marks }: Page, width: number, height: number, images: (hash: string) => Uint8Array): string {
  const body = marks.map((mark) => clipped(drawn(mark, images), mark.clip)).join('')
  const frame = `viewBox="0 0 ${n(width)} ${n(height)}"`
  return `<svg xmlns="http://www.w3.org/2000/svg" ${frame} aria-hidden="true"><rect width="100%" height="100%" fill="${DYES.paper}"/>${body}</svg>`
}

function drawn(mark: Mark, images: (hash: string) => Uint8Array): string {
  if (mark.kind === 'text') return words(mark)
  return mark.kind === 'path' ? paths(mark) : image(mark, images)
}

const FAMILIES: Record<FaceId, string> = {
  serif: 'font-family="EB Garamond, serif"',
  serifItalic: 'font-family="EB Garamond, serif" font-style="italic"',
  serifBold: 'font-family="EB Garamond, serif" font-weight="600"',
  sans: 'font-family="Source Sans 3, sans-serif"',
  sansItalic: 'font-family="Source Sans 3, sans-serif" font-style="italic"',
  sansBold: 'font-family="Source Sans 3, sans-serif" font-weight="600"',
  hebrew: 'font-family="serif" direction="rtl"',
  hebrewBold: 'font-family="serif" font-weight="600" direction="rtl"',
  arabic: 'font-family="serif" direction="rtl"',
  arabicBold: 'font-family="serif" font-weight="600" direction="rtl"',
}

function words({ x, y, text, face, size, dye, width, angle }: TextRun): string {
  if (text.trim() === '') return ''
  // What is written from right to left begins at its right end.
  const start = FAMILIES[face].includes('rtl') ? x + width : x
  const turn = angle === 0 ? '' : ` transform="rotate(${n(-angle)} ${n(x)} ${n(y)})"`
  return [
    `<text x="${n(start)}" y="${n(y)}" ${FAMILIES[face]} font-size="${n(size * POINT)}" fill="${DYES[dye]}"`,
    ` textLength="${n(width)}" lengthAdjust="spacingAndGlyphs" xml:space="preserve"${turn}>${escaped(text)}</text>`,
  ].join('')
}

function paths({ paths: all, stroke, fill }: PathMark): string {
  const data = all.map(downward).map(pathData).join('')
  const filled = fill === undefined ? 'fill="none"' : `fill="${DYES[fill]}" fill-rule="evenodd"`
  if (stroke === undefined) return `<path d="${data}" ${filled}/>`
  const dashes = stroke.dash.length === 0 ? '' : ` stroke-dasharray="${stroke.dash.join(' ')}"`
  return `<path d="${data}" ${filled} stroke="${DYES[stroke.dye]}" stroke-width="${stroke.weight}"${dashes}/>`
}

/** Path data is written for worlds that run upward; a page runs downward. */
const downward = (path: Path): Path =>
  path.map((s) => {
    const turned = ({ x, y }: { x: number; y: number }) => ({ x, y: -y })
    return s.kind === 'line'
      ? { kind: 'line', from: turned(s.from), to: turned(s.to) }
      : { kind: 'arc', from: turned(s.from), to: turned(s.to), centre: turned(s.centre), sweep: -s.sweep }
  })

function image({ hash, x, y, width, height }: ImageMark, images: (hash: string) => Uint8Array): string {
  const data = Buffer.from(images(hash)).toString('base64')
  const place = `x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}"`
  return `<image ${place} href="data:image/png;base64,${data}"/>`
}

/** Cut off by a nested frame, which needs no name that other pages might share. */
function clipped(content: string, clip: Rectangle | undefined): string {
  if (clip === undefined) return content
  const frame = `${n(clip.x)} ${n(clip.y)} ${n(clip.width)} ${n(clip.height)}`
  const place = `x="${n(clip.x)}" y="${n(clip.y)}" width="${n(clip.width)}" height="${n(clip.height)}"`
  return `<svg ${place} viewBox="${frame}" overflow="hidden">${content}</svg>`
}

const n = (value: number): string => String(Math.round(value * 1e3) / 1e3 || 0)
