import { UNKNOWN_PACE } from './pace/pace.ts'
import type { ThreadRules, Ways } from './types.ts'

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
  doubled: [],
  waxed: false,
}

/** Waxed thread tangles later, so that a longer needleful can be sewn with: by so much (common practice). */
export const WAXED_NEEDLEFUL = 1.3

/** Layers a row of stitches goes through: a seam joins two; a fold felled down lies double on the cloth. */
export const LAYERS = { gather: 1, join: 2, fell: 3, edge: 1, hem: 3, reinforce: 2 } as const

/** Minutes to match, pin, fasten on and off, whatever the length of a row (common practice). */
export const MINUTES_PER_ROW = 2

/** A workroom that has set nothing and logged nothing: every stitch and operation as the catalogue has it. */
export const USUAL_WAYS: Ways = { density: {}, minutes: {}, pace: UNKNOWN_PACE }
