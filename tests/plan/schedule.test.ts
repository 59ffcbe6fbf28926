import { describe, expect, test } from 'vitest'
import { latestStarts } from '../../core/plan/schedule/latest-start.ts'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Job, Person } from '../../core/plan/schedule/types.ts'
import { whatIf } from '../../core/plan/schedule/what-if.ts'
import { SKILLS } from '../../core/sew/types.ts'
import { addDays, daysBetween } from '../../core/words/dates.ts'
import { chance } from '../support/chance.ts'

const TODAY = '2026-03-02'
const day = (n: number) => addDays(TODAY, n)
const EVERY_DAY = (minutes: number): Person => ({
  ...{ id: 'maker', name: 'maker', skills: SKILLS, handCap: null },
  week: [minutes, minutes, minutes, minutes, minutes, minutes, minutes],
})
const job = (id: string, minutes: number, more: Partial<Job> = {}): Job => ({
  ...{ id, garment: id, commission: id, skill: 'handSewing', minutes, work: {}, after: [] },
  ...{ release: null, wait: 0, due: null },
  ...more,
})

/** Greatest lateness over all ways of spending each minute, by exhaustive search with memory. Days of three minutes. */
function bestLateness(
  jobs: readonly { minutes: number; after: number[]; release: number; due: number }[],
): number {
  const known = new Map<string, number>()
  const search = (left: readonly number[], minute: number): number => {
    if (left.every((one) => one === 0)) return Number.NEGATIVE_INFINITY
    const key = `${left.join()}@${minute}`
    const before = known.get(key)
    if (before !== undefined) return before
    const today = Math.floor(minute / 3)
    const open = jobs.flatMap(({ after, release }, i) =>
      left[i]! > 0 && release <= today && after.every((one) => left[one] === 0) ? [i] : [],
    )
    const best =
      open.length === 0
        ? search(left, minute + 1)
        : Math.min(
            ...open.map((i) => {
              const next = left.map((one, k) => (k === i ? one - 1 : one))
              const late = next[i] === 0 ? today - jobs[i]!.due : Number.NEGATIVE_INFINITY
              return Math.max(late, search(next, minute + 1))
            }),
          )
    known.set(key, best)
    return best
  }
  return search(
    jobs.map(({ minutes }) => minutes),
    0,
  )
}

describe('one person’s plan', () => {
  // Earliest due date with interruption and modified due dates is exact with precedence and release dates: Jackson
  // (1955), Lawler (1973), both from memory; here against every way there is.
  test('is as little late as can be: 2000 random cases of up to 6 jobs', () => {
    const draw = chance(41)
    const upTo = (n: number) => Math.floor(draw.uniform() * n)
    for (let round = 0; round < 2000; round++) {
      const jobs = Array.from({ length: 2 + upTo(5) }, (_, i) => ({
        ...{ minutes: 1 + upTo(3), release: upTo(4), due: upTo(6) },
        after: Array.from({ length: i }, (_, k) => k).filter(() => draw.uniform() < 0.25),
      }))
      const plan = schedule(
        jobs.map(({ minutes, release, due, after }, i) =>
          job(`${i}`, minutes, { release: day(release), due: day(due), after: after.map(String) }),
        ),
        [EVERY_DAY(3)],
        [],
        TODAY,
      )
      expect(plan.impossible).toEqual([])
      const late = Math.max(...plan.commissions.map((one) => one.late!))
      expect(late, JSON.stringify(jobs)).toBe(bestLateness(jobs))
    }
  })

  test('works no minute more than a day has, and every job to its end after what comes before it', () => {
    const draw = chance(43)
    for (let round = 0; round < 300; round++) {
      const jobs = Array.from({ length: 8 }, (_, i) =>
        job(`${i}`, 10 + Math.floor(200 * draw.uniform()), {
          ...(i > 0 && draw.uniform() < 0.5 ? { after: [`${i - 1}`], wait: 0 } : {}),
          due: day(Math.floor(14 * draw.uniform())),
        }),
      )
      const { slots, jobs: planned } = schedule(jobs, [EVERY_DAY(120)], [], TODAY)
      const byDay = Map.groupBy(slots, (slot) => slot.day)
      for (const own of byDay.values())
        expect(own.reduce((sum, { minutes }) => sum + minutes, 0)).toBeLessThanOrEqual(120 + 1e-6)
      for (const { id, minutes, after } of jobs) {
        const own = slots.filter((slot) => slot.job === id)
        expect(own.reduce((sum, slot) => sum + slot.minutes, 0)).toBeCloseTo(minutes, 4)
        const [first] = own
        for (const before of after) {
          const last = planned.find((one) => one.job === before)!.last
          expect(first!.day >= last).toBe(true)
        }
      }
    }
  })
})

describe('the calendar', () => {
  test('counts days over leap days, year ends and the change of clocks', () => {
    // An hour a day, 40 hours: the 40th working day, whatever lies between.
    for (const from of ['2028-02-20', '2026-12-20', '2026-03-20', '2026-10-15']) {
      const plan = schedule([job('long', 40 * 60)], [EVERY_DAY(60)], [], from)
      expect(daysBetween(from, plan.commissions[0]!.finish!)).toBe(39)
    }
  })

  test('knows weekends, holidays, arrivals and waits', () => {
    const maker: Person = { ...EVERY_DAY(60), week: [60, 60, 60, 60, 60, 0, 0] }
    const finish = (jobs: Job[], away: { person: string | null; from: string; to: string }[] = []) =>
      schedule(jobs, [maker], away, TODAY)
        .commissions.map((one) => one.finish)
        .sort()
        .at(-1)
    // Monday the 2nd: six hours end on the Monday after.
    expect(finish([job('a', 360)])).toBe('2026-03-09')
    expect(finish([job('a', 360)], [{ person: null, from: '2026-03-03', to: '2026-03-04' }])).toBe(
      '2026-03-11',
    )
    expect(finish([job('a', 60, { release: '2026-03-12' })])).toBe('2026-03-12')
    const dried = finish([job('wash', 30, { wait: 1 }), job('cut', 60, { after: ['wash'] })])
    expect(dried! >= '2026-03-03').toBe(true)
  })

  test('never has work done by hands that cannot, and says so', () => {
    const cutter: Person = { ...EVERY_DAY(60), id: 'cutter', skills: ['cutting'] }
    const { impossible, slots } = schedule(
      [job('sew', 30), job('cut', 30, { skill: 'cutting' })],
      [cutter],
      [],
      TODAY,
    )
    expect(slots.map((slot) => slot.job)).toEqual(['cut'])
    expect(impossible).toMatchObject([{ job: 'sew', why: { code: 'noSkill' } }])
  })

  test('rests a hand that has sewn as long as it may', () => {
    const { commissions } = schedule([job('sew', 240)], [{ ...EVERY_DAY(480), handCap: 60 }], [], TODAY)
    expect(commissions[0]!.finish).toBe(day(3))
  })

  test('says by when work must be begun, and what new work would put off', () => {
    const one = job('one', 120, { due: day(4) })
    const base = { jobs: [one], people: [EVERY_DAY(60)], away: [], today: TODAY }
    expect(latestStarts(base).get('one')).toBe(day(3))
    const { changed } = whatIf(base, [job('new', 120, { due: day(1) })])
    expect(changed).toMatchObject([{ commission: 'one', later: 2, late: -1 }])
  })
})
