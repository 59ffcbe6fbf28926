import { line } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import type { DrawItem, Drawing, LineStyle, Tint } from './drawing.ts'
import { around } from './letters.ts'

/**
 * What a word of the trade stands for: schemes, not to any size, in the lines and inks of all drawings. What the
 * word names is drawn in the heavy line of the tape; folds, and what lies beneath or was there before, are dashed.
 *
 * @param label what it shows, in words
 */
export function drawExplained(word: ExplainedWord, label: string, scale = 0.7): Drawing {
  const items: DrawItem[] = WORDS[word]
  return { box: around(items, scale), scale, items, label }
}

type Pair = readonly [x: number, y: number]
const point = ([x, y]: Pair): Point => ({ x, y })

/** Straight strokes from point to point. */
const open = (...pairs: Pair[]): Path => pairs.slice(1).map((to, i) => line(point(pairs[i]!), point(to)))
const closed = (...pairs: Pair[]): Path => open(...pairs, pairs[0]!)
const box = (x: number, y: number, width: number, height: number): Path =>
  closed([x, y], [x + width, y], [x + width, y + height], [x, y + height])

/** Points along the upright ellipse about a middle, from one angle to another, degrees anticlockwise. */
const turned = ([x, y]: Pair, wide: number, tall: number, from: number, to: number): Pair[] =>
  Array.from({ length: 25 }, (_, i): Pair => {
    const angle = ((from + ((to - from) * i) / 24) * Math.PI) / 180
    return [x + wide * Math.cos(angle), y + tall * Math.sin(angle)]
  })
const oval = (middle: Pair, wide: number, tall: number): Path => open(...turned(middle, wide, tall, 0, 360))

const drawn = (style: LineStyle, ...paths: Path[]): DrawItem => ({ kind: 'strokes', paths, line: style })
const filled = (line: LineStyle, fill: Tint, path: Path): DrawItem => ({
  ...{ kind: 'strokes', paths: [path], line, fill },
})
const cloth = (path: Path) => filled('cut', 'cloth', path)
const named = (path: Path) => filled('tape', 'cloth', path)

/** Lines that run down side by side, as gathered or pleated cloth hangs. */
const hanging = (x: number, width: number, top: number, bottom: number, count: number): Path[] =>
  Array.from({ length: count }, (_, i) => {
    const at = x + ((i + 0.5) * width) / count
    return open([at, top], [at + (i % 2 === 0 ? 1 : -1), bottom])
  })

/** The hollow of a round neck, and a panel hollowed by it. */
const HOLLOW = turned([40, 62], 13, 10, 0, -180)
const PANEL = closed([10, 0], [70, 0], [70, 62], ...HOLLOW, [10, 62])
const SLIT = open([40, 52], [40, 32])

