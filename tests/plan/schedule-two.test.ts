import { describe, expect, test } from 'vitest'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Base, Job } from '../../core/plan/schedule/types.ts'
import { addDays, dayNumber } from '../../core/words/dates.ts'
import { chance } from '../support/chance.ts'
import {
  aJob,
  aPerson,
  below,
  type Draw,
  hoursOn,
  latenessBySlots,
  oneOf,
  SEWING,
  some,
  wrongIn,
} from '../support/plans.ts'

const LONG = process.env.ELLWAND_LONG === '1'
const UNIT = 60
/** Days of two units, two people, up to five jobs of one or two: small enough to try every way there is. */
function smallWorkroom(draw: Draw): Base {
  const today = addDays('2026-09-01', below(draw, 7))
  const people = ['a', 'b'].map((id, p) =>
    aPerson(0, {
      id,
      skills: p === 0 ? SEWING : ['handSewing' as const, ...some(draw, SEWING.slice(1), 0.4)],
      week: Array.from({ length: 7 }, () => UNIT * oneOf(draw, [0, 1, 2, 2])),
      handCap: draw.uniform() < 0.3 ? UNIT : null,
    }),
  )
  people[0]!.week = people[0]!.week.map((one, i) => (i === 0 ? UNIT : one))
  const jobs = Array.from({ length: 3 + below(draw, 3) }, (_, i) =>
    aJob(`${i}`, {
      skill: oneOf(draw, SEWING),
      minutes: UNIT * (1 + below(draw, 2)),
      after: some(
        draw,
        Array.from({ length: i }, (_, k) => `${k}`),
        0.25,
      ),
      release: draw.uniform() < 0.3 ? addDays(today, below(draw, 5)) : null,
      wait: draw.uniform() < 0.15 ? 1 : 0,
      due: addDays(today, below(draw, 6)),
    }),
  )
  return { jobs, people, away: [], today }
}

/**
 * Whether any way of giving both people's units to the jobs has nothing late by more than so many days: breadth first
 * over the days' units, all states of the work, rest included.
 */
function canBeWithin({ jobs, people, today }: Base, late: number): boolean {
  type State = { left: number[]; ready: number[]; hand: number[] }
  const start = dayNumber(today)
  const number = new Map(jobs.map(({ id }, i) => [id, i]))
  const before = jobs.map(({ after }) => after.map((id) => number.get(id)!))
  const followed = jobs.map((_, i) => before.some((ones) => ones.includes(i)))
  const limit = jobs.map(({ due, wait }, i) => dayNumber(due!) - start + late - (followed[i] ? 0 : wait))
  const release = jobs.map(({ release }) => (release === null ? 0 : (dayNumber(release) - start) * 2))
  if (limit.some((one) => one < 0)) return false
  let states: State[] = [{ left: jobs.map(({ minutes }) => minutes / UNIT), ready: release, hand: [] }]
  for (let unit = 0; states.length > 0; unit++) {
    const day = Math.floor(unit / 2)
    /** Nothing is left that is to be done by now: by the end of the day's last unit. */
    const fits = (left: readonly number[]) =>
      left.every((one, i) => one === 0 || limit[i]! > day || (limit[i] === day && unit % 2 === 0))
    const next = new Map<string, State>()
    for (const state of states) {
      const hand = unit % 2 === 0 ? people.map(({ handCap }) => (handCap ?? 1e9) / UNIT) : state.hand
      const open = (i: number) =>
        state.left[i]! > 0 && state.ready[i]! <= unit && before[i]!.every((k) => state.left[k] === 0)
      const choices = people.map((person, p) => [
        -1,
        ...jobs.flatMap(({ skill }, i) =>
          open(i) &&
          (unit % 2) * UNIT < hoursOn(person, [], start + day) &&
          person.skills.includes(skill) &&
          (skill !== 'handSewing' || hand[p]! > 0)
            ? [i]
            : [],
        ),
      ])
      for (const a of choices[0]!)
        for (const b of choices[1]!) {
          if (a === b && a !== -1) continue
          const after = { left: [...state.left], ready: [...state.ready], hand: [...hand] }
          for (const [p, i] of [a, b].entries()) {
            if (i === -1) continue
            after.left[i] = after.left[i]! - 1
            if (jobs[i]!.skill === 'handSewing') after.hand[p] = after.hand[p]! - 1
            if (after.left[i] === 0)
              for (const [k, ones] of before.entries())
                if (ones.includes(i))
                  after.ready[k] = Math.max(
                    after.ready[k]!,
                    jobs[i]!.wait === 0 ? unit + 1 : 2 * (day + jobs[i]!.wait),
                  )
          }
          if (after.left.every((one) => one === 0)) return true
          if (fits(after.left)) next.set(JSON.stringify(after), after)
        }
    }
    states = [...next.values()]
  }
  return false
}

describe('two people’s plan', () => {
  // Nothing so simple is exact for two (McNaughton 1959 and since, from memory), but it must not cost much.
  test('is hardly later than the best of all ways', () => {
    let [excess, work, worst, wrong] = [0, 0, 0, 0]
    const cases = LONG ? 3000 : 600
    for (let seed = 1; seed <= cases; seed++) {
      const base = smallWorkroom(chance(seed))
      const plan = schedule(base.jobs, base.people, base.away, base.today)
      expect(wrongIn(base, plan), `seed ${seed}`).toEqual([])
      const lateness = latenessBySlots(base, plan)
      expect(canBeWithin(base, lateness), `seed ${seed}: the search misses a plan that is there`).toBe(true)
      let best = lateness
      while (canBeWithin(base, best - 1)) best--
      excess += lateness - best
      worst = Math.max(worst, lateness - best)
      if (lateness > best) wrong++
      // In days of two units, as lateness is in days.
      work += base.jobs.reduce((sum: number, { minutes }: Job) => sum + minutes, 0) / UNIT / 2
    }
    if (LONG)
      console.log(
        `two people, ${cases} cases: later than the best in ${wrong}, by ${worst} days at most; ` +
          `${((100 * excess) / work).toFixed(2)} % of all work`,
      )
    expect(excess / work).toBeLessThanOrEqual(0.05)
  })
})
