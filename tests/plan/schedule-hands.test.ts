import { describe, expect, test } from 'vitest'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Away, Job, Person } from '../../core/plan/schedule/types.ts'
import { aJob, aPerson, dayFrom as day, MONDAY } from '../support/plans.ts'

/** Who works on what on which day, in order. */
const worked = (jobs: Job[], people: Person[], away: Away[] = []) =>
  schedule(jobs, people, away, MONDAY).slots.map((slot) => [slot.day, slot.person, slot.job])
const hemmer = aPerson(60, { id: 'hemmer', skills: ['handSewing'] })
const cutter = aPerson(60, { id: 'cutter', skills: ['handSewing', 'cutting'] })
const presser = aPerson(60, { id: 'presser', skills: ['handSewing', 'pressing'] })

describe('among several people', () => {
  test('work goes to who can do least else', () => {
    expect(
      worked([aJob('hem', { due: day(1) }), aJob('cut', { skill: 'cutting' })], [cutter, hemmer]),
    ).toEqual([
      [day(0), 'cutter', 'cut'],
      [day(0), 'hemmer', 'hem'],
    ])
  })

  test('one takes over what another can lay down for work that only she can do', () => {
    expect(
      worked([aJob('hem', { due: day(1) }), aJob('cut', { skill: 'cutting' })], [cutter, presser]),
    ).toEqual([
      [day(0), 'cutter', 'cut'],
      [day(0), 'presser', 'hem'],
    ])
  })

  test('a job stays with who began it, though another could do it too', () => {
    const away = [{ person: 'hemmer', from: day(0), to: day(0) }]
    expect(worked([aJob('hem', { minutes: 150 })], [cutter, hemmer], away)).toEqual([
      [day(0), 'cutter', 'hem'],
      [day(1), 'cutter', 'hem'],
      [day(2), 'cutter', 'hem'],
    ])
  })

  test('but is handed on while she is away', () => {
    const away = [{ person: 'hemmer', from: day(1), to: day(1) }]
    expect(worked([aJob('hem', { minutes: 150 })], [cutter, hemmer], away)).toEqual([
      [day(0), 'hemmer', 'hem'],
      [day(1), 'cutter', 'hem'],
      [day(2), 'cutter', 'hem'],
    ])
  })

  test('what comes in goes to who is not in the midst of something', () => {
    const jobs = [aJob('hem', { minutes: 120 }), aJob('new', { release: day(1), due: day(1) })]
    expect(worked(jobs, [cutter, hemmer])).toEqual([
      [day(0), 'hemmer', 'hem'],
      [day(1), 'cutter', 'new'],
      [day(1), 'hemmer', 'hem'],
    ])
  })

  test('tired hands leave sewing by hand to others and do other work', () => {
    const jobs = [aJob('hem', { minutes: 110, due: day(0) }), aJob('cut', { skill: 'cutting' })]
    const slots = schedule(
      jobs,
      [{ ...cutter, week: [120, 0, 0, 0, 0, 0, 0], handCap: 40 }, hemmer],
      [],
      MONDAY,
    ).slots
    expect(slots.map(({ person, job, from, minutes }) => [person, job, from, minutes])).toEqual([
      ['cutter', 'cut', 0, 60],
      ['hemmer', 'hem', 0, 60],
      ['cutter', 'hem', 60, 40],
      ['hemmer', 'hem', 0, 10],
    ])
  })
})
