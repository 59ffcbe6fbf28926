import { describe, expect, test } from 'vitest'
import { latestStarts } from '../../core/plan/schedule/latest-start.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import { addDays } from '../../core/words/dates.ts'
import { chance } from '../support/chance.ts'
import { aJob, aPerson, aSmallWorkroom, MONDAY } from '../support/plans.ts'

describe('the latest start of a commission', () => {
  test('is the last day on which it may be begun and is in time, if nothing else is in the way', () => {
    let [some, none] = [0, 0]
    for (let seed = 1; seed <= 300; seed++) {
      const all = aSmallWorkroom(chance(seed))
      const starts = latestStarts(all)
      for (const [commission, own] of Map.groupBy(all.jobs, (job) => job.commission)) {
        const inTime = (from: string) => {
          const jobs = own.map((job) => ({ ...job, release: job.release! > from ? job.release : from }))
          return schedule(jobs, all.people, [], MONDAY).commissions[0]!.late! <= 0
        }
        const start = starts.get(commission)
        if (own.every(({ due }) => due === null)) expect(start).toBeUndefined()
        else if (start === null) {
          none++
          expect(inTime(MONDAY), `seed ${seed}`).toBe(false)
        } else {
          some++
          expect(inTime(start!), `seed ${seed}`).toBe(true)
          expect(inTime(addDays(start!, 1)), `seed ${seed}`).toBe(false)
        }
      }
    }
    expect(Math.min(some, none)).toBeGreaterThan(100)
  })

  test('reckons weekends, waits and other commissions as it should', () => {
    const week = [60, 60, 60, 60, 60, 0, 0]
    const jobs = [
      // Three hours before the end of Monday the 15th are Thursday, Friday and that Monday.
      aJob('coat', { minutes: 180, due: '2026-06-15' }),
      // Dyed on Wednesday the 10th, dry on Friday.
      aJob('dye', { minutes: 60, wait: 2, commission: 'hood' }),
      aJob('cut', { minutes: 60, after: ['dye'], due: '2026-06-12', commission: 'hood' }),
      aJob('late', { minutes: 180, due: '2026-06-02' }),
      aJob('whenever'),
      aJob('nobody', { due: '2026-06-12', skill: 'cutting' }),
    ]
    const people = [aPerson(0, { week, skills: ['handSewing'] })]
    expect([...latestStarts({ jobs, people, away: [], today: MONDAY })]).toEqual([
      ['coat', '2026-06-11'],
      ['hood', '2026-06-10'],
      ['late', null],
    ])
  })
})
