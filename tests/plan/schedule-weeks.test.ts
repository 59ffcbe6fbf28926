import { describe, expect, test } from 'vitest'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import { addDays, dayNumber, weekdayOfNumber } from '../../core/words/dates.ts'
import { firstWeekday } from '../../core/words/week.ts'
import { chance } from '../support/chance.ts'
import { aJob, aPerson, aSmallWorkroom, dayFrom as day, hoursOn, MONDAY } from '../support/plans.ts'

describe('the load of the weeks', () => {
  test('is all work and all hours, and says when work is too much', () => {
    let [over, within] = [0, 0]
    for (let seed = 1; seed <= 200; seed++) {
      const all = aSmallWorkroom(chance(seed))
      const jobs = all.jobs.map((job) => ({ ...job, release: null, wait: 0 }))
      const { weeks, slots, commissions, jobs: planned } = schedule(jobs, all.people, [], MONDAY)
      const urgent = new Set(planned.filter(({ needed }) => needed !== null).map(({ job }) => job))
      const due = jobs.filter(({ id }) => urgent.has(id)).reduce((sum, { minutes }) => sum + minutes, 0)
      expect(weeks.reduce((sum, { needed }) => sum + needed, 0)).toBeCloseTo(due, 6)
      for (const [w, { begins, hours, planned, needed }] of weeks.entries()) {
        expect(begins).toBe(day(7 * w))
        expect(hours).toBe(all.people[0]!.week.reduce((sum, one) => sum + one, 0))
        const own = slots.filter((slot) => begins <= slot.day && slot.day < addDays(begins, 7))
        expect(planned).toBeCloseTo(
          own.reduce((sum, slot) => sum + slot.minutes, 0),
          6,
        )
        expect(planned).toBeLessThanOrEqual(hours + 1e-6)
        if (w > 0) expect(needed).toBeLessThanOrEqual(hours + 1e-6)
      }
      if (weeks[0]!.needed > weeks[0]!.hours) {
        over++
        expect(Math.max(...commissions.map(({ late }) => late ?? 0)), `seed ${seed}`).toBeGreaterThan(0)
      } else within++
    }
    expect(Math.min(over, within)).toBeGreaterThan(20)
  })

  test('tells of so many weeks at least, with what is free in them', () => {
    const { weeks } = schedule([aJob('a', { minutes: 90 })], [aPerson(100)], [], MONDAY, { weeks: 4 })
    expect(weeks.map(({ begins, hours, planned }) => [begins, hours, planned])).toEqual([
      [day(0), 700, 90],
      [day(7), 700, 0],
      [day(14), 700, 0],
      [day(21), 700, 0],
    ])
  })

  // As CLDR has the weeks of these regions: from Sunday in the United States, from Monday in Britain and Germany.
  test.each([
    ['en-US', 6, '2026-05-31', 600],
    ['en-GB', 0, '2026-06-01', 700],
    ['de-DE', 0, '2026-06-01', 700],
  ])('counts weeks as %s does', (locale, firstDay, begins, hours) => {
    expect(firstWeekday(locale)).toBe(firstDay)
    const { weeks } = schedule([aJob('a', { minutes: 90 })], [aPerson(100)], [], '2026-06-01', {
      ...{ weeks: 2, firstDay },
    })
    // Of a week that began on Sunday one day is gone on Monday.
    expect(weeks.map((week) => [week.begins, week.hours])).toEqual([
      [begins, hours],
      [addDays(begins, 7), 700],
    ])
  })

  test('begins with today, in the middle of a week, and goes on until the last day', () => {
    const friday = '2026-06-05'
    const { weeks } = schedule(
      [aJob('a', { minutes: 90 }), aJob('b', { minutes: 600, due: '2026-06-16' })],
      [aPerson(100), aPerson(50, { id: 'helper', skills: ['cutting'] })],
      [{ person: 'maker', from: '2026-06-06', to: '2026-06-06' }],
      friday,
    )
    expect(weekdayOfNumber(dayNumber(friday))).toBe(4)
    expect(hoursOn(aPerson(100), [], dayNumber(friday))).toBe(100)
    expect(weeks).toEqual([
      {
        ...{ begins: '2026-06-01', hours: 350, planned: 200, needed: 0 },
        people: [
          { person: 'maker', hours: 200, planned: 200 },
          { person: 'helper', hours: 150, planned: 0 },
        ],
      },
      {
        ...{ begins: '2026-06-08', hours: 1050, planned: 490, needed: 0 },
        people: [
          { person: 'maker', hours: 700, planned: 490 },
          { person: 'helper', hours: 350, planned: 0 },
        ],
      },
      {
        ...{ begins: '2026-06-15', hours: 1050, planned: 0, needed: 600 },
        people: [
          { person: 'maker', hours: 700, planned: 0 },
          { person: 'helper', hours: 350, planned: 0 },
        ],
      },
    ])
  })
})

describe('what can never be done', () => {
  test('is told with its reason, and everything else is planned', () => {
    const people = [
      aPerson(60, { skills: ['handSewing', 'pressing'], handCap: 0 }),
      aPerson(0, { id: 'away', skills: ['cutting'] }),
    ]
    const jobs = [
      aJob('sew'),
      aJob('fit', { skill: 'fitting' }),
      aJob('cut', { skill: 'cutting' }),
      aJob('after', { skill: 'pressing', after: ['cut'] }),
      aJob('x', { skill: 'pressing', after: ['y'] }),
      aJob('y', { skill: 'pressing', after: ['x'] }),
      aJob('z', { skill: 'pressing', after: ['y'] }),
      aJob('eternal', { skill: 'pressing', minutes: 1e7 }),
      aJob('press', { skill: 'pressing', after: ['long done'], due: day(1) }),
      aJob('mark', { skill: 'fitting', minutes: 0, release: day(2), after: ['press'] }),
    ]
    const { impossible, jobs: planned, slots, commissions } = schedule(jobs, people, [], MONDAY)
    expect(Object.fromEntries(impossible.map(({ job, why }) => [job, why]))).toEqual({
      sew: { code: 'noHours', skill: 'handSewing' },
      fit: { code: 'noSkill', skill: 'fitting' },
      cut: { code: 'noHours', skill: 'cutting' },
      after: { code: 'after', job: 'cut' },
      x: { code: 'circle' },
      y: { code: 'circle' },
      z: { code: 'circle' },
      eternal: { code: 'horizon' },
    })
    expect(planned).toEqual([
      { job: 'press', commission: 'press', first: day(0), last: day(0), by: ['maker'], needed: day(1) },
      { job: 'mark', commission: 'mark', first: day(2), last: day(2), by: [], needed: null },
    ])
    expect(slots).toEqual([{ job: 'press', person: 'maker', day: day(0), from: 0, minutes: 60 }])
    expect(commissions.filter(({ finish }) => finish === null)).toHaveLength(8)
  })

  test('is an error of the program where no plan could be meant', () => {
    expect(() => schedule([aJob('a'), aJob('a')], [aPerson(60)], [], MONDAY)).toThrow('same id')
    for (const wrong of [{ minutes: -1 }, { minutes: Number.NaN }, { wait: -1 }])
      expect(() => schedule([aJob('a', wrong)], [aPerson(60)], [], MONDAY)).toThrow('proper time')
  })
})
