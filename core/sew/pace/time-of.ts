import { minutesOf } from '../minutes.ts'
import type { Minutes } from '../types.ts'
import { entriesOf, sumWork, type Work, type WorkId } from '../work.ts'
import { numberOf, type Pace } from './pace.ts'

/** One kind of work in a garment: its minutes at this pace, and its part of the doubt about the whole, 0 to 1. */
export type Doubt = { work: WorkId; minutes: number; part: number }

/**
 * The time that steps take at a pace. Mean and variance are exact: each kind of work is log-normal, kinds go
 * together as the pace says, and each step has a luck of its own; the sum is again taken as log-normal, which
 * gives its median and 80 % point.
 *
 * @param steps the work of each step
 */
export function timeOf(pace: Pace, steps: readonly Work[]): Minutes {
  const { mean, kinds, byKind } = momentsOf(pace, steps)
  const variance = kinds.reduce((sum, _, i) => sum + byKind[i]!, 0)
  return minutesOf(mean, Math.sqrt(Math.max(0, variance)))
}

/** What makes the time of these steps uncertain, the most doubtful kind of work first. */
export function doubtsOf(pace: Pace, steps: readonly Work[]): Doubt[] {
  const { kinds, minutes, byKind } = momentsOf(pace, steps)
  const all = byKind.reduce((sum, part) => sum + part, 0)
  return kinds
    .map((work, i) => ({ work, minutes: minutes[i]!, part: all > 0 ? byKind[i]! / all : 0 }))
    .sort((a, b) => b.part - a.part)
}

/** Expected minutes of one kind of work for each of its standard minutes. */
export const factorAt = (pace: Pace, id: WorkId): number => {
  const k = numberOf(id)
  return Math.exp(pace.mean[k]! + (pace.covariance[k]![k]! + pace.step ** 2) / 2)
}

/**
 * Mean of the sum, and its variance shared out over the kinds of work: each gets its covariance with the whole.
 * With log-normal factors Fk of expectation Ek, E[Fk Fl] = Ek El exp(Skl), and the luck of a step with variance
 * c − 1 relative to its squared mean.
 */
function momentsOf(pace: Pace, steps: readonly Work[]) {
  const whole = entriesOf(sumWork(steps))
  const kinds = whole.map(([id]) => id)
  const at = kinds.map(numberOf)
  const factor = kinds.map((id) => factorAt(pace, id))
  const minutes = whole.map(([, standard], i) => standard * factor[i]!)
  const together = at.map((k) => at.map((l) => Math.exp(pace.covariance[k]![l]!)))
  const luck = Math.exp(pace.step ** 2) - 1
  const byKind = minutes.map((a, i) => minutes.reduce((sum, b, j) => sum + a * b * (together[i]![j]! - 1), 0))
  const place = new Map(kinds.map((id, i) => [id, i]))
  for (const step of steps) {
    const parts = entriesOf(step).map(([id, standard]) => {
      const i = place.get(id)!
      return [i, standard * factor[i]!] as const
    })
    for (const [i, a] of parts)
      for (const [j, b] of parts) byKind[i] = byKind[i]! + luck * a * b * together[i]![j]!
  }
  return { kinds, minutes, byKind, mean: minutes.reduce((sum, one) => sum + one, 0) }
}
