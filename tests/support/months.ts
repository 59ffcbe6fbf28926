import { draftGarment } from '../../core/draft/constructions.ts'
import { triangleOf } from '../../core/measure/gaussian.ts'
import type { Away, Base, Job, Person } from '../../core/plan/schedule/types.ts'
import { FINISH_PLANS } from '../../core/sew/finish-plans.ts'
import { numberOf, type Pace, UNKNOWN_PACE } from '../../core/sew/pace/pace.ts'
import { factorAt } from '../../core/sew/pace/time-of.ts'
import { DEFAULT_THREAD_RULES } from '../../core/sew/parameters.ts'
import { sew } from '../../core/sew/sewing.ts'
import { SKILLS, type Skill } from '../../core/sew/types.ts'
import { entriesOf, skillAt, sumWork, type Work } from '../../core/sew/work.ts'
import { addDays } from '../../core/words/dates.ts'
import { bodyOf, WOMAN } from './bodies.ts'
import { chance } from './chance.ts'
import { aJob, aPerson, below, type Draw, oneOf, some } from './plans.ts'

/** Works of garments' steps, by hand and half by machine. */
const GARMENTS = [
  'goredUndertunic',
  'overtunic',
  'shirt',
  'shift',
  'apron',
  'hood',
  'circleCloak',
  'coif',
  'smock',
]
  .map((id) => draftGarment(id, bodyOf(WOMAN), {}, 'mm'))
  .flatMap((draft) =>
    (['allByHand', 'machineWhereHidden'] as const).map((plan) =>
      sew(draft, FINISH_PLANS[plan], 0.4, DEFAULT_THREAD_RULES).steps.map(({ work }) => work!),
    ),
  )

/** A workroom with accepted work, what is asked of it next, and how well its pace is known. */
export type Month = { base: Base; added: Job[]; pace: Pace; draw: Draw }

/**
 * A month drawn by chance: a maker alone or with a helper of fewer hours and skills; a pace known well or hardly;
 * accepted work of one to four weeks or as said, garments half done or not begun, with cloth on its way and waits. Each
 * was promised with a fifth in hand after all before it, three in ten with days to spare.
 */
export function aMonth(
  seed: number,
  { helper, weeks = [1, 4] }: { helper?: boolean; weeks?: readonly [least: number, most: number] } = {},
): Month {
  const draw = chance(seed)
  const today = addDays('2026-01-01', below(draw, 1000))
  const known = 0.1 + 0.9 * draw.uniform()
  const covariance = UNKNOWN_PACE.covariance.map((row) => row.map((value) => value * known))
  const pace: Pace = { ...UNKNOWN_PACE, covariance }
  const people = (helper ?? draw.uniform() < 0.4) ? [aMaker(draw), aHelper(draw)] : [aMaker(draw)]
  const from = addDays(today, below(draw, 30))
  const away: Away[] =
    draw.uniform() < 0.3 ? [{ person: null, from, to: addDays(from, below(draw, 14)) }] : []
  const perWeek = people.flatMap(({ week }) => week).reduce((sum, one) => sum + one, 0)
  const load = (weeks[0] + (weeks[1] - weeks[0]) * draw.uniform()) * perWeek
  const jobs: Job[] = []
  let all = 0
  for (let c = 0; all < load; c++) {
    const own = garment(draw, pace, today, `c${c}`, c < 2)
    all += own.reduce((sum, { minutes }) => sum + minutes, 0)
    const spare = draw.uniform() < 0.3 ? below(draw, 30) : 0
    const due = addDays(today, Math.ceil((7 * 1.2 * all) / perWeek) + spare)
    jobs.push(...own.map((job) => ({ ...job, due })))
  }
  return { base: { jobs, people, away, today }, added: garment(draw, pace, today, 'new', false), pace, draw }
}

const aCap = (draw: Draw): number | null => (draw.uniform() < 0.3 ? 180 : null)

function aMaker(draw: Draw): Person {
  const week = [0, 1, 2, 3, 4].map(() => (draw.uniform() < 0.1 ? 0 : 150 + 30 * below(draw, 9)))
  return aPerson(0, { week: [...week, draw.uniform() < 0.3 ? 180 : 60, 0], handCap: aCap(draw) })
}

function aHelper(draw: Draw): Person {
  const week = [0, 1, 2, 3, 4, 5, 6].map(() => (draw.uniform() < 0.5 ? 0 : 120 + 30 * below(draw, 7)))
  const skills: Skill[] = ['handSewing', ...some(draw, SKILLS.slice(1), 0.5)]
  return aPerson(0, { id: 'helper', skills, week, handCap: aCap(draw) })
}

/** The steps of a garment, one after the other; of one that is begun, those that are left. */
function garment(draw: Draw, pace: Pace, today: string, id: string, begun: boolean): Job[] {
  const steps = oneOf(draw, GARMENTS)
  const cloth = draw.uniform() < 0.3 ? addDays(today, below(draw, 21)) : null
  return steps.slice(begun ? below(draw, steps.length) : 0).map((work, i) =>
    aJob(`${id}-${i}`, {
      ...{ commission: id, work, skill: mostOf(work, pace), minutes: expected(work, pace) },
      after: i > 0 ? [`${id}-${i - 1}`] : [],
      release: i === 0 ? cloth : null,
      wait: draw.uniform() < 0.05 ? 1 + below(draw, 2) : 0,
    }),
  )
}

const expected = (work: Work, pace: Pace): number =>
  entriesOf(work).reduce((sum, [id, minutes]) => sum + minutes * factorAt(pace, id), 0)

function mostOf(work: Work, pace: Pace): Skill {
  const bySkill = Map.groupBy(entriesOf(work), ([id]) => skillAt(id))
  const minutes = [...bySkill].map(
    ([skill, own]) => [skill, expected(Object.fromEntries(own), pace)] as const,
  )
  return minutes.sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'handSewing'
}

/** True minutes of each job, drawn from the pace: factors by Cholesky’s triangle of their covariance, luck by step. */
export function trueTimes(jobs: readonly Job[], pace: Pace, draw: Draw): Map<string, number> {
  const kinds = entriesOf(sumWork(jobs.map(({ work }) => work))).map(([id]) => id)
  const at = kinds.map(numberOf)
  const lower = triangleOf(at.map((k) => at.map((l) => pace.covariance[k]![l]!)))
  const z = kinds.map(() => draw.normal())
  const factor = new Map(
    kinds.map((id, i) => [
      id,
      Math.exp(pace.mean[at[i]!]! + lower[i]!.reduce((sum, one, k) => sum + one * z[k]!, 0)),
    ]),
  )
  return new Map(
    jobs.map(({ id, work }) => [
      id,
      Math.exp(pace.step * draw.normal()) *
        entriesOf(work).reduce((sum, [kind, minutes]) => sum + minutes * factor.get(kind)!, 0),
    ]),
  )
}

/** The workroom when the new work is accepted for a day. */
export const accepted = ({ base, added }: Month, due: string): Base => ({
  ...base,
  jobs: [...base.jobs, ...added.map((job) => ({ ...job, due }))],
})
