import { expect, test } from 'vitest'
import { schedule } from '../../core/plan/schedule/schedule.ts'
import type { Away, Base } from '../../core/plan/schedule/types.ts'
import { addDays } from '../../core/words/dates.ts'
import { chance } from '../support/chance.ts'
import { aJob, aPerson, below, type Draw, oneOf, SEWING, some, wrongIn } from '../support/plans.ts'

const LONG = process.env.ELLWAND_LONG === '1'

/** Two or three people of odd weeks and skills, and jobs of all sorts, some of which nobody can do. */
function randomWorkroom(draw: Draw): Base {
  const today = addDays('2026-09-01', below(draw, 500))
  const within = (days: number) => addDays(today, below(draw, days) - 3)
  const people = Array.from({ length: 1 + below(draw, 3) }, (_, p) =>
    aPerson(0, {
      id: `p${p}`,
      skills: some(draw, SEWING, 0.8),
      week: Array.from({ length: 7 }, () => (draw.uniform() < 0.3 ? 0 : 480 * draw.uniform())),
      handCap: draw.uniform() < 0.4 ? 200 * draw.uniform() : null,
    }),
  )
  const away = Array.from({ length: below(draw, 4) }, (): Away => {
    const from = within(60)
    return { person: oneOf(draw, [null, 'p0', 'p1']), from, to: addDays(from, below(draw, 20) - 1) }
  })
  const jobs = Array.from({ length: 1 + below(draw, 40) }, (_, i) =>
    aJob(`${i}`, {
      commission: `c${below(draw, 6)}`,
      skill: oneOf(draw, SEWING),
      minutes: draw.uniform() < 0.1 ? 0 : 900 * draw.uniform() ** 2,
      after: Array.from({ length: below(draw, 3) }, () => `${below(draw, i + 1)}`).filter(
        (id) => id !== `${i}`,
      ),
      release: draw.uniform() < 0.2 ? within(50) : null,
      wait: draw.uniform() < 0.2 ? 1 + below(draw, 4) : 0,
      due: draw.uniform() < 0.8 ? within(80) : null,
    }),
  )
  return { jobs, people, away, today }
}

test('a plan never goes against people, days or jobs', () => {
  let [done, never, shared] = [0, 0, 0]
  for (let seed = 1; seed <= (LONG ? 20_000 : 1000); seed++) {
    const base = randomWorkroom(chance(seed))
    const plan = schedule(base.jobs, base.people, base.away, base.today)
    expect(wrongIn(base, plan), `seed ${seed}`).toEqual([])
    done += plan.jobs.length
    never += plan.impossible.length
    shared += plan.jobs.filter(({ by }) => by.length > 1).length
  }
  // Everything that could be done wrong must have come up.
  expect(Math.min(done, never, shared)).toBeGreaterThan(500)
})