const WORDS = {
  gusset: [
    cloth(box(0, 0, 26, 66)),
    cloth(box(26, 40, 44, 26)),
    named(closed([26, 40], [44, 40], [26, 22])),
    drawn('fold', open([44, 40], [26, 22])),
    named(closed([52, 14], [66, 0], [80, 14], [66, 28])),
    drawn('fold', open([52, 14], [80, 14])),
  ],
  gore: [
    cloth(box(0, 0, 34, 66)),
    named(closed([34, 44], [34, 0], ...turned([34, 44], 44, 44, -90, -62))),
    named(closed([0, 44], ...turned([0, 44], 44, 44, -118, -90))),
  ],
  godet: [
    cloth(box(0, 0, 60, 56)),
    named(closed([30, 34], [17, 1], [21, -3], [26, 1], [30, -3], [34, 1], [39, -3], [43, 1])),
    drawn('fold', open([30, 34], [26, 1]), open([30, 34], [34, 1])),
  ],
  keyhole: [cloth(PANEL), drawn('tape', open(...HOLLOW), SLIT)],
  facing: [
    cloth(PANEL),
    drawn(
      'hidden',
      open(
        [62, 62],
        ...turned([40, 62], 22, 18, 0, -70),
        [47, 27],
        [33, 27],
        ...turned([40, 62], 22, 18, -110, -180),
        [18, 62],
      ),
    ),
    drawn('tape', open(...HOLLOW), SLIT),
  ],
  casing: [
    drawn('cut', open([10, 0], [10, 44], ...turned([16, 44], 6, 8, 180, 0), [22, 28], [20, 26])),
    drawn('tape', oval([16, 43], 3.4, 3.4)),
    drawn('selvedge', open([7, 31], [25, 31])),
    cloth(box(44, 0, 40, 52)),
    drawn('sew', open([44, 40], [84, 40])),
    drawn('tape', open([58, 46], [40, 46], [34, 30]), open([70, 46], [88, 46], [94, 30])),
    drawn('hidden', open([58, 46], [70, 46])),
  ],
  gathers: [
    cloth(box(0, 40, 96, 16)),
    drawn('hidden', open([2, 54], [94, 54]), open([2, 51], [94, 51])),
    cloth(closed([30, 22], [66, 22], [78, 0], [18, 0])),
    drawn('sew', ...hanging(30, 36, 22, 4, 12)),
    named(box(30, 22, 36, 8)),
  ],
  band: [
    cloth(closed([14, 34], [74, 34], [84, 0], [4, 0])),
    drawn('sew', ...hanging(14, 60, 34, 6, 14)),
    named(box(6, 34, 76, 12)),
    drawn('sew', open([8, 36], [80, 36])),
    drawn('cut', oval([76, 40], 2.4, 2.4), open([9, 40], [14, 40])),
  ],
  pleats: [
    drawn('cut', open([0, 50], [24, 50], [10, 47], [38, 47], [24, 44], [56, 44])),
    drawn('cut', open([0, 24], [18, 24], [8, 21], [28, 21], [28, 21], [48, 21], [38, 24], [56, 24])),
    drawn(
      'cut',
      open(...Array.from({ length: 57 }, (_, x): Pair => [x, 2 - 5 * Math.cos((x * Math.PI) / 4)])),
    ),
    drawn('tape', open([0, 9], [56, 9])),
  ],
  lining: [
    cloth(closed([10, 0], [60, 0], [60, 56], [10, 56])),
    named(closed([13, 3], [36, 3], [54, 34], [54, 53], [13, 53])),
    drawn('fold', open([36, 3], [54, 34])),
    filled('cut', 'cloth', closed([36, 3], [60, 0], [54, 34])),
  ],
  piecing: [
    cloth(box(0, 0, 58, 46)),
    named(box(58, 0, 14, 46)),
    drawn('selvedge', open([58, -8], [58, 54])),
    drawn('grain', open([26, 8], [26, 38]), open([65, 8], [65, 38])),
  ],
  grain: [
    cloth(box(0, 0, 70, 60)),
    drawn('selvedge', open([0, -4], [0, 64]), open([70, -4], [70, 64])),
    drawn(
      'grain',
      open([14, 12], [14, 48]),
      open([11, 43], [14, 48], [17, 43]),
      open([11, 17], [14, 12], [17, 17]),
    ),
    drawn('tape', open([28, 12], [60, 44]), open([53, 44], [60, 44], [60, 37])),
  ],
  ease: [
    filled('cut', 'cloth', oval([40, 26], 30, 20)),
    drawn('tape', oval([40, 26], 38, 27)),
    drawn('dimension', open([70, 26], [78, 26])),
  ],
  seams: [
    drawn('cut', open([0, 46], [20, 46], [20, 54], [8, 56]), open([42, 46], [22, 46], [22, 54], [34, 56])),
    drawn('tape', open([17, 49], [25, 49])),
    drawn(
      'cut',
      open([52, 46], [72, 46], [72, 52], [60, 52]),
      open([96, 46], [74, 46], [74, 56], [56, 56], [56, 49], [60, 49]),
    ),
    drawn('tape', open([69, 49], [77, 49]), open([58, 43], [58, 59])),
    drawn('cut', open([0, 14], [20, 14], [20, 22]), open([42, 14], [22, 14], [22, 22])),
    drawn('tape', open([17, 17], [25, 17])),
    drawn('sew', open(...Array.from({ length: 9 }, (_, i): Pair => [i % 2 === 0 ? 17 : 25, 19 + i * 0.6]))),
  ],
  hems: [
    drawn('cut', open([0, 52], [34, 52], [34, 46], [14, 46], [14, 49], [30, 49])),
    drawn('tape', open([15.5, 43], [15.5, 55])),
    drawn('cut', open([50, 52], [80, 52], ...turned([80, 49], 4, 3, 90, -150))),
    drawn('tape', open([75, 44], [80, 55], [84, 44])),
    drawn('cut', open([0, 18], [36, 18], [36, 22])),
    drawn('tape', open([36, 22], [37.5, 22], [37.5, 14], [10, 14], [10, 16], [14, 16])),
    drawn('sew', open([12, 11], [12, 21])),
  ],
  tucks: [
    cloth(box(0, 0, 62, 56)),
    named(box(0, 18, 62, 9)),
    named(box(0, 32, 62, 9)),
    drawn('sew', open([0, 27], [62, 27]), open([0, 41], [62, 41])),
  ],
  inlay: [
    cloth(closed([0, 0], [40, 0], [36, 56], [0, 56])),
    drawn('sew', open([28, 0], [24, 56])),
    drawn('fold', open([37, 0], [33, 56])),
    drawn(
      'tape',
      open([28, 24], [38.3, 24]),
      open([31, 27], [28, 24], [31, 21]),
      open([35.3, 27], [38.3, 24], [35.3, 21]),
    ),
  ],
  shrinkage: [
    drawn('hidden', box(0, 0, 78, 58)),
    named(box(3, 5, 72, 48)),
    drawn(
      'dimension',
      open([39, 58], [39, 53]),
      open([39, 0], [39, 5]),
      open([0, 29], [3, 29]),
      open([78, 29], [75, 29]),
    ),
  ],
  sweep: [
    cloth(closed([24, 60], [44, 60], [68, 8], ...turned([34, 8], 34, 8, 0, -180), [0, 8])),
    drawn('tape', open(...turned([34, 8], 34, 8, 0, -180))),
    drawn('hidden', open(...turned([34, 8], 34, 8, 0, 180))),
  ],
} satisfies Record<string, DrawItem[]>

/** Every word of the trade that has a drawing. */
export type ExplainedWord = keyof typeof WORDS
