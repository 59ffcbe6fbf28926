import type { SeamFinish } from './types.ts'

/**
 * Figures that no choice sets, for every garment. mm unless said otherwise; "common practice" of makers of
 * such clothes where no source is named.
 */

/** Ease below which a garment without an opening binds at chest, waist or hip. */
export const LEAST_EASE = 80
/** A seat spreads in sitting by about this part of the standing hip girth (from memory). */
export const SEAT_SPREAD = 0.06
/** Ease the arm needs to bend and to reach. */
export const ARM_EASE = 30
/** ISO 8559-1 hand girth leaves out the thumb, which must pass too. */
export const THUMB = 40
export const HEAD_EASE = 20
/** Shoulder left on each side of the neck, or the tunic slides off. */
export const SHOULDER_HOLD = 25
export const FLOOR_CLEARANCE = 20
/** Ease of the hem on the calf in mid stride. */
export const STRIDE_EASE = 100
/** Length of a comfortable step ÷ stature. */
export const STEP_TO_STATURE = 0.41

/** Front and back depth of the neck ÷ neck base girth. */
export const FRONT_DEPTH = 1 / 5
export const BACK_DEPTH = 1 / 15
export const BOAT_DEPTHS = { front: 25, back: 15 }
export const SHORTEST_SLIT = 100

/** Half a gore's angle stays under this, in radians, or its bias edge cannot hang. */
export const WIDEST_QUARTER = 0.9
/** Angle of a gore when nothing else decides, in radians; a whole side gore has twice it. */
export const USUAL_QUARTER = 0.35
/** Shortest gore worth setting, and narrowest at its hem. */
export const SHORTEST_GORE = 100
export const NARROWEST_GORE = 40

/** Allowances of a felled seam: the one trimmed and the one folded over it. */
export const FELL = { narrow: 6, wide: 14 }
/** First turning of a hem, and of a narrow one on fine linen. */
export const TURNING = 6
export const NARROW_TURNING = 4
/** A rolled neck hem: finished depth, and cloth it takes. */
export const ROLL = { depth: 3, allowance: 5 }
export const FACING = { width: 40, seam: 6, turning: 6 }
/** Cloth to ease into a curved hem, as a part of its length, above which it puckers. */
export const MOST_FULLNESS = 0.03
export const DEEPEST_DEFAULT_HEM = 20

/** Arm-down sum and bent-arm length may differ by this before posture is in question. */
export const ROUTES_DIFFER = 40

/** Allowance of a seam that is pressed open. */
export const OPEN = 12
/** An edge that is gathered or pleated into another, and one that is turned in along a band. */
export const TAKEN_UP = 12

/** Allowances of a seam by how it is finished: the side trimmed, and the one folded over it. */
export const allowancesFor = (finish: SeamFinish, open = OPEN): { narrow: number; wide: number } =>
  finish === 'felled' ? FELL : { narrow: open, wide: open }

/** What is added to an edge that is hemmed this deep. */
export const hemmed = (depth: number): { allowance: number; turned: true } => ({
  ...{ allowance: depth + TURNING, turned: true },
})

/** Lengths worked out from a body are kept to half centimetres, so that the maker chalks round figures. */
export const toFives = (mm: number): number => Math.ceil(mm / 5 - 1e-9) * 5

/**
 * Girth round both shoulders and the arms ÷ girth of the chest: mean over the 6068 people of ANSUR II (US Army
 * 2012, public release), standard deviation 0.06; held against the survey in the tests.
 */
export const SHOULDERS_TO_CHEST = 1.108
