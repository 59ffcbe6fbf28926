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
  const { x, y, width, height } = around(items, scale)
  const edge = EDGE / scale
  const box = { x: x - edge, y: y - edge, width: width + 2 * edge, height: height + 2 * edge }
  return { box, scale, items, label }
}

/** So much is left round the drawing for the weight of its lines, mm of the sheet. */
const EDGE = 0.5

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
    drawn('cut', open([0, 60], [24, 60], [12, 54], [48, 60], [36, 54], [72, 60], [60, 54], [84, 58])),
    drawn(
      'cut',
      open([0, 32], [22, 32], [12, 39], [36, 39], [26, 32], [58, 32], [48, 39], [72, 39], [62, 32], [84, 32]),
    ),
    drawn(
      'cut',
      open(...Array.from({ length: 85 }, (_, x): Pair => [x, 6 - 7 * Math.cos((x * Math.PI) / 6)])),
    ),
    drawn('tape', open([0, 15], [84, 15])),
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
    drawn('cut', open([0, 10], [15, 10], [15, 14], [4, 14]), open([33, 10], [18, 10], [18, 14], [29, 14])),
    drawn('tape', open([12, 12], [21, 12])),
    drawn(
      'cut',
      open([42, 10], [57, 10], [57, 15], [50, 15]),
      open([75, 10], [60, 10], [60, 19], [45, 19], [45, 13], [50, 13]),
    ),
    drawn('tape', open([54, 12], [63, 12]), open([47, 6], [47, 23])),
    drawn('cut', open([84, 10], [99, 10], [99, 26]), open([117, 10], [102, 10], [102, 26])),
    drawn('tape', open([96, 13], [105, 13]), ...[16, 19, 22, 25].map((y) => open([97, y], [104, y + 3]))),
  ],
  hems: [
    drawn('cut', open([0, 18], [30, 18], [30, 8], [8, 8], [8, 13], [26, 13])),
    drawn('tape', open([10, 4], [10, 22])),
    drawn('cut', open([42, 18], [64, 18], ...turned([64, 13], 6, 5, 90, -200))),
    drawn('tape', ...[54, 58, 62].map((x) => open([x, 5], [x + 4, 21]))),
    drawn('cut', open([84, 18], [114, 18], [114, 14], [106, 14])),
    drawn('tape', open([106, 12], [113, 12], [113, 7], [90, 7], [90, 11], [97, 11]), open([92, 3], [92, 22])),
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
export const EXPLAINED_WORDS = Object.keys(WORDS) as ExplainedWord[]
