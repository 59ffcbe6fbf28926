import { describe, expect, test } from 'vitest'
import { reasonsOf } from '../../core/plan/schedule/reasons.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Base, Job, Person } from '../../core/plan/schedule/types.ts'
import { whatIf } from '../../core/plan/schedule/what-if.ts'
import { chance } from '../support/chance.ts'
import { aJob, aPerson, aSmallWorkroom, dayFrom as day, MONDAY } from '../support/plans.ts'

const base = (jobs: Job[], people: Person[] = [aPerson(60)]): Base => ({
  jobs,
  people,
  away: [],
  today: MONDAY,
})

describe('why a commission is late', () => {
  const reasons = (jobs: Job[], people?: Person[]) => Object.fromEntries(reasonsOf(base(jobs, people)))

  test.each([
    ['its day has gone by', [aJob('a', { due: day(-3) })], [{ code: 'pastDue', days: 3 }]],
    [
      'its own hours do not fit',
      [aJob('a', { minutes: 300, due: day(1) })],
      [{ code: 'ownHours', days: 3, minutes: 300 }],
    ],
    [
      'it must dry',
      [aJob('w', { commission: 'a', wait: 4 }), aJob('a', { after: ['w'], due: day(2) })],
      [{ code: 'waits', days: 2 }],
    ],
    [
      'its cloth comes too late, not the thread that comes before it',
      [
        aJob('t', { commission: 'a', release: day(2) }),
        aJob('a', { minutes: 120, after: ['t'], release: day(6), due: day(5) }),
      ],
      [{ code: 'release', days: 2, job: 'a', release: day(6) }],
    ],
    [
      'other work is more urgent',
      [
        aJob('b', { minutes: 240, due: day(3) }),
        aJob('c', { minutes: 120, due: day(4) }),
        aJob('a', { minutes: 60, due: day(5) }),
        aJob('later', { minutes: 600, due: day(40) }),
      ],
      [{ code: 'othersFirst', days: 1, minutes: 360, commissions: ['b', 'c'] }],
    ],
    [
      'work that only fills the time until then does not count',
      [
        aJob('filler', { minutes: 60, due: day(40) }),
        aJob('b', { minutes: 60, release: day(3), due: day(3) }),
        aJob('a', { minutes: 120, release: day(3), due: day(3) }),
      ],
      [
        { code: 'release', days: 1, job: 'a', release: day(3) },
        { code: 'othersFirst', days: 1, minutes: 60, commissions: ['b'] },
      ],
    ],
    [
      'everything comes together',
      [
        aJob('a', { minutes: 120, release: day(3), due: day(-1) }),
        aJob('b', { minutes: 240, due: day(-2) }),
        aJob('whenever', { minutes: 60 }),
      ],
      [
        { code: 'pastDue', days: 1 },
        { code: 'ownHours', days: 1, minutes: 120 },
        { code: 'release', days: 3, job: 'a', release: day(3) },
        { code: 'othersFirst', days: 1, minutes: 240, commissions: ['b'] },
      ],
    ],
  ])('is said: %s', (_, jobs, said) => {
    expect(reasons(jobs).a).toEqual(said)
  })

  test('is not said of what is in time, never due or never done', () => {
    expect(
      reasons(
        [
          aJob('in time', { due: day(0) }),
          aJob('whenever', { minutes: 900 }),
          aJob('nobody', { due: day(0), skill: 'cutting' }),
        ],
        [aPerson(60, { skills: ['handSewing'] })],
      ),
    ).toEqual({})
  })

  test('adds up to the days of lateness in every plan', () => {
    let late = 0
    for (let seed = 1; seed <= 300; seed++) {
      const all = aSmallWorkroom(chance(seed))
      const plan = schedule(all.jobs, all.people, all.away, all.today)
      const said = reasonsOf(all)
      for (const one of plan.commissions) {
        const days = (said.get(one.commission) ?? []).reduce((sum, { days }) => sum + days, 0)
        expect(days, `seed ${seed}`).toBe(Math.max(0, one.late ?? 0))
        if (days > 0) late++
      }
    }
    expect(late).toBeGreaterThan(200)
  })
})

describe('a new commission', () => {
  test('puts off what is less urgent, by so many days', () => {
    const jobs = [
      aJob('soon', { due: day(0) }),
      aJob('then', { due: day(3) }),
      aJob('whenever', { minutes: 120 }),
    ]
    const { added, changed, plan } = whatIf(base(jobs), [aJob('new', { minutes: 180, due: day(2) })])
    expect(added).toEqual([{ commission: 'new', finish: day(3), due: day(2), late: 1 }])
    expect(changed).toEqual([
      { commission: 'then', later: 3, late: 1, lateBefore: -2 },
      { commission: 'whenever', later: 3, late: null, lateBefore: null },
    ])
    expect(plan.jobs.map(({ job }) => job)).toEqual(['soon', 'new', 'then', 'whenever'])
  })

  test('says so of a single day too, and nothing of what stays as it is', () => {
    const jobs = [aJob('soon', { due: day(0) }), aJob('then', { due: day(3) })]
    expect(whatIf(base(jobs), [aJob('new', { due: day(2) })]).changed).toEqual([
      { commission: 'then', later: 1, late: -1, lateBefore: -2 },
    ])
    expect(whatIf(base(jobs), [aJob('new')]).changed).toEqual([])
  })

  test('can leave something undone for good', () => {
    const { changed } = whatIf(base([aJob('gown', { minutes: 60 })]), [
      aJob('new', { minutes: 1826 * 60, due: day(1) }),
    ])
    expect(changed).toEqual([{ commission: 'gown', later: null, late: null, lateBefore: null }])
  })
})
