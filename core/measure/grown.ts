import type { Lengths } from './proportions.ts'

/** The youngest people of the survey, in years, and the shortest of them, mm. */
const AGE = 17
const STATURE = 1400

/**
 * Whether a body can be held against a survey of grown people: by the birth day, and where that is not known
 * by the stature. Of a child the survey knows nothing.
 *
 * @param birthDay and `day` as YYYY-MM-DD
 */
export function isGrown(lengths: Lengths, birthDay: string | null, day: string): boolean {
  if (birthDay === null) return (lengths.stature ?? STATURE) >= STATURE
  return ageOn(birthDay, day) >= AGE
}

/** Whole years from a birth day to a day, both YYYY-MM-DD. */
export const ageOn = (birthDay: string, day: string): number =>
  Number(day.slice(0, 4)) - Number(birthDay.slice(0, 4)) - (day.slice(4) < birthDay.slice(4) ? 1 : 0)
