import { describe, expect, test } from 'vitest'
import { calendarOf } from '../../core/plan/schedule/calendar.ts'
import { bestCourse } from '../../core/plan/schedule/course.ts'
import { commissionsOf, networkOf } from '../../core/plan/schedule/network.ts'
import { promiseDay } from '../../core/plan/schedule/promise.ts'
import { timeUntil } from '../../core/plan/schedule/stretch.ts'
import type { Base } from '../../core/plan/schedule/types.ts'
import { workOff } from '../../core/plan/schedule/work-off.ts'
import { addDays } from '../../core/words/dates.ts'
import { accepted, aMonth, trueTimes } from '../support/months.ts'
import { workedOff } from '../support/worked-off.ts'

const LONG = process.env.ELLWAND_LONG === '1'
/** Seeds 1000–1999 were used to build it; 700 000–700 999 were kept aside and decide. */
const ASIDE = { from: 700_000, count: 1000 }

/** Job numbers in the order of their urgency, and what is needed to look closer. */
function courseOf({ jobs, people, away, today }: Base) {
  const calendar = calendarOf(people, away, today)
  const network = networkOf(jobs, calendar)
  const best = bestCourse(network, calendar)
  const list = jobs.map((_, i) => i).sort((a, b) => best.rank[a]! - best.rank[b]!)
  return { calendar, network, best, list: list.map((i) => jobs[i]!.id) }
}

/**
 * How often months keep what was promised: the day that was promised for new work; and of every commission, to the
 * minute and not to the day, the 50 % and 80 % points of its finish.
 */
function kept(seeds: { from: number; count: number }, kind: Parameters<typeof aMonth>[1] = {}) {
  const sums = { promises: 0, p50: 0, p80: 0 }
  let commissions = 0
  for (let seed = seeds.from; seed < seeds.from + seeds.count; seed++) {
    const month = aMonth(seed, kind)
    const promise = promiseDay(month.base, month.added, month.pace)!
    const base = accepted(month, promise)
    const { calendar, network, best, list } = courseOf(base)
    const took = trueTimes(base.jobs, month.pace, month.draw)
    if (workedOff(base, list, took).get('new')! <= promise) sums.promises++
    const work = (minutes: number[]) => workOff(network, calendar, { rank: best.rank, minutes }).done
    const truly = work(base.jobs.map(({ id }) => took.get(id)!))
    // The new commission, and the one that was accepted last: one of each month, so that they are chance enough.
    for (const own of [...commissionsOf(base.jobs).values()].slice(-2)) {
      const numbers = own.map((job) => base.jobs.indexOf(job))
      const end = (done: Float64Array) => Math.max(...numbers.map((job) => done[job]!))
      const { mean, p50, p80 } = timeUntil(network, best, numbers, month.pace)!
      const within = (minutes: number) =>
        end(truly) <= end(work(network.minutes.map((one) => (one * minutes) / mean))) + 1e-6
      if (within(p50)) sums.p50++
      if (within(p80)) sums.p80++
      commissions++
    }
  }
  return { promises: sums.promises / seeds.count, p50: sums.p50 / commissions, p80: sums.p80 / commissions }
}

describe('a thousand months', () => {
  /**
   * To the minute the odds are what they say. A promise is a whole day: the finish at 80 % is reckoned to the minute,
   * and the day it falls on is promised, so that what is left of that day comes on top. The shorter the promise the
   * more that is: of those under a week 95 in 100 are kept, of those over a month of a maker alone 80.
   */
  test('keep what was promised four times in five', () => {
    const { promises, p50, p80 } = kept(ASIDE)
    expect(promises).toBeGreaterThanOrEqual(0.76)
    expect(promises).toBeLessThanOrEqual(0.88)
    expect(Math.abs(p80 - 0.8)).toBeLessThan(0.03)
    expect(Math.abs(p50 - 0.5)).toBeLessThan(0.04)
  })

  test.skipIf(!LONG).each([
    ['of makers alone', { helper: false }],
    ['of makers with a helper', { helper: true }],
    ['with more work than a month holds', { weeks: [4, 10] as const }],
  ])('keep it too %s', (name, kind) => {
    const { promises, p50, p80 } = kept({ from: 800_000, count: 2000 }, kind)
    console.log(`months ${name}: ${promises} kept; to the minute ${p80} and ${p50}`)
    // With a helper a day holds more work, and its rest is more.
    expect(promises).toBeGreaterThanOrEqual(0.76)
    expect(promises).toBeLessThanOrEqual(0.9)
    expect(Math.abs(p80 - 0.8)).toBeLessThan(0.03)
    expect(Math.abs(p50 - 0.5)).toBeLessThan(0.04)
  })

  // Not by one list, but by a new plan every morning, from what is then left of each job by the first reckoning.
  test.skipIf(!LONG)('keep it too when the plan is made anew every morning', () => {
    let promises = 0
    const count = 300
    for (let seed = 900_000; seed < 900_000 + count; seed++) {
      const month = aMonth(seed)
      const promise = promiseDay(month.base, month.added, month.pace)!
      const base = accepted(month, promise)
      if (replanned(base, trueTimes(base.jobs, month.pace, month.draw)) <= promise) promises++
    }
    console.log(`months planned anew every morning: ${promises / count} kept`)
    // More than by the list: what runs late is seen, and comes first.
    expect(promises / count).toBeGreaterThanOrEqual(0.76)
  })
})

/** The day on which the new commission is done when every morning's plan is followed for a day, by true times. */
function replanned(base: Base, took: ReadonlyMap<string, number>): string {
  const left = new Map(took)
  const dried = new Map<string, string>()
  let open = base.jobs
  for (let day = base.today; ; day = addDays(day, 1)) {
    // What is begun and takes longer than thought is thought to be nearly done.
    const jobs = open.map((job) => {
      const spent = took.get(job.id)! - left.get(job.id)!
      const waits = job.after.flatMap((id) => dried.get(id) ?? [])
      const release = [job.release ?? day, ...waits].sort().at(-1)!
      return { ...job, release, minutes: spent === 0 ? job.minutes : Math.max(15, job.minutes - spent) }
    })
    const { list } = courseOf({ ...base, jobs, today: day })
    const ends = new Set<string>()
    workedOff({ ...base, jobs, today: day }, list, left, { until: day, left, done: ends })
    for (const id of ends) dried.set(id, addDays(day, open.find((job) => job.id === id)!.wait))
    open = open.filter(({ id }) => !ends.has(id))
    if (!open.some(({ commission }) => commission === 'new'))
      return base.jobs
        .filter(({ commission }) => commission === 'new')
        .map(({ id }) => dried.get(id)!)
        .sort()
        .at(-1)!
  }
}
