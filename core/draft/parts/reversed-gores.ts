import { type Body, lengthOf } from '../../measure/body.ts'
import { chestOf } from '../fit-trunk.ts'
import type { Levels } from '../levels.ts'
import { straightSides } from '../pieces.ts'
import type { QUARTERS } from '../places.ts'
import { toFives } from '../practice.ts'
import { strideNeed } from '../stride.ts'
import type { SeamFinish } from '../types.ts'
import type { Assembly } from './assembly.ts'
import type { SewnBody } from './body.ts'
import { quarterGores } from './quarter-gores.ts'

/** A skirt that flares by the gores cut off its own panels: what leaves the top is set, reversed, at the hem. mm. */
export type Flared = {
  /** Width of each panel at the top. */
  width: number
  /** Width of each gore at the hem, and what each side of a panel gains there. */
  flare: number
  /** Finished girth at a level down from the shoulder. */
  girthAt: (level: number) => number
  sweep: number
}

type Given = {
  levels: Levels
  /** From the shoulder to the hem, and down to where the flare begins. */
  length: number
  arm: number
  ease: number
  width?: number | undefined
  flare?: number | undefined
}

/** A side may lean out by no more than this part of its length, or the gore’s edge is cut nearly across. */
const STEEPEST = 0.4
/** Narrowest gore worth setting (common practice). */
const NARROWEST = 60

/**
 * Panels that cover the chest with their ease, and flare enough for waist, hip and stride: each panel and each
 * gore gains `flare` on a side, four of each. Where that would lean too far the panels are wider.
 */
export function flaredFor(body: Body, { levels, length, arm, ease, width, flare }: Given): Flared {
  const at = (level: number) => Math.min(1, Math.max(0, (level - arm) / (length - arm)))
  const needs = [
    { need: lengthOf(body, 'waistGirth')! + ease, level: levels.waist },
    { need: lengthOf(body, 'hipGirth')! + ease, level: levels.hip },
  ]
    .filter(({ level }) => level <= length)
    .map(({ need, level }) => ({ need, part: at(level) }))
  const around = width === undefined ? chestOf(body) + ease : 2 * width
  const wanted = [...needs, { need: strideNeed(body, levels, length), part: 1 }].map(({ need, part }) =>
    part > 0 ? (need - around) / (GAINS * part) : 0,
  )
  const most = STEEPEST * (length - arm)
  const gain = flare ?? toFives(Math.min(most, Math.max(NARROWEST, ...wanted)))
  const short = needs.map(({ need, part }) => need - GAINS * gain * part)
  const whole = width === undefined ? Math.max(around, ...short) : around
  const girthAt = (level: number) => whole + GAINS * gain * at(level)
  return { width: whole / 2, flare: gain, girthAt, sweep: girthAt(length) }
}

/** Two panels and four gores, each of them gaining on one or two sides. */
const GAINS = 8

type Sewn = {
  flare: number
  /** From where the flare begins to the hem, straight down. */
  length: number
  hem: { allowance: number; turned: true }
  finish: SeamFinish
  allowances: { wide: number }
}

/** Right-angled gores joined slant to slant at each side of front and back, and to each other on the straight grain. */
export function reversedGores(body: SewnBody, { flare, length, hem, finish, allowances }: Sewn): Assembly {
  const corners = [
    { x: 0, y: 0 },
    { x: flare, y: 0 },
    { x: 0, y: length },
  ]
  const sides = straightSides(corners, [
    { id: 'hem', ...hem },
    { id: 'slant', allowance: allowances.wide },
    { id: 'straight', allowance: allowances.wide },
  ])
  const sizes = { width: flare, length }
  const side = ({ part, hand }: (typeof QUARTERS)[number]) => body.skirt(part, hand)
  return quarterGores({ sides, sizes, toPanel: 'slant', outer: 'straight', finish, side })
}
