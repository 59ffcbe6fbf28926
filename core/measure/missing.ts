import { expectedOf } from './gaussian.ts'
import { cloudOf, comparable, type Lengths, surveyedAs } from './proportions.ts'
import { type ProportionsOf, SURVEYED } from './survey.ts'
import { MEASURE_IDS, type MeasureId } from './vocabulary.ts'

/** What a measure most likely is, and how far off that may well be: mm, and one standard deviation. */
export type Estimated = { measure: MeasureId; mm: number; sd: number }

/**
 * Measures not taken, from those that were, by how the measures of surveyed people go together: what half of
 * the people with these measures are under. Two in three of them are within one standard deviation of it.
 *
 * @param lengths in mm
 * @param wanted measures to estimate; those the survey says nothing of are left out. All that are missing
 * when not given
 */
export function estimateMissing(
  lengths: Lengths,
  of: ProportionsOf,
  wanted?: readonly MeasureId[],
): Estimated[] {
  // A chest that was taken as a bust is known, not to be estimated.
  const { at, ids } = comparable(lengths, of)
  const open = (wanted ?? missingOf(lengths, of)).filter(
    (id) => surveyedAs(id, of) >= 0 && !at.includes(surveyedAs(id, of)),
  )
  const logs = ids.map((id) => Math.log(lengths[id]!))
  const expected = expectedOf(
    cloudOf(of),
    at,
    logs,
    open.map((id) => surveyedAs(id, of)),
  )
  return open.map((measure, i) => {
    const mm = Math.exp(expected[i]!.mean)
    return { measure, mm, sd: mm * expected[i]!.sd }
  })
}

/** Surveyed measures that were not taken: the chest of men by that name, of others as bust. */
function missingOf(lengths: Lengths, of: ProportionsOf): MeasureId[] {
  const chest = lengths.bustGirth !== undefined || lengths.chestGirth !== undefined
  return MEASURE_IDS.filter((id) => {
    if (id === 'bustGirth') return of !== 'men' && !chest
    if (id === 'chestGirth') return of === 'men' && !chest
    return lengths[id] === undefined && SURVEYED.includes(id)
  })
}
