import { samePoint } from '../geometry/point.ts'
import { arcRadius, pointAt } from '../geometry/segment.ts'
import type { Path, Point, Rectangle, Segment } from '../geometry/types.ts'
import type { Drawing, Lettering, Strokes } from './drawing.ts'
import { CAPITAL, DYES, INKS, LETTERS, TINTS } from './ink.ts'

/**
 * The drawing as an SVG document at its scale: world mm with y turned down, arcs kept as arcs, and the
 * label as its accessible name. Weights and letters are sized for the drawing's scale.
 */
export function svgOf(drawing: Drawing): string {
  const { box, scale, label } = drawing
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(label)}"`,
    ` viewBox="${frame(box)}"`,
    ` width="${n(box.width * scale)}mm" height="${n(box.height * scale)}mm">`,
    `<title>${escaped(label)}</title>${inside(drawing)}</svg>`,
  ].join('')
}

/** Drawings in their places on one sheet as an SVG document at its true size; places are mm from the top left corner. */
export function sheetSvg(
  { width, height }: { width: number; height: number },
  placed: readonly { drawing: Drawing; x: number; y: number }[],
  label: string,
): string {
  const parts = placed.map(({ drawing, x, y }) => {
    const { box, scale } = drawing
    const place = `x="${n(x)}" y="${n(y)}" width="${n(box.width * scale)}" height="${n(box.height * scale)}"`
    return `<svg ${place} viewBox="${frame(box)}"><title>${escaped(drawing.label)}</title>${inside(drawing)}</svg>`
  })
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(label)}"`,
    ` viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}mm" height="${n(height)}mm">`,
    `<title>${escaped(label)}</title>${parts.join('')}</svg>`,
  ].join('')
}

function inside({ scale, clip, items }: Drawing): string {
  const parts = items.map((item) => {
    if (item.kind === 'lettering') return lettering(item, scale)
    return item.clipped === true && clip !== undefined
      ? inWindow(strokes(item, scale), clip)
      : strokes(item, scale)
  })
  return parts.join('')
}

const frame = ({ x, y, width, height }: Rectangle): string =>
  `${n(x)} ${n(-y - height)} ${n(width)} ${n(height)}`

/** Cut off at the window by a nested frame, which needs no name that other drawings on the page might share. */
function inWindow(content: string, window: Rectangle): string {
  const { x, y, width, height } = window
  const place = `x="${n(x)}" y="${n(-y - height)}" width="${n(width)}" height="${n(height)}"`
  return `<svg ${place} viewBox="${frame(window)}" overflow="hidden">${content}</svg>`
}

function strokes({ paths, line, fill }: Strokes, scale: number): string {
  const ink = line === null ? undefined : INKS[line]
  const attributes = [
    `d="${paths.map(pathData).join('')}"`,
    fill === undefined ? 'fill="none"' : `fill="${DYES[TINTS[fill]]}" fill-rule="evenodd"`,
    ...(ink === undefined ? [] : [`stroke="${DYES[ink.dye]}" stroke-width="${n(ink.weight / scale)}"`]),
    ...(ink === undefined || ink.dash.length === 0
      ? []
      : [`stroke-dasharray="${ink.dash.map((d) => n(d / scale)).join(' ')}"`]),
  ]
  return `<path ${attributes.join(' ')}/>`
}

function lettering({ at, text, anchor, angle, size }: Lettering, scale: number): string {
  const em = LETTERS[size].em / scale
  const turn = angle === 0 ? '' : ` rotate(${n(-angle)})`
  return [
    `<text transform="translate(${n(at.x)} ${n(-at.y)})${turn}" y="${n((CAPITAL / 2) * em)}"`,
    ` font-size="${n(em)}" text-anchor="${anchor}" fill="${DYES[LETTERS[size].dye]}"`,
    ` font-family="'Source Sans 3', sans-serif"${size === 'name' ? ' font-weight="600"' : ''}>${escaped(text)}</text>`,
  ].join('')
}

/** Path data of one path, closed when it ends where it starts. */
export function pathData(path: Path): string {
  const first = path[0]
  if (first === undefined) return ''
  const closed = samePoint(path.at(-1)!.to, first.from)
  return `M${point(first.from)}${path.map(segmentData).join('')}${closed ? 'Z' : ''}`
}

function segmentData(s: Segment): string {
  if (s.kind === 'line') return `L${point(s.to)}`
  // An SVG arc is named by its ends: a full turn has none, so wide arcs are drawn in two halves.
  if (Math.abs(s.sweep) > 1.5 * Math.PI) {
    return half(arcRadius(s), s.sweep / 2, pointAt(s, 0.5)) + half(arcRadius(s), s.sweep / 2, s.to)
  }
  return half(arcRadius(s), s.sweep, s.to)
}

const half = (radius: number, sweep: number, to: Point): string =>
  `A${n(radius)} ${n(radius)} 0 ${Math.abs(sweep) > Math.PI ? 1 : 0} ${sweep > 0 ? 0 : 1} ${point(to)}`

const point = ({ x, y }: Point): string => `${n(x)} ${n(-y)}`

/** A number to the ten-thousandth of a millimetre, without needless zeros or a minus before nothing. */
const n = (value: number): string => String(Math.round(value * 1e4) / 1e4 || 0)

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
/** Text as it may stand in markup. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => ENTITIES[c]!)
