import type { Gaussian } from '../../measure/gaussian.ts'
import { familyOf, WORK_IDS, type WorkId } from '../work.ts'
import { PACE } from './parameters.ts'

/**
 * How fast the workroom works: for each kind of work the logarithm of what its standard minutes are to be
 * multiplied by, as a joint normal distribution, and the spread from one step to the next.
 */
export type Pace = Gaussian & { step: number }

const NUMBER = new Map(WORK_IDS.map((id, i) => [id, i]))
/** Where a kind of work stands in a pace. */
export const numberOf = (id: WorkId): number => NUMBER.get(id)!

/**
 * The pace of a workroom of which nothing is known. What is common to everything, to a family and to one kind
 * of work adds up, so that a kind never logged borrows from those like it. The standard minutes are expected
 * values: the mean of the logarithm lies half the variance below nought.
 */
export const UNKNOWN_PACE: Pace = pacePrior()

function pacePrior(): Pace {
  const { whole, family, kind, step } = PACE
  const own = whole ** 2 + family ** 2 + kind ** 2
  return {
    mean: WORK_IDS.map(() => -(own + step ** 2) / 2),
    covariance: WORK_IDS.map((a) =>
      WORK_IDS.map((b) => {
        if (a === b) return own
        return whole ** 2 + (familyOf(a) === familyOf(b) ? family ** 2 : 0)
      }),
    ),
    step,
  }
}
