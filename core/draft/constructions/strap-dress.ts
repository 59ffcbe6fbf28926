import { through } from '../../geometry/path.ts'
import { arc, line } from '../../geometry/segment.ts'
import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import type { LengthUnit } from '../../words/units.ts'
import { hangingCautions } from '../cautions.ts'
import { type Asked, type Choices, readChoices, refuseBoth, settled } from '../choices.ts'
import { type Construction, refuseMissing } from '../construction.ts'
import { chestOf, clearsFloor, least, shouldersOf } from '../fit-trunk.ts'
import { bothHalves, overallSizes } from '../flat.ts'
import { type Levels, levelsOf } from '../levels.ts'
import { makingOf, work } from '../making.ts'
import { finishedSizes, named, pair, sizeIn } from '../names.ts'
import { type Assembly, assembled } from '../parts/assembly.ts'
import { strapSewn } from '../parts/band.ts'
import { goreHems } from '../parts/quarter-gores.ts'
import { angleFor, sideGores } from '../parts/side-gores.ts'
import { HANDS, PARTS } from '../places.ts'
import { allowancesFor, hemmed, LEAST_EASE, SEAT_SPREAD, toFives, WIDEST_QUARTER } from '../practice.ts'
import { edgesOn, hem, partFromEnd, part as partOf, seam, totalsOf, turnedHem } from '../seams.ts'
import { rectangle } from '../shapes/rectangle.ts'
import { strideNeed } from '../stride.ts'
import type { Draft, Flat } from '../types.ts'
import { assertSewable } from '../verify.ts'

const CHOICES = {
  hemLevel: { kind: 'option', options: ['knee', 'midCalf', 'ankle'], default: 'ankle' },
  dressLength: { kind: 'length', range: [400, 1600] },
  chestEase: { kind: 'length', range: [0, 800] },
  goreTop: { kind: 'option', options: ['waist', 'highHip', 'hip'], default: 'waist' },
  goreSpread: { kind: 'length', range: [50, 1200] },
  strapLength: { kind: 'length', range: [150, 900] },
  strapDepth: { kind: 'length', range: [8, 60], default: 20 },
  loopLength: { kind: 'length', range: [30, 160], default: 70 },
  seamFinish: { kind: 'option', options: ['felled', 'open'], default: 'open' },
  topHem: { kind: 'length', range: [5, 60], default: 15 },
  bottomHem: { kind: 'length', range: [5, 60], default: 15 },
} as const satisfies Choices

/** How far a strap overlaps the dress behind, and what it has to spare over the shoulder (common practice), mm. */
const SEWN_ON = 15
const STRAP_ROOM = 40
/** Over the shift that is worn beneath (common practice), mm. */
const USUAL_EASE = 120
/** Room beyond the shoulders for a dress without opening that goes on over the head, arms first. */
const OVER_THE_HEAD = 0.95
const SHORTEST = 100

/**
 * A tube from armpit to hem with gores from the waist, hung from two straps that are sewn on behind and meet loops in
 * front: worn over a shift in the north, from the ninth century to the eleventh.
 */
export const strapDress: Construction = {
  id: 'strapDress',
  // From memory.
  sources: ['D. K. Burnham: Cut My Cote', 'I. Hägg, of the finds in the harbour of Haithabu'],
  required: [['bustGirth', 'chestGirth'], ['waistGirth'], ['hipGirth'], ['cervicalHeight'], ['waistHeight']],
  useful: ['stature', 'hipHeight', 'insideLegHeight', 'kneeHeight', 'calfGirth'],
  choices: CHOICES,
  often: ['hemLevel', 'dressLength', 'chestEase', 'goreSpread'],
  usualFibre: 'wool',
  finishPlan: 'machineWhereHidden',
  draft,
  describe: (made) => [
    phrase('draft.describe.strapDress', {
      ...{ length: sizeIn(made, 'armpitToHem'), chest: sizeIn(made, 'chest'), sweep: sizeIn(made, 'sweep') },
    }),
    phrase('draft.describe.straps'),
  ],
}

