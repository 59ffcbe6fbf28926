import { type Body, lengthOf } from '../../measure/body.ts'
import { phrase } from '../../words/phrase.ts'
import { Refusal } from '../../words/refusal.ts'
import { gussetGirth, type Places, placesOnSleeve } from '../arm.ts'
import { armFits, clearsFloor, least, trunkFits } from '../fit-trunk.ts'
import { type Levels, levelsOf } from '../levels.ts'
import { toFives } from '../practice.ts'
import { strideNeed } from '../stride.ts'
import type { FitCheck } from '../types.ts'
import { type Flared, flaredFor } from './reversed-gores.ts'

type Chosen = {
  hemLevel: 'knee' | 'midCalf' | 'ankle'
  length: number | undefined
  chestEase: number
  armholeEase: number
  gusset: number | undefined
  sleeve: 'wrist' | 'elbow'
  sleeveLength: number | undefined
  panelWidth: number | undefined
  goreWidth: number | undefined
}

/** The figures of body linen: straight to the gusset, flared below it, with straight sleeves. mm. */
export type Linen = {
  levels: Levels
  length: number
  armhole: number
  gusset: number
  /** Armhole and gusset. */
  arm: number
  flared: Flared
  places: Places
  sleeveLength: number
  /** Width of the straight sleeve. */
  head: number
}

/** Least room for gores below the arm, and for a sleeve seam below the gusset. */
const SHORTEST_SKIRT = 150
const SHORTEST_SEAM = 40

/** @throws Refusal when body and choices leave no room for skirt or sleeve */
export function linenOf(body: Body, chosen: Chosen): Linen {
  const levels = levelsOf(body)
  const upperArm = lengthOf(body, 'upperArmGirth')!
  const length = chosen.length ?? toFives(levels.hems[chosen.hemLevel])
  const armhole = (upperArm + chosen.armholeEase) / 2
  const gusset = chosen.gusset ?? Math.max(40, Math.min(110, toFives(upperArm * 0.35)))
  const arm = armhole + gusset
  if (length < arm + SHORTEST_SKIRT) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(arm + SHORTEST_SKIRT) } }
    throw new Refusal(phrase('refusal.draft.shorterThanArmhole', params), 'length')
  }
  const { panelWidth, goreWidth, chestEase } = chosen
  const flared = flaredFor(body, {
    levels,
    length,
    arm,
    ease: chestEase,
    width: panelWidth,
    flare: goreWidth,
  })
  const places = placesOnSleeve(body, flared.width)
  const reach = toFives((chosen.sleeve === 'elbow' ? places.elbow : places.wrist) + 20)
  const sleeveLength = chosen.sleeveLength ?? Math.max(gusset + SHORTEST_SEAM + 20, reach)
  if (sleeveLength < gusset + SHORTEST_SEAM) {
    const params = { length: { mm: sleeveLength }, least: { mm: gusset + SHORTEST_SEAM } }
    throw new Refusal(phrase('refusal.draft.sleeveTooShort', params), 'sleeveLength')
  }
  return { levels, length, armhole, gusset, arm, flared, places, sleeveLength, head: 2 * armhole }
}

/** What is asked of all body linen: trunk, arms, stride and floor. */
export const linenFits = (
  body: Body,
  { levels, length, flared, places, sleeveLength, head, gusset }: Linen,
): FitCheck[] => [
  ...trunkFits(body, { levels, length, girthAt: flared.girthAt, by: 'chestEase' }),
  ...armFits(body, {
    ...{ places, length: sleeveLength, head: 'armholeEase', end: 'armholeEase' },
    girthAt: (place) => head + gussetGirth(gusset, place),
  }),
  least(body, 'stride', flared.sweep, () => strideNeed(body, levels, length), 'goreWidth', ['calfGirth']),
  clearsFloor(body, levels, length, 'length'),
]
