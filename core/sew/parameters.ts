import type { ThreadRules } from './types.ts'

/**
 * A needleful of 45 cm lies within the 40–50 cm that Dillmont's *Encyclopedia of Needlework* allows; of it
 * 6 cm go into fastening on and off (common practice). Machine thread: 2–3 cm cut off each of the two
 * threads at each end of a row (garment thread guides), and 12 % waste, within the 10–15 % of thread makers'
 * bulletins.
 */
export const DEFAULT_THREAD_RULES: ThreadRules = {
  needleful: 450,
  needlefulLost: 60,
  machineEnd: 50,
  machineWaste: 0.12,
}

/** Layers a row of stitches goes through: a seam joins two; a fold felled down lies double on the cloth. */
export const LAYERS = { gather: 1, join: 2, fell: 3, edge: 1, hem: 3, reinforce: 2 } as const

/** Minutes to match, pin, fasten on and off, whatever the length of a row (common practice). */
export const MINUTES_PER_ROW = 2

/** Standard deviation of a time ÷ its mean, before a workroom has logged any (common practice). */
export const SPREAD = { hand: 0.35, machine: 0.3, operation: 0.4 } as const

/**
 * How closely the times of one garment go together: one person's pace, cloth and day are in all of them.
 * Half of the variance is taken as shared (common practice; logged time is to replace it).
 */
export const SHARED_PACE = 0.5
