/**
 * The body dimensions the planner knows, by their ISO 8559-1:2017 names, in the order one takes them so
 * that the tape goes once round the client. `range` is in mm and wide on purpose: from a newborn to the
 * largest adult, so that only a slip of the pen or of the unit falls outside it (common practice).
 */
export const MEASURES = {
  stature: { range: [400, 2500] },
  cervicalHeight: { range: [300, 2200] },
  headGirth: { range: [300, 750] },
  neckGirth: { range: [150, 800] },
  neckBaseGirth: { range: [180, 850] },
  shoulderLength: { range: [35, 280] },
  bustGirth: { range: [300, 2400] },
  chestGirth: { range: [300, 2400] },
  waistGirth: { range: [280, 2600] },
  hipGirth: { range: [300, 2600] },
  backWaistLength: { range: [120, 800] },
  cervicalToWristLength: { range: [200, 1400] },
  armLength: { range: [130, 1100] },
  upperArmLength: { range: [70, 650] },
  upperArmGirth: { range: [90, 900] },
  elbowGirth: { range: [80, 800] },
  forearmGirth: { range: [80, 700] },
  wristGirth: { range: [70, 400] },
  handGirth: { range: [80, 420] },
  waistHeight: { range: [200, 1700] },
  hipHeight: { range: [150, 1500] },
  insideLegHeight: { range: [80, 1300] },
  kneeHeight: { range: [60, 900] },
  calfGirth: { range: [90, 900] },
} as const satisfies Record<string, { range: readonly [least: number, most: number] }>

export type MeasureId = keyof typeof MEASURES

export const MEASURE_IDS = Object.keys(MEASURES) as MeasureId[]

export const isMeasureId = (id: string): id is MeasureId => Object.hasOwn(MEASURES, id)
