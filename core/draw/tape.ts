import { line } from '../geometry/segment.ts'
import type { Path, Point } from '../geometry/types.ts'
import type { DrawItem, Drawing } from './drawing.ts'
import { around } from './letters.ts'

/**
 * Where the tape goes: a standing figure of 170 cm with the tape drawn on it, heavy where it is seen and dashed
 * where it runs behind. World mm, the floor at 0, the middle of the figure at 0.
 *
 * @param label what it shows, in words
 * @param number of the measure, written beneath
 */
export function drawTape(measure: TapedMeasure, label: string, scale: number, number?: string): Drawing {
  const { view, seen, hidden = [], marks = [] } = TAPES[measure] as Tape
  const items: DrawItem[] = [
    // One over the other: in one item, where arm and trunk cross would be a hole.
    ...FIGURES[view].ground.map(
      (part): DrawItem => ({ kind: 'strokes', paths: [part], line: 'sew', fill: 'cloth' }),
    ),
    {
      kind: 'strokes',
      paths: [...FIGURES[view].lines, [line({ x: -330, y: 0 }, { x: 330, y: 0 })]],
      line: 'sew',
    },
    ...strokes(hidden, 'hidden'),
    ...strokes(seen, 'tape'),
    ...strokes(marks, 'dimension'),
  ]
  if (number !== undefined) {
    const at = { x: 0, y: -4 / scale }
    items.push({ kind: 'lettering', at, text: number, anchor: 'middle', angle: 0, size: 'figure' })
  }
  return { box: around(items, scale), scale, items, label }
}

const strokes = (paths: readonly Path[], style: 'hidden' | 'tape' | 'dimension'): DrawItem[] =>
  paths.length === 0 ? [] : [{ kind: 'strokes', paths, line: style }]

type View = 'front' | 'back' | 'side'
type Tape = { view: View; seen: Path[]; hidden?: Path[]; marks?: Path[] }

const p = (x: number, y: number): Point => ({ x, y })

/** Straight strokes from point to point. */
const through = (...points: Point[]): Path => points.slice(1).map((to, i) => line(points[i]!, to))

/** Chords of a curve between two corners. */
const STEPS = 5

/** A soft line through points, by cubics that pass each in the direction of its neighbours (Catmull–Rom). */
function soft(points: readonly Point[], closed: boolean): Path {
  const n = points.length
  const at = (i: number) => (closed ? points[(i + n) % n]! : points[Math.max(0, Math.min(n - 1, i))]!)
  const curve: Point[] = []
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)]
    for (let k = 0; k < STEPS; k++) {
      const t = k / STEPS
      const of = (side: 'x' | 'y') =>
        b[side] +
        (t / 2) * (c[side] - a[side]) +
        t * t * (a[side] - 2.5 * b[side] + 2 * c[side] - d[side] / 2) +
        t * t * t * (1.5 * (b[side] - c[side]) + (d[side] - a[side]) / 2)
      curve.push(p(of('x'), of('y')))
    }
  }
  curve.push(closed ? curve[0]! : at(n - 1))
  return through(...curve)
}

const mirrored = (points: readonly Point[]): Point[] => points.map(({ x, y }) => p(-x, y))

/** The right half of the trunk and leg, from the neck to the crotch. */
const FLANK = [
  ...[p(52, 1480), p(56, 1445), p(110, 1415), p(172, 1392), p(192, 1360)],
  ...[p(158, 1285), p(152, 1225), p(136, 1140), p(128, 1070), p(150, 985), p(174, 880), p(172, 780)],
  ...[p(148, 620), p(118, 490), p(122, 380), p(104, 250), p(78, 110), p(80, 60), p(112, 14)],
  ...[p(92, 4), p(46, 8), p(38, 60), p(42, 110), p(34, 260), p(30, 380), p(36, 480), p(20, 640), p(6, 762)],
]
/** The right arm, hanging a little away from the body, from the shoulder round the hand to the armpit. */
const ARM = [
  ...[p(172, 1392), p(206, 1352), p(226, 1250), p(240, 1110), p(262, 1000), p(284, 868), p(304, 800)],
  ...[
    p(304, 716),
    p(284, 690),
    p(266, 730),
    p(252, 800),
    p(252, 868),
    p(218, 990),
    p(196, 1100),
    p(178, 1230),
  ],
]
const ROUND = (x: number, y: number, wide: number, tall: number): Point[] =>
  Array.from({ length: 16 }, (_, i) =>
    p(x + wide * Math.cos((i * Math.PI) / 8), y + tall * Math.sin((i * Math.PI) / 8)),
  )
const HEAD = soft(ROUND(0, 1590, 76, 110), true)
const BODY = soft([...FLANK, ...mirrored(FLANK).reverse()], true)
const ARMS = [soft(ARM, true), soft(mirrored(ARM), true)]

/** Seen from her left: the trunk with one leg, and the arm hanging before it. */
const PROFILE = [
  ...[p(-52, 1480), p(-62, 1440), p(-92, 1360), p(-98, 1270), p(-76, 1150), p(-62, 1070), p(-98, 960)],
  ...[p(-118, 880), p(-92, 780), p(-72, 620), p(-62, 490), p(-84, 370), p(-58, 230), p(-46, 110), p(-66, 40)],
  ...[p(-58, 6), p(60, 4), p(150, 8), p(142, 34), p(58, 70), p(38, 130), p(36, 260), p(46, 480)],
  ...[p(74, 620), p(86, 760), p(90, 880), p(92, 980), p(84, 1070), p(92, 1160), p(118, 1225), p(96, 1320)],
  ...[p(58, 1410), p(44, 1440), p(46, 1480)],
]
const PROFILE_ARM = [
  ...[p(-22, 1392), p(-52, 1330), p(-44, 1200), p(-34, 1090), p(6, 980), p(40, 870), p(52, 780), p(74, 700)],
  ...[p(96, 720), p(92, 800), p(72, 880), p(50, 1000), p(28, 1110), p(28, 1250), p(24, 1350)],
]

