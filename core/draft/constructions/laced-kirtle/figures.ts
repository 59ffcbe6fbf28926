import { pathLength, through } from '../../../geometry/path.ts'
import { arcOnChord, line, pathBox, reverseSegment } from '../../../geometry/segment.ts'
import type { Path, Point } from '../../../geometry/types.ts'
import { type Body, lengthOf } from '../../../measure/body.ts'
import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import { armOf } from '../../arm.ts'
import type { Chosen } from '../../choices.ts'
import { chestOf } from '../../fit-trunk.ts'
import { type Lacing, lacingOf } from '../../lacing.ts'
import { ELBOW_ON_ARM, FOREARM_ON_ARM, type Levels, levelsOf } from '../../levels.ts'
import { ARM_EASE, DEEPEST_DEFAULT_HEM, MOST_FULLNESS, THUMB, toFives } from '../../practice.ts'
import { capOfLength } from '../../shapes/cap.ts'
import { strideNeed } from '../../stride.ts'
import type { CHOICES } from './choices.ts'

/** All common practice, mm and parts of one. */
const SLOPE_TO_SHOULDER = 0.28
const BELOW_ARMPIT = 15
const ARMHOLE_HOLLOW = 28
const BACK_DIP = 25
const WIDEST_GORE = 1.1
const SHORTEST_GORE = 150
/** A head of a sleeve is so much narrower than its armhole is round, at the most. */
const CHORD_TO_ARMHOLE = 0.94
/** What must pass below the opening when it goes on over the head, beyond the chest. */
const OVER_THE_HEAD = 60
/** An armhole is let down no nearer to the waist than this, for an arm it would bind. */
const ABOVE_WAIST = 60

/** A kirtle in numbers, before any piece is drawn: lengths mm, the angle of a gore in radians. */
export type Figures = {
  chosen: Chosen<typeof CHOICES>
  levels: Levels
  length: number
  /** Half width of a quarter panel at levels down from the shoulder, from the middle line to the side. */
  side: { level: number; width: number; id: 'scye' | 'underbust' | 'waist' | 'hip' }[]
  hipWidth: number
  shoulder: { x: number; slope: number }
  neck: { width: number; front: number; back: number }
  /** The middle of the front is cut back by half of the gap that the lacing leaves. */
  gap: number
  lacedAt: 'front' | 'side'
  opening: number
  lacing: Lacing
  gore: { radius: number; angle: number; count: 2 | 4 }
  sleeve: { length: number; head: number; wrist: number; cap: Path; capHeight: number } | undefined
  hems: { bottom: number }
  sweep: number
}

/** @throws Refusal when body and choices make no kirtle */
export function figuresOf(body: Body, chosen: Chosen<typeof CHOICES>): Figures {
  const measure = (id: Parameters<typeof lengthOf>[1]) => lengthOf(body, id)!
  const levels = levelsOf(body)
  const length = chosen.length ?? toFives(levels.hems[chosen.hemLevel])
  const gap = chosen.lacingGap
  const [bust, waist] = [chestOf(body) + chosen.bustEase, measure('waistGirth') + chosen.waistEase]
  const hip = Math.max(measure('hipGirth') + chosen.hipEase, chestOf(body) + OVER_THE_HEAD + gap)
  const radius = length - levels.hip
  if (radius < SHORTEST_GORE) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(levels.hip + SHORTEST_GORE) } }
    throw new Refusal(phrase('refusal.draft.noRoomForGores', params), 'length')
  }
  const under = lengthOf(body, 'underbustGirth')
  // In front the gap is taken off the middle, elsewhere out of every quarter.
  const quarter = (girth: number) => (chosen.lacedAt === 'front' ? girth / 4 : (girth - gap) / 4)
  const across = measure('neckBaseGirth') / (2 * Math.PI) + measure('shoulderLength')
  const slope = toFives(SLOPE_TO_SHOULDER * measure('shoulderLength'))
  const shoulder = { x: Math.min(across, quarter(bust) - 10), slope }
  // The armhole is let down in half centimetres until the sleeve’s head goes round the arm.
  const arm = chosen.kirtleSleeve === 'none' ? 0 : measure('upperArmGirth') + chosen.armEase
  let scye = levels.armpit + BELOW_ARMPIT
  const armhole = () =>
    2 *
    pathLength(armholeEdge({ length, shoulder, side: [{ id: 'scye', level: scye, width: quarter(bust) }] }))
  while (armhole() * CHORD_TO_ARMHOLE < arm && scye < levels.waist - ABOVE_WAIST) scye += 5
  const side: Figures['side'] = [
    { id: 'scye' as const, level: scye, width: quarter(bust) },
    ...(under === undefined
      ? []
      : [
          {
            id: 'underbust' as const,
            level: scye + (levels.waist - scye) * 0.5,
            width: quarter(under + UNDERBUST_EASE),
          },
        ]),
    { id: 'waist' as const, level: levels.waist, width: quarter(waist) },
    { id: 'hip' as const, level: levels.hip, width: quarter(hip) },
  ]
  const hipWidth = side.at(-1)!.width
  const neck = {
    width: toFives(measure('neckBaseGirth') / Math.PI + chosen.neckEase),
    front: chosen.neckDepth,
    back: BACK_DIP,
  }
  if (neck.width / 2 > shoulder.x - 25)
    throw new Refusal(
      phrase('refusal.draft.neckTooWide', { width: { mm: neck.width }, panel: { mm: 2 * shoulder.x } }),
      'neckEase',
    )
  const most = (chosen.lacedAt === 'front' ? levels.hip - neck.front : levels.hip - scye) - 20
  const opening = Math.min(chosen.openingLength ?? most, most)
  const around = 4 * hipWidth - (chosen.lacedAt === 'front' ? gap : 0)
  const need = strideNeed(body, levels, length)
  const count = chosen.goresAt === 'sides' ? 2 : 4
  const spread = chosen.goreSpread ?? Math.max(0.3, (need - around) / (count * radius)) * radius
  const angle = chosen.goreSpread === undefined ? Math.min(WIDEST_GORE, spread / radius) : spread / radius
  if (angle > WIDEST_GORE)
    throw new Refusal(
      phrase('refusal.draft.goresTooWide', {
        ...{ spread: { mm: Math.floor(WIDEST_GORE * radius) } },
        most: { mm: Math.floor(around + count * WIDEST_GORE * radius) },
      }),
      'goreSpread',
    )
  const plain = {
    chosen,
    levels,
    length,
    side,
    hipWidth,
    shoulder,
    neck,
    gap,
    lacedAt: chosen.lacedAt,
    opening,
  }
  const gentle = Math.max(5, Math.floor((radius * MOST_FULLNESS) / 2))
  return {
    ...plain,
    lacing: lacingOf(opening, chosen.eyeletSpacing, gap),
    gore: { radius, angle, count },
    sleeve: chosen.kirtleSleeve === 'none' ? undefined : sleeveOf(body, plain),
    hems: { bottom: chosen.bottomHem ?? Math.min(DEEPEST_DEFAULT_HEM, gentle) },
    sweep: around + count * radius * angle,
  }
}

