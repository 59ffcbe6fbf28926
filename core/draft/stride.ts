import { type Body, lengthOf } from '../measure/body.ts'
import type { Levels } from './levels.ts'
import { STEP_TO_STATURE, STRIDE_EASE } from './practice.ts'

/**
 * Sweep a striding body needs at the hem of a garment of `length`: twice the part of a step that is open
 * at that height, and the calf. Nothing above the crotch. A calf that was not measured is taken as 380 mm
 * (about the mean of ANSUR II) for the default spread only; the fit check leaves it open.
 */
export function strideNeed(body: Body, levels: Levels, length: number): number {
  const height = Math.max(0, levels.cervicalHeight - length)
  if (height >= levels.crotchHeight) return 0
  const open = (levels.crotchHeight - height) / levels.crotchHeight
  return 2 * STEP_TO_STATURE * levels.stature * open + (lengthOf(body, 'calfGirth') ?? 380) + STRIDE_EASE
}
