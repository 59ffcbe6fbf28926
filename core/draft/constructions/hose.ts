import { through } from '../../geometry/path.ts'
import { along, direction, distance } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'
import type { Path, Point } from '../../geometry/types.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import type { MeasureId } from '../../measure/vocabulary.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { type Asked, type Choices, readChoices, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { least } from '../fit-trunk.ts'
import { bothHalves, overallSizes } from '../flat.ts'
import { makingOf, work, worthDoing } from '../making.ts'
import { finishedSizes, named, pair, sizeIn } from '../names.ts'
import { cutPiece } from '../pieces.ts'
import { HANDS } from '../places.ts'
import { allowancesFor, hemmed, toFives } from '../practice.ts'
import { edgesOn, part, partFromEnd, seam, totalsOf, turnedHem } from '../seams.ts'
import type { Copy, Draft, Flat } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hoseTop: { kind: 'option', options: ['crotch', 'midThigh', 'aboveKnee'], default: 'crotch' },
  takenIn: { kind: 'count', options: [0, 4, 6, 8, 10], default: 8 },
  clothStretch: { kind: 'count', options: [4, 8, 12, 16, 20], default: 12 },
  foot: { kind: 'option', options: ['footed', 'footless'], default: 'footed' },
  ankleSlit: { kind: 'length', range: [0, 300] },
  points: { kind: 'count', options: [2, 3, 4, 6], default: 4 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  topHem: { kind: 'length', range: [8, 60], default: 25 },
  footHem: { kind: 'length', range: [4, 30], default: 10 },
} as const satisfies Choices

/** Down from the crotch to the hose's edge where they reach it, mm; the others as parts of crotch to knee. */
const BELOW_CROTCH = 30
const TOPS = { midThigh: 0.5, aboveKnee: 0.85 }
/** Calf and ankle bones ÷ height of the knee (from memory). */
const CALF_LEVEL = 0.72
const ANKLE_LEVEL = 0.17
/** A knee that was not measured ÷ calf (from memory). */
const KNEE_TO_CALF = 1.02
/** Round the ball of the foot ÷ its length; where the ball lies; width under the heel ÷ length (from memory). */
const BALL_TO_FOOT = 0.95
const BALL_AT = 0.72
const HEEL_TO_FOOT = 0.26
/** Of the opened ankle beyond the heel, mm. */
const HEEL_ROOM = 10

/**
 * Two legs cut on the cross so that they cling, each with one seam behind; footed, or ending at the ankle; held up
 * by points at the upper edge. Cut narrower than the leg by what the cloth is to stretch.
 */
export const hose: Construction = {
  id: 'hose',
  // From memory.
  sources: ['E. Crowfoot, F. Pritchard, K. Staniland: Textiles and Clothing c.1150–c.1450'],
  required: [
    ['thighGirth'],
    ['calfGirth'],
    ['ankleGirth'],
    ['heelGirth'],
    ['footLength'],
    ['kneeHeight'],
    ['insideLegHeight'],
  ],
  useful: ['kneeGirth'],
  choices: CHOICES,
  often: ['hoseTop', 'takenIn', 'clothStretch', 'foot'],
  usualFibre: 'wool',
  finishPlan: 'allByHand',
  toile: true,
  draft,
  describe: (made) => [
    phrase('draft.describe.hose', { length: sizeIn(made, 'legLength') }),
    phrase(`draft.describe.hoseFoot.${made.choices.foot as 'footed' | 'footless'}`),
    phrase('draft.describe.points', { points: 2 * (made.choices.points as number) }),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(hose, body)
  const chosen = readChoices(CHOICES, asked, unit)
  const measure = (id: MeasureId) => lengthOf(body, id)!
  const kneeGirth = lengthOf(body, 'kneeGirth') ?? measure('calfGirth') * KNEE_TO_CALF
  const [crotch, knee] = [measure('insideLegHeight'), measure('kneeHeight')]
  const stretch = 1 + chosen.takenIn / 100
  /** Stretched on the cross by so much round, cloth shortens to this part of its length. */
  const shortens = Math.sqrt(2 - stretch * stretch)
  const top =
    chosen.hoseTop === 'crotch' ? crotch - BELOW_CROTCH : crotch - TOPS[chosen.hoseTop] * (crotch - knee)
  const thigh = kneeGirth + partUp(top, knee, crotch) * (measure('thighGirth') - kneeGirth)
  const levels = [
    { id: 'ankle', height: ANKLE_LEVEL * knee, girth: measure('ankleGirth') },
    { id: 'calf', height: CALF_LEVEL * knee, girth: measure('calfGirth') },
    { id: 'knee', height: knee, girth: kneeGirth },
    { id: 'thigh', height: top, girth: thigh },
  ] as const
  const [ankle] = levels
  const drawn = levels.map(({ height, girth }) => ({
    ...{ width: girth / stretch, y: (height - ankle.height) / shortens },
  }))
  const bottom = drawn[0]!.width
  const back = pathLengthOf(drawn.map(({ width, y }) => ({ x: width / 2, y })))
  const slit =
    chosen.ankleSlit ?? Math.max(0, toFives((measure('heelGirth') + HEEL_ROOM - bottom * stretch) / 2))
  if (slit > back / 2)
    throw new Refusal(
      phrase('refusal.draft.ankleSlit', { slit: { mm: slit }, most: { mm: Math.floor(back / 2) } }),
      'ankleSlit',
    )
  const footed = chosen.foot === 'footed'
  const { wide, narrow } = allowancesFor(chosen.seamFinish)
  const foot = footShape(body, ankle.height, bottom, stretch)
  const legSides = [
    {
      id: 'bottom',
      path: through(cornersAt(drawn[0]!)),
      ...(footed ? { allowance: wide } : hemmed(chosen.footHem)),
    },
    { id: 'right', path: through(drawn.map(({ width, y }) => ({ x: width / 2, y }))), allowance: wide },
    { id: 'top', path: through([...cornersAt(drawn.at(-1)!)].reverse()), ...hemmed(chosen.topHem) },
    {
      id: 'left',
      path: through([...drawn].reverse().map(({ width, y }) => ({ x: -width / 2, y }))),
      allowance: narrow,
    },
  ]
  const onTheCross = { grain: 'bias', joinsFreely: true } as const
  const legLength = drawn.at(-1)!.y
  const sides: Copy[] = HANDS.flatMap((hand) =>
    (['inner', 'outer'] as const).map((side) => ({
      id: `${side}-${hand}`,
      name: named('piece', `foot.${side}`, hand),
      mirrored: (side === 'inner') === (hand === 'left'),
    })),
  )
  const pieces = [
    cutPiece(
      'leg',
      { sides: legSides },
      {
        ...onTheCross,
        code: 'hoseLeg',
        copies: pair('hoseLeg', true),
        sizes: { width: drawn.at(-1)!.width, length: legLength },
      },
    ),
    ...(footed
      ? [
          cutPiece(
            'foot',
            { sides: Object.entries(foot).map(([id, path]) => ({ id, path, allowance: wide })) },
            { ...onTheCross, code: 'footSide', copies: sides, sizes: { length: measure('footLength') } },
          ),
        ]
      : []),
  ]
  const edge = edgesOn(pieces)
  const finish = chosen.seamFinish
  const seams = HANDS.flatMap((hand) => {
    const [right, left, end] = [
      edge('leg', 'right', hand),
      edge('leg', 'left', hand),
      edge('leg', 'bottom', hand),
    ]
    const of = (id: string, side: 'inner' | 'outer') => edge('foot', id, `${side}-${hand}`)
    const halves = [part(end, 0, end.to / 2), part(end, end.to / 2, end.to)]
    return [
      seam({
        ...{ id: `back-${hand}`, kind: 'side', name: named('seam', 'hoseBack', hand), finish },
        ...{ a: [part(right, slit, right.to)], b: [partFromEnd(left, slit, left.to)] },
      }),
      ...(footed
        ? [
            ...(['instep', 'toe', 'sole', 'heel'] as const).map((id) =>
              seam({
                ...{
                  id: `foot-${id}-${hand}`,
                  kind: 'foot',
                  name: named('seam', `foot.${id}`, hand),
                  finish,
                },
                ...{ a: [of(id, 'inner')], b: [of(id, 'outer')] },
              }),
            ),
            ...(['inner', 'outer'] as const).map((side, i) =>
              seam({
                ...{
                  id: `ankle-${side}-${hand}`,
                  kind: 'foot',
                  name: named('seam', `ankle.${side}`, hand),
                  finish,
                },
                ...{ a: [of('top', side)], b: [halves[i]!] },
              }),
            ),
          ]
        : []),
    ]
  })
  const hems = HANDS.flatMap((hand) => [
    ...(slit > 0
      ? [
          turnedHem({
            ...{ id: `slit-${hand}`, kind: 'slit', name: named('hem', 'ankleSlit', hand), depth: narrow / 2 },
            allowance: narrow,
            spans: [
              part(edge('leg', 'right', hand), 0, slit),
              partFromEnd(edge('leg', 'left', hand), 0, slit),
            ],
          }),
        ]
      : []),
    turnedHem({
      ...{ id: `top-${hand}`, kind: 'edge', name: named('hem', 'hoseTop', hand), depth: chosen.topHem },
      spans: [edge('leg', 'top', hand)],
    }),
    ...(footed
      ? []
      : [
          turnedHem({
            ...{
              id: `ankle-${hand}`,
              kind: 'bottom',
              name: named('hem', 'ankle', hand),
              depth: chosen.footHem,
            },
            spans: [edge('leg', 'bottom', hand)],
          }),
        ]),
  ])
  const stretched = (round: number) => round * (1 + chosen.clothStretch / 100)
  const [, calf, kneeAt, thighAt] = drawn.map(({ width }) => width)
  const hooks = slit > 0 ? 2 * Math.max(1, Math.round(slit / HOOK_SPACING)) : 0
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  return assertSewable({
    construction: hose.id,
    choices: settled({ ...chosen, ankleSlit: slit }),
    ...{ pieces, seams, hems },
    steps: worthDoing([
      step('toile', 'prepare', [work('toile', 1), work('fitToile', 1)], { seams: [], hems: [] }, [
        'pins',
        'testStrip',
      ]),
      ...before,
      step(
        'backSeams',
        'sew',
        slit > 0 ? [work('reinforceSlit', 2)] : [],
        sewing(({ kind }) => kind === 'side'),
      ),
      step(
        'feet',
        'sew',
        [],
        sewing(({ kind }) => kind === 'foot'),
      ),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'edges',
        'hem',
        [],
        hemming(() => true),
      ),
      step('points', 'finish', [
        work('workEyelet', 2 * 2 * chosen.points),
        ...(hooks > 0 ? [work('sewHook', hooks)] : []),
      ]),
      ...after,
    ]),
    fit: [
      least(body, 'thigh', stretched(thighAt!), () => thigh, 'takenIn'),
      least(body, 'knee', stretched(kneeAt!), () => measure('kneeGirth'), 'takenIn', ['kneeGirth']),
      least(body, 'calf', stretched(calf!), () => measure('calfGirth'), 'takenIn'),
      least(body, 'heel', stretched(bottom) + 2 * slit, () => measure('heelGirth'), 'ankleSlit'),
      ...(footed
        ? [
            least(body, 'instep', stretched(2 * heelToInstep(foot)), () => measure('heelGirth'), 'takenIn'),
            least(
              body,
              'ball',
              stretched(2 * ballHeight(foot)),
              () => BALL_TO_FOOT * measure('footLength') * 0.97,
              'takenIn',
            ),
          ]
        : []),
    ],
    cautions: [
      phrase('draft.caution.testStrip'),
      phrase('draft.caution.toileFirst'),
      phrase('draft.caution.flame'),
    ],
    notions: [
      { notion: 'point', count: 2 * chosen.points },
      ...(hooks > 0 ? [{ notion: 'hook' as const, count: hooks }] : []),
    ],
    flat: flatHose(drawn, footed ? foot : undefined),
    sizes: finishedSizes({ legLength: top, thigh: thighAt!, ankle: bottom }),
    totals: totalsOf(pieces, seams, hems),
  })
}

const HOOK_SPACING = 25

/** How far the upper edge is on the way from the knee to the thigh, whose girth is taken just below the crotch. */
const partUp = (top: number, knee: number, crotch: number): number =>
  Math.min(1, Math.max(0, (top - knee) / (crotch - BELOW_CROTCH - knee)))

const cornersAt = ({ width, y }: { width: number; y: number }): Point[] => [
  { x: -width / 2, y },
  { x: width / 2, y },
]

const pathLengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, point, i) => sum + distance(points[i]!, point), 0)

