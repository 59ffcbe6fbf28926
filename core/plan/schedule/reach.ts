import { DAY, HORIZON, NO_TIME } from './clock.ts'

/** How much work of one skill one pair of hands can do, looking backwards. */
export type Reach = {
  /** Minutes in all the days that are looked at; none where nobody can do it. */
  all: number
  /** The latest minute at which so much work must be begun to be done at a given one. */
  back: (from: number, minutes: number) => number
}

/**
 * A job is never in two people's hands at once, so that each day gives it at most the hours of whoever has most, or
 * what hands bear. Before today and after the last day the clock goes on at the average of all days: there only the
 * order of what is too late, or far away, is asked for.
 */
export function reachOf(who: readonly { minutes: Float64Array; hand: number }[], byHand: boolean): Reach {
  const before = new Float64Array(HORIZON + 1)
  for (let d = 0; d < HORIZON; d++) {
    let most = 0
    for (const { minutes, hand } of who)
      most = Math.max(most, byHand ? Math.min(minutes[d]!, hand) : minutes[d]!)
    before[d + 1] = before[d]! + most
  }
  const all = before[HORIZON]!
  const pace = all > 0 ? all / (HORIZON * DAY) : 1
  const end = HORIZON * DAY

  /** Minutes of work that lie before a minute of the clock. */
  const workBefore = (time: number): number => {
    if (time <= 0) return time * pace
    if (time >= end) return all + (time - end) * pace
    const day = Math.floor(time / DAY)
    return Math.min(before[day + 1]!, before[day]! + time - day * DAY)
  }
  /** The last minute of the clock that has no more work than this before it. */
  const minuteOf = (work: number): number => {
    if (work < 0) return work / pace
    if (work >= all) return end + (work - all) / pace
    let [low, high] = [0, HORIZON]
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (before[middle]! <= work + NO_TIME) low = middle
      else high = middle
    }
    return low * DAY + Math.max(0, work - before[low]!)
  }
  return {
    all,
    back: (from, minutes) =>
      minutes === 0 || from === Number.POSITIVE_INFINITY ? from : minuteOf(workBefore(from) - minutes),
  }
}
