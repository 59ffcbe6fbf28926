/**
 * The body dimensions the planner knows, by their ISO 8559-1:2017 names, in the order one takes them so
 * that the tape goes once round the client. `range` is in mm and wide on purpose: from a newborn to the
 * largest adult, so that only a slip of the pen or of the unit falls outside it (common practice).
 */
export const MEASURES = {
  stature: { group: 'standing', range: [400, 2500] },
  cervicalHeight: { group: 'standing', range: [300, 2200] },
  headGirth: { group: 'headAndNeck', range: [300, 750] },
  neckGirth: { group: 'headAndNeck', range: [150, 800] },
  neckBaseGirth: { group: 'headAndNeck', range: [180, 850] },
  shoulderLength: { group: 'shoulders', range: [35, 280] },
  shoulderWidth: { group: 'shoulders', range: [150, 800] },
  backWidth: { group: 'shoulders', range: [120, 800] },
  chestWidth: { group: 'shoulders', range: [120, 800] },
  bustGirth: { group: 'trunk', range: [300, 2400] },
  chestGirth: { group: 'trunk', range: [300, 2400] },
  underbustGirth: { group: 'trunk', range: [280, 2200] },
  bustPointWidth: { group: 'trunk', range: [60, 500] },
  neckToBustPoint: { group: 'trunk', range: [80, 650] },
  waistGirth: { group: 'trunk', range: [280, 2600] },
  hipGirth: { group: 'trunk', range: [300, 2600] },
  backWaistLength: { group: 'trunk', range: [120, 800] },
  frontWaistLength: { group: 'trunk', range: [120, 850] },
  waistToHip: { group: 'trunk', range: [40, 450] },
  trunkGirth: { group: 'trunk', range: [500, 2600] },
  totalCrotchLength: { group: 'trunk', range: [250, 1600] },
  cervicalToWristLength: { group: 'arm', range: [200, 1400] },
  armLength: { group: 'arm', range: [130, 1100] },
  upperArmLength: { group: 'arm', range: [70, 650] },
  armscyeGirth: { group: 'arm', range: [130, 1000] },
  upperArmGirth: { group: 'arm', range: [90, 900] },
  elbowGirth: { group: 'arm', range: [80, 800] },
  forearmGirth: { group: 'arm', range: [80, 700] },
  wristGirth: { group: 'arm', range: [70, 400] },
  handGirth: { group: 'arm', range: [80, 420] },
  handLength: { group: 'arm', range: [50, 350] },
  waistHeight: { group: 'leg', range: [200, 1700] },
  hipHeight: { group: 'leg', range: [150, 1500] },
  insideLegHeight: { group: 'leg', range: [80, 1300] },
  kneeHeight: { group: 'leg', range: [60, 900] },
  thighGirth: { group: 'leg', range: [150, 1400] },
  kneeGirth: { group: 'leg', range: [120, 1000] },
  calfGirth: { group: 'leg', range: [90, 900] },
  ankleGirth: { group: 'leg', range: [80, 600] },
  heelGirth: { group: 'leg', range: [120, 600] },
  footLength: { group: 'leg', range: [60, 400] },
} as const satisfies Record<string, { group: MeasureGroup; range: readonly [least: number, most: number] }>

/** Where on the body one is, so that the client need not turn round for each measure. */
export const MEASURE_GROUPS = ['standing', 'headAndNeck', 'shoulders', 'trunk', 'arm', 'leg'] as const
export type MeasureGroup = (typeof MEASURE_GROUPS)[number]

/** The name of a dimension, as constructions, the store and the catalogue have it. */
export type MeasureId = keyof typeof MEASURES

/** All of them, in the order one takes them. */
export const MEASURE_IDS = Object.keys(MEASURES) as MeasureId[]

/** Whether a text names a dimension; letter by letter, capitals count. */
export const isMeasureId = (id: string): id is MeasureId => Object.hasOwn(MEASURES, id)

/** Whether the tape goes round: a girth, and not a length or a height. */
export const isGirth = (id: MeasureId): boolean => id.endsWith('Girth')