const UNDERBUST_EASE = 20

type Plain = Pick<Figures, 'chosen' | 'length' | 'side' | 'shoulder' | 'gap' | 'lacedAt' | 'neck'>

const at = (x: number, y: number): Point => ({ x, y })

/** The armhole of a quarter panel, from the side up to the shoulder. */
export function armholeEdge({ length, side, shoulder }: Pick<Figures, 'length' | 'side' | 'shoulder'>): Path {
  const [low, high] = [at(side[0]!.width, length - side[0]!.level), at(shoulder.x, length - shoulder.slope)]
  return [reverseSegment(arcOnChord(high, low, ARMHOLE_HOLLOW))]
}

/**
 * A quarter of the body, the middle line at the left, from the hem or from the level where a lining ends. The
 * sides of fronts and backs are the same, so that they meet level by level.
 */
export function quarterEdges(f: Figures, part: 'front' | 'back', lining: boolean): Record<string, Path> {
  const { length, side, hipWidth, neck, gap, lacedAt } = f
  const x0 = part === 'front' && lacedAt === 'front' ? gap / 2 : 0
  const low = lining ? length - f.levels.hip : 0
  const y = (level: number) => length - level
  const up = [...side].reverse().map(({ width, level }) => at(width, y(level)))
  const [n, dip] = [neck.width / 2, neck[part]]
  const armhole = armholeEdge(f)
  const top = at(n, length)
  const centre = at(x0, length - dip)
  return {
    hem: [line(at(x0, low), at(hipWidth, low))],
    ...(lining ? {} : { skirt: [line(at(hipWidth, low), up[0]!)] }),
    side: through(up),
    arm: armhole,
    shoulder: [line(armhole.at(-1)!.to, top)],
    neck: [reverseSegment(arcOnChord(centre, top, Math.min(dip * 0.35, NECK_HOLLOW)))],
    centre: [line(centre, at(x0, low))],
  }
}

const NECK_HOLLOW = 25

/** A tapered sleeve whose cap is as long as both armholes together. */
function sleeveOf(body: Body, f: Plain): NonNullable<Figures['sleeve']> {
  const { chosen } = f
  const armhole = 2 * pathLength(armholeEdge(f))
  const head = Math.min(lengthOf(body, 'upperArmGirth')! + chosen.armEase, armhole * CHORD_TO_ARMHOLE)
  const { arm } = armOf(body)
  const cap = capOfLength(at(head / 2, 0), at(-head / 2, 0), armhole)
  const capHeight = pathBox([cap]).y + pathBox([cap]).height
  const part = chosen.kirtleSleeve === 'elbow' ? ELBOW_ON_ARM : 1
  const whole = part * arm + 15
  const length = whole - capHeight
  if (length < 60)
    throw new Refusal(
      phrase('refusal.draft.sleeveTooShort', { length: { mm: whole }, least: { mm: capHeight + 60 } }),
      'kirtleSleeve',
    )
  const places = [
    {
      girth: lengthOf(body, 'elbowGirth'),
      place: (lengthOf(body, 'upperArmLength') ?? ELBOW_ON_ARM * arm) - capHeight,
    },
    { girth: lengthOf(body, 'forearmGirth'), place: FOREARM_ON_ARM * arm - capHeight },
  ].map(({ girth, place }) => {
    const along = Math.min(1, Math.max(0, place / length))
    return girth === undefined || along < 0.2 ? 0 : (girth + ARM_EASE - head * (1 - along)) / along
  })
  const wrist = chosen.wristWidth ?? toFives(Math.max(lengthOf(body, 'handGirth')! + THUMB, ...places))
  return { length, head, wrist, capHeight, cap: [cap] }
}

/** Finished girth at a level between the armpit and the hip, laced: what the cloth measures and the gap. */
export function girthAt(
  { side }: Figures,
  id: Figures['side'][number]['id'],
  gap: number,
  lacedAt: string,
): number {
  const found = side.find((one) => one.id === id)
  if (found === undefined) return 0
  return 4 * found.width + (lacedAt === 'front' ? 0 : gap)
}
