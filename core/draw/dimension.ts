import { along, direction, distance, turnLeft } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import type { DrawItem } from './drawing.ts'
import { guessedWidth } from './ink.ts'

/** mm of the sheet: an arrow head's length, half its width, and how far a helping line runs on. */
const ARROW = 1.6
const ARROW_HALF = 0.4
const BEYOND = 1

/** Between a line and the middle of the figure that stands by it, mm of the sheet. */
export const FIGURE_GAP = 2.1

/**
 * A dimension line from `a` to `b` moved `offset` mm of the sheet to the right of the way from one to the
 * other, with its helping lines, arrow heads, and the figure on its far side. A figure too wide for its
 * line stands beyond the end of it.
 */
export function dimension(a: Point, b: Point, offset: number, figure: string, scale: number): DrawItem[] {
  const ahead = direction(a, b)
  const out = { x: ahead.y, y: -ahead.x }
  const [from, to] = [along(a, out, offset / scale), along(b, out, offset / scale)]
  const fits = guessedWidth(figure, 'figure') < distance(a, b) * scale
  const vertical = Math.abs(ahead.y) > Math.abs(ahead.x)
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const helping = [a, b].map((p) => [line(p, along(p, out, (offset + BEYOND) / scale))])
  return [
    { kind: 'strokes', paths: [[line(from, to)], ...helping], line: 'dimension' },
    {
      kind: 'strokes',
      paths: [head(from, to, scale), head(to, from, scale)],
      line: null,
      fill: 'measureHead',
    },
    fits
      ? {
          kind: 'lettering',
          at: along(middle, out, FIGURE_GAP / scale),
          text: figure,
          anchor: 'middle',
          angle: vertical ? 90 : 0,
          size: 'figure',
        }
      : vertical
        ? {
            kind: 'lettering',
            at: along(middle, out, 1.2 / scale),
            text: figure,
            anchor: 'end',
            angle: 0,
            size: 'figure',
          }
        : {
            kind: 'lettering',
            at: along(middle, out, FIGURE_GAP / scale),
            text: figure,
            anchor: 'middle',
            angle: 0,
            size: 'figure',
          },
  ]
}

/** The grain: a line with a head at both ends. */
export function doubleArrow(from: Point, to: Point, scale: number): DrawItem {
  const paths = [[line(from, to)], head(from, to, scale), head(to, from, scale)]
  return { kind: 'strokes', paths, line: 'grain', fill: 'grainHead' }
}

/** An arrow head with its point at `tip`, seen coming from `tail`. It shrinks with a short line. */
function head(tip: Point, tail: Point, scale: number): Path {
  const size = Math.min(1, (distance(tip, tail) * scale) / (3 * ARROW)) / scale
  const back = direction(tip, tail)
  const base = along(tip, back, ARROW * size)
  const side = turnLeft(back)
  const [one, other] = [along(base, side, ARROW_HALF * size), along(base, side, -ARROW_HALF * size)]
  return [line(tip, one), line(one, other), line(other, tip)]
}
