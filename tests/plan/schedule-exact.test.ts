import { describe, expect, test } from 'vitest'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Away, Job, Person } from '../../core/plan/schedule/types.ts'
import { addDays, dayNumber } from '../../core/words/dates.ts'
import { chance } from '../support/chance.ts'
import { aJob, aPerson, below, hoursOn, latenessBySlots, some, wrongIn } from '../support/plans.ts'

const CASES = process.env.ELLWAND_LONG === '1' ? 40_000 : 4000
/** Minutes of one unit of work; all hours are so many of it. */
const UNIT = 45

/** One person with odd weeks and days off, and up to eight jobs of one to three units. */
function randomCase(seed: number) {
  const draw = chance(seed)
  const today = addDays('2026-01-01', below(draw, 400))
  const week = Array.from({ length: 7 }, () => UNIT * below(draw, 4))
  week[below(draw, 7)] = UNIT
  const person = aPerson(0, { week })
  const from = below(draw, 8)
  const away: Away[] =
    draw.uniform() < 0.3
      ? [{ person: null, from: addDays(today, from), to: addDays(today, from + below(draw, 6)) }]
      : []
  const count = 1 + below(draw, 8)
  const density = 0.5 * draw.uniform()
  const jobs = Array.from({ length: count }, (_, i) =>
    aJob(`${i}`, {
      minutes: UNIT * (1 + below(draw, 3)),
      after: some(
        draw,
        Array.from({ length: i }, (_, k) => `${k}`),
        density,
      ),
      release: draw.uniform() < 0.4 ? addDays(today, below(draw, 12)) : null,
      due: draw.uniform() < 0.8 ? addDays(today, below(draw, 16) - 2) : null,
    }),
  )
  return { jobs: draw.uniform() < 0.5 ? jobs : jobs.toReversed(), people: [person], away, today }
}

/**
 * Whether any way of spending the units of the person's days, one job to a unit, has nothing late by more than so
 * many days: exhaustive, by the work that is done. Whole units are enough: once releases and due days are drawn
 * together so that they imply the order, spreading work over units is a transport problem, whose corners are whole (Hoffman
 * and Kruskal 1956, from memory), and two jobs in the wrong order may change their units. Of two ways to have the
 * same work done the one that needed less time is never worse, so only the least is kept.
 */
function canBeWithin(
  jobs: readonly Job[],
  person: Person,
  away: readonly Away[],
  today: string,
  late: number,
) {
  const start = dayNumber(today)
  // The day of each unit, until long after everything can be begun.
  const days: number[] = []
  for (let day = start; day < start + 14 + 24 * 7; day++)
    for (let unit = 0; unit < hoursOn(person, away, day) / UNIT; unit++) days.push(day)
  const number = new Map(jobs.map(({ id }, i) => [id, i]))
  const size = jobs.map(({ minutes }) => minutes / UNIT)
  const place = size.map((_, i) => size.slice(0, i).reduce((all, one) => all * (one + 1), 1))
  const states = size.reduce((all, one) => all * (one + 1), 1)
  const first = jobs.map(({ release }) =>
    release === null ? 0 : days.findIndex((day) => day >= dayNumber(release)),
  )
  const limit = jobs.map(({ due }) => (due === null ? Number.POSITIVE_INFINITY : dayNumber(due) + late))
  const before = jobs.map(({ after }) => after.map((id) => number.get(id)!))
  const least = new Int16Array(states).fill(-1)
  least[0] = 0
  for (let state = 0; state < states; state++) {
    if (least[state] === -1) continue
    const done = size.map((one, i) => Math.floor(state / place[i]!) % (one + 1))
    for (let i = 0; i < jobs.length; i++) {
      if (done[i] === size[i] || before[i]!.some((k) => done[k]! < size[k]!)) continue
      const unit = Math.max(least[state]!, first[i]!)
      if (done[i]! + 1 === size[i] && days[unit]! > limit[i]!) continue
      const next = state + place[i]!
      if (least[next] === -1 || unit + 1 < least[next]!) least[next] = unit + 1
    }
  }
  return least[states - 1] !== -1
}

describe('one person’s plan', () => {
  // Due days: Jackson 1955; what comes before: Lawler 1973; interrupted work: Horn 1974; all from memory. Here
  // against every way there is.
  test(`is as little late as can be: ${CASES} cases of up to eight jobs`, () => {
    let late = 0
    for (let seed = 1; seed <= CASES; seed++) {
      const base = randomCase(seed)
      const plan = schedule(base.jobs, base.people, base.away, base.today)
      expect(wrongIn(base, plan), `seed ${seed}`).toEqual([])
      const lateness = latenessBySlots(base, plan)
      if (lateness === Number.NEGATIVE_INFINITY) continue
      expect(Math.max(...plan.commissions.map((one) => one.late ?? lateness))).toBe(lateness)
      const within = (days: number) => canBeWithin(base.jobs, base.people[0]!, base.away, base.today, days)
      expect(within(lateness), `seed ${seed}: the search misses a plan that is there`).toBe(true)
      expect(within(lateness - 1), `seed ${seed}: ${lateness} days late, and less can be had`).toBe(false)
      if (lateness > 0) late++
    }
    // The cases must be hard enough to tell: a good part is late, a good part is not.
    expect(late).toBeGreaterThan(CASES / 4)
    expect(late).toBeLessThan((CASES * 3) / 4)
  })
})
