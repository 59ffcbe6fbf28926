import fc from 'fast-check'
import { afterEach, describe, expect, test } from 'vitest'
import { latestStarts } from '../../core/plan/schedule/latest-start.ts'
import { finishOdds } from '../../core/plan/schedule/odds.ts'
import { promiseDay } from '../../core/plan/schedule/promise.ts'
import { reasonsOf } from '../../core/plan/schedule/reasons.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Away } from '../../core/plan/schedule/types.ts'
import { whatIf } from '../../core/plan/schedule/what-if.ts'
import { UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { dayNumber, dayOfNumber, weekdayOfNumber } from '../../core/words/dates.ts'
import { aJob, aPerson } from '../support/plans.ts'

/** The calendar as it is taught: months of so many days, and leap years but for the centuries not divisible by 400. */
function* plainCalendar(year: number, weekday: number) {
  for (; ; year++) {
    const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
    for (const [month, days] of [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].entries())
      for (let day = 1; day <= days; day++, weekday = (weekday + 1) % 7)
        yield {
          day: `${year}-${String(month + 1).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
          weekday,
        }
  }
}
/** 1 January 2024 was a Monday (any wall calendar). */
const DAYS: { day: string; weekday: number }[] = []
for (const one of plainCalendar(2024, 0)) {
  if (one.day > '2110-12-31') break
  DAYS.push(one)
}

describe('days by number', () => {
  test('are the calendar’s own, weekdays and leap years too', () => {
    expect(dayNumber('1970-01-01')).toBe(0)
    const first = dayNumber('2024-01-01')
    for (const [i, { day, weekday }] of DAYS.entries()) {
      expect(dayNumber(day)).toBe(first + i)
      expect(dayOfNumber(first + i)).toBe(day)
      expect(weekdayOfNumber(first + i)).toBe(weekday)
    }
    expect([-1, -4, -8].map(weekdayOfNumber)).toEqual([2, 6, 2])
  })
})

describe('the days of a plan', () => {
  const aStart = fc.integer({ min: 0, max: DAYS.length - 2500 })
  const aWeek = fc
    .array(fc.constantFrom(0, 0, 90, 240, 400), { minLength: 7, maxLength: 7 })
    .filter((week) => week.some((one) => one > 0))
  const aHoliday = fc.tuple(fc.integer({ min: -20, max: 80 }), fc.integer({ min: 0, max: 30 }))

  // The same reckoned by walking through the wall calendar.
  test('have hours, and none with hours is passed over', () => {
    fc.assert(
      fc.property(
        aStart,
        aWeek,
        fc.array(aHoliday, { maxLength: 3 }),
        fc.integer({ min: 1, max: 9000 }),
        (start, week, holidays, minutes) => {
          const spans = holidays.map(([from, length]) => [start + from, start + from + length] as const)
          const away = spans
            .filter(([from]) => from >= 0)
            .map(([from, to]): Away => ({ person: null, from: DAYS[from]!.day, to: DAYS[to]!.day }))
          const expected: [string, number][] = []
          let left = minutes
          for (let at = start; left > 0; at++) {
            const { day, weekday } = DAYS[at]!
            const off = away.some(({ from, to }) => from <= day && day <= to)
            const hours = off ? 0 : week[weekday]!
            if (hours === 0) continue
            expected.push([day, Math.min(hours, left)])
            left -= hours
          }
          const plan = schedule([aJob('coat', { minutes })], [aPerson(0, { week })], away, DAYS[start]!.day)
          expect(plan.slots.map(({ day, minutes }) => [day, minutes])).toEqual(expected)
          expect(plan.commissions[0]!.finish).toBe(expected.at(-1)![0])
        },
      ),
    )
  })

  test('let as many days pass as must, and as many late as lie between', () => {
    fc.assert(
      fc.property(
        aStart,
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 0, max: 400 }),
        (start, wait, early) => {
          const today = DAYS[start]!.day
          const due = DAYS[start + early]!.day
          const plan = schedule(
            [
              aJob('dye', { minutes: 30, wait, commission: 'gown' }),
              aJob('cut', { minutes: 30, after: ['dye'], due, commission: 'gown' }),
            ],
            [aPerson(60)],
            [],
            today,
          )
          expect(plan.commissions).toEqual([
            { commission: 'gown', finish: DAYS[start + wait]!.day, due, late: wait - early },
          ])
        },
      ),
    )
  })
})

describe('a plan', () => {
  /** Zones that change their clocks at midnight, that left out a day, and that are far from Greenwich. */
  const ZONES = [
    'UTC',
    'Europe/Berlin',
    'America/New_York',
    'America/Sao_Paulo',
    'Pacific/Apia',
    'Pacific/Kiritimati',
    'Asia/Kathmandu',
  ]
  const ZONE = process.env.TZ
  afterEach(() => {
    if (ZONE === undefined) delete process.env.TZ
    else process.env.TZ = ZONE
  })

  /** Over the end of 2011, when Apia had no 30 December, the clock changes of 2018, and a leap day. */
  const SPANS = [
    ['2011-12-20', '2012-01-10'],
    ['2018-10-20', '2018-11-12'],
    ['2018-03-01', '2018-04-01'],
    ['2028-02-20', '2028-03-12'],
  ] as const
  const planned = () =>
    SPANS.map(([today, due]) => {
      const job = (id: string, release: string | null, by: string) =>
        aJob(id, { minutes: 700, release, wait: 1, due: by })
      const base = {
        jobs: [job('one', today, due), job('two', null, due)],
        people: [aPerson(0, { week: [60, 60, 60, 60, 60, 0, 30] })],
        away: [{ person: null, from: due, to: due }],
        today,
      }
      const added = [job('new', null, today)]
      return {
        plan: schedule(base.jobs, base.people, base.away, today),
        starts: [...latestStarts(base)],
        reasons: [...reasonsOf(base)],
        changed: whatIf(base, added).changed,
        odds: finishOdds(base, UNKNOWN_PACE),
        promise: promiseDay(base, added, UNKNOWN_PACE),
      }
    })

  test('is the same wherever the workroom’s machine thinks it is', () => {
    const told = ZONES.map((zone) => {
      process.env.TZ = zone
      return { midnight: new Date(2018, 5, 5).getTime(), plan: planned() }
    })
    // The zones have taken hold: their midnights are different moments.
    expect(new Set(told.map(({ midnight }) => midnight)).size).toBe(ZONES.length)
    for (const { plan } of told) expect(plan).toEqual(told[0]!.plan)
    expect(told[0]!.plan[0]!.plan.slots.map(({ day }) => day)).toContain('2011-12-30')
  })
})
