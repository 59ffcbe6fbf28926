import type { MeasureId } from '../../../measure/vocabulary.ts'

/** Without these no gored tunic: of each group one is enough. */
export const TUNIC_REQUIRED: readonly (readonly MeasureId[])[] = [
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

/** These make more of its fit report checkable and defaults better. */
export const TUNIC_USEFUL: readonly MeasureId[] = [
  'stature',
  'hipHeight',
  'insideLegHeight',
  'kneeHeight',
  'calfGirth',
  'forearmGirth',
  'elbowGirth',
]