function draft(body: Body, asked: Asked, unit: LengthUnit): Draft {
  refuseMissing(strapDress, body)
  refuseBoth(asked, 'hemLevel', 'dressLength')
  const chosen = readChoices(CHOICES, asked, unit)
  const levels = levelsOf(body)
  const down = (level: number) => level - levels.armpit
  const length = chosen.dressLength ?? toFives(down(levels.hems[chosen.hemLevel]))
  const goreTop = down(levels[chosen.goreTop])
  const radius = length - goreTop
  if (radius < SHORTEST) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(goreTop + SHORTEST) } }
    throw new Refusal(phrase('refusal.draft.noRoomForGores', params), 'dressLength')
  }
  const { around, angle, girthAt } = skirtOf(body, levels, { ...chosen, length, goreTop, radius })
  const width = around / 2
  const finish = chosen.seamFinish
  const { wide, narrow } = allowancesFor(finish)
  const hemAdded = hemmed(chosen.bottomHem)
  const panels = PARTS.map((side) =>
    rectangle(side, {
      ...{ width, length },
      added: {
        ...{ bottom: hemAdded, top: hemmed(chosen.topHem) },
        ...{
          right: { allowance: side === 'back' ? wide : narrow },
          left: { allowance: side === 'back' ? wide : narrow },
        },
      },
    }),
  )
  const edge = edgesOn(panels)
  /** Down from the top of a panel's side, worn at a hand: the right edge is drawn up, the left one down. */
  const side = (of: 'front' | 'back', hand: 'left' | 'right', from: number, to: number) => {
    const drawnRight = (of === 'front') === (hand === 'left')
    const whole = edge(of, drawnRight ? 'right' : 'left')
    return drawnRight ? partFromEnd(whole, from, to) : partOf(whole, from, to)
  }
  const gores = sideGores({
    ...{ radius, angle, hem: hemAdded, finish, allowance: wide },
    side: ({ part, hand }) => side(part, hand, goreTop, length),
  })
  const shoulder = 2 * levels.armpit
  const straps = strapsOf(
    {
      length: chosen.strapLength ?? toFives(shoulder - chosen.loopLength + STRAP_ROOM),
      depth: chosen.strapDepth,
    },
    { length: 2 * chosen.loopLength, depth: chosen.strapDepth / 2 },
  )
  const { pieces, seams, hems } = assembled([
    { pieces: panels },
    {
      seams: HANDS.map((hand) =>
        seam({
          ...{ id: `side-${hand}`, kind: 'side', name: named('seam', 'side', hand), finish },
          a: [side('back', hand, 0, goreTop)],
          b: [side('front', hand, 0, goreTop)],
        }),
      ),
    },
    gores,
    {
      hems: [
        turnedHem({
          ...{ id: 'top', kind: 'edge', name: named('hem', 'top'), depth: chosen.topHem },
          spans: PARTS.map((of) => edge(of, 'top')),
        }),
        turnedHem({
          ...{ id: 'bottom', kind: 'bottom', name: named('hem', 'bottom'), depth: chosen.bottomHem },
          spans: [...PARTS.map((of) => edge(of, 'bottom')), ...goreHems(gores)],
          fullness: (2 * chosen.bottomHem) / radius,
        }),
      ],
    },
    straps,
  ])
  const { step, sewing, hemming, before, pressSeams, after } = makingOf(pieces, seams, hems)
  const sweep = girthAt(down(levels.waist) + 1e6)
  return assertSewable({
    construction: strapDress.id,
    choices: settled({
      ...chosen,
      dressLength: length,
      chestEase: around - chestOf(body),
      goreSpread: radius * angle,
      strapLength: straps.strap,
    }),
    ...{ pieces, seams, hems },
    steps: [
      ...before,
      step(
        'gores',
        'sew',
        [],
        sewing(({ kind }) => kind === 'gore'),
      ),
      step(
        'sideSeams',
        'sew',
        [],
        sewing(({ kind }) => kind === 'side' || kind === 'goreToGore'),
      ),
      step(
        'straps',
        'sew',
        [],
        sewing(({ kind }) => kind === 'strap'),
      ),
      pressSeams,
      step('tryOn', 'fit', [work('tryOn', 1)], { seams: [], hems: [] }, ['pins']),
      step(
        'top',
        'hem',
        [work('sewTape', 4)],
        hemming(({ id }) => id === 'top' || id.startsWith('ends')),
      ),
      step('level', 'fit', [work('hangBias', 1), work('levelHem', sweep / 1000)]),
      step(
        'bottom',
        'hem',
        [],
        hemming(({ kind }) => kind === 'bottom'),
      ),
      ...after,
    ],
    fit: [
      least(body, 'chest', around, () => chestOf(body) + LEAST_EASE / 2, 'chestEase'),
      least(body, 'goesOver', around, () => OVER_THE_HEAD * shouldersOf(body), 'chestEase'),
      ...(length > down(levels.waist)
        ? [
            least(
              body,
              'waist',
              girthAt(down(levels.waist)),
              () => lengthOf(body, 'waistGirth')! + LEAST_EASE,
              'chestEase',
            ),
          ]
        : []),
      ...(length > down(levels.hip)
        ? [
            least(
              body,
              'hip',
              girthAt(down(levels.hip)),
              () => lengthOf(body, 'hipGirth')! + LEAST_EASE,
              'goreSpread',
            ),
            least(
              body,
              'seat',
              girthAt(down(levels.hip)),
              () => lengthOf(body, 'hipGirth')! * (1 + SEAT_SPREAD),
              'goreSpread',
            ),
          ]
        : []),
      least(body, 'strap', straps.strap + chosen.loopLength, () => shoulder, 'strapLength'),
      least(body, 'stride', sweep, () => strideNeed(body, levels, length + levels.armpit), 'goreSpread', [
        'calfGirth',
      ]),
      clearsFloor(body, levels, length + levels.armpit, 'dressLength'),
    ],
    cautions: hangingCautions(hems, levels.cervicalHeight - levels.armpit - length),
    notions: [{ notion: 'clasp', count: 2 }],
    flat: flatDress(width / 2, length, { from: goreTop, radius, angle, strap: levels.armpit }),
    sizes: finishedSizes({ armpitToHem: length, chest: around, sweep }),
    totals: totalsOf(pieces, seams, hems),
  })
}