type Foot = Record<'sole' | 'toe' | 'instep' | 'top' | 'heel', Path>

/**
 * Half of a foot from its side, the toe at the right, seamed under the middle of the sole and over the instep: at
 * each place as high as half the foot's girth there.
 */
function footShape(body: Body, ankleHeight: number, bottom: number, stretch: number): Foot {
  const footLength = lengthOf(body, 'footLength')!
  const heelHalf = (HEEL_TO_FOOT * footLength) / 2
  const ball = (BALL_TO_FOOT * footLength) / 2 / stretch
  // High enough that the way round heel and instep is what it is on the body.
  const over = Math.sqrt(Math.max(0, (lengthOf(body, 'heelGirth')! / 2 / stretch) ** 2 - (bottom / 2) ** 2))
  const high = Math.max(ankleHeight + heelHalf, over)
  const at = (x: number, y: number): Point => ({ x, y })
  const [toeTop, front] = [at(footLength, ball * 0.55), at(bottom / 2, high)]
  return {
    sole: through([at(0, 0), at(footLength * 0.97, 0)]),
    toe: through([at(footLength * 0.97, 0), toeTop]),
    instep: through([toeTop, at(BALL_AT * footLength, ball), front]),
    top: through([front, at(0, high)]),
    heel: through([at(0, high), at(0, 0)]),
  }
}

