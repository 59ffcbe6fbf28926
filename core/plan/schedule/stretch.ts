import { minutesOf } from '../../sew/minutes.ts'
import type { Pace } from '../../sew/pace/pace.ts'
import { PACE } from '../../sew/pace/parameters.ts'
import { timeOf } from '../../sew/pace/time-of.ts'
import type { Minutes } from '../../sew/types.ts'
import { entriesOf } from '../../sew/work.ts'
import type { Calendar } from './calendar.ts'
import { type Best, handedOver } from './course.ts'
import type { Network } from './network.ts'
import { workOff } from './work-off.ts'

/**
 * The hours of all the work that is done until some jobs are decide when these are: their sum with its spread, or null
 * when they are never done. Work whose kinds nobody wrote down is as doubtful as one kind of which nothing is known,
 * and its spread is added in full, for caution.
 */
export function timeUntil(
  network: Network,
  { worked }: Best,
  own: readonly number[],
  pace: Pace,
): Minutes | null {
  if (own.some((job) => worked.last[job] === -1)) return null
  const end = Math.max(...own.map((job) => worked.done[job]!))
  const before = network.inOrder.filter((job) => worked.done[job]! <= end).map((job) => network.jobs[job]!)
  const known = before.filter(({ work }) => entriesOf(work).length > 0)
  const unknown = before.filter((job) => !known.includes(job)).reduce((sum, { minutes }) => sum + minutes, 0)
  const { mean, sd } = timeOf(
    pace,
    known.map(({ work }) => work),
  )
  return minutesOf(mean + unknown, sd + unknown * UNKNOWN_SPREAD)
}

/** Standard deviation of a log-normal time ÷ its mean. */
const UNKNOWN_SPREAD = Math.sqrt(
  Math.expm1(PACE.whole ** 2 + PACE.family ** 2 + PACE.kind ** 2 + PACE.step ** 2),
)

/** The day on which some jobs are handed over when all work, in the order of the plan, takes so many times as long. */
export function finishAt(
  network: Network,
  calendar: Calendar,
  { rank }: Best,
  own: readonly number[],
  times: number,
): number | null {
  const minutes = network.minutes.map((one) => one * times)
  const worked = workOff(network, calendar, { rank, minutes })
  const days = own.map((job) => handedOver(network, worked, job))
  return days.includes(-1) ? null : Math.max(...days)
}
