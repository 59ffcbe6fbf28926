import { type Body, lengthOf } from '../../../measure/body.ts'
import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import type { Asked } from '../../choices.ts'
import { type Levels, levelsOf } from '../../levels.ts'
import { FACING, SHORTEST_GORE, toFives } from '../../practice.ts'
import { type Allowances, allowancesOf, bottomHemOf, type Turned, wristHemOf } from './allowances.ts'
import type { UndertunicChoices } from './choices.ts'
import { type Neck, neckOf } from './neck.ts'
import { type Skirt, skirtOf } from './skirt.ts'
import { armholeNeed, gussetRoom, type Sleeve, sleeveOf, USUAL_ARMHOLE_EASE } from './sleeve.ts'

/** Every finished figure of one undertunic, mm. Down its side: slope + armhole + gusset + side + gore = length. */
export type Figures = {
  chosen: UndertunicChoices
  levels: Levels
  length: number
  /** Drop of the shoulder from neck to armhole. */
  slope: number
  /** Width of the front and of the back panel. */
  width: number
  /** Depth of the armhole on each panel: half the sleeve's head. */
  armhole: number
  gusset: number
  /** Side seam between gusset and gore. */
  side: number
  skirt: Skirt
  sleeve: Sleeve
  neck: Neck
  allowances: Allowances
  hems: { bottom: Turned; wrist: Turned }
  /** The gores start below the waist, because armhole and gusset reach below it. */
  goreLowered: boolean
}

/** @throws Refusal when body and choices make no garment, naming the choice to change */
export function figuresOf(body: Body, chosen: UndertunicChoices, asked: Asked): Figures {
  const levels = levelsOf(body)
  const slope = chosen.shoulderSlope
  if (slope > 0 && chosen.shoulder === 'cutInOne') {
    throw new Refusal(phrase('refusal.draft.slopeInOne'), 'shoulderSlope')
  }
  const length = chosen.length ?? Math.round(levels.hems[chosen.hemLevel] / 5) * 5
  const gusset = chosen.gusset ?? usualGusset(body, chosen)
  const allowances = allowancesOf(chosen)
  const upperArm = lengthOf(body, 'upperArmGirth')!

  // A lower armhole moves the gores down, which can widen the panel, which shortens the sleeve and brings
  // its taper nearer the biceps. So the armhole is let down in half centimetres until all of it agrees.
  let ease = chosen.armholeEase ?? USUAL_ARMHOLE_EASE
  for (;;) {
    const armhole = (upperArm + ease) / 2
    const reach = slope + armhole + gusset
    const goreTop = goreTopOf(chosen, levels, length, reach)
    const skirt = skirtOf(body, chosen, asked, { levels, length, goreTop, allowances })
    const room = neckRoom(length, skirt)
    const neck = neckOf(body, chosen, asked, { panelWidth: skirt.width, room })
    const sleeve = sleeveOf(body, chosen, { width: skirt.width, armhole, gusset })
    if (
      chosen.armholeEase === undefined &&
      chosen.wristWidth === undefined &&
      armholeNeed(body, sleeve, gusset) > armhole + 1e-9
    ) {
      ease += 5
      continue
    }
    const side = goreTop - reach
    const goreLowered = chosen.goreTop === undefined && goreTop > levels.waist
    refuseLongSlit(neck, room)
    return {
      chosen: { ...chosen, armholeEase: ease },
      ...{ levels, length, slope, armhole, gusset, side, skirt, sleeve, neck, allowances, goreLowered },
      width: skirt.width,
      hems: { bottom: bottomHemOf(chosen, skirt.radius), wrist: wristHemOf(chosen) },
    }
  }
}

/** 100 mm for a grown body; for children in proportion to the bust, and never longer than the sleeve has room for. */
function usualGusset(body: Body, chosen: UndertunicChoices): number {
  const bust = lengthOf(body, 'bustGirth') ?? lengthOf(body, 'chestGirth')!
  return Math.max(LEAST_GUSSET, Math.min(100, toFives(bust * 0.13), toFives(gussetRoom(body, chosen) - 5)))
}
const LEAST_GUSSET = 40

/** How far down from the high shoulder point the gores start. */
function goreTopOf(
  { goreTop: level }: UndertunicChoices,
  levels: Levels,
  length: number,
  reach: number,
): number {
  if (length < reach + SHORTEST_GORE) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(reach + SHORTEST_GORE) } }
    throw new Refusal(phrase('refusal.draft.shorterThanArmhole', params), 'length')
  }
  const top = level === undefined ? Math.max(levels.waist, reach) : levels[level]
  if (top < reach) {
    const params = { top: { mm: top }, reach: { mm: reach } }
    throw new Refusal(phrase('refusal.draft.goreAboveGusset', params), 'goreTop')
  }
  if (length - top < SHORTEST_GORE) {
    const params = { length: { mm: length }, least: { mm: Math.ceil(top + SHORTEST_GORE) } }
    throw new Refusal(phrase('refusal.draft.noRoomForGores', params), 'length')
  }
  return top
}

/** The neck slit and its facing must end above the hem, and above the point of a centre gore. */
const neckRoom = (length: number, { gores, radius }: Skirt): number =>
  length - (gores > 4 ? radius : 0) - FACING.width

function refuseLongSlit({ slit, front }: Neck, room: number): void {
  if (front.depth + slit <= room) return
  const params = { slit: { mm: slit }, most: { mm: Math.max(0, Math.floor(room - front.depth)) } }
  throw new Refusal(phrase('refusal.draft.slitTooLong', params), 'slitLength')
}
