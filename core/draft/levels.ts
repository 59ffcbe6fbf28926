import { type Body, lengthOf } from '../measure/body.ts'

/**
 * Mean ratios to cervical height over the 6068 bodies of ANSUR II (US Army 2012, public release), held
 * against the survey in the tests. They stand in for a height that was not measured; a fit check that
 * rests on one is still made, for heights of one body keep close company (the ratios' standard deviations
 * are 2–4 %). The hip's is from memory: the survey has no hip height.
 */
export const TO_CERVICAL_HEIGHT = { stature: 1.161, insideLegHeight: 0.558, kneeHeight: 0.3218 }
export const HIP_TO_WAIST_HEIGHT = 0.86
/** Fold of the armpit above the floor ÷ cervical height: mean of the same survey. */
export const AXILLA_TO_CERVICAL_HEIGHT = 0.8795
/** Point of the elbow, from the end of the shoulder, ÷ arm length: mean of the same survey. */
export const ELBOW_ON_ARM = 0.615
/** Fullest biceps and forearm along the arm (from memory). */
export const BICEPS_ON_ARM = 0.3
export const FOREARM_ON_ARM = 0.68
/** A hem at the ankle ends this part of the cervical height above the floor (common practice). */
const ANKLE_LEVEL = 0.07

/** Heights of the body above the floor and the same levels down from the high shoulder point, mm. */
export type Levels = {
  cervicalHeight: number
  stature: number
  crotchHeight: number
  /** Down from the high shoulder point, which stands about as high as the nape bone. */
  armpit: number
  waist: number
  highHip: number
  hip: number
  hems: { knee: number; midCalf: number; ankle: number }
}

/** The levels of a body whose cervical and waist height are known. */
export function levelsOf(body: Body): Levels {
  const cervicalHeight = lengthOf(body, 'cervicalHeight')!
  const waistHeight = lengthOf(body, 'waistHeight')!
  const byRatio = (id: keyof typeof TO_CERVICAL_HEIGHT) =>
    lengthOf(body, id) ?? TO_CERVICAL_HEIGHT[id] * cervicalHeight
  const knee = byRatio('kneeHeight')
  const ankle = ANKLE_LEVEL * cervicalHeight
  const waist = cervicalHeight - waistHeight
  const hip = cervicalHeight - (lengthOf(body, 'hipHeight') ?? HIP_TO_WAIST_HEIGHT * waistHeight)
  return {
    cervicalHeight,
    stature: byRatio('stature'),
    crotchHeight: byRatio('insideLegHeight'),
    armpit: cervicalHeight * (1 - AXILLA_TO_CERVICAL_HEIGHT),
    waist,
    highHip: (waist + hip) / 2,
    hip,
    hems: {
      knee: cervicalHeight - knee,
      midCalf: cervicalHeight - (knee + ankle) / 2,
      ankle: cervicalHeight - ankle,
    },
  }
}