type Wanted = {
  length: number
  goreTop: number
  radius: number
  chestEase: number | undefined
  goreSpread: number | undefined
}

/** Girth at the top, and the angle of the gores: as asked, or what waist, shoulders, hip and stride need. */
function skirtOf(body: Body, levels: Levels, { length, goreTop, radius, chestEase, goreSpread }: Wanted) {
  const atHip = Math.min(radius, Math.max(0, levels.hip - levels.armpit - goreTop))
  const chest = chestOf(body)
  const straight =
    chestEase === undefined
      ? Math.max(
          chest + USUAL_EASE,
          lengthOf(body, 'waistGirth')! + LEAST_EASE,
          OVER_THE_HEAD * shouldersOf(body),
        )
      : chest + chestEase
  const hip = lengthOf(body, 'hipGirth')!
  const need = Math.max(hip + LEAST_EASE, hip * (1 + SEAT_SPREAD)) + 10
  const forHip = atHip > 0 && length >= levels.hip - levels.armpit ? (need - straight) / (4 * atHip) : 0
  const forStride = angleFor(
    strideNeed(body, levels, length + levels.armpit),
    straight,
    radius,
    WIDEST_QUARTER,
  )
  const wanted = Math.min(WIDEST_QUARTER, Math.max(0.25, forHip, forStride))
  const angle = goreSpread === undefined ? wanted : goreSpread / radius
  if (angle > WIDEST_QUARTER)
    throw new Refusal(
      phrase('refusal.draft.goresTooWide', {
        ...{ spread: { mm: Math.floor(WIDEST_QUARTER * radius) } },
        most: { mm: Math.floor(straight + 4 * WIDEST_QUARTER * radius) },
      }),
      'goreSpread',
    )
  const around = goreSpread === undefined ? Math.max(straight, need - 4 * angle * atHip) : straight
  const girthAt = (level: number) => around + 4 * angle * Math.min(radius, Math.max(0, level - goreTop))
  return { around, angle, girthAt }
}

type Strip = { length: number; depth: number }

/** Two straps and two loops, folded strips with their ends turned under and sewn down. */
function strapsOf(strap: Strip, loop: Strip): Assembly & { strap: number } {
  const strip = (id: string, { length, depth }: Strip) =>
    rectangle(
      id,
      { width: 2 * depth, length: length + SEWN_ON, added: { allowance: 6 } },
      { copies: pair(id, false) },
    )
  const pieces = [strip('dressStrap', strap), strip('loop', loop)]
  const edge = edgesOn(pieces)
  return {
    ...{ pieces, strap: strap.length },
    seams: pieces.flatMap(({ id }) => HANDS.map((hand) => strapSewn(pieces, id, hand, hand))),
    hems: pieces.flatMap(({ id }) =>
      HANDS.map((hand) =>
        hem({
          ...{ id: `ends-${id}-${hand}`, kind: 'laidOn', name: named('hem', 'strapEnds', hand), seen: false },
          ...{
            fullness: 0,
            depth: 6,
            allowance: 6,
            spans: [edge(id, 'bottom', hand), edge(id, 'top', hand)],
          },
        }),
      ),
    ),
  }
}

/** The tube with its gores folded in the side seams, straps standing. */
function flatDress(
  half: number,
  length: number,
  skirt: { from: number; radius: number; angle: number; strap: number },
): Flat {
  const at = (x: number, y: number) => ({ x, y })
  const start = at(half, length - skirt.from)
  const out = arc(at(half, 0), start, skirt.angle)
  const outer = [
    ...through([at(0, length), at(half, length), start, out.to]),
    arc(out.to, start, -skirt.angle),
    line(at(half, 0), at(0, 0)),
  ]
  const edges = bothHalves(outer)
  const strap = through([
    at(half * 0.55, length),
    at(half * 0.5, length + skirt.strap),
    at(half * 0.42, length + skirt.strap),
    at(half * 0.45, length),
  ])
  return {
    edges: [...edges, ...bothHalves(strap)],
    seams: bothHalves([line(start, at(half, 0))]),
    behind: [],
    sizes: overallSizes(edges, { top: length, bottom: 0, half: out.to.x }),
  }
}
