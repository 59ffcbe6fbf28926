import { type Body, lengthOf } from '../../../measure/body.ts'
import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import { armOf, gussetGirth, type Places, placesOnSleeve } from '../../arm.ts'
import { ELBOW_ON_ARM } from '../../levels.ts'
import { ARM_EASE, ROUTES_DIFFER, THUMB, toFives } from '../../practice.ts'
import type { UndertunicChoices } from './choices.ts'

/** Girth ease on the armhole unless the arm needs more (common practice). */
export const USUAL_ARMHOLE_EASE = 80

/** The sleeve: a panel tapering evenly from its head to its end. mm. */
export type Sleeve = {
  /** Width at the head: both armholes. */
  head: number
  wrist: number
  /** Along its centre line. */
  length: number
  /** Each slanting edge. */
  edge: number
  places: Places
  /** Girth of the sleeve at a place down from its head, the gusset included. */
  girthAt: (place: number) => number
  /** The two ways of measuring the arm differ by this much, when that is too much to pass over. */
  routesDiffer?: number
}

type Given = { width: number; armhole: number; gusset: number }

/**
 * The sleeve of a tunic whose panels are `width` wide: it starts where the panel ends, on the upper arm.
 *
 * @throws Refusal when the sleeve is too short for its gusset
 */
export function sleeveOf(body: Body, chosen: UndertunicChoices, { width, armhole, gusset }: Given): Sleeve {
  const { differ } = armOf(body)
  const head = 2 * armhole
  const places = placesOnSleeve(body, width)
  const length =
    chosen.sleeveLength ?? (chosen.sleeve === 'elbow' ? places.elbow : places.wrist) + chosen.sleeveEase
  if (length < gusset + SHORTEST_UNDERARM) {
    const params = { length: { mm: length }, least: { mm: gusset + SHORTEST_UNDERARM } }
    throw new Refusal(phrase('refusal.draft.sleeveTooShort', params), 'sleeveLength')
  }
  const wrist = chosen.wristWidth ?? usualWrist(body, chosen.taper, head, length, places)
  const edge = Math.hypot(length, (head - wrist) / 2)
  const girthAt = (place: number) => {
    const along = Math.min(length, Math.max(0, place))
    return head - ((head - wrist) * along) / length + gussetGirth(gusset, along)
  }
  const sleeve = { head, wrist, length, edge, places, girthAt }
  return differ > ROUTES_DIFFER ? { ...sleeve, routesDiffer: differ } : sleeve
}

const SHORTEST_UNDERARM = 40

/** The longest gusset that leaves an underarm seam on every sleeve of this body, however wide its panels. */
export function gussetRoom(body: Body, chosen: UndertunicChoices): number {
  const { arm, shoulder } = armOf(body)
  const girths = (['bustGirth', 'chestGirth', 'waistGirth', 'hipGirth'] as const).map(
    (id) => lengthOf(body, id) ?? 0,
  )
  const dropped = (Math.max(...girths) + chosen.chestEase) / 4 - shoulder
  const part = chosen.sleeve === 'elbow' ? ELBOW_ON_ARM : 1
  return (chosen.sleeveLength ?? part * arm - dropped + chosen.sleeveEase) - SHORTEST_UNDERARM
}

/** The narrowest end, in half centimetres, that lets the hand through and does not bind the arm. */
function usualWrist(body: Body, taper: boolean, head: number, length: number, places: Places): number {
  if (!taper) return head
  const hand = lengthOf(body, 'handGirth')! + THUMB
  const needs = [
    { girth: lengthOf(body, 'upperArmGirth'), place: places.biceps, from: BICEPS_BY_THE_END },
    { girth: lengthOf(body, 'elbowGirth'), place: places.elbow, from: 0 },
    { girth: lengthOf(body, 'forearmGirth'), place: places.forearm, from: 0 },
  ].map(({ girth, place, from }) => {
    // Where the arm's place lies beyond the sleeve's end, the end itself must be wide enough.
    const part = Math.min(1, place / length)
    return girth === undefined || part <= from ? 0 : (girth + ARM_EASE - head * (1 - part)) / part
  })
  return toFives(Math.max(hand, ...needs))
}

/** In a sleeve so short that the biceps lies in its last part, room comes from its end, else from its head. */
const BICEPS_BY_THE_END = 0.7

/** Armhole depth (mm) that the biceps asks for, at its place along a sleeve with this end and gusset. */
export function armholeNeed(body: Body, { wrist, length, places }: Sleeve, gusset: number): number {
  const part = Math.min(1, places.biceps / length)
  const girth = lengthOf(body, 'upperArmGirth')! + ARM_EASE - gussetGirth(gusset, places.biceps)
  return part > BICEPS_BY_THE_END ? 0 : (girth - wrist * part) / (1 - part) / 2
}
