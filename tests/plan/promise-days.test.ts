import { describe, expect, test } from 'vitest'
import { finishOdds } from '../../core/plan/schedule/odds.ts'
import { promiseDay } from '../../core/plan/schedule/promise.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Base, Job } from '../../core/plan/schedule/types.ts'
import { numberOf, type Pace, UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { factorAt } from '../../core/sew/pace/time-of.ts'
import { addDays } from '../../core/words/dates.ts'
import { accepted, aMonth } from '../support/months.ts'
import { aJob, aPerson, dayFrom as day, MONDAY } from '../support/plans.ts'

/** A workroom that is sure of its times: standard minutes, and no luck. */
const SURE: Pace = {
  mean: UNKNOWN_PACE.mean.map(() => 0),
  covariance: UNKNOWN_PACE.covariance.map((row) => row.map(() => 0)),
  step: 0,
}
const hemming = (id: string, minutes: number, more: Partial<Job> = {}) =>
  aJob(id, { minutes, work: { hemming: minutes }, ...more })
const HOUR_A_DAY = { people: [aPerson(60)], away: [], today: MONDAY }
const promised = (jobs: Job[], added: Job[], pace = SURE) => promiseDay({ ...HOUR_A_DAY, jobs }, added, pace)

describe('a promise', () => {
  test.each([
    ['goes before work that has days to spare', [hemming('a', 300, { due: day(9) })], day(2)],
    ['goes behind work that has not', [hemming('a', 300, { due: day(5) })], day(7)],
    ['uses the very last minute there is', [hemming('a', 300, { due: day(7) })], day(2)],
    ['makes nothing later that is late already', [hemming('a', 300, { due: day(1) })], day(7)],
    ['goes before work for which no day was named', [hemming('a', 300)], day(2)],
    [
      'fits in where there is room',
      [hemming('a', 120, { due: day(1) }), hemming('b', 120, { due: day(9) })],
      day(4),
    ],
    [
      'does not take the room of what comes in later',
      [hemming('a', 180, { release: day(1), due: day(3) }), hemming('b', 60, { due: day(4) })],
      day(6),
    ],
  ])('%s', (_, jobs, expected) => {
    expect(promised(jobs, [hemming('new', 180)])).toBe(expected)
  })

  test('waits for its own cloth, its drying, and whoever is away', () => {
    expect(promised([], [hemming('new', 180, { release: day(10) })])).toBe(day(12))
    expect(promised([], [hemming('new', 180, { wait: 4 })])).toBe(day(6))
    const away = [{ person: 'maker', from: day(1), to: day(5) }]
    expect(promiseDay({ ...HOUR_A_DAY, jobs: [], away }, [hemming('new', 180)], SURE)).toBe(day(7))
  })

  test('cannot be given for what is never done', () => {
    expect(promised([], [hemming('new', 180), hemming('sent out', 10, { after: ['sent out'] })])).toBeNull()
    expect(promised([], [hemming('new', 1e9)])).toBeNull()
  })

  // σ² = 0.22² + 0.22² + 0.26² + 0.25² = 0.2269 of one kind of work; ten hours are 600 e^(0.8416 σ − σ² ÷ 2) = 800
  // minutes at 80 %, and 600 e^(−σ² ÷ 2) = 536 at 50 %, at an hour a day.
  test.each([
    ['of its kind of work', hemming('new', 600)],
    ['of work whose kind nobody wrote down', aJob('new', { minutes: 600 })],
  ])('is the day of the 80 %% point %s', (_, job) => {
    expect(factorAt(UNKNOWN_PACE, 'hemming')).toBeCloseTo(1, 9)
    expect(promised([], [job], UNKNOWN_PACE)).toBe(day(13))
    expect(finishOdds({ ...HOUR_A_DAY, jobs: [job] }, UNKNOWN_PACE)).toEqual([
      { commission: 'new', p50: day(8), p80: day(13) },
    ])
  })

  test('is the earliest that harms nobody, in every month of a maker alone who is sure of her times', () => {
    for (let seed = 1000; seed < 1100; seed++) {
      const month = aMonth(seed, { helper: false })
      const people = month.base.people.map((person) => ({ ...person, handCap: null }))
      const sure = (job: Job) => ({ ...job, work: { hemming: job.minutes }, wait: 0 })
      const base = { ...month.base, people, jobs: month.base.jobs.map(sure) }
      const added = month.added.map(sure)
      const before = new Map(lateness(base))
      const harms = (due: string) =>
        lateness(accepted({ ...month, base, added }, due)).some(
          ([commission, late]) => late > Math.max(0, before.get(commission) ?? 0),
        )
      const promise = promiseDay(base, added, SURE)!
      expect(harms(promise), `seed ${seed}`).toBe(false)
      expect(harms(addDays(promise, -1)), `seed ${seed}`).toBe(true)
    }
  })
})

function lateness({ jobs, people, away, today }: Base): [string, number][] {
  return schedule(jobs, people, away, today).commissions.map(({ commission, late }) => [commission, late!])
}

describe('the odds of a finish', () => {
  test('are later the surer they are to be, and the promise’s own once it is accepted', () => {
    let [same, apart] = [0, 0]
    for (let seed = 1000; seed < 1060; seed++) {
      const month = aMonth(seed)
      const promise = promiseDay(month.base, month.added, month.pace)!
      const odds = finishOdds(accepted(month, promise), month.pace)
      for (const { p50, p80 } of odds) expect(p50! <= p80!).toBe(true)
      if (odds.some(({ p50, p80 }) => p50! < p80!)) apart++
      if (odds.find(({ commission }) => commission === 'new')!.p80 === promise) same++
    }
    expect(same).toBeGreaterThanOrEqual(57)
    expect(apart).toBeGreaterThanOrEqual(50)
  })

  test('are those of the work done until then, and not of what comes after', () => {
    // Ten hours of cutting that is sure, before a hundred of hemming that is not.
    const kind = numberOf('hemming')
    const covariance = SURE.covariance.map((row, k) =>
      row.map((_, l) => (k === kind && l === kind ? 0.25 : 0)),
    )
    const cut = aJob('cut', { minutes: 600, work: { cutOut: 600 }, due: day(30) })
    const base = { ...HOUR_A_DAY, jobs: [cut, hemming('hem', 6000)] }
    const [first, second] = finishOdds(base, { ...SURE, covariance })
    expect(first).toEqual({ commission: 'cut', p50: day(9), p80: day(9) })
    expect(second!.p80! > second!.p50!).toBe(true)
  })

  test('are none where something is never done', () => {
    const jobs = [hemming('a', 60, { skill: 'cutting' }), hemming('b', 60)]
    const people = [aPerson(60, { skills: ['handSewing'] })]
    expect(finishOdds({ ...HOUR_A_DAY, people, jobs }, SURE)).toEqual([
      { commission: 'a', p50: null, p80: null },
      { commission: 'b', p50: day(0), p80: day(0) },
    ])
  })
})
