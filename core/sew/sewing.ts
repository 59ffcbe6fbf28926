import type { Draft, Step } from '../draft/types.ts'
import { OPERATION, type TimedId } from './operations.ts'
import { timeOf } from './pace/time-of.ts'
import { USUAL_WAYS } from './parameters.ts'
import { hemRows, seamRows, type TimedRow } from './rows.ts'
import { handledThread, threadUse } from './thread-use.ts'
import {
  type FinishPlan,
  type Minutes,
  type Sewing,
  SKILLS,
  type Skill,
  type StepTime,
  type ThreadRules,
  type Ways,
} from './types.ts'
import { entriesOf, skillAt, sumWork, type Work } from './work.ts'

/**
 * The sewing of a draft under a finish plan: every row of stitches with its thread and time, the time of
 * every step, and the thread in all.
 *
 * @param thickness of one layer of the cloth, mm
 */
export function sew(
  { seams, hems, steps }: Pick<Draft, 'seams' | 'hems' | 'steps'>,
  plan: FinishPlan,
  thickness: number,
  rules: ThreadRules,
  ways: Ways = USUAL_WAYS,
): Sewing {
  const seamOf = new Map(seams.map((seam) => [seam.id, seam]))
  const hemOf = new Map(hems.map((hem) => [hem.id, hem]))
  const sewn = { thickness, ways }
  const timed = steps.flatMap((step) => [
    ...step.seams.flatMap((id) => seamRows(step.id, known(seamOf, id), plan, sewn)),
    ...step.hems.flatMap((id) => hemRows(step.id, known(hemOf, id), plan, sewn)),
  ])
  const works = steps.map((step) =>
    workOf(
      step,
      timed.filter(({ row }) => row.step === step.id),
      ways,
    ),
  )
  const rows = timed.map(({ row }) => row)
  const handled = steps.flatMap(({ operations }) => operations)
  return {
    rows,
    steps: steps.map(({ id, stage }, i): StepTime => {
      const work = works[i]!
      return { step: id, stage, work, ...timesOf([work], ways) }
    }),
    threads: threadUse(rows, handledThread(handled, thickness, ways), rules),
    ...timesOf(works, ways),
  }
}

/** What a step holds of each kind of work, by the catalogue. */
const workOf = ({ operations }: Step, rows: readonly TimedRow[], ways: Ways): Work =>
  sumWork([
    ...rows.map(({ row, standard }): Work => ({ [row.stitch]: standard })),
    ...operations.map(
      ({ operation, quantity }): Work => ({ [operation]: quantity * minutesOf(operation, ways) }),
    ),
  ])

/** Minutes of the catalogue for one unit of an operation; none, if the workroom does not do it. */
export const minutesOf = (operation: TimedId, { minutes }: Pick<Ways, 'minutes'>): number =>
  minutes[operation] === 0 ? 0 : OPERATION[operation].minutes

/** The time of steps in all, and of each kind of labour in them. */
export function timesOf(
  works: readonly Work[],
  { pace }: Pick<Ways, 'pace'>,
): { total: Minutes; bySkill: Partial<Record<Skill, Minutes>> } {
  const bySkill: Partial<Record<Skill, Minutes>> = {}
  for (const skill of SKILLS) {
    const own = works.map((work) =>
      Object.fromEntries(entriesOf(work).filter(([id]) => skillAt(id) === skill)),
    )
    if (own.some((work) => entriesOf(work).length > 0)) bySkill[skill] = timeOf(pace, own)
  }
  return { total: timeOf(pace, works), bySkill }
}

function known<T>(by: ReadonlyMap<string, T>, id: string): T {
  const found = by.get(id)
  if (found === undefined) throw new Error(`a step sews ${id}, which the draft does not have`)
  return found
}
