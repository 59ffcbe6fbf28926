/** Tolerances of the drafting geometry, in millimetres unless said otherwise. One home for all of them. */

/** Two points nearer than this are the same point (rounding dust, far below a thread). */
export const SAME_POINT = 1e-6

/** The two sides of a seam agree when they differ by no more than this. */
export const SEAM_WALK = 0.5

/** Greatest distance between an arc and the chord or tangent that stands for it in a layout. */
export const FLATTEN = 0.1

/** Overlap that the independent checker of a lay still lets pass. */
export const LAY_OVERLAP = 0.1
