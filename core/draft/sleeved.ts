import type { MeasureId } from '../measure/vocabulary.ts'

/** What tunics, shifts and shirts are drafted to: all that hangs from the shoulders and has sleeves. */
export const SLEEVED_REQUIRED: readonly (readonly MeasureId[])[] = [
  ['bustGirth', 'chestGirth'],
  ['waistGirth'],
  ['hipGirth'],
  ['upperArmGirth'],
  ['handGirth'],
  ['headGirth'],
  ['neckBaseGirth'],
  ['shoulderLength'],
  ['armLength', 'cervicalToWristLength'],
  ['cervicalHeight'],
  ['waistHeight'],
]
/** And what makes more of their fit report checkable and their defaults better. */
export const SLEEVED_USEFUL: readonly MeasureId[] = [
  'stature',
  'hipHeight',
  'insideLegHeight',
  'kneeHeight',
  'calfGirth',
  'forearmGirth',
  'elbowGirth',
]
