import type { MeasureId } from './vocabulary.ts'

/**
 * Which measure each column of ANSUR II stands for (Anthropometric Survey of US Army Personnel, Gordon et al.
 * 2014, NATICK/TR-15/007; public release, mm), and where the two are not quite the same. The people in it
 * were soldiers of the US Army of 17 to 58 years: slimmer and fitter than many a client, and none a child.
 */
export const SURVEY: Partial<Record<MeasureId, { column: string; caveat?: SurveyCaveat }>> = {
  stature: { column: 'stature' },
  cervicalHeight: { column: 'cervicaleheight' },
  headGirth: { column: 'headcircumference' },
  neckGirth: { column: 'neckcircumference' },
  neckBaseGirth: { column: 'neckcircumferencebase' },
  shoulderLength: { column: 'shoulderlength' },
  /** Between the creases of the armpits, arms hanging. */
  backWidth: { column: 'interscyei', caveat: 'level' },
  /** Round the fullest point of the chest on women and men alike: stands for a man's chest girth too. */
  bustGirth: { column: 'chestcircumference' },
  /** At the navel, which lies lower than the narrowest place on many women. */
  waistGirth: { column: 'waistcircumference', caveat: 'navel' },
  hipGirth: { column: 'buttockcircumference' },
  backWaistLength: { column: 'waistbacklength', caveat: 'navel' },
  trunkGirth: { column: 'verticaltrunkcircumferenceusa' },
  totalCrotchLength: { column: 'crotchlengthomphalion', caveat: 'navel' },
  /** Arm held out and bent: longer than the way over shoulder and hanging arm taken together. */
  cervicalToWristLength: { column: 'sleevelengthspinewrist', caveat: 'bentArm' },
  /** From the outer end of the shoulder to the wrist, arm hanging straight. */
  armLength: { column: 'sleeveoutseam' },
  upperArmLength: { column: 'shoulderelbowlength', caveat: 'bentArm' },
  upperArmGirth: { column: 'bicepscircumferenceflexed', caveat: 'flexed' },
  forearmGirth: { column: 'forearmcircumferenceflexed', caveat: 'flexed' },
  wristGirth: { column: 'wristcircumference' },
  handGirth: { column: 'handcircumference' },
  handLength: { column: 'handlength' },
  waistHeight: { column: 'waistheightomphalion', caveat: 'navel' },
  insideLegHeight: { column: 'crotchheight' },
  kneeHeight: { column: 'kneeheightmidpatella' },
  thighGirth: { column: 'thighcircumference' },
  calfGirth: { column: 'calfcircumference' },
  ankleGirth: { column: 'anklecircumference' },
  heelGirth: { column: 'heelanklecircumference' },
  footLength: { column: 'footlength' },
}

/** How a survey's dimension differs from the one a maker takes. */
export type SurveyCaveat = 'navel' | 'bentArm' | 'flexed' | 'level'

/**
 * What a differing posture adds to the spread of a measure, mm as a standard deviation (from memory: a
 * flexed upper arm is one to three centimetres rounder than a hanging one). The mean is left as surveyed, so
 * that sleeves err to the wide side.
 */
export const POSTURE_SD: Partial<Record<MeasureId, number>> = { upperArmGirth: 10, forearmGirth: 5 }

/** The measures of which the survey tells something. */
export const SURVEYED = Object.keys(SURVEY) as MeasureId[]

/** Whose proportions a body is held against: of the survey's women, its men, or both when it is not said. */
export const PROPORTIONS_OF = ['women', 'men', 'all'] as const
export type ProportionsOf = (typeof PROPORTIONS_OF)[number]
