import type { Gaussian } from './gaussian.ts'
import { POSTURE_SD, type ProportionsOf, SURVEYED } from './survey.ts'
import { SURVEYED_PROPORTIONS } from './survey-proportions.ts'
import { MEASURE_IDS, type MeasureId } from './vocabulary.ts'

/** How the measures of a group of people go together. All but `points` are of the logarithms of mm. */
export type Proportions = {
  people: number
  mean: number[]
  /** The lower triangle of the covariance. */
  triangle: number[][]
  /** The mm under which a hundredth, half, and all but a hundredth of them are. */
  points: number[][]
}

/** Lengths in mm by the measure's name. */
export type Lengths = Partial<Record<MeasureId, number>>

/** Number of the survey's measure that this one is, -1 if it has none. */
export function surveyedAs(id: MeasureId, of: ProportionsOf): number {
  // The survey put the tape round the fullest point of every chest: on a man that is the chest girth.
  return SURVEYED.indexOf(id === 'chestGirth' && of !== 'women' ? 'bustGirth' : id)
}

/** Those of a body's measures that can be held against the survey, with their numbers in it. */
export function comparable(lengths: Lengths, of: ProportionsOf): { ids: MeasureId[]; at: number[] } {
  const other = of === 'men' ? 'bustGirth' : 'chestGirth'
  const both = lengths.bustGirth !== undefined && lengths.chestGirth !== undefined
  const ids = MEASURE_IDS.filter(
    (id) => lengths[id] !== undefined && surveyedAs(id, of) >= 0 && !(both && id === other),
  )
  return { ids, at: ids.map((id) => surveyedAs(id, of)) }
}

/** The logarithms of all the survey's measures, as a cloud; postures that differ from the maker's widen it. */
export function cloudOf(of: ProportionsOf): Gaussian {
  const { mean, triangle } = SURVEYED_PROPORTIONS[of]
  const covariance = mean.map((_, i) =>
    mean.map((_, j) => {
      const both = i >= j ? triangle[i]![j]! : triangle[j]![i]!
      const posture = POSTURE_SD[SURVEYED[i]!] ?? 0
      return i === j ? both + (posture / Math.exp(mean[i]!)) ** 2 : both
    }),
  )
  return { mean, covariance }
}

/** What 98 of 100 people in the survey lie between, mm. */
export function commonRange(id: MeasureId, of: ProportionsOf): [least: number, most: number] | undefined {
  const points = SURVEYED_PROPORTIONS[of].points[surveyedAs(id, of)]
  return points === undefined ? undefined : [points[0]!, points[2]!]
}
