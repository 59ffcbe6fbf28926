import { describe, expect, test } from 'vitest'
import { closedBy, daysOffIn } from '../../core/plan/schedule/days-off.ts'
import { freeOf } from '../../core/plan/schedule/free.ts'
import { promiseDay } from '../../core/plan/schedule/promise.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Away, Job, Person } from '../../core/plan/schedule/types.ts'
import { UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { aJob, aPerson, dayFrom as day, MONDAY } from '../support/plans.ts'

const WEEKDAYS = aPerson(100, { week: [100, 100, 100, 100, 100, 0, 0] })
const free = (jobs: Job[], away: Away[] = [], people: Person[] = [WEEKDAYS]) =>
  freeOf(schedule(jobs, people, away, MONDAY).slots, people, away, MONDAY)

describe('hands are free', () => {
  test('at once where nothing is planned', () => {
    expect(free([])).toEqual({ begins: null, last: null, between: 0, from: day(0) })
  })

  test('from the first working day after the last work on', () => {
    expect(free([aJob('a', { minutes: 450 })])).toEqual({
      ...{ begins: null, last: day(4), between: 0, from: day(7) },
    })
    const away = [{ person: null, from: day(7), to: day(8) }]
    expect(free([aJob('a', { minutes: 450 })], away).from).toBe(day(9))
  })

  test('until the first work can go on, and in between where it waits again', () => {
    const jobs = [aJob('a', { minutes: 30, release: day(2) }), aJob('b', { minutes: 50, release: day(8) })]
    // Monday and Tuesday 200, of Wednesday 70, Thursday, Friday and Monday 300; Tuesday is the last.
    expect(free(jobs)).toEqual({ begins: day(2), last: day(8), between: 570, from: day(9) })
  })

  test('not before anything, where the first working day has work', () => {
    const away = [{ person: null, from: day(0), to: day(1) }]
    expect(free([aJob('a', { minutes: 30 })], away).begins).toBeNull()
  })

  test('never, where nobody has hours', () => {
    expect(free([], [], [aPerson(0)]).from).toBeNull()
  })
})

describe('days off', () => {
  const helper = aPerson(60, { id: 'helper' })
  const off = (person: string | null, from: number, to: number) => ({ person, from: day(from), to: day(to) })

  test('are counted once each, as far as they lie in the days asked for', () => {
    expect(daysOffIn([off(null, -3, 1), off('maker', 1, 2), off(null, 9, 20)], day(0), day(10))).toBe(5)
    expect(daysOffIn([off(null, -3, -1), off(null, 11, 12)], day(0), day(10))).toBe(0)
  })

  test('close the workroom where everybody is off, together or each alone', () => {
    const people = [WEEKDAYS, helper]
    expect(closedBy(day(2), [off(null, 2, 2)], people)).toEqual(off(null, 2, 2))
    expect(closedBy(day(3), [off(null, 2, 2)], people)).toBeUndefined()
    expect(closedBy(day(2), [off('maker', 1, 3)], people)).toBeUndefined()
    expect(closedBy(day(2), [off('maker', 1, 3), off('helper', 2, 2)], people)).toEqual(off('maker', 1, 3))
  })

  test('are no day to hand over on: what dries on one is promised for the day after it', () => {
    const base = { jobs: [], people: [aPerson(600)], today: MONDAY }
    const added = [aJob('new', { minutes: 60, wait: 2 })]
    const promised = (away: Away[]) => promiseDay({ ...base, away }, added, UNKNOWN_PACE)
    expect(promised([])).toBe(day(2))
    expect(promised([off(null, 2, 4)])).toBe(day(5))
    expect(promised([off(null, 3, 4)])).toBe(day(2))
  })
})
