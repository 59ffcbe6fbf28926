import { type Gaussian, inverseOf, partOf } from '../../measure/gaussian.ts'
import { entriesOf, type Work, type WorkId } from '../work.ts'
import { numberOf, type Pace, UNKNOWN_PACE } from './pace.ts'
import { PACE } from './parameters.ts'
import { regress } from './regression.ts'

/** Time that was logged for steps now done: together so many minutes, so many days ago. */
export type Logged = { id: string; minutes: number; daysAgo: number; steps: readonly Work[] }

/** What a logged time was thought of: the odds that it is right, and what was expected in its place. */
export type Judged = { id: string; right: number; expected: number; shares: ReadonlyMap<WorkId, number> }

/** How fast a workroom is by its logged times, and what was thought of each of them. */
export type Learnt = { pace: Pace; judged: Judged[] }

/** Rounds at the most, and the change of a logarithm below which they have settled. Each is one small regression. */
const ROUNDS = 12
const SETTLED = 1e-3

/**
 * What logged times say of a workroom's pace. In logarithms a logged time is the sum of its kinds of work, each
 * at its factor, times the luck of its steps: nearly linear about the current guess, and so a regression (Gauss–Newton).
 * Between rounds each time is weighed by the odds that it is right, for one in `PACE.wrong` is thought to be
 * a timer left running (a mixture of two normal distributions, by expectation–maximisation), and by its age.
 *
 * @param logged each time with the work of its steps at the standard minutes
 */
export function learn(logged: readonly Logged[], prior: Pace = UNKNOWN_PACE): Learnt {
  const known = logged.filter(({ minutes, steps }) => minutes > 0 && steps.some(isWork))
  if (known.length === 0) return { pace: prior, judged: [] }
  const kinds = [...new Set(known.flatMap(({ steps }) => steps.flatMap((step) => entriesOf(step).map(idOf))))]
  const at = kinds.map(numberOf)
  const before = partOf(prior, at)
  const observed = known.map((one) => ({ ...one, parts: partsOf(one.steps, kinds) }))
  let now: Gaussian = before
  let step = prior.step
  let weighed = observed.map((one) => weigh(one, now, step))
  for (let round = 0; round < ROUNDS; round++) {
    const rows = weighed.map(({ shares, off, luck, right }, i) => ({
      x: shares,
      y: off + dot(shares, now.mean),
      variance: luck / Math.max(1e-6, right * faded(observed[i]!.daysAgo)),
    }))
    const last = now
    now = regress(rows, before)
    const sums = weighed.map((one, i) => {
      const { off, spread } = weigh(observed[i]!, now, step)
      return one.right * ((off * off + spread) / (one.luck / (step * step)))
    })
    const odds = weighed.reduce((sum, { right }) => sum + right, 0)
    const squared = PACE.stepWeight * prior.step ** 2 + sums.reduce((sum, one) => sum + one, 0)
    step = Math.sqrt(squared / (PACE.stepWeight + odds))
    weighed = observed.map((one) => weigh(one, now, step))
    if (now.mean.every((value, k) => Math.abs(value - last.mean[k]!) < SETTLED)) break
  }
  return {
    pace: { ...spreadOver(prior, at, before, now), step },
    judged: weighed.map(({ shares, right, expected }, i) => ({
      id: observed[i]!.id,
      right,
      expected,
      shares: new Map(kinds.map((id, k) => [id, shares[k]!])),
    })),
  }
}

const isWork = (step: Work): boolean => entriesOf(step).length > 0
const idOf = ([id]: [WorkId, number]): WorkId => id
const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0)
const faded = (daysAgo: number): number => 2 ** (-Math.max(0, daysAgo) / PACE.halfLife)

/** Standard minutes of each step by the number of its kind. */
const partsOf = (steps: readonly Work[], kinds: readonly WorkId[]) =>
  steps.map((step) => entriesOf(step).map(([id, minutes]) => [kinds.indexOf(id), minutes] as const))

type Observed = { minutes: number; parts: readonly (readonly (readonly [number, number])[])[] }

/** How a logged time stands to a guess: each kind's share of it, how far it is off, and the odds that it is right. */
function weigh({ minutes, parts }: Observed, { mean, covariance }: Gaussian, step: number) {
  const shares = mean.map(() => 0)
  const byStep = parts.map((kinds) =>
    kinds.reduce((sum, [k, standard]) => {
      const taken = standard * Math.exp(mean[k]!)
      shares[k] = shares[k]! + taken
      return sum + taken
    }, 0),
  )
  const expected = byStep.reduce((sum, one) => sum + one, 0)
  for (let k = 0; k < shares.length; k++) shares[k] = shares[k]! / expected
  // Several steps in one entry have each a luck of their own, which evens out.
  const luck = step * step * byStep.reduce((sum, one) => sum + (one / expected) ** 2, 0)
  const off = Math.log(minutes / expected)
  const spread = shares.reduce((sum, a, i) => (a === 0 ? sum : sum + a * dot(covariance[i]!, shares)), 0)
  const good = (1 - PACE.wrong) * density(off, luck + spread)
  const bad = PACE.wrong * density(off, PACE.wrongSpread ** 2)
  return { shares, off, luck, spread, expected, right: good / (good + bad) }
}

const density = (off: number, variance: number): number =>
  Math.exp((-off * off) / (2 * variance)) / Math.sqrt(variance)

/**
 * What is learnt of some kinds of work said of all: those never logged move with those they go together with.
 * With G = K(all, seen) K(seen, seen)⁻¹ the mean moves by G × the move of the seen, and the covariance
 * loses G (K(seen, seen) − S) Gᵀ.
 */
function spreadOver(prior: Pace, at: readonly number[], before: Gaussian, now: Gaussian): Gaussian {
  const inverse = inverseOf(before.covariance)
  const gain = prior.covariance.map((row) => {
    const seen = at.map((k) => row[k]!)
    return inverse.map((column) => dot(seen, column))
  })
  const moved = now.mean.map((value, i) => value - before.mean[i]!)
  const lost = before.covariance.map((row, i) => row.map((value, j) => value - now.covariance[i]![j]!))
  const through = gain.map((row) => lost.map((column) => dot(row, column)))
  return {
    mean: prior.mean.map((value, i) => value + dot(gain[i]!, moved)),
    covariance: prior.covariance.map((row, i) => row.map((value, j) => value - dot(through[i]!, gain[j]!))),
  }
}