/** From the bottom of the heel over to the front of the ankle, mm: half of what the heel passes. */
const heelToInstep = ({ heel, top }: Foot): number => distance(heel[0]!.to, top[0]!.from)
const ballHeight = ({ instep }: Foot): number => instep[0]!.to.y

/** Legs side by side from the front, the feet turned outward. */
function flatHose(levels: readonly { width: number; y: number }[], foot: Foot | undefined): Flat {
  const middle = levels.at(-1)!.width * 0.3
  const lift = foot === undefined ? 0 : foot.heel[0]!.from.y
  const side = (way: 1 | -1) => levels.map(({ width, y }) => ({ x: middle + (way * width) / 4, y: y + lift }))
  const [inner, outer] = [side(-1), side(1)]
  const closed = [...inner, ...[...outer].reverse()]
  const edges = bothHalves(through([...closed, closed[0]!]))
  const toes =
    foot === undefined
      ? []
      : bothHalves(
          Object.values(foot)
            .flat()
            .map((s) =>
              s.kind === 'line' ? line(shifted(s.from, inner[0]!.x), shifted(s.to, inner[0]!.x)) : s,
            ),
        )
  const all = [...edges, ...toes]
  return {
    ...{ edges: all, seams: [], behind: [] },
    sizes: overallSizes(all, {
      top: levels.at(-1)!.y + lift,
      bottom: 0,
      half: middle + levels.at(-1)!.width / 4,
    }),
  }
}

const shifted = (point: Point, by: number): Point =>
  along(point, direction({ x: 0, y: 0 }, { x: 1, y: 0 }), by)
