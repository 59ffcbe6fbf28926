import { type Body, lengthOf } from '../../../measure/body.ts'
import { phrase } from '../../../words/phrase.ts'
import { Refusal } from '../../../words/refusal.ts'
import type { Asked } from '../../choices.ts'
import type { Levels } from '../../levels.ts'
import { NARROWEST_GORE, USUAL_QUARTER, WIDEST_QUARTER } from '../../practice.ts'
import { strideNeed } from '../../stride.ts'
import type { Allowances } from './allowances.ts'
import type { UndertunicChoices } from './choices.ts'

/** The body of the tunic below the arm: panel width and gores. mm and radians. */
export type Skirt = {
  /** Finished width of each panel. */
  width: number
  gores: number
  /** Down from the high shoulder point to the gores' points. */
  goreTop: number
  /** Length of the gores' long edges. */
  radius: number
  /** Angle of each gore. */
  angle: number
  /** Finished hem, the slits' allowances taken out. */
  sweep: number
  /** Finished girth at a level down from the high shoulder point. */
  girthAt: (level: number) => number
}

type Given = { levels: Levels; length: number; goreTop: number; allowances: Allowances }

/**
 * Width of the panels and spread of the gores: the panels cover chest and waist with their ease, and the
 * hip with what the gores already give there; the gores spread as asked, or to the sweep asked, or else as
 * usual and at least as far as a stride needs.
 *
 * @throws Refusal when the spread or sweep asked for cannot be had
 */
export function skirtOf(body: Body, chosen: UndertunicChoices, asked: Asked, given: Given): Skirt {
  const { levels, length, goreTop, allowances } = given
  const { gores, chestEase } = chosen
  const radius = length - goreTop
  const bust = lengthOf(body, 'bustGirth') ?? lengthOf(body, 'chestGirth')!
  const straight = Math.max(bust, lengthOf(body, 'waistGirth')!) + chestEase
  // Two slits in the panels of a tunic with centre gores; each takes its allowances out of the panel.
  const slitLoss = gores > 4 ? 4 * allowances.slit : 0
  const hipDepth = Math.min(radius, Math.max(0, levels.hip - goreTop))
  const hip = lengthOf(body, 'hipGirth')! + chestEase + (slitLoss * hipDepth) / radius
  const most = gores === 2 ? 2 * WIDEST_QUARTER : WIDEST_QUARTER

  const girth = (angle: number) => Math.max(straight, hip - gores * angle * hipDepth)
  /** The angle that gives a hem of `sweep`: whichever of chest and hip decides the panel's width. */
  const angleFor = (sweep: number) =>
    Math.min(
      (sweep - straight) / (gores * radius),
      hipDepth < radius ? (sweep - hip) / (gores * (radius - hipDepth)) : Infinity,
    )

  let angle: number
  if (chosen.goreSpread !== undefined) angle = chosen.goreSpread / radius
  else if (chosen.sweep !== undefined) angle = angleFor(chosen.sweep)
  else {
    const usual = gores === 2 ? 2 * USUAL_QUARTER : USUAL_QUARTER
    angle = Math.min(most, Math.max(usual, angleFor(strideNeed(body, levels, length) + slitLoss)))
  }
  const asking = asked.goreSpread === undefined ? 'sweep' : 'goreSpread'
  if (angle > most) {
    const params = {
      most: { mm: Math.floor(girth(most) + gores * radius * most) },
      spread: { mm: Math.floor(radius * most) },
    }
    throw new Refusal(phrase('refusal.draft.goresTooWide', params), asking)
  }
  if (!(angle * radius >= NARROWEST_GORE)) {
    const least = NARROWEST_GORE / radius
    const params = {
      least: { mm: Math.ceil(girth(least) + gores * radius * least) },
      spread: { mm: NARROWEST_GORE },
    }
    throw new Refusal(phrase('refusal.draft.goresTooNarrow', params), asking)
  }
  const around = girth(angle)
  const girthAt = (level: number) => {
    const below = Math.min(radius, Math.max(0, level - goreTop))
    return around + gores * angle * below - (slitLoss * below) / radius
  }
  return { width: around / 2, gores, goreTop, radius, angle, sweep: girthAt(length), girthAt }
}