const FIGURES: Record<View, { ground: Path[]; lines: Path[] }> = {
  front: {
    ground: [HEAD, ...ARMS, BODY],
    lines: [soft([p(-40, 1418), p(0, 1404), p(40, 1418)], false), through(p(0, 1060), p(0, 1046))],
  },
  back: {
    ground: [HEAD, ...ARMS, BODY],
    lines: [through(p(0, 1380), p(0, 1000)), soft([p(-60, 800), p(0, 784), p(60, 800)], false)],
  },
  side: {
    ground: [soft(ROUND(6, 1590, 92, 110), true), soft(PROFILE, true), soft(PROFILE_ARM, true)],
    lines: [],
  },
}

/** Round a trunk or limb: the half towards us hangs a little, the half behind is hidden. */
function round(view: View, left: Point, right: Point, sag = 16): Tape {
  const middle = (by: number) => p((left.x + right.x) / 2, (left.y + right.y) / 2 + by)
  return {
    view,
    seen: [soft([left, middle(-sag), right], false)],
    hidden: [soft([left, middle(sag), right], false)],
  }
}
const level = (y: number, half: number): Tape => round('front', p(-half, y), p(half, y))

/** From a level straight down to the floor, beside the figure, with a mark at the level. */
const height = (view: View, y: number, from: number): Tape => ({
  view,
  seen: [through(p(330, y), p(330, 0))],
  marks: [through(p(from, y), p(345, y))],
})
const along = (view: View, ...points: Point[]): Tape => ({ view, seen: [soft(points, false)] })

const NAPE = p(0, 1440)

const TAPES = {
  stature: height('front', 1700, 0),
  cervicalHeight: height('back', 1440, 0),
  headGirth: level(1622, 76),
  neckGirth: level(1462, 54),
  neckBaseGirth: { ...round('front', p(-66, 1440), p(66, 1440), 34) },
  shoulderLength: along('front', p(60, 1440), p(120, 1412), p(174, 1392)),
  shoulderWidth: along('back', p(-174, 1392), p(-90, 1424), NAPE, p(90, 1424), p(174, 1392)),
  backWidth: along('back', p(-160, 1300), p(160, 1300)),
  chestWidth: along('front', p(-160, 1300), p(160, 1300)),
  bustGirth: level(1228, 154),
  chestGirth: level(1290, 158),
  underbustGirth: level(1170, 142),
  bustPointWidth: along('front', p(-84, 1228), p(84, 1228)),
  neckToBustPoint: along('front', p(60, 1440), p(84, 1340), p(84, 1228)),
  waistGirth: level(1068, 128),
  hipGirth: level(880, 174),
  backWaistLength: along('back', NAPE, p(0, 1068)),
  frontWaistLength: along('front', p(60, 1440), p(86, 1330), p(84, 1228), p(72, 1068)),
  waistToHip: along('front', p(130, 1068), p(154, 975), p(176, 880)),
  trunkGirth: {
    view: 'side',
    seen: [
      soft([p(-6, 1410), p(70, 1400), p(122, 1225), p(86, 1070), p(94, 880), p(30, 764)], false),
      soft(
        [p(-6, 1410), p(-84, 1390), p(-102, 1270), p(-66, 1070), p(-120, 880), p(-50, 776), p(30, 764)],
        false,
      ),
    ],
  },
  totalCrotchLength: along(
    'side',
    p(84, 1068),
    p(94, 880),
    p(30, 764),
    p(-50, 776),
    p(-120, 880),
    p(-64, 1068),
  ),
  cervicalToWristLength: along(
    'back',
    NAPE,
    p(100, 1424),
    p(180, 1392),
    p(222, 1250),
    p(238, 1110),
    p(286, 868),
  ),
  armLength: along('front', p(174, 1392), p(222, 1250), p(240, 1110), p(286, 868)),
  upperArmLength: along('front', p(174, 1392), p(222, 1250), p(240, 1110)),
  armscyeGirth: round('front', p(174, 1392), p(164, 1282), -18),
  upperArmGirth: round('front', p(174, 1262), p(224, 1256), 10),
  elbowGirth: round('front', p(198, 1096), p(240, 1104), 10),
  forearmGirth: round('front', p(212, 1014), p(258, 1024), 10),
  wristGirth: round('front', p(252, 864), p(286, 870), 8),
  handGirth: round('front', p(252, 800), p(304, 792), 8),
  handLength: along('front', p(270, 864), p(284, 690)),
  waistHeight: height('front', 1068, 128),
  hipHeight: height('front', 880, 174),
  insideLegHeight: { view: 'front', seen: [through(p(0, 762), p(0, 0))] },
  kneeHeight: height('front', 480, 78),
  thighGirth: round('front', p(12, 716), p(164, 716)),
  kneeGirth: round('front', p(36, 480), p(118, 480), 12),
  calfGirth: round('front', p(30, 370), p(122, 370), 12),
  ankleGirth: round('front', p(42, 116), p(78, 116), 8),
  heelGirth: along('side', p(-70, 26), p(-10, 66), p(56, 84)),
  footLength: along('side', p(-66, -22), p(150, -22)),
} satisfies Record<string, Tape>

/** Every body dimension, by its name. */
export type TapedMeasure = keyof typeof TAPES
