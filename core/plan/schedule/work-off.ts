import type { Calendar } from './calendar.ts'
import { DAY, HORIZON, NO_TIME } from './clock.ts'
import { handsOf } from './hands.ts'
import type { Network } from './network.ts'

/** One stretch of work; days and minutes from today. */
export type Stretch = { job: number; person: number; day: number; from: number; minutes: number }

/** When each job is begun and done, days from today; -1 where it never is. `done`: the minute of it. */
export type Worked = { first: Int32Array; last: Int32Array; done: Float64Array; stretches: Stretch[] }

/** By what the jobs are worked off; both lists go by the jobs' places in the network. */
export type Course = {
  /** The place of each job in the order of urgency. */
  rank: Int32Array
  /** Minutes of each job. */
  minutes: ArrayLike<number>
  /** Nothing is begun before this day; today where nothing is said. */
  from?: number
}

/**
 * Works the jobs off: at every moment the most urgent ones that are open are in hand, and less urgent ones are laid
 * down for them. With one person, and neither waits nor limits of the hands, no order makes the greatest lateness less
 * than that of the modified due days (Jackson 1955 for due days, Lawler 1973 for what must come before, Horn 1974
 * for work that is interrupted when something comes in; all from memory).
 */
export function workOff(network: Network, calendar: Calendar, { rank, minutes, from = 0 }: Course): Worked {
  const { jobs, followers, inOrder, release, wait } = network
  const hands = handsOf(network, calendar)
  const left = Float64Array.from(minutes)
  const waitsFor = Int32Array.from(network.waitsFor)
  /** The first day on which each may be begun. */
  const ready = new Int32Array(jobs.length).fill(from)
  const [first, last] = [new Int32Array(jobs.length).fill(-1), new Int32Array(jobs.length).fill(-1)]
  const done = new Float64Array(jobs.length).fill(Number.POSITIVE_INFINITY)
  const stretches: Stretch[] = []
  const latest: (Stretch | undefined)[] = calendar.people.map(() => undefined)
  /** What can be done now, the most urgent first; and what nothing but the calendar holds back, the soonest last. */
  const open: number[] = []
  const soon: number[] = []

  const free = (job: number) => {
    ready[job] = Math.max(ready[job]!, release[job] ?? 0)
    insert(soon, job, (other) => ready[other]! > ready[job]!)
  }
  const finish = (job: number, now: number, day: number) => {
    last[job] = day
    done[job] = now
    for (const next of followers[job]!) {
      ready[next] = Math.max(ready[next]!, day + wait[job]!)
      waitsFor[next] = waitsFor[next]! - 1
      if (waitsFor[next] === 0 && !network.never.has(next)) free(next)
    }
  }
  const takeUp = (now: number, day: number) => {
    while (soon.length > 0 && ready[soon.at(-1)!]! <= day) {
      const job = soon.pop()!
      if (left[job]! > NO_TIME) insert(open, job, (other) => rank[other]! < rank[job]!)
      else {
        first[job] = day
        finish(job, now, day)
      }
    }
  }
  const work = (now: number, day: number, span: number) => {
    hands.at.forEach((job, person) => {
      if (job === -1) return
      if (first[job] === -1) first[job] = day
      left[job] = left[job]! - span
      const before = latest[person]
      const start = now - day * DAY
      if (before?.job === job && before.day === day && before.from + before.minutes > start - NO_TIME)
        before.minutes += span
      else {
        latest[person] = { job, person, day, from: start, minutes: span }
        stretches.push(latest[person]!)
      }
    })
    hands.pass(span)
    for (const job of hands.at) {
      if (job === -1 || left[job]! > NO_TIME) continue
      open.splice(open.indexOf(job), 1)
      finish(job, now + span, day)
    }
  }

  for (const job of inOrder) if (waitsFor[job] === 0) free(job)
  let day = from
  while (day < HORIZON) {
    let now = day * DAY
    hands.begin(day)
    takeUp(now, day)
    while (open.length > 0) {
      hands.share(now, open)
      let span = hands.until(now)
      if (span === Number.POSITIVE_INFINITY) break
      for (const job of hands.at) if (job !== -1) span = Math.min(span, left[job]!)
      work(now, day, span)
      now += span
      takeUp(now, day)
    }
    if (open.length > 0) day++
    else if (soon.length > 0) day = Math.max(day + 1, ready[soon.at(-1)!]!)
    else break
  }
  return { first, last, done, stretches }
}

/** Puts a job into a sorted list, behind those for which `before` holds. */
function insert(list: number[], job: number, before: (other: number) => boolean): void {
  let [low, high] = [0, list.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (before(list[middle]!)) low = middle + 1
    else high = middle
  }
  list.splice(low, 0, job)
}
